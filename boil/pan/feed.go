package pan

import "example.org/sapreckoner/internal/base/enum"

// Feed is the way sap comes into the first compartment.
type Feed uint8

const (
	// FloatFeed holds the level with a thin stream as long as there is sap, as a
	// float valve does, or a kettle that is topped up all day. Then the level
	// falls.
	FloatFeed Feed = iota
	// PailFeed pours in a pail whenever there is room for it.
	PailFeed
)

var feeds = enum.Names[Feed]{Type: "pan.Feed", Of: []string{FloatFeed: "float", PailFeed: "pail"}}

// Feeds lists the ways sap comes in.
func Feeds() []Feed { return feeds.List() }

// String names the way, "float" or "pail".
func (f Feed) String() string { return feeds.String(f) }

// MarshalText returns the name, and an error for what is no way.
func (f Feed) MarshalText() ([]byte, error) { return feeds.Marshal(f) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (f *Feed) UnmarshalText(text []byte) error { return feeds.Unmarshal(f, text) }
