package main

import (
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
	"example.org/sapreckoner/examples/internal/folder"
)

func badFlags() (cases []clitest.Bad) {
	for _, c := range []struct{ args, want string }{
		{"-volume|3 gal", `-volume: "3 gal": ambiguous unit: write "US gal" or "imp gal"`},
		{"-volume|-3 L", "-volume: more than nothing"},
		{"-volume|NaN L", "-volume"},
		{"-volume|1e9 L", "-volume: more than nothing and no more than 500 US gal"},
		{"-volume|0.5 mL", "-volume: all syrup"},
		{"-volume|3 L|-weight|3 kg", "-weight: says the same as -volume"},
		{"-weight|3", "-weight"},
		{"-weight|1e6 kg", "-weight: more than nothing"},
		{"-reading|66 Brix", "-reading: give -volume or -weight"},
		{"-volume|3 L|-reading|12 Brix", "-reading: syrup"},
		{"-volume|3 L|-reading|90 Brix", "-reading: "},
		{"-volume|3 L|-read-at|300 F", "-read-at: temperature"},
		{"-volume|3 L|-temp|300 F", "-temp: temperature"},
		{"-volume|3 L|-light|140 %", "-light: light transmission 140 % is outside"},
		{"-write", "-write: give the folder of your sugarhouse by -dir"},
		{"-day|March 5", "-day: write a date as 2034-03-11"},
		{"-batch|99-9", `-batch: no batch of batches.csv is called "99-9"`},
		{"-hydrometer|100 C", "-hydrometer: graduation 212 F (100 C) is outside"},
		{"-division|0 Brix", "-division: division 0 Brix is outside"},
		{"-thermometer|0 F deg", "-thermometer: error 0 F deg (0 C deg) is outside"},
		{"-thermometer|40 F", "-thermometer"},
		{"-calibration|9 Brix", "-calibration: uncertainty 9 Brix is outside"},
		{"-cup|300 F", "-cup: temperature"},
		{"-cup|211 F|-water-boils|200 F", "-cup: syrup boils at 207."},
		{"-pressure|30.10 inHg|-elevation|1500 ft", "-pressure: station pressure 30.1 inHg (101.9 kPa) is outside"},
		{"-target|80 Brix", "-target: target 80 Brix is outside 60 to 74"},
		{"-place|Atlantis", `-place: "Atlantis" is not known: use one of United States`},
		{"-water-boils|150 F", "-water-boils: boiling point of water"},
		{"-thin-with|66.5 Brix|-volume|1 L|-reading|69 Brix|-target|66.9 Brix", "-thin-with: it must be at least 1 Brix thinner"},
		{"-thin-temp|-5 C", "-thin-temp: temperature 23 F (-5 C) is outside"},
		{"-thin-light|0 %", "-thin-light: light transmission 0 % is outside"},
		{"-filter-at|5 C", "-filter-at: temperature 41 F (5 C) is outside"},
		{"-filter-each|0 L", "-filter-each: syrup"},
		{"-filter-each|2 L|-aid-dose|1 kg/m3", "says the same as"},
		{"-filter-keeps|30 US gal", "-filter-keeps: the filters would keep all"},
		{"-aid-dose|5000 kg/m3", "-aid-dose: dose 41.73 lb/US gal (5000 kg/m3) is outside"},
		{"-pack-at|191 F", "-pack-at: temperature 191 F (88.3 C) is outside 32 to 190 F (0 to 87.7 C): sources read advise 185 to 190 F"},
		{"-margin|40 %", "-margin: margin 40 % is outside"},
		{"-wall|300 F", "-wall: temperature"},
		{"-store|10 F", "-store: temperature"},
		{"-containers|", `-containers: "": write how many`},
		{"-containers|3 jars", `-containers: "3 jars": write how many of which label`},
		{"-containers|-1x1 US qt", "-containers"},
		{"-containers|3x1 qt", "ambiguous unit"},
		{"-containers|3x1 mL", "-containers: 1 mL: labels go from 5 mL to 60 L"},
		{"-containers|3x1 US qt, any 1 US qt", "-containers: 1 US qt: there is one of that name already"},
		{"-volume|1 US gal|-containers|at least 9x1 US gal", "-containers: lot"},
		{"-containers|at worst 9x1 US gal", "-containers: \"at worst 9x1 US gal\": write how many"},
		{"stray", `"stray": a number is missing; write it as 3 gal 67.8 at 66 F`},
		{"3|US|gal|67.8", "how warm is the cup?"},
		{"3|gal|67.8|at|66|F", "which gallon?"},
		{"67.8|at|66|F", "how much syrup?"},
		{"3|US|gal|35|at|66|F", "35 may be Brix or Baume"},
		{"3|US|gal|67.8|at|66|F|-volume|3 L", "-volume: the words behind"},
		{"-nosuch", "no such flag"},
	} {
		cases = append(cases, clitest.Bad{Args: strings.Split(c.args, "|"), Want: c.want})
	}
	return cases
}

func badFiles(t *testing.T) (cases []clitest.Bad) {
	const (
		can = "batch,volume_l,weight_kg,reading_brix,cup_f,temp_f,light_pct\n"
		jar = "container,on_hand,label_ml,brim_ml,empty_g,material\n"
	)
	for _, c := range []struct{ name, file, want string }{
		{folder.BatchesFile, can + "a,3,,66.9,60,60,50\nb,,,66,60,60,50\n", "batches.csv:3: column volume_l: give either the volume or the weight"},
		{folder.BatchesFile, can + "a,3,4,66.9,60,60,50\n", "batches.csv:2: column volume_l: give either"},
		{folder.BatchesFile, can + "a,-3,,66.9,60,60,50\n", "batches.csv:2: column volume_l: out of range"},
		{folder.BatchesFile, can + "a,,0,66.9,60,60,50\n", "batches.csv:2: column weight: more than nothing"},
		{folder.BatchesFile, can + "a,3,,6.69,60,60,50\n", "batches.csv:2: column reading: syrup"},
		{folder.BatchesFile, can + "a,3,,66.9,600,60,50\n", "batches.csv:2: column cup: temperature"},
		{folder.BatchesFile, can + "a,3,,66.9,60,600,50\n", "batches.csv:2: column temp: temperature"},
		{folder.BatchesFile, can + "a,3,,66.9,60,60,0\n", "batches.csv:2: column light: light transmission"},
		{folder.BatchesFile, "batch,volume_l,reading_brix,cup_f,temp_c\na,9,64,60,110\n", "batches.csv: "},
		{folder.BatchesFile, "batch,volume_l,reading_brix,cup_f,mold\na,9,,60,\n", "batches.csv:2: column reading: reading and temperature"},
		{folder.BatchesFile, "batch,volume_l,reading_brix,cup_f,mold\na,9,66,60,maybe\n", "batches.csv:2: column mold: write yes or no"},
		{folder.BatchesFile, "batch,volume_l,reading_brix,cup_f,mold\na,9,,,yes\n", "batches.csv: every can is marked moldy"},
		{folder.JarsFile, "container,label_ml,on_hand,at_least,at_most\nquart,946,9,5,4\n", "jars.csv:2: column at_least: no more than 4"},
		{folder.JarsFile, "container,label_ml,at_least\nquart,946,2.5\n", "jars.csv:2: column at_least: a whole number"},
		{folder.JarsFile, jar + "quart,2.5,946,1000,400,glass\n", "jars.csv:2: column on_hand: a whole number"},
		{folder.JarsFile, jar + "quart,2,946,900,400,glass\n", "jars.csv:2: column brim_ml: a container holds more"},
		{folder.JarsFile, jar + "quart,2,946,950,400,glass\n", "jars.csv: quart: brimful 0.251 US gal (0.95 L)"},
		{folder.JarsFile, jar + "quart,2,946,1000,0,glass\n", "jars.csv:2: column empty_g: an empty container"},
		{folder.JarsFile, jar + "quart,2,946,1000,400,clay\n", "jars.csv:2: column material: it is glass, steel or plastic"},
		{folder.JarsFile, jar + "quart,2,946,1000,400,glass\nQuart,2,900,,,\n", "jars.csv:3: column container: Quart: there is one of that name"},
		{folder.JarsFile, jar + "drum,2,946000,,,\n", "jars.csv:2: column label_ml: drum: labels go from"},
		{folder.PeopleFile, "name\nA\n", "people.csv:2: the file must have one of the columns"},
		{folder.PeopleFile, "name,taps,parts\nA,1,2\nA,1,2\n", "people.csv:3: column name: it stands there already"},
		{folder.PeopleFile, "name,taps,parts\nA,0,2\n", "people.csv: "},
		{folder.PeopleFile, "name,taps,taken_qt\nA,1,-2\n", "people.csv:2: column taken_us_qt: what one took"},
		{folder.PeopleFile, "name,taps\nA,1.5\n", "people.csv:2: column taps: a whole number"},
		{folder.PeopleFile, "name,taps\nA,-1\n", "people.csv:2: column taps: a whole number"},
		{folder.PeopleFile, "name,parts\nA,1e300\n", "people.csv:2: column parts: it goes from 0"},
		{folder.PeopleFile, "name,sugar_lb\nA,-4\n", "people.csv:2: column sugar_lb: sugar"},
		{folder.PeopleFile, "name,worked_h\nA,-1\n", "people.csv:2: column worked_h: "},
		{folder.PeopleFile, "name,worked_h\nA,0\n", "people.csv: "},
		{folder.PeopleFile, "name,worked_h\n" + strings.Repeat("A,1\n", 61), "people.csv:62: more than 60 rows"},
	} {
		dir, lot := "", []string{"-volume", "3 US gal"}
		if c.name == folder.BatchesFile {
			dir, lot = folderOf(t, c.file), nil
		} else {
			dir = clitest.Folder(t, map[string]string{c.name: c.file})
		}
		cases = append(cases, clitest.Bad{Args: append([]string{"-dir", dir}, lot...), Want: c.want})
	}
	return cases
}
