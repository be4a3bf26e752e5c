package tapping

import (
	"encoding/json"
	"fmt"
	"math"

	"example.org/sapreckoner/internal/base/object"
	"example.org/sapreckoner/units"
)

// unset is a length that was not written: a constructor refuses it.
var unset = units.Length(math.NaN())

// holeJSON is a hole as JSON holds it.
type holeJSON struct {
	Bit   units.Length `json:"bit"`
	Depth units.Length `json:"depth"`
	Bark  units.Length `json:"bark"`
}

// String prints the hole for a person, "0.313 in (0.794 cm) bit, 1.5 in (3.81
// cm) deep".
func (h Hole) String() string { return h.Text(units.Both) }

// Text prints the hole in one system of units, or both.
func (h Hole) Text(in units.System) string {
	if h == (Hole{}) {
		return "no hole"
	}
	s := fmt.Sprintf("%s bit, %s deep", h.bit.TextIn(in, 3), h.depth.TextIn(in, 3))
	if h.bark > 0 {
		s += ", bark " + h.bark.TextIn(in, 2)
	}
	return s
}

// MarshalJSON gives an object with bit, depth and bark.
func (h Hole) MarshalJSON() ([]byte, error) { return json.Marshal(holeJSON{h.bit, h.depth, h.bark}) }

// UnmarshalJSON reads what MarshalJSON gives. It refuses what [NewHole]
// refuses, and missing and unknown fields; the hole is then left alone.
func (h *Hole) UnmarshalJSON(b []byte) error {
	const fn = "tapping.Hole.UnmarshalJSON"
	in := holeJSON{unset, unset, unset}
	if err := object.Read(fn, b, &in); err != nil {
		return err
	}
	if in == (holeJSON{}) {
		*h = Hole{}
		return nil
	}
	made, err := NewHole(in.Bit, in.Depth, in.Bark)
	if err != nil {
		return units.Under(fn, err)
	}
	*h = made
	return nil
}

// bandJSON is a band as JSON holds it.
type bandJSON struct {
	Diameter units.Length `json:"diameter"`
	Height   units.Length `json:"height"`
	Hole     Hole         `json:"hole"`
	Taps     int          `json:"taps"`
}

// String prints the band for a person, "12 in (30.5 cm) through, 60 in (152 cm)
// high, 1 hole a year: ...".
func (b TappingBand) String() string { return b.Text(units.Both) }

// Text prints the band in one system of units, or both.
func (b TappingBand) Text(in units.System) string {
	if b == (TappingBand{}) {
		return "no wood"
	}
	holes := "holes"
	if b.taps == 1 {
		holes = "hole"
	}
	return fmt.Sprintf("%s through, %s high, %d %s a year: %s", b.diameter.TextIn(in, 3), b.height.TextIn(in, 3), b.taps, holes, b.hole.Text(in))
}

// MarshalJSON gives an object with diameter, height, hole and taps.
func (b TappingBand) MarshalJSON() ([]byte, error) {
	return json.Marshal(bandJSON{b.diameter, b.height, b.hole, b.taps})
}

// UnmarshalJSON reads what MarshalJSON gives. It refuses what [NewTappingBand]
// refuses, and missing and unknown fields; the band is then left alone.
func (b *TappingBand) UnmarshalJSON(text []byte) error {
	const fn = "tapping.TappingBand.UnmarshalJSON"
	in := bandJSON{Diameter: unset, Height: unset}
	if err := object.Whole(fn, text, &in); err != nil {
		return err
	}
	if in == (bandJSON{}) {
		*b = TappingBand{}
		return nil
	}
	made, err := NewTappingBand(in.Diameter, in.Height, in.Hole, in.Taps)
	if err != nil {
		return units.Under(fn, err)
	}
	*b = made
	return nil
}
