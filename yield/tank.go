package yield

import (
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/numeric"
	"example.org/sapreckoner/units"
)

// Limits of a tank's sides, in meters: from a cup to a silo.
const (
	minSide = 0.01
	maxSide = 30.0
)

// maxMarks bounds a dipstick.
const maxMarks = 10_000

// shape is how the cross-section of a tank grows with depth.
type shape uint8

const (
	none    shape = iota
	upright       // the same surface at every depth
	lying         // an ellipse, a circle for one, lying along its length
	conic         // round, wider at one end than at the other
)

// A Tank is a vessel of a plain shape, standing level: [RectangularTank],
// [UprightCylinder], [LyingCylinder], [LyingEllipse], [HalfEllipseTrough] or
// [Pail]. It tells volume from depth and depth from volume.
//
// Sides are inner sides, depth is measured straight down to the lowest point.
// Domed ends, rounded corners and fittings are not counted. The zero Tank is
// none: its methods refuse.
type Tank struct {
	kind   kind
	sides  [3]units.Length // as the constructor takes them
	shape  shape
	height float64 // greatest depth, m
	area   float64 // upright: surface, m2
	length float64 // lying: along the axis, m
	width  float64 // lying: horizontal axis of the ellipse, m
	tall   float64 // lying: vertical axis of the ellipse, m; the trough is half of it high
	bottom float64 // conic: radius below, m
	top    float64 // conic: radius above, m
}

// side checks one inner side of a tank.
func side(fn, arg string, l units.Length) error {
	return limit.In(fn, arg, l.Meters(), minSide, maxSide, "m", "the inner side, from 1 cm to 30 m")
}

// sides checks the inner sides of a tank in the order of its arguments.
func sides(fn string, args [3]string, ls [3]units.Length) error {
	for i, arg := range args {
		if arg == "" {
			break
		}
		if err := side(fn, arg, ls[i]); err != nil {
			return err
		}
	}
	return nil
}

// RectangularTank returns a tank with a level bottom and four upright sides.
//
// Range: sides from 1 cm to 30 m. Volume: length width depth, in inches over
// 231 for US gallons. Check value: 48 by 24 by 12 in hold 59.84 US gal
// (computed).
func RectangularTank(length, width, height units.Length) (Tank, error) {
	if err := sides("yield.RectangularTank", [3]string{"length", "width", "height"}, [3]units.Length{length, width, height}); err != nil {
		return Tank{}, err
	}
	return Tank{kind: rectangular, sides: [3]units.Length{length, width, height}, shape: upright, height: height.Meters(), area: length.Times(width).SquareMeters()}, nil
}

// UprightCylinder returns a round tank that stands on its end.
//
// Range: diameter and height from 1 cm to 30 m. Volume: pi/4 diameter^2 depth,
// 0.0034 diameter^2 US gal for each inch. Check value: 4.41 US gal for each
// inch at 36 in across (computed).
func UprightCylinder(diameter, height units.Length) (Tank, error) {
	if err := sides("yield.UprightCylinder", [3]string{"diameter", "height"}, [3]units.Length{diameter, height}); err != nil {
		return Tank{}, err
	}
	d := diameter.Meters()
	return Tank{kind: uprightCylinder, sides: [3]units.Length{diameter, height}, shape: upright, height: height.Meters(), area: math.Pi / 4 * d * d}, nil
}

// LyingCylinder returns a round tank that lies on its side, with flat ends.
//
// Range: diameter and length from 1 cm to 30 m. Volume, r the radius and h the
// depth:
//
//	length (r^2 acos((r-h)/r) - (r-h) sqrt(2 r h - h^2))
//
// Check values: 36 in across and 60 in long hold 51.687 US gal at 9 in, 132.192
// at 18 in and 264.383 when full (computed).
func LyingCylinder(diameter, length units.Length) (Tank, error) {
	if err := sides("yield.LyingCylinder", [3]string{"diameter", "length"}, [3]units.Length{diameter, length}); err != nil {
		return Tank{}, err
	}
	d := diameter.Meters()
	return Tank{kind: lyingCylinder, sides: [3]units.Length{diameter, length}, shape: lying, height: d, length: length.Meters(), width: d, tall: d}, nil
}

// LyingEllipse returns a tank of elliptical cross-section that lies on its side,
// with flat ends, as on a truck. Width and height are the full axes.
//
// Range: sides from 1 cm to 30 m. Volume: that of a lying cylinder of the same
// height, times width over height; pi/4 width height length when full. Check
// value: 48 in wide, 36 in high and 60 in long hold 352.5 US gal (computed).
func LyingEllipse(width, height, length units.Length) (Tank, error) {
	if err := sides("yield.LyingEllipse", [3]string{"width", "height", "length"}, [3]units.Length{width, height, length}); err != nil {
		return Tank{}, err
	}
	h := height.Meters()
	return Tank{kind: lyingEllipse, sides: [3]units.Length{width, height, length}, shape: lying, height: h, length: length.Meters(), width: width.Meters(), tall: h}, nil
}

// HalfEllipseTrough returns an open trough whose cross-section is the lower half
// of an ellipse: width across the rim, depth at the middle, with flat ends.
//
// Range: sides from 1 cm to 30 m. Volume: pi/4 width depth length when full.
// Check value: 48 in wide, 18 in deep and 60 in long hold 176.3 US gal
// (computed).
func HalfEllipseTrough(width, depth, length units.Length) (Tank, error) {
	if err := sides("yield.HalfEllipseTrough", [3]string{"width", "depth", "length"}, [3]units.Length{width, depth, length}); err != nil {
		return Tank{}, err
	}
	h := depth.Meters()
	return Tank{kind: halfEllipseTrough, sides: [3]units.Length{width, depth, length}, shape: lying, height: h, length: length.Meters(), width: width.Meters(), tall: 2 * h}, nil
}

// Pail returns a round pail, wider at the top or at the bottom.
//
// Range: diameters and height from 1 cm to 30 m. Volume, d1 the diameter below
// and d2 that at the surface: pi depth (d1^2 + d1 d2 + d2^2)/12. Check value:
// 11 in at the top, 10 in at the bottom and 10.5 in high hold 3.939 US gal
// (computed).
func Pail(top, bottom, height units.Length) (Tank, error) {
	if err := sides("yield.Pail", [3]string{"top", "bottom", "height"}, [3]units.Length{top, bottom, height}); err != nil {
		return Tank{}, err
	}
	return Tank{kind: pail, sides: [3]units.Length{top, bottom, height}, shape: conic, height: height.Meters(), bottom: bottom.Meters() / 2, top: top.Meters() / 2}, nil
}

// Height returns the greatest depth of the tank; 0 for the zero Tank.
func (t Tank) Height() units.Length { return units.Length(t.height) }

// Capacity returns what the tank holds to the brim; 0 for the zero Tank.
func (t Tank) Capacity() units.Volume { return units.Volume(t.volume(t.height)) }

// Volume returns what is in the tank when it stands to the given depth.
//
// Range: depth from 0 to [Tank.Height]. Uncertainty: that of the sides and the
// depth; half an inch in a tank 24 in wide and 48 in long is 2.5 US gal, and a
// lying tank out of level by an inch misleads by more.
func (t Tank) Volume(depth units.Length) (units.Volume, error) {
	const fn = "yield.Tank.Volume"
	if err := t.made(fn); err != nil {
		return nan[units.Volume](), err
	}
	if err := limit.In(fn, "depth", depth.Meters(), 0, t.height, "m", "the tank is no deeper: check the unit and where the stick stood"); err != nil {
		return nan[units.Volume](), err
	}
	return units.Volume(t.volume(depth.Meters())), nil
}

// Depth returns the depth at which the tank holds the given volume: the inverse
// of [Tank.Volume].
//
// Range: volume from 0 to [Tank.Capacity]. Check value: 18 in for
// 132.192 US gal in the cylinder of [LyingCylinder] (computed).
func (t Tank) Depth(volume units.Volume) (units.Length, error) {
	const fn = "yield.Tank.Depth"
	if err := t.made(fn); err != nil {
		return nan[units.Length](), err
	}
	full := t.volume(t.height)
	if err := limit.Liters(fn, "volume", volume, 0, units.Volume(full), "the tank holds no more"); err != nil {
		return nan[units.Length](), err
	}
	return units.Length(t.depth(volume.CubicMeters(), full)), nil
}

// depth inverts volume, unchecked.
func (t *Tank) depth(v, full float64) float64 {
	excess := func(h float64) (float64, float64) { return t.volume(h) - v, t.surface(h) }
	// The answer at either end is known, and the surface of a lying tank has no
	// width there to divide by.
	switch {
	case v <= 0:
		return 0
	case v >= full:
		return t.height
	}
	h, _ := numeric.Newton(excess, 0, t.height, t.height*v/full, 1e-13*t.height)
	return h
}

// made refuses the zero Tank.
func (t *Tank) made(fn string) error {
	return limit.InAs(fn, "Tank", "tank height", t.height, minSide, maxSide, "m", "make the tank first, of its shape and its sides")
}

// volume returns the volume at depth h, unchecked.
func (t *Tank) volume(h float64) float64 {
	switch t.shape {
	case upright:
		return t.area * h
	case lying:
		r := t.tall / 2
		// Rounding must not carry the cosine beyond 1 nor the root below 0.
		x := math.Min(math.Max((r-h)/r, -1), 1)
		return t.length * t.width / t.tall * r * r * (math.Acos(x) - x*math.Sqrt((1-x)*(1+x)))
	case conic:
		r := t.radius(h)
		return math.Pi / 3 * h * (t.bottom*t.bottom + t.bottom*r + r*r)
	}
	return 0
}

// surface returns the area of the surface at depth h: the slope of volume.
func (t *Tank) surface(h float64) float64 {
	switch t.shape {
	case upright:
		return t.area
	case lying:
		r := t.tall / 2
		return t.length * t.width / t.tall * 2 * math.Sqrt(math.Max(h*(2*r-h), 0))
	case conic:
		r := t.radius(h)
		return math.Pi * r * r
	}
	return 0
}

// radius returns the radius of a pail at depth h.
func (t *Tank) radius(h float64) float64 {
	return t.bottom + (t.top-t.bottom)*h/t.height
}

// A DipstickMark is one line on a dipstick.
type DipstickMark struct {
	Depth  units.Length
	Volume units.Volume
}

// Dipstick appends to dst a mark for every step of depth from step up, and one
// for the full tank, and returns the result. A caller who brings a slice with
// room allocates nothing.
//
// Range: step from a ten-thousandth of the height to the whole of it. An error returns
// dst as it was.
func (t Tank) Dipstick(dst []DipstickMark, step units.Length) ([]DipstickMark, error) {
	const fn = "yield.Tank.Dipstick"
	if err := t.made(fn); err != nil {
		return dst, err
	}
	if err := limit.In(fn, "step", step.Meters(), t.height/maxMarks, t.height, "m", "a step between two marks"); err != nil {
		return dst, err
	}
	for i := 1; float64(i)*step.Meters() < t.height*(1-1e-9); i++ {
		h := float64(i) * step.Meters()
		dst = append(dst, DipstickMark{units.Length(h), units.Volume(t.volume(h))})
	}
	return append(dst, DipstickMark{t.Height(), t.Capacity()}), nil
}

// DipstickByVolume appends to dst a mark for every step of volume from step up,
// and one for the full tank, and returns the result: where to cut the stick for
// every 5 gallons.
//
// Range: step from a ten-thousandth of the capacity to the whole of it. An error returns
// dst as it was.
func (t Tank) DipstickByVolume(dst []DipstickMark, step units.Volume) ([]DipstickMark, error) {
	const fn = "yield.Tank.DipstickByVolume"
	if err := t.made(fn); err != nil {
		return dst, err
	}
	full := t.volume(t.height)
	if err := limit.Liters(fn, "step", step, units.Volume(full/maxMarks), units.Volume(full), "a step between two marks"); err != nil {
		return dst, err
	}
	for i := 1; float64(i)*step.CubicMeters() < full*(1-1e-9); i++ {
		v := float64(i) * step.CubicMeters()
		dst = append(dst, DipstickMark{units.Length(t.depth(v, full)), units.Volume(v)})
	}
	return append(dst, DipstickMark{t.Height(), t.Capacity()}), nil
}
