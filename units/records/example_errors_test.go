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

// A figure out of range is a RangeError under the cell's name.
func ExampleRowError_Unwrap() {
	err := weatherError("date,tmin_c,tmax_c\n2024-03-01,-9999,4\n")
	fmt.Println(errors.Is(err, units.ErrRange))
	// Output: true
}
