package folder

import (
	"fmt"
	"regexp"
	"strconv"
	"time"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// Slips that look like numbers are asked back: a figure that hardly any tree,
// day or pan has, and that another unit or a lost point explains. What is meant
// all the same is written with its unit in the cell, and then taken as it is. The
// bounds are our own.

// An asking returns what to ask back of a bare number, in the unit of its
// column on a day (zero where the row has none), or nothing.
type asking func(c *column, x float64, on time.Time) string

// meant is how a strange figure is confirmed.
func meant(x float64, unit string) string {
	return fmt.Sprintf("write %s %s in the cell if it is so", digits(x), unit)
}

// stout asks back a trunk of more than 12 ft round, or 4 ft through.
func stout(c *column, x float64, _ time.Time) string {
	most := 144.0
	if len(c.name) >= 3 && c.name[:3] == "dbh" {
		most = 48
	}
	if c.out.suffix != "in" || x <= most {
		return ""
	}
	return fmt.Sprintf("%s in? that is %s ft: for %[1]s cm write %[1]s cm; %[3]s", digits(x), strconv.FormatFloat(x/12, 'f', 0, 64), meant(x, "in"))
}

// low asks back a hole under a foot from the ground.
func low(c *column, x float64, _ time.Time) string {
	if c.out.suffix != "in" || x >= 12 {
		return ""
	}
	return fmt.Sprintf("a hole %s in above the ground? for %[1]s ft write %[1]s ft; %[2]s", digits(x), meant(x, "in"))
}

func shortYear(_ *column, x float64, _ time.Time) string {
	if err := yearWithin(x); err != nil {
		return err.Error()
	}
	return ""
}

// sweetSap asks back sap of more than 12 Brix: 21 for 2.1. Membrane concentrate
// is written with its unit.
func sweetSap(_ *column, x float64, _ time.Time) string {
	if x <= 12 {
		return ""
	}
	return fmt.Sprintf("sap of %s Brix? it is 1 to 4: is a point lost? %s", digits(x), meant(x, "Brix"))
}

// whichScale asks back a reading of syrup that is Baume as likely as Brix: hot
// syrup floats a hydrometer at 31.5 Be, cold at 36. Where header or settings name
// the scale there is no doubt.
func whichScale(c *column, x float64, _ time.Time) string {
	if c.scaled || x < 20 || x > 45 {
		return ""
	}
	return fmt.Sprintf("%s Brix or Baume? write %[1]s Be or %[1]s Brix in the cell", digits(x))
}

// frozen asks back a cup that would be ice.
func frozen(c *column, x float64, _ time.Time) string {
	if c.out.suffix != "f" || x >= 25 {
		return ""
	}
	return fmt.Sprintf("sap in the cup at %s F? it would be ice: for %[1]s C write %[1]s C; %[2]s", digits(x), meant(x, "F"))
}

// sapCup asks back also what is far warmer than sap is read.
func sapCup(c *column, x float64, on time.Time) string {
	switch celsius := c.out.suffix == "c"; {
	case celsius && x > 32:
		return fmt.Sprintf("sap in the cup at %s C? for %[1]s F write %[1]s F; %[2]s", digits(x), meant(x, "C"))
	case !celsius && x > 90:
		return fmt.Sprintf("sap in the cup at %s F? is a figure wrong? %s", digits(x), meant(x, "F"))
	}
	return frozen(c, x, on)
}

// heat asks back a summer's heat in spring, and air that no place has.
func heat(c *column, x float64, on time.Time) string {
	f, unit := x, "F"
	if c.out.suffix == "c" {
		f, unit = units.Celsius(x).Fahrenheit(), "C"
	}
	switch _, runs := early(on, c.south); {
	case !runs || f <= 90:
		return ""
	case unit == "C":
		return fmt.Sprintf("%s C in %s? for %[1]s F write %[1]s F; %[3]s", digits(x), on.Month(), meant(x, unit))
	}
	return fmt.Sprintf("%s F in %s? is a figure wrong? %s", digits(x), on.Month(), meant(x, unit))
}

// early is the month of a day as the north counts it, and whether sap may run in it:
// from January to April, in the south from July to October.
func early(on time.Time, south bool) (month time.Month, runs bool) {
	month = on.Month()
	if south {
		month -= 6
	}
	return month, !on.IsZero() && month >= time.January && month <= time.April
}

// grouped is a thousand as it is written where commas are decimal, 1.200. Where
// semicolons part the cells it may as well be a volume with three decimals; but what the
// programs write does not end in a nought.
var grouped = regexp.MustCompile(`^[1-9][0-9]{0,2}\.[0-9]{2}0$`)

// A course of years watches the dates of a file, whose rows follow each other
// more or less: a row whose neighbors agree on another year, and a last one far
// from the one before.
type course struct {
	years  [2]int // of the two rows before
	line   int    // of the row before
	latest int
	season int // that is asked for: there is no doubt of it
}

// farAhead is how many years a place may rest before the year is asked back.
const farAhead = 5

func (c *course) row(file, column string, year, line int) (err error) {
	if c.years[0] == year && c.years[1] != year && c.years[1] != 0 {
		err = &records.Error{File: file, Line: c.line, Column: column, Err: fmt.Errorf("a day of %d between days of %d? check the year, or let the rows follow each other", c.years[1], year)}
	}
	c.latest = max(c.latest, year)
	c.years, c.line = [2]int{c.years[1], year}, line
	return err
}

func (c *course) end(file, column string) error {
	before, last := c.years[0], c.years[1]
	if before == 0 || last >= before && (last-before <= farAhead || last == c.season) {
		return nil
	}
	if last > before {
		return &records.Error{File: file, Line: c.line, Column: column, Err: fmt.Errorf("a day of %d behind days of %d? check the year; if it is so, say -season %[1]d until a second row stands there", last, before)}
	}
	return &records.Error{File: file, Line: c.line, Column: column, Err: fmt.Errorf("a day of %d behind days of %d? check the year, or let the rows follow each other", last, before)}
}
