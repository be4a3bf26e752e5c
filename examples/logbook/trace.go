package main

import (
	"fmt"
	"math"
	"strings"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// traced is what came of one batch, and what went into it.
type traced struct {
	*cellar
	*cli.Sheet
	batch   folder.Batch
	drawn   units.Mass
	jars    units.Mass // syrup of the boil in jars
	left    units.Mass // and in vessels
	count   int
	rows    [][]cli.Value // of jars
	stocked [][]cli.Value // of cans
	cans    []string
}

// traceSheet answers where a batch stands and what it is made of.
func (s *setup) traceSheet(f *cli.Flags) (*cli.Sheet, error) {
	h := f.House()
	batch, ok := h.Batch(s.trace)
	if !ok {
		return nil, cli.For("trace", fmt.Errorf("no batch %q in %s", s.trace, h.Shown(folder.BatchesFile)))
	}
	c, err := s.openCellar(h)
	if err != nil {
		return nil, err
	}
	t := &traced{cellar: c, Sheet: &cli.Sheet{Title: "Where a batch stands", Metric: s.metric}, batch: batch}
	hit, err := c.books.Recall(batch.Name)
	if err != nil {
		return nil, err
	}
	for _, r := range hit {
		t.holds(r)
	}
	lot, _, err := c.syrup(batch)
	if err != nil {
		return nil, err
	}
	t.drawn = lot.Mass()
	t.Brief.House = f.Demo()
	return t.Sheet, t.lay()
}

// holds adds a run of jars, or a vessel, that holds something of the batch.
func (t *traced) holds(r yield.Recalled) {
	var run yield.Run
	for _, x := range t.Runs {
		if x.Packing.ID == r.Packing.ID {
			run = x
		}
	}
	of := units.Mass(r.Share.Fraction()) * run.Stage.Syrup
	if vessel, still := t.still[r.Packing.ID]; still {
		t.left += of
		t.cans = append(t.cans, vessel)
		t.stocked = append(t.stocked, []cli.Value{cli.Words(vessel), cli.Share(r.Share, 1), cli.Digits(cli.Mass(of), 3)})
		return
	}
	j := t.cellar.jars[r.Packing.ID]
	t.jars, t.count = t.jars+of, t.count+j.Count
	t.rows = append(t.rows, []cli.Value{cli.Words(j.Date.Format(time.DateOnly)), cli.Words(j.Batch), cli.SmallVolume(j.Size), cli.Count(j.Count, ""),
		cli.Share(r.Share, 1), cli.Digits(cli.Mass(of), 3)})
}

// lay lays the page out.
func (t *traced) lay() error {
	b := &t.Brief
	switch {
	case t.house.Moldy()[t.batch.Name] && t.count+len(t.cans) > 0:
		b.Verdict = "Batch " + t.batch.Name + t.callBack()
	case t.count > 0:
		b.Verdict = fmt.Sprintf("Batch %s stands in the %s of this list.", t.batch.Name, cli.Plural(t.count, "jar"))
	default:
		b.Verdict = fmt.Sprintf("Batch %s is in no jar yet.", t.batch.Name)
	}
	b.Answer("drawn", "Drawn", cli.Digits(cli.Mass(t.drawn), 3), t.batch.Date.Format(time.DateOnly))
	b.Answer("in_jars", "Of it in jars", cli.Digits(cli.Mass(t.jars), 3), cli.Plural(t.count, "jar"))
	if n := len(t.cans); n > 0 {
		in := cli.Plural(n, "can")
		if n <= 3 {
			in = strings.Join(t.cans, ", ")
		}
		label := "Of it in stock"
		if t.house.Moldy()[t.batch.Name] {
			label = "To throw away"
		}
		b.Answer("in_stock", label, cli.Digits(cli.Mass(t.left), 3), "in "+in)
		t.Part("stock", "In stock").Table("stock", []cli.Column{{Key: "can", Head: "batch"}, {Key: "share", Head: "share"}, {Key: "syrup", Head: "of it"}}, t.stocked)
	}
	off := t.drawn - t.jars - t.left
	switch {
	case off > t.drawn/100 && t.moldy[t.batch.Name]:
		b.Answer("thrown", "Of it thrown out", cli.Digits(cli.Mass(off), 3), "moldy")
	case off < -t.drawn/100:
		b.Answer("over", "More than drawn", cli.Digits(cli.Mass(-off), 3), "look again at its volume, size and counts")
	}
	if err := t.inside(); err != nil {
		return err
	}
	if len(t.rows) > 0 {
		b.List([]cli.Column{{Key: "date", Head: "bottled"}, {Key: "label", Head: "label"}, {Key: "size", Head: "size"}, {Key: "count", Head: "jars"},
			{Key: "share", Head: "share"}, {Key: "syrup", Head: "of it"}}, t.rows)
	}
	b.Told("batches, blends and bottles of all years")
	b.Assumed("a batch is stirred when it is blended")
	b.Cautions = []string{"Any mold in a jar or a can: throw it away, do not taste, boil again or blend it. Records by lot are asked for where syrup is sold: local rules come first."}
	return nil
}

// callBack tells what becomes of what holds moldy syrup.
func (t *traced) callBack() string {
	words := " was moldy: "
	if !t.moldy[t.batch.Name] {
		words = " had moldy syrup poured into it: "
	}
	if t.count > 0 {
		words += "get back the " + cli.Plural(t.count, "jar") + " that hold it and throw them away."
		if len(t.cans) == 0 {
			return words
		}
		return words + " Throw away what stands in " + strings.Join(t.cans, ", ") + " too."
	}
	return words + "throw away what stands in " + strings.Join(t.cans, ", ") + "."
}

// inside tells what the jars that bear the name of the batch are made of.
func (t *traced) inside() error {
	part := t.Part("inside", "What is in it")
	var rows [][]cli.Value
	blended := false
	for _, run := range t.Runs {
		vessel, still := t.still[run.Packing.ID]
		j := t.cellar.jars[run.Packing.ID]
		if (still && vessel != t.batch.Name) || (!still && j.Batch != t.batch.Name) {
			continue
		}
		trace, err := t.books.Trace(run.Packing.ID)
		if err != nil {
			return err
		}
		name := "in stock"
		if !still {
			name = j.Date.Format(time.DateOnly) + ", " + cli.Plural(j.Count, "jar")
		}
		blended = blended || len(trace.Boils) > 1
		for _, o := range trace.Boils {
			rows = append(rows, []cli.Value{cli.Words(name), cli.Words(o.Boil.ID), cli.Words(o.Boil.Day.Format(time.DateOnly)), cli.Share(o.Share, 1)})
			name = ""
		}
	}
	part.If(len(rows) > 0).Table("inside", []cli.Column{{Key: "filled", Head: "filled"}, {Key: "boil", Head: "of batch"}, {Key: "drawn", Head: "drawn"}, {Key: "share", Head: "share"}}, rows)
	if blended {
		t.Brief.Further = append(t.Brief.Further, "Other batches were poured into it: -full tells what is in its jars.")
	} else {
		t.Brief.Further = append(t.Brief.Further, "Nothing was poured into it.")
	}
	var cellar [][]cli.Value
	for _, s := range []struct {
		name string
		of   yield.Stage
	}{{"Drawn", t.Cellar.Drawn}, {"Taken out over it", t.Cellar.Over}, {"In jars", t.bottled()}, {"Thrown out", t.Cellar.Thrown}, {"Moldy, to throw away", t.stock(true)}, {"In stock", t.stock(false)}} {
		cellar = append(cellar, []cli.Value{cli.Words(s.name), cli.Digits(cli.Mass(s.of.Syrup), 4), cli.Digits(cli.Mass(s.of.Sugar), 4)})
	}
	t.Part("cellar", "All batches").Table("cellar", []cli.Column{{Key: "what", Head: ""}, {Key: "syrup", Head: "syrup"}, {Key: "sugar", Head: "sugar"}}, cellar)
	return nil
}

// stock is what stands in vessels, moldy or not, and bottled what is in jars.
func (t *traced) stock(moldy bool) (all yield.Stage) {
	bad := t.house.Moldy()
	for _, run := range t.Runs {
		if vessel, still := t.still[run.Packing.ID]; still && bad[vessel] == moldy {
			all.Syrup, all.Sugar = all.Syrup+run.Stage.Syrup, all.Sugar+run.Stage.Sugar
		}
	}
	if !moldy {
		all.Syrup, all.Sugar = all.Syrup+t.Left.Syrup, all.Sugar+t.Left.Sugar
	}
	return all
}

func (t *traced) bottled() yield.Stage {
	in, good, bad := t.Cellar.Bottled, t.stock(false), t.stock(true)
	return yield.Stage{Syrup: units.Mass(math.Max(0, float64(in.Syrup-good.Syrup-bad.Syrup+t.Left.Syrup))), Sugar: units.Mass(math.Max(0, float64(in.Sugar-good.Sugar-bad.Sugar+t.Left.Sugar)))}
}
