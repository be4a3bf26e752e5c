package folder

import (
	"strings"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/packing"
)

// A row is one setting that a folder may have.
type row struct {
	Name, Example, Remark string
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
	if r.Name == measure {
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
	return r.Name
}

// Names of settings that others look at.
const (
	gallons = "gallons"
	measure = "barrow"
)

// known finds the row of a name, nil if there is none.
func known(name string) *row {
	for i := range table {
		if table[i].Name == name {
			return &table[i]
		}
	}
	return nil
}

// table lists the settings in the order in which a new folder shows them.
var table = []row{
	{Name: "name", Example: "Hollow Road sugarhouse", Remark: "what stands on the wall card", fills: []Fill{to("wallcard.name")}, read: title},
	{Name: gallons, Example: "US", Remark: "US or imperial: what a bare gallon, quart or pint means in this folder", read: country},
	{Name: "units", Example: "US", Remark: "US or metric: the units of the pages", fills: []Fill{to("metric")}, read: system},
	{Name: "elevation", Example: "1150 ft", Remark: "of the pan, from a map", fills: []Fill{to("elevation")},
		read: length(-500*units.Foot, 15000*units.Foot, units.Foot, "ft", "the pan above the sea, from a map")},
	{Name: "spring", Example: "first half of the year", Remark: "first or second half of the year", fills: []Fill{to("sapweek.south")}, read: half},

	{Name: "collected by", Example: "pails", Remark: "pails; tubing falling 20 ft; or pump at 20 inHg", beaten: "vacuum drop pail taps-per-pail in-pails round",
		fills: []Fill{to("sapweek.vacuum"), to("sapweek.drop").from(1)}, read: collected},
	{Name: "taps", Example: "60", Remark: "taps that are out this season", fills: []Fill{to("sapweek.taps"), to("logbook.taps")}, read: taps},
	{Name: "pail", Example: "2 gallons, 2 taps", Remark: "what one holds to the brim, and the taps that run into it",
		fills: []Fill{to("sapweek.pail").unless("vacuum drop"), to("sapweek.taps-per-pail").from(1).unless("vacuum drop")}, read: pail},
	{Name: "tank", Example: "big, 120 gallons, 2.5 gallons an inch", Remark: "its name, what it holds, what an inch of the stick is; a line for each tank", repeats: true,
		fills: []Fill{to("sapweek.storage")}, read: tank},
	{Name: "sap waits at", Example: "42 F", Remark: "usual temperature of the tanks", fills: []Fill{to("sapweek.sap-temp")},
		read: temperature(0, 40, "the sap that waits in the tanks, thawed")},
	{Name: "guideline", Example: "NAMSPM-conservative", Remark: "whose count of taps; -h of the program stand lists them", fills: []Fill{to("stand.guideline")}, read: guideline},
	{Name: "bit", Example: "5/16 in", Remark: "diameter of the bit", fills: []Fill{to("stand.bit")},
		read: length(units.Inch/8, units.Inch/2, units.Inch, "in", "5/16 in or 7/16 in")},
	{Name: "hole depth", Example: "1.5 in", Remark: "into the wood, without the bark", fills: []Fill{to("stand.depth")},
		read: length(units.Inch/2, 2*units.Inch, units.Inch, "in", "1.5 to 2 in into clean white sapwood, never more than 2")},
	{Name: "ground", Example: "2 acres", Remark: "that the trees stand on", fills: []Fill{to("stand.area")}, read: ground},

	{Name: "pan", Example: "2 x 4 ft", Remark: "width and length of the liquid", same: "pan", beaten: "pan-area compartments",
		fills: []Fill{to("boilday.pan-area"), to("sapweek.pan-area").unless("boil-rate heat")}, read: onePan},
	{Name: "compartments", Example: "2 x 3 ft, 2 x 1 ft", Remark: "instead of pan, from the sap's end to the draw-off", same: "pan", beaten: "pan-area compartments",
		fills: []Fill{to("boilday.compartments"), to("sapweek.pan-area").from(1).unless("boil-rate heat")}, read: manyPans},
	{Name: "boils off", Example: "8 gallons an hour", Remark: "water that your own pan boils off, if you measured it", beaten: "boil-rate pan-rate heat pan-area compartments",
		fills: []Fill{to("boilday.boil-rate"), to("sapweek.boil-rate")}, read: rate("measure how far the level falls in an hour")},
	{Name: "depth", Example: "2 in", Remark: "kept in the pan while sap is added", fills: []Fill{to("boilday.depth")},
		read: length(units.Inch/4, 40*units.Inch, units.Inch, "in", "a pan is kept near 2 in deep")},
	{Name: "safe depth", Example: "1 in", Remark: "least that does not scorch", fills: []Fill{to("boilday.safe-depth")},
		read: length(units.Inch/8, 40*units.Inch, units.Inch, "in", "a pan scorches near 1 in")},
	{Name: "fuel", Example: "sugar maple, 25 %", Remark: "the wood and its moisture on the dry basis; or oil, propane, pellets", beaten: "fuel",
		fills: []Fill{to("boilday.fuel"), to("boilday.wood").from(1), to("sapweek.wood").from(1),
			to("boilday.moisture").from(2), to("sapweek.moisture").from(2).needs("efficiency"), to("logbook.moisture").from(2)}, read: burns},
	{Name: "efficiency", Example: "40 %", Remark: "of the fire, if you learned it elsewhere: else it is learned from days.csv", beaten: "fuel",
		fills: []Fill{to("boilday.efficiency"), to("sapweek.efficiency")}, read: percent(1, 100, "a pan takes in no more than the net heat of its wood")},
	{Name: "coals", Example: "8 minutes", Remark: "in which the boil falls to half once no more wood goes on", beaten: "fuel", fills: []Fill{to("boilday.coals")}, read: hours},
	{Name: measure, Example: "1/25 cord", Remark: "wood that goes to the fire at a time; write wheelbarrow, face cord or a word of your own", read: cord},
	{Name: "fire", Example: "under a roof", Remark: "under a roof or outdoors", read: roof},
	{Name: "fire lit", Example: "8:00", Remark: "when you usually light it", fills: []Fill{to("boilday.start")}, read: timeOfDay},
	{Name: "fire out", Example: "22:00", Remark: "when it is out at the latest", fills: []Fill{to("boilday.out").needs("compartments")}, read: timeOfDay},
	{Name: "evening", Example: "5 hours", Remark: "hours of fire that you are willing to keep in a day", fills: []Fill{to("sapweek.evening")}, read: hours},

	{Name: "sap hydrometer", Example: "marked at 38 F", Remark: "temperature printed on it", same: "sap instrument", beaten: "refractometer", fills: []Fill{to("sap-hydrometer").unless("refractometer")}, read: marked(sapStem)},
	{Name: "sap refractometer", Example: "plain", Remark: "instead: plain, or compensated if it is marked ATC", same: "sap instrument", beaten: "sap-hydrometer", fills: []Fill{to("boilday.refractometer")}, read: refracted},
	{Name: "syrup hydrometer", Example: "marked at 60 F", Remark: "temperature printed on it", fills: []Fill{to("hydrometer")}, read: marked(syrupStem)},
	{Name: "hot mark", Example: "211 F", Remark: "of a syrup hydrometer with two marks", fills: []Fill{to("potwatch.hot-mark")}, read: temperature(60, 110, "the hot mark is read near 211 F")},
	{Name: "cold mark", Example: "60 F", Remark: "its cold mark", fills: []Fill{to("potwatch.cold-mark")}, read: temperature(1, 40, "the cold mark is read near 60 F")},
	{Name: "scale", Example: "Brix", Remark: "Brix or Baume: of a bare reading of syrup", read: scale},
	{Name: "thermometer off", Example: "0.4 F deg high", Remark: "what it shows too much (high) or too little (low), from a check", read: thermometerOff},
	{Name: "hydrometer off", Example: "0.3 Brix low", Remark: "what it reads too much (high) or too little (low), from a check", read: hydrometerOff},
	{Name: "target", Example: "66.9 Brix", Remark: "strength of your syrup",
		fills: []Fill{to("boilday.target"), to("potwatch.target"), to("packday.target"), to("logbook.target"), to("wallcard.target"), to("sapweek.syrup")}, read: target},
	{Name: "pot boils off", Example: "1 gallon an hour", Remark: "water that the finishing pot loses in an hour",
		fills: []Fill{to("boilday.pot-rate"), to("potwatch.boils-off").from(1).needs("gross")}, read: potRate},
	{Name: "pot coals", Example: "2 minutes", Remark: "in which its boil falls to half; 0 minutes for gas", fills: []Fill{to("potwatch.coals").needs("boils-off readings")}, read: hours},
	{Name: "empty pot", Example: "6.2 lb", Remark: "weight of the finishing pot", fills: []Fill{to("potwatch.tare").needs("gross")}, read: weight},

	{Name: "place", Example: "Vermont", Remark: "whose rule on the density of syrup counts", fills: []Fill{to("packday.place")}, read: legalPlace},
	{Name: "fill at", Example: "187 F", Remark: "temperature of the syrup as it is poured, 190 F at most", fills: []Fill{to("packday.pack-at"), to("boilday.pack")},
		read: temperature(0, packing.PourMost().Celsius(), "sources read advise 185 to 190 F at the filler")},
	{Name: "shelf", Example: "50 F", Remark: "the coldest that the shelf gets", fills: []Fill{to("packday.store")}, read: temperature(0, 60, "a cellar or a shelf")},
	{Name: "jar", Example: "1 pint", Remark: "label of the container you fill most", fills: []Fill{to("sapweek.jar"), to("boilday.bottle")}, read: jar},
}
