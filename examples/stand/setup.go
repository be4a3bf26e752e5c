package main

import (
	"cmp"
	"errors"
	"fmt"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// The words of -slow.
const (
	restSlow = "rest"
	tapSlow  = "tap"
)

// setup is what the flags say.
type setup struct {
	treeFile, holeFile string
	year               int
	growth             units.Length
	area               units.Area
	class              units.Length

	guidelineID string
	guideline   tapping.Guideline
	slow        string

	bit, depth, bark units.Length
	hole, shallow    tapping.Hole // shallow is for slow trunks

	low, high units.Length
	reach     tapping.Reach
	keep      tapping.Distances

	tree  string // the one that is asked about; empty for all
	years int
	ahead string // a trunk, year by year

	gearFile    string
	flowDays    int
	worth, hour money

	trunk, svg string // one trunk drawn
	print      string // the drill sheet of all
	metric     bool
}

// declare declares the flags.
func (s *setup) declare(f *cli.Flags) {
	f.Group("Stand")
	var ids []string
	for _, g := range tapping.Guidelines() {
		ids = append(ids, g.ID())
	}
	f.Choice(&s.guidelineID, "guideline", tapping.DefaultGuideline().ID(), ids, guidelineHelp())
	f.Drawing(&s.print, "print", "write the drill sheet of the whole stand to this file, one page of HTML to open and print")
	f.String(&s.trunk, "map", "", "draw this trunk unrolled, with -svg")
	f.Drawing(&s.svg, "svg", "write that drawing to this file")
	f.Page(&s.metric)
	f.Adds("the holes to drill, to be mended to what was drilled,")
	f.More()
	f.Group("Files and figures")
	f.Input(&s.treeFile, "tree-file", "CSV of the trees instead of trees.csv of the folder; - is standard input")
	f.Input(&s.holeFile, "hole-file", "CSV of the holes of past years instead of holes.csv; - is standard input")
	f.Quantity(&s.area, "area", "", `ground that the trees stand on, such as "4 ac", for figures by acre and hectare`)
	f.Quantity(&s.class, "class", "", "width of the classes of diameter: 2 in, or 5 cm with -metric")
	f.Group("Trunks")
	f.Choice(&s.slow, "slow", restSlow, []string{restSlow, tapSlow}, "what slow trunks get: rest, as the University of Vermont advises, or tap: one shallow tap at most, as Cornell does")
	f.Quantity(&s.growth, "growth", "0 in", "what the radius grows a year, for trunks of which the file does not tell; 0 if it is not known: old wounds then never get out of the way")
	f.Count(&s.years, "years", 20, 1, 100, "seasons to look ahead on the page of -full")
	f.String(&s.ahead, "ahead", "", "tell with -full where the holes of this trunk go in each of these seasons")
	f.Group("Gear")
	f.Input(&s.gearFile, "gear-file", "CSV of gears to compare over a season with -full, the one at hand first; - is standard input")
	f.Quantity(&s.worth, "sap-worth", "0", "what a US gallon of sap is worth to you, in your own money")
	f.Quantity(&s.hour, "hour-worth", "0", "what an hour of your walking is worth")
	f.Count(&s.flowDays, "flow-days", 30, 1, 120, "running days of a whole season; program sapweek tells them")
	f.Group("Hole")
	f.Quantity(&s.bit, "bit", "5/16 in", "diameter of the bit")
	f.Quantity(&s.depth, "depth", "1.5 in", "depth into the wood, without bark; slow trunks get 1 in at most")
	f.Quantity(&s.bark, "bark", "0 in", "thickness of the bark over it; 0 if it is not known")
	f.Group("Place")
	f.Quantity(&s.low, "low", "30 in", "lowest hole above the ground")
	f.Quantity(&s.high, "high", "54 in", "highest hole above the ground")
	d := tapping.DefaultDistances()
	in := func(l units.Length) string { return l.Text(units.Inch, 0) }
	f.Quantity(&s.keep.Side, "side", in(d.Side), "distance to the side from last year's hole, and from stained columns")
	f.Quantity(&s.keep.Up, "up", in(d.Up), "distance up or down from last year's hole, within -open to the side")
	f.Quantity(&s.keep.Open, "open", in(d.Open), "distance to the side between holes of one year")
	f.Quantity(&s.keep.Column, "column", in(d.Column), "how far the stain behind a hole is taken to reach up and down")
	f.Quantity(&s.keep.Step, "step", in(d.Step), "how far the pattern moves on round the trunk each year")
}

// guidelineHelp lists the guidelines with place and date.
func guidelineHelp() string {
	text := "whose count of taps:"
	for i, g := range tapping.Guidelines() {
		if i > 0 {
			text += ";"
		}
		text += " " + g.ID() + ": " + about(g.Info())
	}
	return text + ". See what is in force where the trees stand."
}

// about words what a guideline is, where and when.
func about(info tapping.GuidelineInfo) string {
	text := info.Kind
	for _, more := range []string{info.Jurisdiction, info.Date} {
		if more != "" {
			text += ", " + more
		}
	}
	return text
}

// check tests the flags and makes of them what the plan needs.
func (s *setup) check(f *cli.Flags) (err error) {
	if s.treeFile == "" {
		return cli.For("tree-file", errors.New("no trees: list them in trees.csv of the folder, or name the CSV"))
	}
	if s.tree != "" && f.Given("write") {
		return cli.For("write", errors.New("the holes of all trees are added together: leave out "+s.tree))
	}
	if f.Given("season") {
		s.year = f.House().Season()
	}
	if (s.trunk == "") != (s.svg == "") {
		return cli.For("map", errors.New("a drawing needs both -map with a tree and -svg with a file, or - for standard output"))
	}
	if s.ahead == "" && f.Given("ahead") {
		return cli.For("ahead", errors.New("name a tree of the list"))
	}
	if !f.Given("class") {
		s.class = 2 * units.Inch
		if s.metric {
			s.class = 5 * units.Centimeter
		}
	}
	const (
		inch   = units.Inch
		spread = "the advice is 2 to 4 in to the side and 6 to 12 in up or down"
	)
	_, deepest := tapping.DepthAdvised(tapping.Healthy)
	length := func(flag string, l, low, high units.Length, hint string) error {
		return cli.Within(flag, "length", l, low, high, inch, "in", hint)
	}
	err = cmp.Or(
		length("growth", s.growth, 0, mostGrowth, growthHint),
		length("class", s.class, units.Centimeter, units.Meter, "2 in or 5 cm are usual"),
		length("depth", s.depth, inch/2, deepest, "1.5 to 2 in into clean white sapwood, never more than 2 (University of Vermont, Cornell)"),
		length("low", s.low, 6*inch, 10*units.Foot, "over the snow"),
		length("high", s.high, s.low+6*inch, 12*units.Foot, "what the arm reaches from the ground, and at least 6 in above -low"),
		length("side", s.keep.Side, inch/2, 2*units.Foot, spread),
		length("up", s.keep.Up, 0, 4*units.Foot, spread),
		length("open", s.keep.Open, s.keep.Side, 4*units.Foot, "no less than -side"),
		length("column", s.keep.Column, s.keep.Up, 10*units.Foot, "no less than -up"),
		length("step", s.keep.Step, inch/2, 4*units.Foot, "3 in is usual"),
	)
	if err != nil {
		return err
	}
	if f.Given("area") {
		// Any count will do to try the ground.
		if _, err := (tapping.StandCount{}).TapsPer(units.Acre, s.area); err != nil {
			return cli.For("area", err)
		}
	}
	if s.guideline, err = tapping.GuidelineByID(s.guidelineID); err != nil {
		return cli.For("guideline", err)
	}
	if s.reach, err = tapping.ReachByHand(s.low, s.high); err != nil {
		return cli.For("low", err)
	}
	_, most := tapping.DepthAdvised(tapping.Slow)
	if s.hole, err = tapping.NewHole(s.bit, s.depth, s.bark); err == nil {
		s.shallow, err = tapping.NewHole(s.bit, min(s.depth, most), s.bark)
	}
	return cli.ForArg(err, "bit", "bark", "bark")
}

// run reads the stand and answers.
func (s *setup) run(e *cli.Env, f *cli.Flags) error {
	if err := s.check(f); err != nil {
		return err
	}
	st, err := s.read(e)
	if err != nil {
		return err
	}
	if st.gears, err = s.readGear(e); err != nil {
		return err
	}
	st.house, st.invented = f.House().Settings.Name, f.Source("tree-file").Kind == cli.Invented
	if err := st.plan(); err != nil {
		return err
	}
	var drawing []byte
	if s.trunk != "" {
		t, err := st.find(s.trunk)
		if err == nil {
			drawing, err = st.draw(t)
		}
		if err != nil {
			return cli.For("map", err)
		}
	}
	sheet := st.sheet
	if s.tree != "" {
		sheet = st.oneSheet
	}
	p, err := sheet(f)
	if err != nil {
		return err
	}
	if s.tree == "" {
		if err := p.add(e, f); err != nil {
			return err
		}
	}
	if s.print != "" {
		paper, err := p.print()
		if err == nil {
			err = e.Draw("print", s.print, paper)
		}
		if err != nil {
			return err
		}
	}
	if s.svg != "-" && s.print != "-" {
		if err := p.Show(e); err != nil {
			return err
		}
	}
	if s.svg != "" {
		return e.Draw("svg", s.svg, drawing)
	}
	return nil
}

// find returns the trunk of that name.
func (st *stand) find(name string) (*trunk, error) {
	i, ok := st.byName[name]
	if !ok {
		return nil, fmt.Errorf("no tree %.40q in the list", name)
	}
	if t := &st.trunks[i]; t.stems > 1 && t.name() != name {
		return nil, fmt.Errorf("tree %s has %d stems: write %s/1 to %s/%d", name, t.stems, name, name, t.stems)
	}
	return &st.trunks[i], nil
}
