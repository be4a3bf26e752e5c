package main

import (
	"fmt"
	"math"
	"strconv"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// page lays a plan out.
type page struct {
	*stand
	*cli.Sheet
}

func (st *stand) sheet(f *cli.Flags) (page, error) {
	title := "Tap plan"
	if st.year > 0 {
		title += " for " + strconv.Itoa(st.year)
	}
	p := page{st, &cli.Sheet{Title: title, Metric: st.given.metric}}
	p.brief(f)
	if !f.Given("full") && !f.JSON() {
		return p, nil // of a large stand the rest is large
	}
	if err := p.standPart(p.Part("stand", "Stand")); err != nil {
		return p, err
	}
	p.guidelinePart(p.Part("guidelines", "Taps by every guideline"))
	p.classPart(p.Part("classes", "By diameter"))
	p.treePart(p.Part("trees", "Trees to tap"))
	p.restPart(p.Part("alone", "Left alone"))
	p.holePart(p.Part("hole", "The hole"))
	p.placePart(p.Part("places", "Where to drill"))
	if err := p.aheadPart(p.Part("ahead", "The years ahead")); err != nil {
		return p, err
	}
	var err error
	if p.given.ahead != "" {
		err = p.yearsPart(p.Part("year_by_year", "Holes of "+p.given.ahead+", year by year"))
	}
	if err == nil && len(p.gears) > 0 {
		err = p.gearPart(p.Part("gear", "Gear over a season"), p.gears)
	}
	p.Part("care", "Take care").Item(p.cautions()...)
	return p, err
}

func (p page) standPart(part *cli.Part) error {
	forked := ""
	if n := len(p.trunks) - p.trees; n > 0 {
		forked = fmt.Sprintf(" of %d trees", p.trees)
	}
	part.Row("trunks", "Trunks", cli.Count(len(p.trunks), ""), "stems parted below breast height count each"+forked)
	part.Row("taps", "Taps", cli.Count(p.asked.Taps, ""), p.given.guideline.ID())
	part.Row("old_holes", "Old holes in the record", cli.Count(p.holes, ""))
	part.Row("basal_area", "Basal area", cli.Area(p.whole.BasalArea))
	if p.given.area == 0 {
		return nil
	}
	part.Row("acres", "Ground", cli.Number(p.given.area.Acres(), 2, "ac"), p.given.area.Text(units.Hectare, 3))
	for _, u := range []struct {
		unit, small         units.Area
		name, symbol, label string
	}{
		{units.Acre, units.SquareFoot, "acre", "ft2", "to the acre"}, {units.Hectare, units.SquareMeter, "hectare", "m2", "to the hectare"},
	} {
		taps, err := p.asked.TapsPer(u.unit, p.given.area)
		if err != nil {
			return cli.For("area", err)
		}
		basal, err := p.whole.BasalAreaPer(u.unit, p.given.area)
		if err != nil {
			return cli.For("area", err)
		}
		part.Row("taps_per_"+u.name, "Taps "+u.label, cli.Number(taps, 1, ""))
		part.Row("basal_area_per_"+u.name+"_"+u.symbol, "Basal area "+u.label, cli.Number(float64(basal/u.small), 1, u.symbol))
	}
	return nil
}

func (p page) guidelinePart(part *cli.Part) {
	var rows [][]cli.Value
	all := append([]tapping.GuidelineTotal{p.asked.GuidelineTotal}, p.asked.Others...)
	for _, t := range all {
		rows = append(rows, []cli.Value{cli.Words(t.Guideline.ID()), cli.Count(t.Taps, ""), cli.Count(t.Tapped, ""), cli.Count(t.NotCovered, "")})
	}
	part.Table("totals", []cli.Column{{Key: "guideline", Head: "guideline"}, {Key: "taps", Head: "taps"}, {Key: "tapped", Head: "trunks tapped"}, {Key: "silent", Head: "says nothing of"}}, rows)
	part.Remark("The first is the one that this plan goes by. Trunks whose species is not sure, and slow ones that rest, are asked of none.")
	for _, t := range all {
		info := t.Guideline.Info()
		text := info.ID + ": " + about(info) + ". " + info.Source
		if info.Reading != "" {
			text += "; " + info.Reading
		}
		part.Item(text + ".")
	}
}

func (p page) classPart(part *cli.Part) {
	var rows [][]cli.Value
	for i, c := range p.whole.Classes {
		if c.Trunks == 0 && len(rows) == 0 {
			continue
		}
		taps := 0
		if i < len(p.asked.Classes) {
			taps = p.asked.Classes[i].Taps
		}
		rows = append(rows, []cli.Value{cli.Length(c.From), cli.Length(c.To), cli.Count(c.Trunks, ""), cli.Count(taps, "")})
	}
	part.Table("histogram", []cli.Column{{Key: "from", Head: "from"}, {Key: "below", Head: "to below"}, {Key: "trunks", Head: "trunks"}, {Key: "taps", Head: "taps"}}, rows)
}

func (p page) treePart(part *cli.Part) {
	var rows [][]cli.Value
	for i := range p.trunks {
		t := &p.trunks[i]
		if t.taps == 0 {
			continue
		}
		rows = append(rows, []cli.Value{cli.Words(t.name()), cli.Length(t.girth()), cli.Length(t.DBH()), cli.Words(t.species()), cli.Words(t.Vigor().String()),
			cli.Count(t.taps, ""), cli.Between(cli.Count(t.low, ""), cli.Count(t.high, ""))})
	}
	if len(rows) == 0 {
		part.Remark("None.")
		return
	}
	part.Table("trees", []cli.Column{{Key: "tree", Head: "tree"}, {Key: "girth", Head: "girth"}, {Key: "dbh", Head: "diameter"}, {Key: "species", Head: "species"}, {Key: "vigor", Head: "vigor"},
		{Key: "taps", Head: "taps"}, {Key: "all", Head: "all guidelines"}}, rows)
	unjudged, untold := p.unknown()
	part.If(unjudged > 0).Remark(cli.Plural(unjudged, "trunk was", "trunks were") + " not judged for vigor: a healthy one is assumed. Look at crown, bark and growth before you drill.")
	part.If(untold > 0).Remark("Of " + cli.Plural(untold, "trunk") + " with old holes the growth is not known: the old wounds are taken as never grown over.")
}

// unknown counts the trunks to tap whose vigor was not judged, and those with old
// holes whose growth nobody told.
func (st *stand) unknown() (unjudged, untold int) {
	for i := range st.trunks {
		t := &st.trunks[i]
		if t.taps > 0 && t.Vigor() == tapping.NotJudged {
			unjudged++
		}
		if t.taps > 0 && t.growth == 0 && len(t.record) > 0 {
			untold++
		}
	}
	return unjudged, untold
}

func (p page) restPart(part *cli.Part) {
	var rows, sums [][]cli.Value
	var by [len(reasons)]int
	for i := range p.trunks {
		t := &p.trunks[i]
		if t.why == tapped {
			continue
		}
		by[t.why]++
		rows = append(rows, []cli.Value{cli.Words(t.name()), cli.Length(t.DBH()), cli.Words(t.species()), cli.Words(reasons[t.why])})
	}
	if len(rows) == 0 {
		part.Remark("None.")
		return
	}
	for why, n := range by {
		if n > 0 {
			sums = append(sums, []cli.Value{cli.Words(reasons[why]), cli.Count(n, "")})
		}
	}
	part.Table("reasons", []cli.Column{{Key: "reason", Head: "reason"}, {Key: "trunks", Head: "trunks"}}, sums)
	part.Table("trees", []cli.Column{{Key: "tree", Head: "tree"}, {Key: "dbh", Head: "diameter"}, {Key: "species", Head: "species"}, {Key: "reason", Head: "reason"}}, rows)
}

func (p page) holePart(part *cli.Part) {
	s := p.given
	part.Row("bit", "Bit", cli.Length(s.bit), s.bitName())
	low, high := tapping.DepthAdvised(tapping.Healthy)
	part.Row("depth", "Depth into the wood", cli.Length(s.depth), p.In(cli.Between(cli.Length(low), cli.Length(high)))+" into clean white sapwood is the advice; bark not counted")
	bark := "bark is not counted: add its thickness"
	if s.bark > 0 {
		bark = "with " + p.In(cli.Length(s.bark)) + " of bark"
	}
	part.Row("stop", "Stop on the bit at", cli.Length(s.hole.DepthWithBark()), bark)
	part.Row("volume", "Wood taken out", cli.TinyVolume(s.hole.Volume()))
	part.Row("stain", "Wood that it then closes off", cli.Number(tapping.StainRatio, 0, "times that"), "calibrated, not published, and uncertain by a fifth")
	var rows [][]cli.Value
	limits := tapping.HoleLimits()
	for _, l := range limits {
		bit, depth := l.Compare(s.hole)
		deep := depth.String()
		if s.bark == 0 && depth == tapping.WithinLimit {
			deep += " before bark"
		}
		rows = append(rows, []cli.Value{cli.Words(l.Jurisdiction), cli.Words("bit"), cli.Length(l.Bit), cli.Words(bit.String())},
			[]cli.Value{cli.Words(l.Jurisdiction), cli.Words("depth with bark"), cli.Length(l.DepthWithBark), cli.Words(deep)})
	}
	part.Table("law", []cli.Column{{Key: "law", Head: "law"}, {Key: "of", Head: "of"}, {Key: "limit", Head: "limit"}, {Key: "answer", Head: "this hole"}}, rows)
	for _, l := range limits {
		part.Item(l.Jurisdiction + ": " + l.Source + ".")
	}
	part.Remark("A place that is not listed is not free of rules: ask.")
}

func (p page) placePart(part *cli.Part) {
	s := p.given
	var rows [][]cli.Value
	open, choose := 0, [][]cli.Value(nil)
	chosen := 0
	for i := range p.trunks {
		t := &p.trunks[i]
		open += t.open
		if t.choose > 0 {
			chosen += t.choose
			apart := units.Length(math.NaN())
			if t.choose > 1 {
				apart = t.girth() / units.Length(t.choose)
			}
			choose = append(choose, []cli.Value{cli.Words(t.name()), cli.Count(t.choose, ""), cli.Length(apart), cli.Length(p.hole(t).Depth())})
		}
		for k, at := range t.next {
			near, year := t.nearest(at)
			drilled := float64(year)
			if year == 0 {
				drilled = math.NaN()
			}
			rows = append(rows, []cli.Value{cli.Words(t.name()), cli.Count(k+1, ""), cli.Number(at.At.Degrees(), 0, "deg"), cli.Length(at.Along(t.girth())), cli.Length(at.Height),
				cli.Length(p.hole(t).Depth()), cli.Length(near), cli.Number(drilled, 0, "")})
		}
	}
	part.Row("holes", "Holes to drill", cli.Count(len(rows), ""))
	part.If(open > 0).Row("open", "Already drilled this year", cli.Count(open, ""))
	if len(rows) > 0 {
		part.Table("holes_at", []cli.Column{{Key: "tree", Head: "tree"}, {Key: "hole", Head: "hole"}, {Key: "bearing_deg", Head: "bearing"}, {Key: "from_mark", Head: "from mark"}, {Key: "height", Head: "height"},
			{Key: "depth", Head: "into wood"}, {Key: "nearest", Head: "nearest"}, {Key: "nearest_year", Head: "of"}}, rows)
	}
	if chosen > 0 {
		part.Row("choose", "Holes to choose by the scars", cli.Count(chosen, ""))
		part.Remark("No old hole of these trunks is recorded: " + chooseWords + ". Two of a year stand as far apart round the trunk as is told here.")
		part.Table("to_choose", []cli.Column{{Key: "tree", Head: "tree"}, {Key: "holes", Head: "holes"}, {Key: "apart", Head: "apart"}, {Key: "depth", Head: "into wood"}}, choose)
	}
	for i := range p.trunks {
		if t := &p.trunks[i]; t.short() > 0 {
			part.Item(fmt.Sprintf("%s: no clear place for %s of %d. Let it rest, or reach further with -low and -high.", t.name(), cli.Plural(t.short(), "hole"), t.taps))
		}
	}
	in := func(l units.Length) string { return p.In(cli.Length(l)) }
	part.Remark(fmt.Sprintf("Bearing and distance go clockwise, seen from above, from your mark on the trunk; the distance is along the girth as a tape shows it today. Depth is into the wood: bark is not counted. Nearest is the nearest hole of the record, over the bark. "+
		"Kept: %s to the side of last year's holes at any height, and %s up or down within %s to the side; %s between holes of one year; %s to the side of older holes within %s up or down, until new wood as thick as the hole is deep has grown over them.",
		in(s.keep.Side), in(s.keep.Up), in(s.keep.Open), in(s.keep.Open), in(s.keep.Side), in(s.keep.Column)))
	part.Remark("Shavings should come out white or cream. Brown ones tell of stained wood: drill no deeper, write the hole down, and leave that side alone (common practice).")
}

// chooseWords tells what to do where no record was kept.
const chooseWords = "look for scars, then choose, well away from each, and write the holes down"

func (p page) cautions() []string {
	weeks := func(h float64) int { return int(h / (7 * 24)) }
	low, high := tapping.HoleLife()
	return []string{
		"Health comes before girth: a trunk with dieback, conks, rot or little growth is left alone whatever its size. Fewer taps than the guideline are always right.",
		"Be sure of the species before drilling: mark the trees while they are in leaf.",
		"Look up before you stand under a tree: dead limbs fall, more so in wind and under snow. Wear a helmet and eye protection, and do not work alone.",
		"Ask the owner of the land. Law and local rules on taps, bits and public land come before this page.",
		"Do not drill wood colder than " + p.In(cli.Temperature(tapping.ColdestDrilling())) + ": the bark splits (OMAFRA 2015).",
		fmt.Sprintf("With an open spout a hole gives sap for %d to %d weeks: drill for the season, not for the first thaw, and never twice in one season.", weeks(low.Hours()), weeks(high.Hours())),
		"Clean bit, clean spout, no lead. Take every spout out when the season is over, so that the wound can close.",
	}
}
