package main

import (
	"strings"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

func badInput() (cases []clitest.Bad) {
	const head = "time,source,volume_us_gal,reading_brix,read_at_f\n"
	for _, c := range []struct{ args, want string }{
		{"-sap|60 gal", `-sap: "60 gal": ambiguous unit: write "US gal" or "imp gal"`},
		{"-sap|60", "-sap"},
		{"-sap|-1 L", "-sap: sap -0.2642 US gal (-1 L) is outside"},
		{"-sap|NaN L", "-sap"},
		{"-sap|1e9 US gal", "check its unit"},
		{"-sap-temp|200 C", "-sap-temp: temperature 392 F (200 C) is outside"},
		{"-reading|90 Brix", "-reading: reading 90 Brix is outside"},
		{"-reading|0.1 Brix", "-reading: sap"},
		{"-read-at|250 F", "-read-at: temperature 250 F (121.1 C) is outside"},
		{"-bottle|1 US qt|-pack|20 F", "-pack: temperature 20 F (-6.7 C) is outside"},
		{"-sap-hydrometer|100 C", "-sap-hydrometer: graduation 212 F (100 C) is outside"},
		{"-hydrometer|0 C", "-hydrometer: graduation 32 F (0 C) is outside"},
		{"-cup|300 F", "-cup: temperature 300 F (148.9 C) is outside"},
		{"-coals|x", "-coals: \"x\" is not a stretch of time"},
		{"-start|25:99", "-start: write a time of the day as 08:00"},
		{"-target|90 Brix", "-target: target 90 Brix is outside 60 to 74"},
		{"-target|59 Brix", "-target: target 59 Brix is outside 60 to 74"},
		{"-target|60 Brix|-reading|61 Brix", "-reading: sap"},
		{"-elevation|9000 m", "-elevation: elevation 29530 ft (9000 m) is outside"},
		{"-pressure|5 kPa", "-pressure: station pressure "},
		{"-water-boils|300 F", "-water-boils: "},
		{"-altimeter|30 inHg", "-altimeter: give -elevation too"},
		{"-altimeter|30 inHg|-elevation|9000 m", "-elevation: elevation 29530 ft (9000 m) is outside"},
		{"-pressure|1 atm|-elevation|5000 ft", "-pressure: station pressure 29.92 inHg (101.3 kPa) is outside"},
		{"-pot-rate|0 L/h", "-pot-rate: rate 0 US gal/h (0 L/h) is outside"},
		{"-cup|211 F|-elevation|1800 m", "-cup: syrup boils at 208.5 F today and is no hotter in the cup"},
		{"-water-boils|220 F", "-water-boils: boiling point of water"},
		{"-water-boils|220 F", "check the thermometer"},
		{"-refractometer|digital", `-refractometer: "digital" is not known: use one of plain, compensated`},
		{"-refractometer|plain", "-read-at: prism temperature"}, // the demo's 44 F
		{"-refractometer|plain|-sap-hydrometer|60 F", "-sap-hydrometer: the sap is read by one instrument"},
		{"-refractometer|compensated|-read-at|60 F", "-read-at: a compensated refractometer allows for its temperature itself"},
		{"-refractometer|compensated|-reading|60 Brix", "-reading: sap"},
		{"-sap-division|0 Brix", "-sap-division: "},
		{"-sap-calibration|9 Brix", "-sap-calibration: "},
		{"-safe-depth|0.1 in", "nobody boils below an eighth"},
		{"-compartments|8 ft2|-depth|1 in", "-depth: the safe depth is 1 in: keep the pan deeper"},
		{"-compartments|8 ft2|-safe-depth|2 in", "-safe-depth: it does not lie below the depth that is kept, 2 in"},
		{"-depth|0.5 in", "-depth: the safe depth is 1 in: keep the pan deeper, or give -safe-depth too"},
		{"-pan-rate|0 US gal/ft2/h", "-pan-rate: rate 0 US gal/ft2/h (0 L/m2/h) is outside"},
		{"-boil-rate|12 gal/h", `write "US gal/h" or "imp gal/h"`},
		{"-safe-depth|3 in", "-safe-depth: it does not lie below the depth that is kept, 2 in"},
		{"-heel|2 in", "-heel: heel 2 in (5.08 cm) is outside"}, {"-heel|1 in", "-heel: as much stays behind as the pan then holds"}, {"-heel|2.54 cm", "-heel: as much"}, {"-heel|1 in|-compartments|12 ft2", "-heel: as much"},
		{"-sap-file|testdata/none.csv", "-sap-file: testdata/none.csv: no such file"},
		{"-sap-file|x.csv|-sap|3 L", "says the same as"},
		{"-compartments|6 ft2,x", "-compartments"},
		{"-compartments|6 ft2|-pan-area|6 ft2", "says the same as"},
		{"-compartments|6 ft2|-draw-to|5 Brix", "-draw-to: strength at which the draw ends"},
		{"-moisture|200 %", "-moisture: moisture 200 % is outside"},
		{"-coals|5m|-fuel|oil", "-coals: a burner leaves none"},
		{"-coals|13h", "-coals: a fire that holds for more than 12 hours"},
		{"-compartments|6 ft2|-draw-to|70 Brix", "-draw-to: strength at which the draw ends"},
		{"-out|21:00", "-out: this belongs to a pan of several compartments"},
		{"-membrane-to|40 Brix|-membrane-pump|10 bar", "-membrane-to: the osmotic pressure of 40 Brix"},
		{"-membrane-to|1 Brix", "-membrane-to: strength 1 Brix is outside"},
		{"-membrane-flow|5 US gal/h", "-membrane-to: say how far"},
		{"-bottle|0 L", "-bottle: "},
		{"-bottle|1 L|-pack|300 F", "-pack: no source read fills hotter"},
		{"-bottle|1 L|-pack|190.1 F", "-pack: no source read fills hotter than 190 F (87.8 C)"},
		{"-division|0 Brix", "-division: "},
		{"-calibration|9 Brix", "-calibration: "},
		{"-thermometer|50 C deg", "-thermometer: "},
		{"-efficiency|130 %", "-efficiency: efficiency 130 % is outside"},
		{"-efficiency|0 %", "-efficiency: efficiency 0 % is outside"},
		{"-moisture|300 %", "-moisture: "},
		{"-wood|fir", "-wood: \"fir\" is not known"},
		{"stray", `"stray": a number is missing; write it as 40 US gal 2.1 at 41 F`}, {"-nosuch", "no such flag"},
	} {
		cases = append(cases, clitest.Bad{Args: strings.Split(c.args, "|"), Want: c.want})
	}
	for _, c := range []struct{ file, want string }{
		{"", "-: the file is empty"},
		{head + strings.Repeat("10:00,lane,6,2.0,41\n", 1001), "-: more than 1000 gatherings"},
		{head + strings.Repeat("10:00,lane,60000,2.0,41\n", 2), "-sap-file: all sap 120000 US gal (454200 L) is outside"},
		{head + "10:00,\x1b[31m,60,2.0,41\n", "-:2: column source: \"\\x1b[31m\" has a character that cannot be printed"},
		{head, "-: no gathering below the header"},
		{head + "10:00,lane,60,2.0\n", "-:2: 4 cells where the header names 5 columns"},
		{head + "10:00,lane,60,2.0,41\n10:30,lane,sixty,2.0,41\n", `-:3: column volume_us_gal: "sixty" is not a plain number`},
		{head + "10:00,lane,-60,2.0,41\n", "-:2: column volume_us_gal: a gathering holds more than nothing"},
		{head + "10:00,lane,60,66,41\n", "-:2: column reading_brix: sap"},
		{head + "10:00,lane,60,2.0,412\n", "-:2: column reading_brix: temperature"},
		{head + "noon,lane,60,2.0,41\n", `-:2: column time: "noon" is not a time such as 15:04`},
		{"time,volume_gal,reading_brix,read_at_f\n", "-:1: column volume_gal: no unit that is known"},
	} {
		cases = append(cases, clitest.Bad{Args: []string{"-sap-file", "-"}, Stdin: c.file, Want: c.want})
	}
	return cases
}
