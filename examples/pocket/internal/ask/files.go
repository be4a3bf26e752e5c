package ask

import (
	"strconv"
	"strings"
	"time"

	"example.org/sapreckoner/units"
)

// readingsFile is the stamps as the record of a pot: time and what was shown.
func readingsFile(q *Request, _ time.Time) (string, error) {
	unit, head := units.ScaleFahrenheit, "time,shown_f"
	if q.Metric {
		unit, head = units.ScaleCelsius, "time,shown_c"
	}
	f := Form{request: q}
	out := head + "\n"
	for _, s := range q.Stamps {
		t, err := units.ParseTemperature(s.Shown)
		if err != nil {
			return "", err
		}
		x := t.Fahrenheit()
		if unit == units.ScaleCelsius {
			x = t.Celsius()
		}
		out += f.clockOf(s.At) + "," + plainNumber(x) + "\n"
	}
	return out, nil
}

// plainNumber is a figure as it was typed: nine digits hide the rounding of a
// change of unit.
func plainNumber(x float64) string { return strconv.FormatFloat(x, 'g', 9, 64) }

// daysFile is what was written down as lines of days.csv.
func daysFile(q *Request) (string, error) {
	head := "date,sap_us_gal,sugar_brix,read_at_f,syrup_us_gal,wood,note\n"
	volume, degrees := units.USGallon, units.Temperature.Fahrenheit
	if q.Metric {
		head = "date,sap_l,sugar_brix,read_at_c,syrup_l,wood,note\n"
		volume, degrees = units.Liter, units.Temperature.Celsius
	}
	var b strings.Builder
	b.WriteString(head)
	for _, e := range q.Entries {
		cells := []string{e.Day}
		for _, c := range []struct {
			text string
			read func(string) (float64, error)
		}{
			{e.Sap, func(s string) (float64, error) { v, err := units.ParseVolume(s); return v.In(volume), err }},
			{e.Reads, func(s string) (float64, error) { x, err := units.ParseBrix(s); return float64(x), err }},
			{e.Cold, func(s string) (float64, error) { t, err := units.ParseTemperature(s); return degrees(t), err }},
			{e.Syrup, func(s string) (float64, error) { v, err := units.ParseVolume(s); return v.In(volume), err }},
		} {
			cell := ""
			if c.text != "" {
				x, err := c.read(c.text)
				if err != nil {
					return "", err
				}
				cell = plainNumber(x)
			}
			cells = append(cells, cell)
		}
		burned, err := woodCell(e.Wood)
		if err != nil {
			return "", err
		}
		cells = append(cells, burned, quoted(strings.TrimSpace(e.Time+" "+e.Note)))
		b.WriteString(strings.Join(cells, ",") + "\n")
	}
	return b.String(), nil
}

// woodCell is wood as the folder reads it: a bare number of the measure that the
// settings name, or an amount with its unit.
func woodCell(text string) (string, error) {
	if text == "" {
		return "", nil
	}
	w, err := parseWood(text)
	if err != nil {
		return "", err
	}
	if w.volume > 0 {
		return plainNumber(w.volume.Cords()) + " cord", nil
	}
	return plainNumber(w.loads), nil
}

// quoted is a cell of a CSV file.
func quoted(text string) string {
	text = strings.Join(strings.Fields(text), " ")
	if strings.ContainsAny(text, `",`) {
		return `"` + strings.ReplaceAll(text, `"`, `""`) + `"`
	}
	return text
}
