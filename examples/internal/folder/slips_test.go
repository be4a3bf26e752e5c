package folder

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"
	"time"
)

// daily returns a weather file of a spring: 40 days from January 1, all alike.
func daily(header, row string) string { return header + "\n" + spell(40, time.January, row) }

// spell returns rows of some days from the first of a month, which have these lows and
// highs in turn.
func spell(days int, month time.Month, rows ...string) string {
	var b strings.Builder
	for d := range days {
		fmt.Fprintf(&b, "%s,%s\n", time.Date(2034, month, 1+d, 0, 0, 0, 0, time.UTC).Format(time.DateOnly), rows[d%len(rows)])
	}
	return b.String()
}

// A slip that looks like a number is asked back at its place, and what is meant
// all the same is taken where the cell carries its unit.
func TestSlips(t *testing.T) {
	const trees, holes, days, weather = "tree,girth_in,species,vigor\n", "tree,year,bearing_deg,height_in\n", "date,sap_gal,sugar_brix,read_at_f\n", "date,tmin_f,tmax_f\n"
	const batches = "batch,date,volume_gal,reading_brix\n"
	for _, c := range []struct{ name, file, slip, want, meant string }{
		{"girth", TreesFile, trees + "G1,152,,\n", "trees.csv:2: column girth_in: 152 in? that is 13 ft: for 152 cm write 152 cm", trees + "G1,152 in,,\n"},
		{"dbh", TreesFile, "tree,dbh_in\nG1,60\n", "trees.csv:2: column dbh_in: 60 in? that is 5 ft", "tree,dbh_in\nG1,60 cm\n"},
		{"hole height", HolesFile, holes + "G1,2034,90,4\n", "holes.csv:2: column height_in: a hole 4 in above the ground? for 4 ft write 4 ft", holes + "G1,2034,90,4 ft\n"},
		{"short year", HolesFile, holes + "G1,33,90,40\n", "holes.csv:2: column year: the year 33? write all of it, as 2033", holes + "G1,2033,90,40\n"},
		{"short date", DaysFile, days + "3/13/33,,,\n", `days.csv:2: column date: "3/13/33": the year 33? write all of it, as 2033`, days + "3/13/2033,,,\n"},
		{"short ISO date", DaysFile, days + "33-3-13,,,\n", "the year 33?", days + "2033-3-13,,,\n"},
		{"sweet sap", DaysFile, days + "2034-03-10,40,21,44\n", "days.csv:2: column sugar_brix: sap of 21 Brix? it is 1 to 4: is a point lost?", days + "2034-03-10,40,21 Brix,44\n"},
		{"frozen cup", DaysFile, days + "2034-03-10,40,2.1,6\n", "days.csv:2: column read_at_f: sap in the cup at 6 F? it would be ice: for 6 C write 6 C", days + "2034-03-10,40,2.1,6 C\n"},
		{"hot cup", DaysFile, days + "2034-03-10,40,2.1,113\n", "days.csv:2: column read_at_f: sap in the cup at 113 F? is a figure wrong? write 113 F in the cell if it is so", days + "2034-03-10,40,2.1,113 F\n"},
		{"hot cup in C", DaysFile, "date,sap_gal,sugar_brix,read_at_c\n2034-03-10,40,2.1,41\n", "days.csv:2: column read_at_c: sap in the cup at 41 C? for 41 F write 41 F", "date,sap_gal,sugar_brix,read_at_c\n2034-03-10,40,2.1,41 F\n"},
		{"hot March", WeatherFile, weather + "2034-03-10,25,113\n", "weather.csv:2: column tmax_f: 113 F in March? is a figure wrong? write 113 F in the cell if it is so", weather + "2034-03-10,25,113 F\n"},
		{"hot March in C", WeatherFile, "date,tmin_c,tmax_c\n2034-03-10,-4,44\n", "44 C in March? for 44 F write 44 F", "date,tmin_c,tmax_c\n2034-03-10,-4,44 F\n"},
		{"hot July", WeatherFile, "", "", weather + "2034-07-10,70,97\n"},
		{"Celsius", WeatherFile, daily("date,tmin_f,tmax_f", "-4,8"), "weather.csv:2: no day of the spring of 2034 goes above 30 F: for Celsius name the columns tmin_c and tmax_c", daily("date,tmin_c,tmax_c", "-4,8")},
		{"a cold spring", WeatherFile, "", "", daily("date,tmin_f,tmax_f", "-4,8") + "2034-02-15,4,9 F\n"},
		// A week as sap has it in C, which in F would be one of hard frost in March.
		{"a week in Celsius", WeatherFile, weather + spell(7, time.March, "-6,7", "-4,9", "-8,2"), "weather.csv:2: all lows of the spring of 2034 lie from -8 to -4 F and all highs from 2 to 9 F: for Celsius name the columns tmin_c and tmax_c", weather + spell(6, time.March, "-6,7", "-4,9", "-8,2")},
		// In January hard frost is usual: a clear week of it swings 20 F, a
		// cloudy one 11 to 13, and that in C 8 to 11, 9.7 in the mean.
		{"a January in Celsius", WeatherFile, weather + spell(7, time.January, "-12,-2", "-6,2", "-10,1"), "weather.csv:2: all lows of the spring of 2034", weather + spell(7, time.January, "-12,8", "-6,14", "-2,18")},
		{"a cloudy week of frost", WeatherFile, "", "", weather + spell(8, time.January, "0,11", "3,14", "-4,9")},
		{"lows behind highs", WeatherFile, "date,tmax_f,tmin_f\n" + spell(7, time.March, "7,-6"), "all highs from 7 to 7 F", "date,tmax_f,tmin_f\n" + spell(7, time.March, "27,14")},
		{"frost that is meant", WeatherFile, "", "", weather + spell(7, time.March, "-6,7", "-4,9 F")},
		{"deep frost", WeatherFile, "", "", weather + spell(8, time.March, "-24,7", "-4,9")},
		{"a week without thaw", WeatherFile, "", "", weather + spell(8, time.March, "-14,-7", "-12,-3")},
		{"a mild March", WeatherFile, "", "", weather + spell(8, time.March, "20,29", "24,40")},
		{"Baume", BatchesFile, batches + "1,2034-03-10,1,31.5\n", "batches.csv:2: column reading_brix: 31.5 Brix or Baume? write 31.5 Be or 31.5 Brix in the cell", batches + "1,2034-03-10,1,31.5 Be\n"},
		{"a year between", DaysFile, "date\n2034-03-09\n2043-03-10\n2034-03-11\n", "days.csv:3: column date: a day of 2043 between days of 2034? check the year", "date\n2034-03-09\n2034-03-10\n2034-03-11\n"},
		{"a year behind", DaysFile, "date\n2034-03-09\n2043-03-10\n", "days.csv:3: column date: a day of 2043 behind days of 2034? check the year", "date\n2034-03-09\n2037-03-10\n"},
		{"a year back", DaysFile, "date\n2034-03-09\n2033-03-10\n", "days.csv:3: column date: a day of 2033 behind days of 2034?", "date\n2033-03-10\n2034-03-09\n"},
		{"a pan and its filters", CostsFile, "", "", "date,what,cost,years\n2020-05-01,pan,4000,20\n2034-02-01,filters,60,1\n2021-10-01,arch,900,20\n2034-02-01,jars,80,1\n"},
		{"a thousand with a point", DaysFile, "date;sap_gal\n2034-03-09;1.200\n", `days.csv:2: column sap_gal: "1.200": a thousand, or a point for decimals? write 1200, or 1.200 with its unit`, "date;sap_gal\n2034-03-09;1.200 gal\n2034-03-10;1200\n2034-03-11;1.25\n2034-03-11;37.854\n2034-03-12;0.125\n"},
		{"a thousand among tabs", DaysFile, "date\tsap_gal\n2034-03-09\t1,200\n", `days.csv:2: column sap_gal: "1,200": a thousand or a decimal comma? write 1200 or 1.200`, "date\tsap_gal\n2034-03-09\t1,25\n2034-03-10\t1200\n"},
		{"a long fire", DaysFile, "date,lit,out\n2034-03-09,2pm,10am\n", "days.csv:2: column out: a fire of 20 hours?", "date,lit,out\n2034-03-09,2pm,10pm\n"},
		{"a deep dip", DaysFile, "date,tank,dip_in\n2034-03-09,big,122\n", "days.csv:2: column dip_in: that deep the tank would hold 305 US gal, and the settings say 120 US gal", "date,tank,dip_in\n2034-03-09,big,12.2\n"},
	} {
		t.Run(c.name, func(t *testing.T) {
			if c.slip != "" {
				if _, err := house(c.file, c.slip); err == nil || !strings.Contains(err.Error(), c.want) {
					t.Errorf("got %v\nwant %s", err, c.want)
				}
			}
			if _, err := house(c.file, c.meant); err != nil {
				t.Errorf("refused what is meant: %v", err)
			}
		})
	}
}

// Summer is in January in the south, where July is what January is in the north: only
// there is heat asked back.
func TestSouthernHeat(t *testing.T) {
	for day, ask := range map[string]bool{"2034-01-10": false, "2034-08-10": true, "2034-12-10": false} {
		files := fstest.MapFS{SettingsFile: {Data: []byte("spring: second half of the year\n")}, WeatherFile: {Data: []byte("date,tmin_c,tmax_c\n" + day + ",18,36\n")}}
		if _, err := Open(files, "", 0); (err != nil) != ask {
			t.Errorf("%s: %v", day, err)
		}
	}
}

// A place may rest for longer than a slip is asked back: then the season is said.
func TestLongRest(t *testing.T) {
	files := fstest.MapFS{SettingsFile: {Data: []byte("gallons: US\n")}, DaysFile: {Data: []byte("date\n2026-03-09\n2034-03-10\n")}}
	if _, err := Open(files, "", 0); err == nil || !strings.Contains(err.Error(), "check the year; if it is so, say -season 2034 until a second row stands there") {
		t.Error(err)
	}
	if _, err := Open(files, "", 2034); err != nil {
		t.Error(err)
	}
	if _, err := Open(files, "", 2033); err == nil {
		t.Error("a slip passed for the sake of another season")
	}
}

// What is malformed is refused at its place with the way out.
func TestRefused(t *testing.T) {
	for _, c := range []struct{ name, file, text, want string }{
		{"order not settled", DaysFile, "date\n3/10/2034\n3/11/2034\n", "days.csv:2: column date: \"3/10/2034\": month or day first? no date of the file tells: write it as 2034-03-10\ndays.csv:3: column date: "},
		{"two orders", DaysFile, "date\n3/13/2034\n14/3/2034\n", `days.csv:2: column date: "3/13/2034": some dates of the file have the month first and some the day`},
		{"no such day", DaysFile, "date\n2034-02-30\n", `days.csv:2: column date: "2034-02-30": there is no such day`},
		{"which number is the year", DaysFile, "date\n30-3-28\n", `days.csv:2: column date: "30-3-28": which is the year? write it as 2034-03-10`},
		{"a short year", DaysFile, "date\n34-3-10\n", `days.csv:2: column date: "34-3-10": the year 34? write all of it, as 2034`},
		{"no date", DaysFile, "date,sap_gal\n,40\n", "days.csv:2: column date: no date: write it as 2034-03-10"},
		{"no date column", DaysFile, "sap_gal\n40\n", "days.csv:1: no column for date: name it date"},
		{"far year", DaysFile, "date\n1034-03-10\n", "1034 is no year from 1900 to 2199"},
		{"empty file", DaysFile, "", "days.csv: the file is empty: its first line is date,tank,sap_gal"},
		{"words", DaysFile, "date,sap_gal\n2034-03-10,much\n", `"much": not a number with a unit: begin with a number, such as 60 or 7/16`},
		{"wrong unit", DaysFile, "date,sap_gal\n2034-03-10,40 lb\n", `"40 lb": unknown unit: use one of: `},
		{"no unit", DaysFile, "date,sap\n2034-03-10,40\n", "days.csv:2: column sap: 40 has no unit: write it as 60 gal, or name the column sap_gal"},
		{"unknown unit in the header", DaysFile, "date,sap_gl\n2034-03-10,40\n", "days.csv:1: column sap_gl: no unit that is known: name the column sap_us_gal"},
		{"misspelled column", DaysFile, "date,boild_gal\n2034-03-10,40\n", "days.csv:1: column boild_gal: is it boiled_gal?"},
		{"twice", DaysFile, "date,sap_gal,sap_l\n2034-03-10,40,1\n", "a second column for sap"},
		{"negative", DaysFile, "date,sap_gal\n2034-03-10,-40\n", "days.csv:2: column sap_gal: out of range"},
		{"clock", DaysFile, "date,lit\n2034-03-10,8\n", `days.csv:2: column lit: "8" is not a time of the day such as 14:30 or 2pm`},
		{"unknown tank", DaysFile, "date,tank,dip_in\n2034-03-10,small,12\n", `days.csv:2: column tank: "small" is no tank of sugarhouse.txt: write there "tank: small, 120 gallons, 2.5 gallons an inch"`},
		{"dip and sap", DaysFile, "date,tank,sap_gal,dip_in\n2034-03-10,big,30,12\n", "days.csv:2: column dip_in: a volume stands in the same row"},
		{"batch twice", BatchesFile, "batch,date,volume_gal\na,2034-03-10,1\nA,2034-03-11,1\n", "batches.csv:3: column batch: A stands in line 2 already"},
		{"no amount", BatchesFile, "batch,date,volume_gal,weight_lb\na,2034-03-10,,\n", "batches.csv:2: column volume_gal: give either the volume or the weight"},
		{"a drum not weighed empty", BatchesFile, "batch,date,gross_lb,tare_lb\na,2034-03-10,620,\n", "batches.csv:2: column gross_lb: a drum is weighed full and empty: give both gross and tare"},
		{"a drum without gross", BatchesFile, "batch,date,tare_lb\na,2034-03-10,50\n", "batches.csv:2: column gross: a drum is weighed full and empty"},
		{"a drum upside down", BatchesFile, "batch,date,gross_lb,tare_lb\na,2034-03-10,50,620\n", "are gross and tare the other way round?"},
		{"a drum and its volume", BatchesFile, "batch,date,volume_gal,gross_lb,tare_lb\na,2034-03-10,50,620,50\n", "give the drum's full and empty weight, or else the volume or the weight"},
		{"a drum below nothing", BatchesFile, "batch,date,gross_lb,tare_lb\na,2034-03-10,620,-1\n", "batches.csv:2: column tare_lb: out of range"},
		{"no batch", BottledFile, "date,batch,size,count\n2034-03-10,b,1 qt,3\n", `bottled.csv:2: column batch: no batch "b" in batches.csv`},
		{"half a jar", BottledFile, "date,batch,size,count\n2034-03-10,b,1 qt,1/2\n", "bottled.csv:2: column count: not a whole number from 1 to 1000000"},
		{"sap as syrup", SeasonsFile, "year,taps,syrup_us_gal\n2029,50,1250\n", "seasons.csv:2: column syrup_us_gal: syrup of a tap 25 US gal is outside 0 to 2 US gal: give the syrup and not the sap"},
		{"a short year", SeasonsFile, "year,taps,syrup_us_gal\n29,50,10\n", "seasons.csv:2: column year: "},
		{"no taps", SeasonsFile, "year,taps,syrup_us_gal\n2029,0,10\n", "seasons.csv:2: column taps: "},
		{"half a tap", SeasonsFile, "year,taps,syrup_us_gal\n2029,50.5,10\n", "seasons.csv:2: column taps: "},
		{"no syrup", SeasonsFile, "year,taps,syrup_us_gal\n2029,50,-1\n", "seasons.csv:2: column syrup_us_gal: out of range"},
		{"season twice", SeasonsFile, "year,taps,syrup_us_gal\n2029,50,10\n2029,50,11\n", "seasons.csv:3: column year: 2029 is given twice"},
		{"cells", DaysFile, "date,sap_gal\n2034-03-10,40,2\n", "days.csv:2: 3 cells where the header names 2 columns"},
		{"a quote", DaysFile, "date,note\n2034-03-10,\"open\n", "days.csv:2: "},
		{"not UTF-8", DaysFile, "date,note\n2034-03-10,\xff\n", "days.csv:2: column note: not text in UTF-8"},
		{"UTF-16", DaysFile, "\xff\xfed\x00a\x00", "days.csv:1: "},
	} {
		t.Run(c.name, func(t *testing.T) {
			if h, err := house(c.file, c.text); err == nil || !strings.Contains(err.Error(), c.want) {
				t.Errorf("got %v, %+v\nwant %s", err, h, c.want)
			}
		})
	}
	// The tank has its own gallons: the advice must not put others there.
	barrel := fstest.MapFS{SettingsFile: {Data: []byte("gallons: US\ntank: barrel, 30 gallons\n")}, DaysFile: {Data: []byte("date,tank,dip_in\n2034-03-10,barrel,12\n")}}
	if _, err := Open(barrel, "", 0); err == nil || !strings.Contains(err.Error(), `write it there behind what the tank holds, as ", 2.5 gallons an inch"`) {
		t.Errorf("a tank without a stick: %v", err)
	}
	bare := fstest.MapFS{DaysFile: {Data: []byte("date,sap_gal\n2034-03-10,40\n")}}
	if _, err := Open(bare, "", 0); err == nil ||
		!strings.Contains(err.Error(), "days.csv:1: column sap_gal: a US or an imperial gal? name the column sap_us_gal or sap_imp_gal, or write the line \"gallons: US\" in sugarhouse.txt") {
		t.Errorf("a gallon of no country: %v", err)
	}
}

// All mistakes of the folder are told at once, the first 20, in order.
func TestAllAtOnce(t *testing.T) {
	_, err := house(DaysFile, "date,sap_gal,lit\n2034-03-10,x,8\n2034-03-11,40,2pm\n2034-03-12,-1,9\n", BatchesFile, "batch,date\n"+strings.Repeat("a,2034-13-01\n", 30))
	lines := strings.Split(err.Error(), "\n")
	if len(lines) != 20 || !strings.HasPrefix(lines[0], "days.csv:2: column sap_gal") || !strings.HasPrefix(lines[1], "days.csv:2: column lit") ||
		!strings.HasPrefix(lines[2], "days.csv:4: column lit") || !strings.HasPrefix(lines[3], "batches.csv:2: ") || !strings.HasPrefix(lines[19], "batches.csv:18: ") {
		t.Errorf("%d lines\n%v", len(lines), err)
	}
}
