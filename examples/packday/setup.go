package main

import (
	"cmp"
	"math"
	"strings"
	"time"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/lookagain"
	"example.org/sapreckoner/yield/packing"
)

// setup is what the flags say.
type setup struct {
	again []lookagain.Finding // rows of the cans to look at again

	batch   string    // names of those to pour together
	day     time.Time // of the lines that are added
	volume  units.Volume
	weight  units.Mass
	reading units.Brix
	readAt  units.Temperature
	temp    units.Temperature
	light   units.Share

	moldy     []string // cans of the file that enter no blend
	tempTaken bool     // for a can of the file that does not tell its own

	stem  units.Temperature
	doubt density.Doubt
	cup   units.Temperature
	told  bool    // the cup is given
	miss  cli.Off // what the settings say of the instruments

	target    units.Brix
	place     string
	pan       cli.Place
	thinner   units.Brix
	thinTemp  units.Temperature
	thinLight units.Share

	filterAt units.Temperature
	each     units.Volume
	keeps    units.Volume
	dose     units.Density

	packAt     units.Temperature
	margin     units.Share
	containers string
	jarsFrom   string // file of the containers; empty if the flag told them
	wall       units.Temperature
	store      units.Temperature

	reach     string       // class and strength of a blend
	weigh     string       // file of jars on the scale
	allowance units.Volume // that a single jar may lack; NaN if it is not told

	metric bool
}

// metricJars are those of who thinks in liters and tells none. Common practice.
const metricJars = "any 1 L, any 500 mL, any 250 mL"

// declare declares the flags.
func (s *setup) declare(f *cli.Flags) {
	s.volume, s.weight, s.allowance = units.Volume(math.NaN()), units.Mass(math.NaN()), units.Volume(math.NaN())
	s.light, s.thinLight, s.dose = units.Share(math.NaN()), units.Share(math.NaN()), units.Density(math.NaN())
	f.Group("Batches (of the folder, or one lot)")
	f.String(&s.batch, "batch", "", `batches of batches.csv that are poured together, such as "34-4 + 34-5"; without it those of the season that are not bottled. Beside -volume or -weight it is the name under which -write adds the lot, else the day`)
	f.Quantity(&s.volume, "volume", "", "volume of one lot at its temperature")
	f.Quantity(&s.weight, "weight", "", "its weight on a scale, the can taken off, instead of -volume")
	f.Quantity(&s.reading, "reading", "66.9 Brix", "what the syrup hydrometer reads in it")
	f.Quantity(&s.readAt, "read-at", "60 F", "temperature of the syrup in the cup when it was read")
	f.Quantity(&s.temp, "temp", "60 F", "temperature of the lot, and of batches that do not say")
	f.Quantity(&s.light, "light", "", "its light transmission at 560 nm in 10 mm, if it was measured")
	f.Group("Containers")
	f.String(&s.containers, "containers", "any 1 US qt, any 1 US pt, any 8 US fl oz", "instead of jars.csv: how many of which label you have, any where there are plenty, and what is ordered: 12x1 US qt, at least 6x1 US pt, exactly 4x250 mL, any 8 US fl oz; each label once. With -metric and none told they are "+metricJars)
	f.Group("Instead of a day")
	f.String(&s.reach, "reach", "", `a color class, a strength or both, such as "Amber" or "Amber, 66.5 to 67.5 Brix": how much of each batch to pour together for it, with the least left over`)
	f.String(&s.weigh, "weigh", "", "CSV of full jars on the scale: whether the lots hold what their labels say, by the rule of -place. Columns container (of jars.csv, with its empty weight), lot (how many jars) and gross_g, gross_oz or gross_lb")
	f.Quantity(&s.allowance, "allowance", "", "with -weigh outside Canada: what a single jar may lack by the inspector's table")
	f.Page(&s.metric)
	f.Adds("the jars to bottled.csv and what is poured together to blends.csv, or one lot to batches.csv,")
	f.Date(&s.day, "day", "date of these lines, as 2034-03-11; without it today")
	f.More()
	f.Group("Hydrometer")
	f.Stem(&s.stem, "hydrometer", "60 F", "syrup")
	f.Doubt(&s.doubt, "", "hydrometer", "0.5 Brix", "1 F deg", "0.2 Brix")
	f.Quantity(&s.cup, "cup", "", "temperature of the cup when the finished syrup is read; without it 211 F, or just below today's boiling point of syrup, or the heat of the filter, where that is cooler")
	f.Place(&s.pan, "0 ft")
	f.Group("Mark")
	f.Target(&s.target, "target")
	f.Choice(&s.place, "place", sugar.UnitedStates.String(), folder.Places(), "whose rule on density counts: "+strings.Join(folder.Places(), ", "))
	f.Quantity(&s.thinner, "thin-with", "0 Brix", "strength of what too dense syrup is thinned with: 0 Brix for water, sap, or a lighter syrup")
	f.Quantity(&s.thinTemp, "thin-temp", "60 F", "its temperature")
	f.Quantity(&s.thinLight, "thin-light", "", "its light transmission, if it is a syrup of another color")
	f.Group("Filter")
	f.Quantity(&s.filterAt, "filter-at", "190 F", "temperature of the syrup at the filter")
	f.Quantity(&s.each, "filter-each", "3 US gal", "syrup through one gravity filter before it is changed (University of Vermont: about 3)")
	f.Quantity(&s.keeps, "filter-keeps", "6 US fl oz", "syrup that stays in one filter or in the press: a guess, weigh yours wet and dry")
	f.Quantity(&s.dose, "aid-dose", "", `filter aid of a press, such as "0.1 lb/US gal": the maker's figure; without it gravity filters are counted`)
	f.Group("Filling")
	f.Quantity(&s.packAt, "pack-at", "187 F", "temperature of the syrup as it is poured, 190 F at most")
	f.Quantity(&s.margin, "margin", "0.5 %", "how far above the label you fill, for your own scatter")
	f.Quantity(&s.wall, "wall", "68 F", "temperature of the empty containers")
	f.Quantity(&s.store, "store", "50 F", "the coldest that the shelf gets")
}

// check tests what the library does not, and which flags go together.
func (s *setup) check(f *cli.Flags) error {
	_, err := s.pan.Given()
	const hot = "sources read advise 185 to 190 F at the filler, so that it is sealed at 180 F or above"
	err = cmp.Or(err,
		f.Alone("volume", "weight"), f.Alone("aid-dose", "filter-each"),
		f.With([]string{"volume", "weight"}, "give -volume or -weight of the lot too", "reading", "read-at", "light"),
		cli.Within("thin-with", "strength", s.thinner, 0, 75, 1, "Brix", "0 for water, about 2 for sap"),
		cli.WithinTemperature("thin-temp", "temperature", s.thinTemp, 0, 100, "what is poured in"),
		cli.WithinTemperature("filter-at", "temperature", s.filterAt, 20, 105, "syrup runs through a filter while it is hot: 180 to 190 F is packing heat"),
		cli.Within("filter-each", "syrup", s.each, 0.1*units.USGallon, 1000*units.USGallon, units.USGallon, "US gal", "a gravity filter passes about 3"),
		cli.Within("filter-keeps", "syrup", s.keeps, 0, 50*units.USGallon, units.USGallon, "US gal", "weigh the filter wet and dry"),
		cli.Within("margin", "margin", s.margin, 0, 10, 1, "%", "what is filled above the label, such as 0.5 %"),
		cli.WithinTemperature("pack-at", "temperature", s.packAt, 0, packing.PourMost().Celsius(), hot),
		cli.WithinTemperature("wall", "temperature", s.wall, 0, 110, "the empty containers"),
		cli.WithinTemperature("store", "temperature", s.store, 0, 60, "a cellar or a shelf; in the freezer crystals are not foreseen here"),
	)
	if err == nil && f.Given("thin-light") {
		_, err = sugar.AbsorbanceOf(s.thinLight)
		err = cli.For("thin-light", err)
	}
	return err
}
