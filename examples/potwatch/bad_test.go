package main

import (
	"fmt"
	"strings"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

func badFlags() (cases []clitest.Bad) {
	const pot = "-tare|6 lb|-gross|30 lb|-pot-brix|40 Brix|"
	for _, c := range []struct{ args, want string }{
		{"-target|90 Brix", "-target: target 90 Brix is outside 60 to 74"},
		{"-target|NaN Brix", "-target"},
		{"-inverted|30 %", "-inverted: inverted share 30 % is outside 0 to 12 %: a sap of glucose and fructose"},
		{"-inverted-by|13 %", "-inverted-by: uncertainty"},
		{"-water-boils|209.6", "-water-boils"},
		{"-water-boils|150 F", "-water-boils: boiling point of water 150 F (65.6 C) is outside"},
		{"-water-boils|300 F", "-water-boils: "},
		{"-pressure|2.9 inHg", "-pressure: station pressure 2.9 inHg (9.821 kPa) is outside"},
		{"-elevation|30000 ft", "-elevation: elevation 30000 ft (9144 m) is outside"},
		{"-altimeter|30 inHg", "-altimeter: give -elevation too"},
		{"-pressure|1 atm|-water-boils|209 F", "-water-boils: says the same as -pressure"},
		{"-probe-by|0 F deg", "-probe-by: error 0 F deg (0 C deg) is outside"},
		{"-probe-by|40 C deg", "-probe-by: error 72 F deg (40 C deg) is outside"},
		{"-water-by|-1 F deg", "-water-by: error"},
		{"-depth-by|2 ft", "-depth-by: depth 24 in (60.96 cm) is outside"},
		{"-barometer-by|29 inHg", "-barometer-by: pressure 29 inHg (98.21 kPa) is outside"},
		{"-over|1 in", "-over: say where water boils today too"},
		{"-over|-1 in|-elevation|0 ft", "-over: depth -1 in (-2.54 cm) is outside 0 to 10 in (0 to 25.4 cm)"},
		{"-shows|218 F", "-shows: say where water boils today too"},
		{"-shows|290 F|-water-boils|209 F", "-shows: rise 81 F deg (45 C deg) is outside"},
		{"-shows|217 F|-readings|x.csv|-water-boils|209 F", "says the same as"},
		{"-readings|x.csv", "-readings: say where water boils today too"},
		{"-readings|testdata/none.csv|-water-boils|209 F", "-readings: testdata/none.csv: no such file"},
		{"-stops|testdata/none.csv", "-stops: testdata/none.csv: no such file"},
		{"-readings|-|-stops|-|-water-boils|209 F", "-stops: -readings reads standard input already"},
		{"-readings|testdata|-water-boils|209 F", "-readings: testdata: is a directory"},
		{"-stops|testdata", "-stops: testdata: is a directory"},
		{"-hydrometer|100 C", "-hydrometer: graduation 212 F (100 C) is outside"},
		{"-cup|300 F", "-cup: temperature 300 F (148.9 C) is outside"},
		{"-cup|211 F|-elevation|6000 ft", "-cup: syrup boils at 208."},
		{"-reading|59 Brix", "-reading: give -cup too"},
		{"-reading|59", "-reading"},
		{"-reading|95 Brix|-cup|211 F", "-reading: reading 95 Brix is outside"},
		{"-division|0 Brix", "-division: division 0 Brix is outside"},
		{"-thermometer|0 F deg", "-thermometer: error 0 F deg (0 C deg) is outside"},
		{"-calibration|9 Brix", "-calibration: uncertainty 9 Brix is outside"},
		{"-hot-mark|300 F", "-hot-mark: temperature 300 F (148.9 C) is outside"},
		{"-hot-mark|211 F|-mark-for|6 Brix", "-mark-for: strength 6 Brix is outside 50 to 80"},
		{"-floats-at|hot|-cup|211 F", "-floats-at: give -hot-mark too"},
		{"-floats-at|warm", `-floats-at: "warm" is not known: use one of hot, cold`},
		{"-floats-at|hot|-reading|59 Brix", "says the same as"},
		{"-refractometer|66 Brix", "-refractometer: give -prism, the temperature of drop and prism, or -compensated"},
		{"-refractometer|96 Brix|-compensated", "-refractometer: reading 96 Brix is outside"},
		{"-refractometer|66 Brix|-prism|110 F", "-prism: prism temperature 110 F (43.3 C) is outside 50 to 86 F (10 to 30 C)"},
		{"-refractometer|66 Brix|-prism|80 F|-compensated", "-prism: says the same as -compensated"},
		{"-prism|70 F", "-prism: give -refractometer too"},
		{"-compensated", "-compensated: give -refractometer too"},
		{"-prism-division|0 Brix", "-prism-division: division"},
		{"-prism-thermometer|0 F deg", "-prism-thermometer: error"},
		{"-prism-calibration|0 Brix", "-prism-calibration: uncertainty"},
		{"-gross|30 lb", "-gross: give -tare too"},
		{"-gross|30 lb|-tare|6 lb", "-gross: give -pot-brix too"},
		{"-tare|6 lb", "-tare: give -gross too"},
		{"-pot-brix|40 Brix", "-pot-brix: give -gross too"},
		{"-gross-now|20 lb", "-gross-now: give -gross too"},
		{"-tare|30 lb|-gross|6 lb|-pot-brix|40 Brix", "gross and tare are the wrong way round"},
		{"-tare|6 lb|-gross|30 lb|-pot-brix|3 Brix", "-pot-brix: reading 3 Brix is outside 5 to 80 Brix: too thin"},
		{"-tare|6 lb|-gross|30 lb|-pot-brix|70 Brix", "the pot is stronger already"},
		{pot + "-gross-now|31 lb", "-gross-now: weight"},
		{pot + "-gross-now|12 lb", "was something poured in or spilled?"},
		{pot + "-scale-by|30 lb", "-scale-by: weight 30 lb (13.61 kg) is outside"},
		{pot + "-pot-brix-by|11 Brix", "-pot-brix-by: uncertainty"},
		{pot + "-boils-off|0 lb/h", "-boils-off: evaporation 0 lb/h (0 kg/h) is outside"},
		{pot + "-boils-off|8 lb/h|-coals|3h", "-coals: a fire that holds up the boil for hours"},
		{"-boils-off|8 lb/h", "-boils-off: give -gross too"},
		{"-coals|3m", "-coals: give -boils-off or -readings too"},
		{"-coals|soon", `-coals: "soon" is not a stretch of time`},
		{"-make|cream", "-make: say where water boils today too"},
		{"-make|taffy", `-make: "taffy" is not known: use one of cream, molded candy`},
		{"stray", `"stray": a number is missing; write it as 59.5 at 204 F, water 209.6 F`}, {"31.5 at 204 F", "31.5 may be Brix or Baume"}, {"59.5", "say how hot the cup is"}, {"40 L", "no amount is asked here"},
		{"-nosuch", "no such flag"},
	} {
		cases = append(cases, clitest.Bad{Args: strings.Split(c.args, "|"), Want: c.want})
	}
	return cases
}

func badFiles() (cases []clitest.Bad) {
	const (
		clock = "time,shown_f\n"
		after = "after_min,shown_f\n"
		day   = "day,pressure_inhg,stop_f,cup_brix\n"
		water = "day,water_boils_f,stop_f,cup_brix\n"
	)
	for _, c := range []struct{ flag, file, want string }{
		{"-readings", "", "-: the file is empty: the first line names the columns, such as time,shown_f"},
		{"-readings", clock, "-:1: nothing below the header"},
		{"-readings", "when,shown_f\n", "-:1: no column for the time of a reading: name it time or after_min"},
		{"-readings", "after_s,shown_f\n", "-:1: column after_s: no unit that is known"},
		{"-readings", "time,shown\n", "-:1: column shown: no unit that is known: name the column shown_f or shown_c"},
		{"-readings", "time,after_min,shown_f\n", "-:1: time and after say the same"},
		{"-readings", clock + "19:40,214\n19:40,215\n", "-:3: column time: not after the reading above it"},
		{"-readings", clock + "19:40,214\n19:39,215\n", "-:3: column time: not after the reading above it"},
		{"-readings", after + "0,214\n1500,215\n", "-:3: column after_min: not after the reading above it, or 12 hours after"},
		{"-readings", after + "-1,214\n", `-:2: column after_min: "-1" is not a stretch of time`},
		{"-readings", "time|shown_f\n19:40|214\n", "-:1: no column for the time of a reading: name it time or after_min"},
		{"-readings", clock + "noon,214\n", `-:2: column time: "noon" is not a time such as 15:04`},
		{"-readings", clock + "19:40,hot\n", `-:2: column shown_f: "hot" is not a plain number`},
		{"-readings", clock + "19:40,2140\n", "-:2: column shown_f: temperature 2140 F (1171.1 C) is outside"},
		{"-readings", clock + "19:40,214,4\n", "-:2: 3 cells where the header names 2 columns"},
		{"-readings", clock + "19:40,217\n19:41,290\n", "-readings: rise"},
		{"-readings", after + many(10001), "-:10002: more than 10000 rows"},
		{"-stops", "", "-: the file is empty: the first line names the columns, such as day,water_boils_f"},
		{"-stops", day, "-:1: nothing below the header"},
		{"-stops", "day,stop_f,cup_brix\n", "-:1: no column for the air of that day"},
		{"-stops", "day,pressure_inhg,water_boils_f,stop_f,cup_brix\n", "-:1: water_boils and pressure say the same"},
		{"-stops", "day,pressure,stop_f,cup_brix\n", "-:1: column pressure: no unit that is known"},
		{"-stops", day + "3 March,29.5,218,67\n", `-:2: column day: "3 March" is not a time such as 2006-01-02`},
		{"-stops", day + "2026-03-02,29.5,218,40\n", "-:2: column cup_brix: cup 40 Brix is outside 50 to 80"},
		{"-stops", day + "2026-03-02,29.5,218,67\n2026-03-04,29.5,118,67\n", "-:3: column stop_f: offset of a stop"},
		{"-stops", day + "2026-03-02,2.95,218,67\n", "-:2: column pressure_inhg: pressure"},
		{"-stops", water + "2026-03-02,500,218,67\n", "-:2: column water_boils_f: boiling point of water"},
		// Of a stop under its own water: 66.9 Brix boils at 217.5 where water does at 210.
		{"-stops", water + "2026-03-02,210,217.6,66.9\n2026-03-03,210,205,66.9\n", "-:3: column stop_f: 205.0 F is no hotter than boiling water that day, 210.0 F, and 12.5 F deg under syrup of that cup"},
		{"-stops", water + "2026-03-02,210,217.6,66.9\n2026-03-03,210,233,66.9\n2026-03-04,210,217.6,66.9\n", "-:3: the stops lie too far apart to tell anything: this one by 15.5 F deg"},
		{"-stops", water + "2026-03-02,212,,67\n", "-:2: column stop_f"},
	} {
		cases = append(cases, clitest.Bad{Args: []string{"-water-boils", "209 F", c.flag, "-"}, Stdin: c.file, Want: c.want})
	}
	return cases
}

// many is more readings than are read, a hundredth of a minute apart.
func many(n int) string {
	var b strings.Builder
	for i := range n {
		fmt.Fprintf(&b, "%.2f,214\n", float64(i)/100)
	}
	return b.String()
}
