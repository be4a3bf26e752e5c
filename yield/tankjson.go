package yield

import (
	"encoding/json"
	"errors"
	"fmt"
	"slices"
	"strings"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/object"
	"example.org/sapreckoner/units"
)

// kind is the constructor that a tank was made by.
type kind uint8

const (
	noKind kind = iota
	rectangular
	uprightCylinder
	lyingCylinder
	lyingEllipse
	halfEllipseTrough
	pail
)

var kindNames = enum.Names[kind]{Type: "yield.Tank", Of: []string{
	"none", "rectangular tank", "upright cylinder", "lying cylinder", "lying ellipse", "half-ellipse trough", "pail",
}}

// kinds holds the sides of each kind in the order of its constructor.
var kinds = [...]struct {
	sides []string
	make  func(sides [3]units.Length) (Tank, error)
}{
	noKind: {nil, func([3]units.Length) (Tank, error) { return Tank{}, nil }},
	rectangular: {[]string{"length", "width", "height"},
		func(s [3]units.Length) (Tank, error) { return RectangularTank(s[0], s[1], s[2]) }},
	uprightCylinder: {[]string{"diameter", "height"},
		func(s [3]units.Length) (Tank, error) { return UprightCylinder(s[0], s[1]) }},
	lyingCylinder: {[]string{"diameter", "length"},
		func(s [3]units.Length) (Tank, error) { return LyingCylinder(s[0], s[1]) }},
	lyingEllipse: {[]string{"width", "height", "length"},
		func(s [3]units.Length) (Tank, error) { return LyingEllipse(s[0], s[1], s[2]) }},
	halfEllipseTrough: {[]string{"width", "depth", "length"},
		func(s [3]units.Length) (Tank, error) { return HalfEllipseTrough(s[0], s[1], s[2]) }},
	pail: {[]string{"top", "bottom", "height"},
		func(s [3]units.Length) (Tank, error) { return Pail(s[0], s[1], s[2]) }},
}

// String prints the tank for a person, "lying cylinder, diameter 36 in (91.4 cm),
// length 60 in (152 cm)".
func (t Tank) String() string { return t.Text(units.Both) }

// Text prints the tank in one system of units, or both.
func (t Tank) Text(in units.System) string {
	if t.kind == noKind {
		return "no tank"
	}
	s := kindNames.String(t.kind)
	for i, side := range kinds[t.kind].sides {
		s += fmt.Sprintf(", %s %s", side, t.sides[i].TextIn(in, 3))
	}
	return s
}

// MarshalJSON gives an object with shape, such as "lying cylinder", and the sides
// that its constructor takes, by their names there. The shape of the zero Tank is
// "none".
func (t Tank) MarshalJSON() ([]byte, error) {
	out := map[string]any{"shape": kindNames.String(t.kind)}
	for i, side := range kinds[t.kind].sides {
		out[side] = t.sides[i]
	}
	return json.Marshal(out)
}

// tankJSON is a tank of any shape as JSON holds it.
type tankJSON struct {
	Shape    *string       `json:"shape"`
	Length   *units.Length `json:"length"`
	Width    *units.Length `json:"width"`
	Height   *units.Length `json:"height"`
	Depth    *units.Length `json:"depth"`
	Diameter *units.Length `json:"diameter"`
	Top      *units.Length `json:"top"`
	Bottom   *units.Length `json:"bottom"`
}

// UnmarshalJSON reads what MarshalJSON gives. It refuses what the constructor
// of the shape refuses, missing and unknown fields, and sides that the shape
// does not have; the tank is then left alone.
func (t *Tank) UnmarshalJSON(b []byte) error {
	const fn = "yield.Tank.UnmarshalJSON"
	var in tankJSON
	if err := object.Read(fn, b, &in); err != nil {
		return err
	}
	if in.Shape == nil {
		return &object.Error{Func: fn, Err: errShape}
	}
	var k kind
	if err := kindNames.Unmarshal(&k, []byte(*in.Shape)); err != nil {
		return &object.Error{Func: fn, Err: err}
	}
	of := kinds[k]
	sides := [3]units.Length{nan[units.Length](), nan[units.Length](), nan[units.Length]()}
	for name, side := range map[string]*units.Length{"length": in.Length, "width": in.Width, "height": in.Height, "depth": in.Depth,
		"diameter": in.Diameter, "top": in.Top, "bottom": in.Bottom} {
		switch i := slices.Index(of.sides, name); {
		case side == nil:
		case i < 0:
			return &object.Error{Func: fn, Err: fmt.Errorf("a tank of the shape %q has no %s: its sides are %s", *in.Shape, name, strings.Join(of.sides, ", "))}
		default:
			sides[i] = *side
		}
	}
	made, err := of.make(sides)
	if err != nil {
		return units.Under(fn, err)
	}
	*t = made
	return nil
}

var errShape = errors.New("shape: missing: write it as one of " + strings.Join(kindNames.Of[1:], ", "))
