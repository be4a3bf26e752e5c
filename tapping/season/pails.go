package season

import (
	"math"
	"time"

	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Pail is a pail, a bag or a can that one or more taps run into.
type Pail struct {
	Label string
	Size  units.Volume
	Holds units.Volume // sap in it now
	Taps  int
}

// Overflow tells whether a pail lasts to the next round.
type Overflow uint8

// The answers. The zero value means that nobody reckoned it.
const (
	NotReckoned  Overflow = iota
	Lasts                 // even at the high end of the band
	MayOverflow           // at the high end, not at the low
	WillOverflow          // even at the low end
)

var overflowNames = enum.Names[Overflow]{Type: "season.Overflow", Of: []string{"not reckoned", "lasts", "may overflow", "will overflow"}}

// String returns the answer in words.
func (o Overflow) String() string { return overflowNames.String(o) }

// MarshalText returns the answer in words.
func (o Overflow) MarshalText() ([]byte, error) { return overflowNames.Marshal(o) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (o *Overflow) UnmarshalText(text []byte) error { return overflowNames.Unmarshal(o, text) }

// PailOutlook is a pail at the next round.
type PailOutlook struct {
	Pail
	Overflow Overflow
	// FullAfter is when the pail is full at the earliest, from now. It is the
	// time of the next round where that comes first.
	FullAfter time.Duration
	// Then is what it holds at the next round, Spilled what ran over.
	Then, Spilled Figure[units.Volume]
}

// The range of pails and rounds.
const (
	minPail     = units.USGallon / 1000
	maxPail     = 100 * units.USGallon
	maxPailTaps = 100
	minRound    = time.Minute
	maxRound    = 31 * 24 * time.Hour
)

// PailRound returns which pails overflow before the next round. Sap is the band
// that one tap gives in the time flowing, such as [SapModel.Day] in 8 hours of
// thaw, or what you measured yesterday; it comes evenly while it flows, and
// none comes after.
//
// Range: sap 0 to 100 US gal, low not above high; flowing and next 1 minute to
// 31 days; each pail of 0.001 to 100 US gal, holding 0 to its size, 0 to 100
// taps.
//
// Check value: a pail of 4 US gal with 2 in it under two taps of 0.5 to 1.5 US
// gal in 8 hours holds 3 to 4 after them, and is full at the earliest after 5 h
// 20 min.
func PailRound(pails []Pail, sap Figure[units.Volume], flowing, next time.Duration) ([]PailOutlook, error) {
	const fn = "season.PailRound"
	if err := checkPailSap(fn, sap, flowing, next); err != nil {
		return nil, err
	}
	out := make([]PailOutlook, 0, len(pails))
	for i, p := range pails {
		if err := p.check(fn, i); err != nil {
			return nil, err
		}
		out = append(out, p.outlook(sap, flowing, next))
	}
	return out, nil
}

func (p Pail) outlook(sap Figure[units.Volume], flowing, next time.Duration) PailOutlook {
	o := PailOutlook{Pail: p, Overflow: Lasts, FullAfter: next}
	come := sap.Times(float64(p.Taps) * min(1, next.Seconds()/flowing.Seconds()))
	low, high := p.Holds+come.Low, p.Holds+come.High
	o.Then = figure(min(low, p.Size), min(high, p.Size), sap.Source)
	spilled := func(v units.Volume) units.Volume {
		if limit.Same(v, p.Size) { // full to the brim is not over it
			return 0
		}
		return max(0, v-p.Size)
	}
	o.Spilled = figure(spilled(low), spilled(high), sap.Source)
	switch {
	case o.Spilled.Low > 0:
		o.Overflow = WillOverflow
	case o.Spilled.High > 0:
		o.Overflow = MayOverflow
	default:
		return o
	}
	free := float64(max(0, p.Size-p.Holds)) / (float64(sap.High) * float64(p.Taps))
	o.FullAfter = time.Duration(math.Round(free * float64(flowing)))
	return o
}

func checkPailSap(fn string, sap Figure[units.Volume], flowing, next time.Duration) error {
	const hint = "a band for one tap, low and high"
	if err := checkGallons(fn, "Span.Low", "low sap", sap.Low, 0, maxPail, hint); err != nil {
		return err
	}
	if err := checkGallons(fn, "Span.High", "high sap", sap.High, sap.Low, maxPail, hint); err != nil {
		return err
	}
	for _, d := range []struct {
		arg string
		t   time.Duration
	}{{"flowing", flowing}, {"next", next}} {
		if err := limit.Within(fn, d.arg, float64(d.t), float64(minRound), float64(maxRound), float64(time.Hour), "h", "a time ahead, not none"); err != nil {
			return err
		}
	}
	return nil
}

func (p Pail) check(fn string, i int) error {
	arg := func(field string) string { return limit.Item("pails", i, field) }
	label := clip.Text(p.Label)
	if err := checkGallons(fn, arg("Size"), "size of pail "+label, p.Size, minPail, maxPail, "the volume to the brim"); err != nil {
		return err
	}
	if err := checkGallons(fn, arg("Holds"), "sap in pail "+label, p.Holds, 0, p.Size, "no more than the pail takes"); err != nil {
		return err
	}
	return limit.WithinAs(fn, arg("Taps"), "taps over pail "+label, float64(p.Taps), 0, maxPailTaps, 1, "", "taps that run into this pail")
}

func checkGallons(fn, arg, what string, v, low, high units.Volume, hint string) error {
	return limit.WithinAs(fn, arg, what, v, low, high, units.USGallon, "US gal", hint)
}
