package folder

import (
	"strings"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

// A row is one setting that a folder may have.
type row struct {
	part                  string // heads the rows that follow in a new folder
	name, example, remark string
	metric                string // another example, where liters are counted
	fills                 []Fill
	beaten                string // flags of the same subject: each on the command line puts the setting aside
	same                  string // what else says it; the name if empty
	repeats               bool
	read                  reader
}

// A reader reads the value of a setting into the settings and returns the texts
// of the flags that it fills; an empty one leaves its flag alone.
type reader func(s *Settings, value string) (texts []string, err error)

// into reads the value of a line.
func (r *row) into(s *Settings, l Line) error {
	if r.name == measure {
		s.Measure.Name = l.Name
	}
	texts, err := r.read(s, l.Value)
	if err != nil {
		return err
	}
	for _, f := range r.fills {
		if f.part < len(texts) && texts[f.part] != "" {
			f.Text = texts[f.part]
			l.Fills = append(l.Fills, f)
		}
	}
	if r.repeats { // the last line has the sum
		for i := range s.lines {
			if s.lines[i].Name == l.Name {
				s.lines[i].Fills = nil
			}
		}
	}
	l.Beaten = strings.Fields(r.beaten)
	s.lines = append(s.lines, l)
	return nil
}

func (r *row) subject() string {
	if r.same != "" {
		return r.same
	}
	return r.name
}

// Names of settings that others look at.
const (
	gallons = "gallons"
	measure = "barrow"
)

// known finds the row of a name, nil if there is none.
func known(name string) *row {
	for i := range table {
		if table[i].name == name {
			return &table[i]
		}
	}
	return nil
}

// table lists the settings in the order in which a new folder shows them.
var table = []row{
	{part: "Place", name: "name", example: "Hollow Road sugarhouse", remark: "what stands on the wall card", fills: []Fill{to("wallcard.name")}, read: title},
	{name: gallons, example: "US", remark: "US or imperial: what a bare gallon, quart or pint means in this folder", read: country},
	{name: "units", example: "US", metric: "metric", remark: "US or metric: the units of the pages", fills: []Fill{to("metric")}, read: system},
	{name: "elevation", example: "1150 ft", metric: "350 m", remark: "of the pan, from a map", fills: []Fill{to("elevation")}, read: elevation},
	{name: "spring", example: "first half of the year", remark: "first or second half of the year", fills: []Fill{to("sapweek.south")}, read: half},

	{part: "Sap and trees", name: "collected by", example: "pails", remark: "pails; tubing falling 20 ft; or pump at 20 inHg", beaten: "vacuum drop pail taps-per-pail in-pails round",
		fills: []Fill{to("sapweek.vacuum"), to("sapweek.drop").from(1)}, read: collected},
	{name: "taps", example: "60", remark: "taps that are out this season", fills: []Fill{to("sapweek.taps"), reads("logbook")}, read: taps},
	{name: "pail", example: "2 gallons, 2 taps", metric: "8 L, 2 taps", remark: "what one holds to the brim, and the taps that run into it",
		fills: []Fill{to("sapweek.pail").unless("vacuum drop"), to("sapweek.taps-per-pail").from(1).unless("vacuum drop")}, read: pail},
	{name: "tank", example: "big, 120 gallons, 2.5 gallons an inch", metric: "big, 450 L, 4 L a cm", remark: "its name, what it holds, what an inch of the stick is; a line for each tank", repeats: true,
		fills: []Fill{to("sapweek.storage")}, read: tank},
	{name: "sap waits at", example: "42 F", metric: "5 C", remark: "usual temperature of the tanks", fills: []Fill{to("sapweek.sap-temp")},
		read: temperature(0, 40, "the sap that waits in the tanks, thawed")},
	{name: "guideline", example: "NAMSPM-conservative", remark: "whose count of taps; -h of the program stand lists them", fills: []Fill{to("stand.guideline")}, read: guideline},
	{name: "bit", example: "5/16 in", metric: "8 mm", remark: "diameter of the bit", fills: []Fill{to("stand.bit")},
		read: length(units.Inch/8, units.Inch/2, "5/16 in or 7/16 in")},
	{name: "hole depth", example: "1.5 in", metric: "4 cm", remark: "into the wood, without the bark", fills: []Fill{to("stand.depth")},
		read: length(units.Inch/2, 2*units.Inch, "1.5 to 2 in into clean white sapwood, never more than 2")},
	{name: "ground", example: "2 acres", metric: "1 ha", remark: "that the trees stand on", fills: []Fill{to("stand.area")}, read: inRange(units.ParseArea, "area", units.Acre/100, 1e5*units.Acre, units.Acre, "ac", "the ground that the trees stand on")},

	{part: "Pan and fire", name: "pan", example: "2 x 4 ft", metric: "60 x 120 cm", remark: "width and length of the liquid", same: "pan", beaten: "pan-area compartments",
		fills: []Fill{to("boilday.pan-area"), to("sapweek.pan-area").unless("boil-rate heat")}, read: onePan},
	{name: "compartments", example: "2 x 3 ft, 2 x 1 ft", metric: "60 x 90 cm, 60 x 30 cm", remark: "instead of pan, from the sap's end to the draw-off", same: "pan", beaten: "pan-area compartments",
		fills: []Fill{to("boilday.compartments"), to("sapweek.pan-area").from(1).unless("boil-rate heat")}, read: manyPans},
	{name: "boils off", example: "8 gallons an hour", metric: "30 L an hour", remark: "water that your own pan boils off, if you measured it", beaten: "boil-rate pan-rate heat pan-area compartments",
		fills: []Fill{to("boilday.boil-rate"), to("sapweek.boil-rate")}, read: boilsOff},
	{name: "depth", example: "2 in", metric: "5 cm", remark: "kept in the pan while sap is added", fills: []Fill{to("boilday.depth")},
		read: length(units.Inch/4, 40*units.Inch, "a pan is kept near 2 in deep")},
	{name: "safe depth", example: "1 in", metric: "2.5 cm", remark: "least that does not scorch", fills: []Fill{to("boilday.safe-depth")},
		read: length(units.Inch/8, 40*units.Inch, "a pan scorches near 1 in")},
	{name: "fuel", example: "sugar maple, 25 %", remark: "the wood and its moisture on the dry basis; or oil, propane, pellets", beaten: "fuel",
		fills: []Fill{to("boilday.fuel"), to("boilday.wood").from(1), to("sapweek.wood").from(1),
			to("boilday.moisture").from(2), to("sapweek.moisture").from(2).needs("efficiency"), reads("logbook"), reads("logbook").from(1)}, read: burns},
	{name: "efficiency", example: "40 %", remark: "of the fire, if you learned it elsewhere: else it is learned from days.csv", beaten: "fuel",
		fills: []Fill{to("boilday.efficiency"), to("sapweek.efficiency")}, read: inRange(units.ParseShare, "share", 1, 100, units.Percent, "%", "a pan takes in no more than the net heat of its wood")},
	{name: "coals", example: "8 minutes", remark: "in which the boil falls to half once no more wood goes on", beaten: "fuel", fills: []Fill{to("boilday.coals")}, read: hours},
	{name: measure, example: "1/25 cord", metric: "0.15 m3", remark: "wood that goes to the fire at a time; write wheelbarrow, face cord or a word of your own", read: cord},
	{name: "fire", example: "under a roof", remark: "under a roof or outdoors", read: roof},
	{name: "fire lit", example: "8:00", remark: "when you usually light it", fills: []Fill{to("boilday.start")}, read: timeOfDay},
	{name: "fire out", example: "22:00", remark: "when it is out at the latest", fills: []Fill{to("boilday.out").needs("compartments")}, read: timeOfDay},
	{name: "evening", example: "5 hours", remark: "hours of fire that you are willing to keep in a day", fills: []Fill{to("sapweek.evening")}, read: hours},

	{part: "Instruments and syrup", name: "sap hydrometer", example: "marked at 38 F", metric: "marked at 20 C", remark: "temperature printed on it", same: "sap instrument", beaten: "refractometer", fills: []Fill{to("sap-hydrometer").unless("refractometer")}, read: marked(sapStem)},
	{name: "sap refractometer", example: "plain", remark: "instead: plain, or compensated if it is marked ATC", same: "sap instrument", beaten: "sap-hydrometer", fills: []Fill{to("boilday.refractometer")}, read: refracted},
	{name: "syrup hydrometer", example: "marked at 60 F", metric: "marked at 20 C", remark: "temperature printed on it", fills: []Fill{to("hydrometer")}, read: marked(syrupStem)},
	{name: "hot mark", example: "211 F", metric: "99 C", remark: "of a syrup hydrometer with two marks", fills: []Fill{to("potwatch.hot-mark")}, read: temperature(60, 110, "the hot mark is read near 211 F")},
	{name: "cold mark", example: "60 F", metric: "20 C", remark: "its cold mark", fills: []Fill{to("potwatch.cold-mark")}, read: temperature(1, 40, "the cold mark is read near 60 F")},
	{name: "scale", example: "Brix", remark: "Brix or Baume: of a bare reading of syrup", read: scale},
	{name: "thermometer off", example: "0.4 F deg high", metric: "0.2 C deg high", remark: "what it shows too much (high) or too little (low), from a check", read: thermometerOff},
	{name: "hydrometer off", example: "0.3 Brix low", remark: "what it reads too much (high) or too little (low), from a check", read: hydrometerOff},
	{name: "target", example: "66.9 Brix", remark: "strength of your syrup",
		fills: []Fill{to("boilday.target"), to("potwatch.target"), to("packday.target"), reads("logbook"), to("wallcard.target"), to("sapweek.syrup")}, read: target},
	{name: "pot boils off", example: "1 gallon an hour", metric: "4 L an hour", remark: "water that the finishing pot loses in an hour",
		fills: []Fill{to("boilday.pot-rate"), to("potwatch.boils-off").from(1).needs("gross")}, read: potRate},
	{name: "pot coals", example: "2 minutes", remark: "in which its boil falls to half; 0 minutes for gas", fills: []Fill{to("potwatch.coals").needs("boils-off readings")}, read: hours},
	{name: "empty pot", example: "6.2 lb", metric: "3 kg", remark: "weight of the finishing pot", fills: []Fill{to("potwatch.tare").needs("gross")}, read: inRange(units.ParseMass, "weight", units.Pound/10, 1000*units.Pound, units.Pound, "lb", "the pot alone, empty and dry")},

	{part: "Packing", name: "place", example: "Vermont", remark: "whose rule on the density of syrup counts", fills: []Fill{to("packday.place")}, read: legalPlace},
	{name: "fill at", example: "187 F", metric: "86 C", remark: "temperature of the syrup as it is poured, 190 F (87.7 C) at most", fills: []Fill{to("packday.pack-at"), to("boilday.pack")},
		read: temperature(0, packing.PourMost().Celsius(), "sources read advise 185 to 190 F at the filler")},
	{name: "shelf", example: "50 F", metric: "10 C", remark: "the coldest that the shelf gets", fills: []Fill{to("packday.store")}, read: temperature(0, 60, "a cellar or a shelf")},
	{name: "jar", example: "1 pint", metric: "500 mL", remark: "label of the container you fill most", fills: []Fill{to("sapweek.jar"), to("boilday.bottle")}, read: jar},

	{part: "Sap that is bought", name: "syrup price", example: "2.50 USD/lb", remark: "of a pound of syrup, and behind a comma where it changed: 2.60 USD/lb from 2034-03-20", beaten: "sugar-price",
		fills: []Fill{to("spreadsheet.syrup-price")}, read: asTyped},
	{name: "sap share", example: "50 %", remark: "of that price, for the sap", beaten: "sugar-price", fills: []Fill{to("spreadsheet.share")},
		read: inRange(units.ParseShare, "share", 0, 100, units.Percent, "%", "the part of that price that sap earns")},
	{name: "least sap", example: "1.5 Brix", remark: "thinner sap is not paid for", fills: []Fill{to("spreadsheet.minimum")}, read: inRange(units.ParseBrix, "strength", 0.5, 30, units.DegreeBrix, "Brix", "sap is 1 to 4 Brix")},
}
