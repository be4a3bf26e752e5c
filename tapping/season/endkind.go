package season

import (
	"fmt"

	"example.org/sapreckoner/internal/base/enum"
)

// EndKind is a kind of sign that the season ends.
type EndKind uint8

// The kinds.
const (
	Warmth    EndKind = iota // Fahrenheit degree-days by [BloomRule]: buds
	FrostFree                // nights on end without frost
	HoleAge                  // days since drilling
	SugarFall                // percent that is left of the best sugar
	LastWeeks                // percent, the chance of [HouleProbability] in the last whole week
)

var endKinds = enum.Names[EndKind]{Type: "season.EndKind", Of: []string{"warmth", "nights without frost", "age of the holes", "sugar", "weeks of syrup"}}

// EndKinds lists the kinds.
func EndKinds() []EndKind { return endKinds.List() }

// String names the kind.
func (k EndKind) String() string { return endKinds.String(k) }

// MarshalText returns the name of the kind.
func (k EndKind) MarshalText() ([]byte, error) { return endKinds.Marshal(k) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (k *EndKind) UnmarshalText(text []byte) error { return endKinds.Unmarshal(k, text) }

// EndState is how far a sign has come.
type EndState uint8

// The states, the furthest last.
const (
	NotKnown EndState = iota // nothing tells
	NoSign
	EndNear // it warns
	EndCome // it is there
)

var endStates = enum.Names[EndState]{Type: "season.EndState", Of: []string{"not known", "no sign", "near", "come"}}

// EndStates lists the states.
func EndStates() []EndState { return endStates.List() }

// String names the state.
func (s EndState) String() string { return endStates.String(s) }

// MarshalText returns the name of the state.
func (s EndState) MarshalText() ([]byte, error) { return endStates.Marshal(s) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (s *EndState) UnmarshalText(text []byte) error { return endStates.Unmarshal(s, text) }

// String tells the sign as "warmth: 28 F degree-days, near (34 to 75)".
func (s EndSign) String() string {
	unit := ""
	switch s.Kind {
	case Warmth:
		unit = " F degree-days"
	case HoleAge:
		unit = " days"
	case SugarFall:
		unit = " % of the best"
	case LastWeeks:
		unit = " %"
	}
	if s.State == NotKnown {
		return fmt.Sprintf("%v: not known", s.Kind)
	}
	text := fmt.Sprintf("%v: %.0f%s, %v", s.Kind, s.Figure, unit, s.State)
	if s.Near != s.Come {
		return fmt.Sprintf("%s (%.0f to %.0f)", text, s.Near, s.Come)
	}
	return fmt.Sprintf("%s (%.0f)", text, s.Near)
}
