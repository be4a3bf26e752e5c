package records_test

import (
	"fmt"
	"io"
	"strings"
	"time"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// An invented page of a log. The header names the units, and a cell that may be
// empty is then unknown.
func ExampleNew() {
	const page = `tree,day,sap_us_gal,reading_brix,air_f,note
ash row,2024-03-10,12.5,2.1,28,cold
ash row,2024-03-11,8,,41,
`
	var (
		tree string
		day  time.Time
		sap  units.Volume
		brix units.Brix
		air  units.Temperature
	)
	r, err := records.New("log.csv", strings.NewReader(page),
		records.Text("tree", &tree), records.Time("day", &day, time.DateOnly), records.Volume("sap", &sap),
		records.Brix("reading", &brix).Blank(), records.Temperature("air", &air).Optional())
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(r.Unasked(), r.Has("air"), r.Names("reading"))
	for {
		err := r.Next()
		if err == io.EOF {
			break
		}
		if err != nil {
			fmt.Println(err, r.Broken())
			continue
		}
		fmt.Println(r.Line(), tree, day.Format("Jan 2"), sap.Text(units.USGallon, 1), brix, air.Text(units.ScaleFahrenheit, 0))
	}
	// Output:
	// [note] true true
	// 2 ash row Mar 10 12.5 US gal 2.1 Brix 28 F
	// 3 ash row Mar 11 8.0 US gal NaN Brix 41 F
}

// A file may come with one column or with another: read the header first.
func ExampleOpen() {
	r, err := records.Open("trees.csv", strings.NewReader("girth_in,bearing_deg\n62,90\n"))
	if err != nil {
		fmt.Println(err)
		return
	}
	var girth units.Length
	var bearing units.Angle
	cols := []records.Col{records.Length("girth", &girth)}
	if r.Names("bearing") {
		cols = append(cols, records.Angle("bearing", &bearing))
	}
	if err := r.Bind(cols...); err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(r.Next(), girth.Text(units.Inch, 0), bearing.Text(units.Degree, 0))
	// Output: <nil> 62 in 90 deg
}

// What the caller finds wrong with a row is told at its place.
func ExampleReader_Fail() {
	var taps float64
	var r *records.Reader
	r, err := records.New("trees.csv", strings.NewReader("taps\n40\n"), records.Number("taps", &taps))
	if err != nil {
		fmt.Println(err)
		return
	}
	if err := r.Next(); err == nil && taps > 4 {
		fmt.Println(r.Fail("taps", fmt.Errorf("%v taps in one tree: check the row", taps)))
	}
	// Output: trees.csv:2: column taps: 40 taps in one tree: check the row
}

// Quantities are read in the unit of their column.
func ExampleMass() {
	var (
		weight  units.Mass
		water   units.Share
		weather units.Pressure
		fired   time.Duration
	)
	r, err := records.New("boils.csv", strings.NewReader("weight_lb,moisture_pct,barometer_inhg,fired_min\n11,20,29.92,90\n"),
		records.Mass("weight", &weight), records.Share("moisture", &water), records.Pressure("barometer", &weather), records.Hours("fired", &fired))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(r.Next(), weight.Text(units.Pound, 0), water, weather.Text(units.InchMercury, 2), fired)
	// Output: <nil> 11 lb 20 % 29.92 inHg 1h30m0s
}

// Callers who read from memory want the place without the name of a file.
func ExampleRow() {
	err := error(&records.Error{File: "log.csv", Line: 3, Column: "sap_us_gal", Err: fmt.Errorf("empty")})
	fmt.Println(err)
	fmt.Println(records.Row(err))
	// Output:
	// log.csv:3: column sap_us_gal: empty
	// line 3, column sap_us_gal: empty
}

// A spreadsheet of another country saves semicolons and decimal commas.
func ExampleReader_Comma() {
	var sap units.Volume
	r, err := records.New("day.csv", strings.NewReader("sap_l;note\n61,5;cold\n"), records.Volume("sap", &sap))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(r.Next(), sap.Text(units.Liter, 1), string(r.Comma()))
	// Output: <nil> 61.5 L ;
}

// People leave out the commas behind the last figure that they know.
func ExampleReader_AllowShort() {
	r, err := records.Open("days.csv", strings.NewReader("date,sap_us_gal,note\n2034-03-10,12\n2034-03-11,9,cold,too much\n"))
	if err != nil {
		fmt.Println(err)
		return
	}
	r.AllowShort()
	fmt.Println(r.Next(), len(r.Cells()))
	fmt.Println(r.Next())
	// Output:
	// <nil> 3
	// days.csv:3: 4 cells where the header names 3 columns
}
