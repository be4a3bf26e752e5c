package ask

import (
	"errors"
	"fmt"
	"math"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// A Scar is an old hole as it was typed or pointed at.
type Scar struct {
	Year   int    `json:"year"`
	Along  string `json:"along"` // round the trunk from the mark, clockwise from above
	Height string `json:"height"`
}

// A Finger is a place on the drawing, in parts of its width and of its height
// from the top.
type Finger struct {
	X float64 `json:"x"`
	Y float64 `json:"y"`
}

// A Trunk is the unrolled trunk to draw, in parts of the drawing.
type Trunk struct {
	Wide   float64 `json:"wide"` // of the drawing, in its height
	Holes  []Spot  `json:"holes"`
	Next   []Spot  `json:"next"`
	Finger *Spot   `json:"finger,omitempty"`
	Low    float64 `json:"low"` // of the reach
	High   float64 `json:"high"`
	Along  string  `json:"along,omitempty"` // of the finger
	Height string  `json:"height,omitempty"`
}

// A Spot is a place on the drawing.
type Spot struct {
	X    float64 `json:"x"`
	Y    float64 `json:"y"`
	Text string  `json:"text"`
	Fine bool    `json:"fine"`
}

var treeScreen = Screen{
	Key: "tree", Title: "Tree", Lead: "How many taps, and where the new hole keeps its distance from the old ones.",
	Questions: []Question{
		{Key: "taps", Title: "Taps", Inputs: []Input{
			{Key: "girth", Label: "Girth at breast height", Need: true, Range: lengths(4*units.Inch, 600*units.Inch)},
			{Key: "species", Label: "Species", Start: "sugar maple", Range: speciesChoice()},
			{Key: "vigor", Label: "The tree is", Start: "healthy", Range: choice("healthy", "healthy", "slow", "slow", "unhealthy", "unhealthy")},
			setting("guideline", "guideline", tapping.DefaultGuideline().ID()),
		}, answer: taps},
		{Key: "hole", Title: "The new hole", Extra: "tree", Inputs: []Input{
			{Key: "year", Label: "Year of an old hole", Range: counts(1900, 2999)},
			{Key: "growth", Label: "The radius grows in a year", Start: "0 in", More: true, Help: "nothing if it is not known: old wounds then never get out of the way", Range: lengths(0, units.Inch)},
			{Key: "low", Label: "Lowest hole", Start: "30 in", More: true, Range: lengths(0, 240*units.Inch)},
			{Key: "high", Label: "Highest hole", Start: "54 in", More: true, Range: lengths(units.Inch, 240*units.Inch)},
			setting("bit", "bit", "0.3125 in"),
			setting("hole depth", "depth", "1.5 in"),
		}, answer: newHole},
	},
}

func speciesChoice() Range {
	var all []string
	for s := tapping.SugarMaple; s.IsMaple(); s++ {
		all = append(all, s.String(), s.String())
	}
	return choice(all...)
}

// diameter reads the girth.
func (f *Form) diameter() (d units.Length, ok bool) {
	girth := f.length("girth")
	if f.failed {
		return 0, false
	}
	d, err := tapping.DiameterFromGirth(girth)
	return d, !f.blame(err, "girth")
}

// advice is what the guideline says of the tree, and why no hole goes into it this
// year, or nothing.
func (f *Form) advice(d units.Length) (advice tapping.Advice, level, barred string, ok bool) {
	species, err := tapping.SpeciesNamed(f.chosen("species"))
	if f.failed || f.blame(err, "species") {
		return advice, "", "", false
	}
	var vigor tapping.Vigor
	if f.blame(vigor.UnmarshalText([]byte(f.chosen("vigor"))), "vigor") {
		return advice, "", "", false
	}
	trunk, err := tapping.NewTrunk(d, species, vigor)
	if f.blame(err, "girth") {
		return advice, "", "", false
	}
	g, err := tapping.GuidelineByID(f.chosen("guideline"))
	if f.blame(err, "guideline") {
		return advice, "", "", false
	}
	advice = trunk.Advise(g)
	switch {
	case vigor == tapping.Unhealthy:
		level, barred = "stop", "No tap: leave an unhealthy tree alone."
	case vigor == tapping.Slow:
		level, barred = "wait", "Slow growth: let it rest this year."
	case advice.Covered && advice.Taps == 0:
		level, barred = "stop", "No tap: it is too small."
	}
	return advice, level, barred, true
}

// taps counts them by the guideline.
func taps(f *Form) {
	d, ok := f.diameter()
	if !ok {
		return
	}
	advice, level, barred, ok := f.advice(d)
	if !ok {
		return
	}
	f.row("diameter", "Diameter", f.inches(d, 1))
	switch {
	case barred != "":
		f.verdict(level, barred)
	case !advice.Covered:
		f.verdict("wait", "The guideline says nothing of this tree.")
	case advice.Taps == 1:
		f.verdict("good", "1 tap")
	default:
		f.verdict("good", fmt.Sprintf("%d taps", advice.Taps))
	}
	low, high := advice.Range()
	f.row("taps", "By the guideline", fmt.Sprint(advice.Taps), "", advice.Guideline.Info().Source)
	f.row("others", "Among all guidelines", fmt.Sprintf("%d to %d", low, high))
	for _, n := range advice.Notes {
		f.caution(n)
	}
	f.caution("Rules for public and leased land come first. Fewer taps never hurt a tree.")
}

// inches words a length on a trunk.
func (f *Form) inches(l units.Length, decimals int) string {
	if f.metric() {
		return l.Text(units.Centimeter, decimals)
	}
	return l.Text(units.Inch, decimals)
}

// margin is how much of the trunk is drawn above and below the reach.
const margin = 6 * units.Inch

// newHole holds the place of the finger against the old holes.
func newHole(f *Form) {
	d, ok := f.diameter()
	low, high, growth, bit, depth := f.length("low"), f.length("high"), f.length("growth"), f.length("bit"), f.length("depth")
	if !ok || f.failed {
		return
	}
	_, level, barred, ok := f.advice(d)
	if !ok {
		return
	}
	girth, err := tapping.GirthFromDiameter(d)
	if f.blame(err, "girth") {
		return
	}
	reach, err := tapping.ReachByHand(low, high)
	if f.blame(err, "high", "low", "low") {
		return
	}
	hole, err := tapping.NewHole(bit, depth, 0)
	if f.blame(err, "depth", "bit", "bit") {
		return
	}
	year := f.now.Year()
	planner, err := tapping.NewPlanner(d, year, growth, reach, hole, tapping.DefaultDistances())
	if f.blame(err, "girth", "growth", "growth") {
		return
	}
	top, bottom := high+margin, max(0, low-margin)
	spot := func(p tapping.Position) Spot {
		return Spot{X: float64(p.Along(girth) / girth), Y: float64((top - p.Height) / (top - bottom))}
	}
	t := &Trunk{Wide: float64(girth / (top - bottom)), Low: float64((top - low) / (top - bottom)), High: float64((top - high) / (top - bottom))}
	f.answer.Trunk = t
	record, ok := f.scars(girth, hole)
	if !ok {
		return
	}
	for _, h := range record {
		s := spot(h.Position)
		s.Text = fmt.Sprint(h.Year)
		t.Holes = append(t.Holes, s)
	}
	next, err := planner.Next(record, year, 1)
	if err != nil && !errors.Is(err, tapping.ErrNoRoom) && f.blame(err, "girth") {
		return
	}
	if len(record) > 0 && barred == "" {
		for _, p := range next {
			s := spot(p)
			s.Text, s.Fine = "clear", true
			t.Next = append(t.Next, s)
		}
	}
	if finger := f.request.Finger; finger != nil {
		at := tapping.Position{At: units.Turn * units.Angle(math.Min(math.Max(finger.X, 0), 0.999999)), Height: top - (top-bottom)*units.Length(math.Min(math.Max(finger.Y, 0), 1))}
		f.finger(t, spot(at), planner, record, year, at, girth)
	} else {
		f.verdict("", "Set a finger on the trunk.")
	}
	if barred != "" { // old holes are still marked, and no place is called clear
		f.verdict(level, barred)
		if t.Finger != nil {
			t.Finger.Fine = false
		}
	}
	f.caution("Drill sound white wood only, and slightly upward. Stained wood gives no sap: go elsewhere.")
}

// scars reads the old holes.
func (f *Form) scars(girth units.Length, hole tapping.Hole) (record []tapping.OldHole, ok bool) {
	for _, s := range f.request.Holes {
		along, err := units.ParseLength(s.Along)
		if f.blame(err, "year") {
			return nil, false
		}
		height, err := units.ParseLength(s.Height)
		if f.blame(err, "year") {
			return nil, false
		}
		p, err := tapping.PositionAlong(along, girth, height)
		if f.blame(err, "girth") {
			return nil, false
		}
		record = append(record, tapping.OldHole{Position: p, Year: s.Year, Hole: hole})
	}
	return record, true
}

// finger tells of the place under it.
func (f *Form) finger(t *Trunk, s Spot, planner tapping.Planner, record []tapping.OldHole, year int, at tapping.Position, girth units.Length) {
	t.Along, t.Height = f.inches(at.Along(girth), 1), f.inches(at.Height, 1)
	f.row("along", "From the mark, clockwise", t.Along)
	f.row("height", "Above the ground", t.Height)
	var near *tapping.OldHole
	var side, up units.Length
	for i := range record {
		h := &record[i]
		a := units.Length(math.Abs(float64(at.Along(girth) - h.Along(girth))))
		a = min(a, girth-a)
		b := units.Length(math.Abs(float64(at.Height - h.Height)))
		if near == nil || math.Hypot(float64(a), float64(b)) < math.Hypot(float64(side), float64(up)) {
			near, side, up = h, a, b
		}
	}
	if near != nil {
		f.row("side", "To the side of the nearest old hole", f.inches(side, 1), "", fmt.Sprint("of ", near.Year))
		f.row("up", "Above or below it", f.inches(up, 1))
	}
	err := planner.Check(record, year, at)
	s.Fine = err == nil
	t.Finger = &s
	switch {
	case err == nil && len(record) == 0:
		f.verdict("good", "Within reach. Look for the scars of old holes and mark them here.")
	case err == nil:
		f.verdict("good", "Clear: it keeps its distance from every hole that is marked.")
	default:
		f.verdict("stop", "Not here: "+reason(err, f.System))
	}
}
