package main

import (
	"errors"
	"fmt"
	"io"
	"math"
	"strings"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
	"example.org/sapreckoner/yield/packing"
)

// mostWeighed jars are checked at a time.
const mostWeighed = 10_000

// A weighing is a lot of one container, and the net weights of those that were
// weighed.
type weighing struct {
	jar packing.Container
	lot int
	net []units.Mass

	label    string
	average  units.Volume
	least    units.Volume
	short    int
	passes   bool
	why      []string
	canadian packing.LotCheck // by Canada's rule
}

// canada reports whether Canada's rule on net content counts.
func (s *setup) canada() bool {
	return s.place == sugar.Canada.String() || s.place == sugar.Ontario.String()
}

// labelLine words the net content as the place asks.
func (s *setup) labelLine(v units.Volume) (string, error) {
	if s.canada() {
		return packing.LabelCanada(v)
	}
	return packing.LabelUS(v)
}

// weighings reads the file of -weigh. Empty weights are those of jars.csv.
func (s *setup) weighings(e *cli.Env, h *folder.House) (all []*weighing, err error) {
	jars, there, err := s.jars(h)
	if err != nil {
		return nil, err
	}
	if !there {
		return nil, fmt.Errorf("%s: not there: it tells the label and the empty weight of each container", h.Shown(folder.JarsFile))
	}
	in, err := e.Open("weigh", s.weigh)
	if err != nil {
		return nil, err
	}
	defer in.Close()
	var (
		name  string
		lot   float64
		gross units.Mass
	)
	r, err := records.New(s.weigh, in, records.Text("container", &name), records.Number("lot", &lot), records.Mass("gross", &gross))
	if err != nil {
		return nil, err
	}
	known := map[string]*weighing{}
	for n := 0; ; n++ {
		switch err := r.Next(); {
		case err == io.EOF && n == 0:
			return nil, errors.New(s.weigh + ": no jar below the header")
		case err == io.EOF:
			return all, nil
		case err != nil:
			return nil, err
		case n == mostWeighed:
			return nil, r.Fail("", fmt.Errorf("more than %d rows: check one day's lots at a time", mostWeighed))
		}
		w := known[name]
		if w == nil {
			if w, err = s.begin(r, jars, name, lot); err != nil {
				return nil, err
			}
			known[name], all = w, append(all, w)
		}
		switch net := gross - w.jar.Mass; {
		case float64(w.lot) != lot:
			return nil, r.Fail("lot", fmt.Errorf("%d jars of %s above, %v here: one lot of a kind in a file", w.lot, name, lot))
		case !(net > 0):
			return nil, r.Fail("gross", fmt.Errorf("no more than the empty %s: weigh it full", name))
		default:
			w.net = append(w.net, net)
		}
	}
}

// begin finds the container of a row and checks the size of its lot.
func (s *setup) begin(r *records.Reader, jars []packing.Supply, name string, lot float64) (*weighing, error) {
	for _, j := range jars {
		if !strings.EqualFold(j.Container.Name, name) {
			continue
		}
		if !(j.Container.Mass > 0) {
			return nil, r.Fail("container", fmt.Errorf("%s has no empty weight in %s: weigh some empties", name, folder.JarsFile))
		}
		if !(lot >= 1 && lot <= 1e6) || lot != math.Trunc(lot) {
			return nil, r.Fail("lot", errors.New("count the jars of the lot: 1 to 1,000,000"))
		}
		return &weighing{jar: j.Container, lot: int(lot)}, nil
	}
	return nil, r.Fail("container", fmt.Errorf("no %q in %s", name, folder.JarsFile))
}

// judge holds a lot against its label.
func (w *weighing) judge(s *setup) (err error) {
	if w.label, err = s.labelLine(w.jar.Label); err != nil {
		return err
	}
	if s.canada() {
		c, err := packing.CheckCanadianLot(w.jar.Label, s.target, w.lot, w.net)
		if err != nil {
			return s.weighError(w, err)
		}
		w.canadian, w.average, w.least, w.short, w.passes = c, c.Average, c.Least, c.Short, c.Passes
		for _, f := range []struct {
			fails bool
			why   string
		}{{c.AverageFails, "the average is short"}, {c.ShortFail, "too many are short"}, {c.FarShortFail, "two are far short"}} {
			if f.fails {
				w.why = append(w.why, f.why)
			}
		}
		return nil
	}
	c, err := packing.CheckNet(w.jar.Label, s.target, cli.Or(s.allowance, 0), len(w.net), w.net)
	if err != nil {
		return s.weighError(w, err)
	}
	w.average, w.least, w.short, w.passes = c.Average, c.Least, c.Short, c.Passes
	if !c.Passes {
		w.why = append(w.why, "the average is short")
	}
	if !math.IsNaN(float64(s.allowance)) && c.Short > 0 {
		w.passes = false
		w.why = append(w.why, fmt.Sprintf("%d short by more than you allow", c.Short))
	}
	return nil
}

// weighError names the container.
func (s *setup) weighError(w *weighing, err error) error {
	var out *units.RangeError
	if errors.As(err, &out) && out.Arg == "net" {
		return fmt.Errorf("%s: %s: %s weighed of %d: the rule of Canada samples %.0f, taken at random", s.weigh, w.jar.Name, cli.Plural(len(w.net), "jar"), w.lot, out.Low)
	}
	return fmt.Errorf("%s: %s: %s", s.weigh, w.jar.Name, cli.Reason(err))
}

// weighSheet answers whether the lots hold what their labels say.
func (s *setup) weighSheet(e *cli.Env, f *cli.Flags) (*cli.Sheet, error) {
	if err := cli.Target("target", s.target); err != nil {
		return nil, err
	}
	if !math.IsNaN(float64(s.allowance)) {
		if err := limit.Within("", "allowance", s.allowance, 0, units.Liter, units.Milliliter, "mL", "what a single jar may lack"); err != nil {
			return nil, cli.For("allowance", err)
		}
		if s.canada() {
			return nil, cli.For("allowance", errors.New("the rule of Canada has a table of its own: leave it out"))
		}
	}
	all, err := s.weighings(e, f.House())
	if err != nil {
		return nil, err
	}
	sheet := &cli.Sheet{Title: "Jars on the scale", Metric: s.metric}
	b := &sheet.Brief
	var rows, weights [][]cli.Value
	var bad, scant []string // scant pass by the benefit of the doubt alone
	told := !math.IsNaN(float64(s.allowance))
	for _, w := range all {
		if err := w.judge(s); err != nil {
			return nil, err
		}
		verdict := "passes"
		switch {
		case !w.passes:
			verdict = "fails"
			bad = append(bad, w.jar.Name+": "+strings.Join(w.why, ", "))
		case w.average < w.jar.Label:
			scant = append(scant, w.jar.Name)
		}
		short := cli.Number(math.NaN(), 0, "") // by a table that is not known here
		if s.canada() || told {
			short = cli.Count(w.short, "")
		}
		rows = append(rows, []cli.Value{cli.Words(w.jar.Name), cli.Words(fmt.Sprintf("%d of %d", len(w.net), w.lot)), cli.Digits(cli.SmallVolume(w.average), 5),
			cli.Digits(cli.SmallVolume(w.least), 5), short, cli.Words(verdict)})
		row, err := s.scaleRow(w.jar, s.target)
		if err != nil {
			return nil, err
		}
		weights = append(weights, row)
	}
	rule := "the average rule of the United States"
	if s.canada() {
		rule = "Canada's rule (SOR/2018-108, s. 200)"
	}
	switch {
	case len(bad) > 0:
		b.Verdict = "Do not sell it yet, by " + rule + ": " + strings.Join(bad, "; ") + "."
	case len(scant) > 0:
		b.Verdict = "It passes by " + rule + ", but the " + list(scant) + " by the benefit of the doubt alone: fill a little more."
	default:
		b.Verdict = "What was weighed passes by " + rule + "."
	}
	if len(all) == 1 {
		s.details(b, all[0])
	}
	b.List([]cli.Column{{Key: "container", Head: "container"}, {Key: "weighed", Head: "weighed"}, {Key: "average", Head: "average"}, {Key: "least", Head: "lightest"},
		{Key: "short", Head: "short"}, {Key: "verdict", Head: "verdict"}}, rows)
	b.From(f, "target", "syrup of "+s.target.Text(1), "place", s.place)
	b.Cautions = []string{"Take jars at random from the whole lot, at room heat, and use a checked scale. The inspector's scale and the law in force decide."}
	if !s.canada() && !told {
		b.Cautions = append(b.Cautions, "What a single jar may lack is in the inspector's table and not known here: give -allowance.")
	}
	part := sheet.Part("scale", "On the scale")
	part.Table("scale", scaleColumns, weights)
	part.Remark(scaleRemark)
	b.Further = append(b.Further, "-full: label lines and what a jar must weigh.")
	return sheet, nil
}

// details gives the figures of one lot.
func (s *setup) details(b *cli.Brief, w *weighing) {
	b.Answer("label", "Label line", cli.Words(w.label))
	if !s.canada() {
		return
	}
	c := w.canadian
	b.Answer("tolerance", "One may lack", cli.Digits(cli.SmallVolume(c.Tolerance), 3), fmt.Sprintf("%d short, %d fail the lot", c.Short, c.ShortFails))
	b.Answer("doubt", "Average, at best", cli.Digits(cli.SmallVolume(c.Doubtless), 5), "with the benefit of the doubt")
}

// The columns of what jars must weigh.
var scaleColumns = []cli.Column{{Key: "container", Head: "container"}, {Key: "line", Head: "label line"}, {Key: "least_oz", Head: "least"}, {Key: "least_g", Head: ""},
	{Key: "aim_oz", Head: "aim at"}, {Key: "aim_g", Head: ""}}

// Remarks on them.
const (
	scaleRemark = "What a full jar must show on a scale in air, its empty weight in it: least is the label, aim has your margin besides. Law names the label line; lay it out as your rule asks."
	netRemark   = "Containers whose empty weight is not known here are told without it: add it, or put it into jars.csv."
)

// scaleRow is what a container must weigh, full, at least and to aim at; without an
// empty weight it is the net weight.
func (s *setup) scaleRow(c packing.Container, brix units.Brix) ([]cli.Value, error) {
	line, err := s.labelLine(c.Label)
	if err != nil {
		return nil, err
	}
	rho, err := density.Solution(brix, label)
	if err != nil {
		return nil, err
	}
	least := density.InAir(rho).Mass(c.Label)
	aim := least * units.Mass(1+s.margin.Fraction())
	row := []cli.Value{cli.Words(c.Name), cli.Words(line)}
	for _, m := range []units.Mass{least + c.Mass, aim + c.Mass} { // up, to a twentieth of an ounce and a gram
		row = append(row, cli.Number(math.Ceil(20*float64(m/units.Ounce)-1e-9)/20, 2, "oz"), cli.Number(math.Ceil(float64(m/units.Gram)-1e-9), 0, "g"))
	}
	return row, nil
}
