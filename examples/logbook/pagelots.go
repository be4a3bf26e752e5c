package main

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

func (p page) lotsPart(part *cli.Part) error {
	var rows [][]cli.Value
	var odd []string
	for _, name := range slices.Sorted(maps.Keys(p.lots)) {
		l := p.lots[name]
		lot, err := l.drawn.lot()
		if err != nil {
			return err
		}
		switch {
		case lot.Empty():
			odd = append(odd, name+" was bottled and never drawn")
		case l.volume > (lot.Volume()+l.poured)*1.02: // a gauge and a label differ by a percent or two
			odd = append(odd, name+" was bottled into more than was drawn")
		}
		if l.unlike > 0 {
			odd = append(odd, fmt.Sprintf("%s is under %v or over %v: was the cup as warm as written? Thin syrup ferments", name, thinSyrup, thickSyrup))
		}
		drawn, _ := amounts(lot)
		left := l.left()
		if l.moldy {
			left = 0
			why := " had moldy syrup poured into it"
			if p.marked(name) {
				why = " was moldy"
			}
			odd = append(odd, name+why+": thrown away, and in no stock")
		}
		if l.drum {
			name += ", drum"
		}
		kept := l.filtered()
		went := cli.AddUp(sapDigits, cli.Volume(drawn), cli.Volume(l.volume), cli.Volume(kept), cli.Volume(left-kept))
		rows = append(rows, []cli.Value{cli.Words(name), cli.Total(sapDigits, cli.Volume(drawn)), cli.Brix(lot.Brix(), 1),
			went[0], went[1], went[2]})
	}
	part.Table("batches", []cli.Column{{Key: "batch", Head: "batch"}, {Key: "drawn", Head: "drawn"}, {Key: "true", Head: "true"},
		{Key: "bottled", Head: "bottled"}, {Key: "filtered", Head: "filtered"}, {Key: "left", Head: "in stock"}}, rows)
	if volume, _ := p.filteredOff(); volume > 0 {
		part.Remark("Filtered is what a batch lacks once nearly all of it is bottled: the filter kept it, or it stands in the can.")
	}
	part.If(len(odd) > 0).Remark("Look again: " + strings.Join(odd, "; ") + ".")
	return nil
}

func (p page) bottledPart(part *cli.Part) {
	var rows [][]cli.Value
	all, count := p.bottled()
	for _, key := range slices.Sorted(maps.Keys(p.sizes)) {
		s := p.sizes[key]
		volume := s.label * units.Volume(s.count)
		label := cli.Volume(s.label)
		if s.label < units.USGallon {
			label = cli.SmallVolume(s.label)
		}
		rows = append(rows, []cli.Value{label, cli.Count(s.count, ""), cli.Volume(volume)})
	}
	addUp(sapDigits, cli.Volume(all), rows, 2)
	part.Table("bottled", []cli.Column{{Key: "size", Head: "size"}, {Key: "count", Head: "containers"}, {Key: "volume", Head: "in all"}}, rows)
	part.Row("containers", "Containers", cli.Count(count, ""))
	part.Row("volume", "Bottled by the labels", cli.Total(sapDigits, cli.Volume(all)))
	if volume, sugar := p.filteredOff(); volume > 0 {
		part.Row("filtered", "Filtered or left in cans", gauged(cli.Volume(volume)), p.In(gauged(cli.Mass(sugar)))+" of sugar")
	}
}
