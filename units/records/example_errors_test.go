package records_test

import (
	"errors"
	"fmt"
	"strings"

	"example.org/sapreckoner/tapping/season"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

func weatherError(table string) error {
	_, err := season.ReadWeather(strings.NewReader(table))
	return err
}

func ExampleErrDuplicate() {
	err := weatherError("date,tmin_c,tmax_c\n2024-03-01,-5,4\n2024-03-01,-5,4\n")
	fmt.Println(errors.Is(err, records.ErrDuplicate), err)
	// Output: true line 3, column date: 2024-03-01: given twice
}

func ExampleErrOrder() {
	err := weatherError("date,tmin_c,tmax_c\n2024-03-02,-5,4\n2024-03-01,-5,4\n")
	fmt.Println(errors.Is(err, records.ErrOrder), err)
	// Output: true line 3, column date: 2024-03-01 after 2024-03-02: out of order
}

func ExampleRowError_Error() {
	fmt.Println(weatherError("date,tmin,tmax\n"))
	fmt.Println(weatherError("date,tmin_c,tmax_c\n1 March,-5,4\n"))
	// Output:
	// line 1, column tmin: no unit that is known: name the column tmin_f or tmin_c
	// line 2, column date: "1 March" is not a time such as 2006-01-02
}

// The reason is told in the units of the reader, and goes out as JSON with the
// range.
func ExampleRowError_Text() {
	err := weatherError("date,tmin_c,tmax_c\n2024-03-01,-9999,4\n")
	var row *records.RowError
	if errors.As(err, &row) {
		fmt.Println(row.Text(units.Metric))
		out, _ := row.MarshalJSON()
		fmt.Println(string(out))
		fmt.Println(new(records.RowError).UnmarshalJSON(out))
	}
	// Output:
	// line 2, column tmin_c: minimum -9999 C is outside -95 to 60 C: mind the unit; leave the cell empty where the station has no figure
	// {"line":2,"column":"tmin_c","reason":"minimum -17966.2 F (-9999 C) is outside -139 to 140 F (-95 to 60 C): mind the unit; leave the cell empty where the station has no figure","range":{"arg":"Day.Min","value":-9999,"low":-95,"high":60,"unit":"C","text":"minimum -17966.2 F (-9999 C) is outside -139 to 140 F (-95 to 60 C): mind the unit; leave the cell empty where the station has no figure","func":"season.Day","what":"minimum","hint":"mind the unit; leave the cell empty where the station has no figure"},"text":"line 2, column tmin_c: minimum -17966.2 F (-9999 C) is outside -139 to 140 F (-95 to 60 C): mind the unit; leave the cell empty where the station has no figure"}
	// <nil>
}

func ExampleError_Text() {
	var girth units.Length
	r, err := records.New("trees.csv", strings.NewReader("girth_in\nx\n"), records.Length("girth", &girth))
	fmt.Println(r.String(), err)
	var e *records.Error
	if errors.As(r.Next(), &e) {
		fmt.Println(e.Text(units.US))
		out, _ := e.MarshalJSON()
		fmt.Println(string(out))
		fmt.Println(e.UnmarshalJSON(out), e.Line)
	}
	_, err = r.MarshalJSON()
	fmt.Println(units.Reason(err, units.US), r.UnmarshalJSON(nil) != nil)
	col := records.Length("girth", &girth)
	_, err = col.MarshalJSON()
	fmt.Println(col.String(), "|", units.Reason(err, units.US), col.UnmarshalJSON(nil) != nil)
	// Output:
	// reader of trees.csv <nil>
	// trees.csv:2: column girth_in: "x" is not a plain number (the unit stands in the header)
	// {"file":"trees.csv","line":2,"column":"girth_in","reason":"\"x\" is not a plain number (the unit stands in the header)","text":"trees.csv:2: column girth_in: \"x\" is not a plain number (the unit stands in the header)"}
	// <nil> 2
	// it has no JSON: encode what was read true
	// girth_in or girth_cm or girth_ft or girth_m or girth_mm | it has no JSON: encode what was read true
}

// A figure out of range is a RangeError under the cell's name.
func ExampleRowError_Unwrap() {
	err := weatherError("date,tmin_c,tmax_c\n2024-03-01,-9999,4\n")
	fmt.Println(errors.Is(err, units.ErrRange))
	// Output: true
}
