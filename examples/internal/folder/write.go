package folder

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"math"
	"regexp"
	"strconv"
	"strings"
	"time"

	"example.org/sapreckoner/units/records"
)

// Header is the first line of a file that is begun in this folder: in liters and
// Celsius where the settings are metric and name no gallon.
func (s *Settings) Header(file string) string {
	sp, _ := specOf(file)
	switch {
	case s.Gallon != 0:
		return sp.header
	case s.Metric:
		return inMetric(sp.header)
	}
	return strings.ReplaceAll(sp.header, "_gal", "_us_gal")
}

// A csvFile is one as it is written.
type csvFile struct {
	header []string // nil if there is none yet
	headed int      // line of the header
	rows   [][]string
	comma  rune
	point  string // before the decimals
	ends   string // of a line
	slash  bool   // the last date stands with slashes
}

// begin parts a file into its rows.
func begin(file string, content []byte) (*csvFile, error) {
	t := &csvFile{comma: ',', point: ".", ends: "\n", headed: 1}
	if bytes.Contains(content, []byte("\r\n")) {
		t.ends = "\r\n"
	}
	r, err := records.Open(file, bytes.NewReader(content))
	if err == io.EOF {
		return t, nil
	}
	if err != nil {
		return nil, err
	}
	t.header, t.headed, t.comma = trimmed(r.Cells()), r.Line(), r.Comma()
	if t.comma == ';' {
		t.point = ","
	}
	r.AllowShort()
	for {
		err := r.Next()
		if err == io.EOF {
			return t, nil
		}
		row := trimmed(r.Cells())
		if err != nil && (r.Broken() || strings.Join(row, "") != "") {
			return nil, err
		}
		if strings.Join(row, "") == "" {
			continue
		}
		for _, cell := range row {
			if t.comma != ',' && decimal.MatchString(cell) {
				t.point = string(cell[strings.IndexAny(cell, ",.")])
			}
		}
		t.rows = append(t.rows, row)
	}
}

var decimal = regexp.MustCompile(`^-?[0-9]+[.,][0-9]+$`)

func trimmed(cells []string) []string {
	out := make([]string, len(cells))
	for i, c := range cells {
		out[i] = strings.TrimSpace(c)
	}
	return out
}

// line writes cells as a line of the file, without its end.
func (t *csvFile) line(cells []string) string {
	out := make([]string, len(cells))
	for i, cell := range cells {
		if strings.ContainsAny(cell, "\"\r\n"+string(t.comma)) || strings.HasPrefix(cell, "#") || cell == "" && len(cells) == 1 {
			cell = `"` + strings.ReplaceAll(cell, `"`, `""`) + `"`
		}
		out[i] = cell
	}
	return strings.Join(out, string(t.comma))
}

// with is the file with lines behind its end.
func (t *csvFile) with(old []byte, lines []string) []byte {
	out := bytes.Clone(old)
	if n := len(out); n > 0 && out[n-1] != '\n' && !bytes.Equal(out, []byte("\xef\xbb\xbf")) {
		out = append(out, t.ends...)
	}
	for _, line := range lines {
		out = append(out, line+t.ends...)
	}
	return out
}

// A lineWriter writes rows as a file has them.
type lineWriter struct {
	*csvFile
	file  string
	s     *Settings
	sp    spec
	order dateOrder
	cols  []written
	dated string // the column of the date
}

// written is a column that is written to.
type written struct {
	*column
	base string // its name without the unit
}

func (h *House) writer(sp spec, t *csvFile, order dateOrder) (*lineWriter, error) {
	w := &lineWriter{csvFile: t, file: h.Shown(sp.name), s: &h.Settings, sp: sp, order: order}
	for i, name := range lower(t.header) {
		c, base := sp.column(name)
		if err := c.bind(w.s, base); err != nil {
			return nil, &records.Error{File: w.file, Line: t.headed, Column: name, Err: err}
		}
		if base == "" {
			base = name
		}
		w.cols = append(w.cols, written{c, base})
		if c.kind == dateCell && w.dated == "" {
			w.dated = base
			if n := len(t.rows); n > 0 && i < len(t.rows[n-1]) {
				t.slash = slashed.MatchString(t.rows[n-1][i])
			}
		}
	}
	return w, nil
}

// put writes a cell: a quantity in the unit of the header, if it is read there as it
// is meant, and else with its own.
func (c written) put(w *lineWriter, text string, on time.Time) (string, error) {
	read := func(cell string) (string, error) {
		return c.cell(w.s, w.order, cell, w.comma, on)
	}
	switch c.kind {
	case asWritten:
		return text, nil
	case dateCell:
		return w.date(text, read)
	case clockCell:
		return read(text)
	}
	if _, bare := plain(text); bare || len(c.kind.units) == 0 {
		cell := w.pointed(text)
		_, err := read(cell)
		return cell, err
	}
	base, err := c.kind.own(w.s, text)
	if err == nil && (math.IsNaN(base) || math.IsInf(base, 0)) {
		err = errors.New("the number is too large")
	}
	if err != nil {
		return "", err
	}
	x := base
	switch {
	case c.kind == woodCell && c.name == c.base && w.s.Measure.Wood > 0:
		x = base / float64(w.s.Measure.Wood)
	case c.out.in != nil:
		x = c.out.in(base)
	}
	cell := w.pointed(fiveDigits(x))
	if back, err := read(cell); err == nil && c.out.in != nil {
		got, err := strconv.ParseFloat(back, 64)
		if want := c.out.in(base); err == nil && math.Abs(got-want) <= 1e-4*math.Abs(want) {
			return cell, nil
		}
	}
	cell = w.pointed(text)
	_, err = read(cell)
	return cell, err
}

// date writes a date as the last row of the file has it.
func (w *lineWriter) date(text string, read func(string) (string, error)) (string, error) {
	day, err := time.Parse(time.DateOnly, text)
	if err != nil {
		return "", fmt.Errorf("%q is not a date such as 2034-03-10", text)
	}
	if w.slash {
		for order, layout := range map[dateOrder]string{monthFirst: "1/2/2006", dayFirst: "2/1/2006"} {
			if cell := day.Format(layout); order == w.order {
				if back, err := read(cell); err == nil && back == text {
					return cell, nil
				}
			}
		}
	}
	_, err = read(text)
	return text, err
}

var betweenDigits = regexp.MustCompile(`([0-9])\.([0-9])`)

// pointed writes the decimals of a number as the file has them.
func (w *lineWriter) pointed(number string) string {
	if w.point == "," {
		return betweenDigits.ReplaceAllString(number, "$1,$2")
	}
	return number
}

// fiveDigits writes a number to the five digits that no instrument of a sugarhouse
// goes beyond, and to all digits before the point.
func fiveDigits(x float64) string {
	if math.Abs(x) >= 1e5 {
		return strconv.FormatFloat(x, 'f', 0, 64)
	}
	r, err := strconv.ParseFloat(strconv.FormatFloat(x, 'g', 5, 64), 64)
	if err != nil {
		r = x
	}
	return strconv.FormatFloat(r, 'f', -1, 64)
}
