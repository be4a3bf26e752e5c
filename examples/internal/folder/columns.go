package folder

import (
	"errors"
	"fmt"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"time"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/units"
)

// A kind is what the cells of a column hold.
type kind struct {
	example string
	units   []unitOf // that a header may name; the first is that of a header that names none
	own     func(s *Settings, text string) (base float64, err error)
}

// A unitOf is a suffix of a header, and a number of the base unit in it.
type unitOf struct {
	suffix string
	in     func(base float64) float64
}

func per[Q ~float64](suffix string, size Q) unitOf {
	return unitOf{suffix, func(base float64) float64 { return base / float64(size) }}
}

// parsed reads a quantity that carries its unit.
func parsed[Q ~float64](parse func(string) (Q, error)) func(*Settings, string) (float64, error) {
	return func(_ *Settings, text string) (float64, error) {
		q, err := parse(text)
		return float64(q), err
	}
}

func liquidText(s *Settings, text string) (float64, error) {
	v, err := s.Volume(text)
	return float64(v), err
}

// The kinds. Those without units are handled by [column.cell].
var (
	asWritten  = &kind{}
	numberCell = &kind{example: "12 or 7/16"}
	dateCell   = &kind{example: "2034-03-10"}
	clockCell  = &kind{example: "14:30 or 2pm"}

	volumeCell = &kind{"60 gal", []unitOf{
		per("us_gal", units.USGallon), per("imp_gal", units.ImperialGallon), per("l", units.Liter), per("ml", units.Milliliter),
		per("us_qt", units.USQuart), per("us_pt", units.USPint), per("us_fl_oz", units.USFluidOunce),
		per("imp_qt", units.ImperialQuart), per("imp_pt", units.ImperialPint), per("imp_fl_oz", units.ImperialFluidOunce),
	}, liquidText}
	woodCell = &kind{"1/4 cord", []unitOf{per("cord", units.Cord), per("m3", units.CubicMeter)}, woodText}
	massCell = &kind{"24.5 lb", []unitOf{
		per("lb", units.Pound), per("kg", units.Kilogram), per("oz", units.Ounce), per("g", units.Gram),
	}, parsed(units.ParseMass)}
	lengthCell = &kind{"12 in", []unitOf{
		per("in", units.Inch), per("cm", units.Centimeter), per("ft", units.Foot), per("m", units.Meter), per("mm", units.Millimeter),
	}, parsed(units.ParseLength)}
	angleCell    = &kind{"90 deg", []unitOf{per("deg", units.Degree)}, parsed(units.ParseAngle)}
	brixCell     = &kind{"66.9 Brix or 36 Be", []unitOf{per("brix", units.DegreeBrix)}, brixText}
	shareCell    = &kind{"25 %", []unitOf{per("pct", units.Percent)}, parsed(units.ParseShare)}
	pressureCell = &kind{"29.4 inHg", []unitOf{
		per("inhg", units.InchMercury), per("hpa", units.Hectopascal), per("kpa", units.Kilopascal),
	}, parsed(units.ParsePressure)}
	warmthCell = &kind{"41 F", []unitOf{
		{"f", func(c float64) float64 { return units.Celsius(c).Fahrenheit() }},
		{"c", func(c float64) float64 { return c }},
	}, func(_ *Settings, text string) (float64, error) {
		t, err := units.ParseTemperature(text)
		return t.Celsius(), err
	}}
	hoursCell = &kind{"21.5 hours", []unitOf{
		{"h", func(h float64) float64 { return h }},
		{"min", func(h float64) float64 { return h * 60 }},
	}, func(_ *Settings, text string) (float64, error) {
		d, err := Hours(text)
		return d.Hours(), err
	}}
)

// brixText reads a strength, or degrees Baume: the Brix that the same stem shows.
func brixText(_ *Settings, text string) (float64, error) {
	if m := inBaume.FindStringSubmatch(text); m != nil {
		x, err := strconv.ParseFloat(m[1], 64)
		if err != nil {
			return 0, err
		}
		b, err := density.BrixFromBaume(density.Baume145(x))
		return float64(b), err
	}
	b, err := units.ParseBrix(text)
	return float64(b), err
}

var inBaume = regexp.MustCompile(`(?i)^([0-9]*\.?[0-9]+)\s*(?:deg\.?\s*|°\s*)?(?:be|bé|baume|baumé)\.?$`)

// woodText reads cords, or so many of the measure of the settings.
func woodText(s *Settings, text string) (float64, error) {
	if s.Measure.Name != "" && s.Measure.Wood > 0 {
		for _, name := range []string{s.Measure.Name + "s", s.Measure.Name} {
			if count, ok := cutFold(text, name); ok {
				x, ok := plain(count)
				if !ok {
					return 0, fmt.Errorf("%q is no number of %ss", clip.Text(count), s.Measure.Name)
				}
				return x * float64(s.Measure.Wood), nil
			}
		}
	}
	return liquidText(s, text) // also oil is counted there
}

// cutFold cuts a word off the end in any case.
func cutFold(text, word string) (before string, ok bool) {
	n := len(text) - len(word)
	if n <= 0 || !strings.EqualFold(text[n:], word) {
		return text, false
	}
	return strings.TrimSpace(text[:n]), true
}

// plain reads a number without unit: 12, 7.5, 7/16, 50 1/2, 50½.
func plain(text string) (float64, bool) {
	for half, written := range map[string]string{"½": " 1/2", "¼": " 1/4", "¾": " 3/4"} {
		text = strings.Replace(text, half, written, 1)
	}
	// The share is the one quantity whose unit can be lent to any number.
	p, err := units.ParseShare(strings.TrimSpace(text) + " %")
	return p.Percents(), err == nil
}

// A column is one of a file's header.
type column struct {
	name   string // as the file has it
	kind   *kind  // asWritten if the programs do not know it
	out    unitOf // in which its numbers are handed on
	handed string // its name with that unit
	bare   func(x float64) (string, error)
	scaled bool   // header or settings tell on which scale syrup is read
	asks   asking // what to ask back of a bare number; nil if nothing is
	south  bool   // spring is in the second half of the year
}

// bareVolumes are the suffixes that mean what the settings say.
var bareVolumes = []string{"gal", "qt", "pt", "fl_oz"}

// bind finds the unit of a column in the header.
func (c *column) bind(s *Settings, base string) error {
	suffix := strings.TrimPrefix(strings.TrimPrefix(c.name, base), "_")
	c.handed, c.south = c.name, s.South
	as := func(suffix string) {
		i := slices.IndexFunc(c.kind.units, func(u unitOf) bool { return u.suffix == suffix })
		c.out, c.handed = c.kind.units[i], base+"_"+suffix
	}
	unitless := func(ask string) func(float64) (string, error) {
		example := c.kind.example
		switch {
		case c.kind == volumeCell && s.Gallon != 0:
			ask = "gal" // which one, the settings tell
		case c.kind == volumeCell && s.Metric:
			example, ask = "60 L", "l"
		}
		return func(x float64) (string, error) {
			return "", fmt.Errorf("%s has no unit: write it as %s, or name the column %s_%s", digits(x), example, base, ask)
		}
	}
	same := func(x float64) (string, error) { return digits(x), nil }
	c.bare, c.scaled = same, s.Scale == BrixScale || suffix == "be" || suffix == "" && s.Scale != NoScale
	switch {
	case len(c.kind.units) == 0:
		return nil
	case base == "brix": // the name is the unit
		c.out = c.kind.units[0]
	case slices.ContainsFunc(c.kind.units, func(u unitOf) bool { return u.suffix == suffix }):
		as(suffix)
	case c.kind == volumeCell && slices.Contains(bareVolumes, suffix):
		switch s.Gallon {
		case units.USGallon:
			as("us_" + suffix)
		case units.ImperialGallon:
			as("imp_" + suffix)
		default:
			as("us_" + suffix)
			return fmt.Errorf("a US or an imperial %s? name the column %s_us_%s or %[2]s_imp_%[3]s, or write the line %q in %s", strings.ReplaceAll(suffix, "_", " "), base, suffix, "gallons: US", SettingsFile)
		}
	case c.kind == brixCell && suffix == "be" || c.kind == brixCell && suffix == "" && s.Scale == BaumeScale:
		as("brix")
		c.bare = func(x float64) (string, error) { return c.owned(s, digits(x)+" Be") }
	case c.kind == brixCell && suffix == "" && s.Scale == BrixScale:
		as("brix")
	case suffix != "":
		c.kind = asWritten // the person's own, or the reader tells which units it knows
	case c.kind == woodCell:
		as("cord")
		c.bare = func(x float64) (string, error) {
			if s.Measure.Wood == 0 {
				return "", fmt.Errorf("%s of what? write it as 1/4 cord, or tell the measure in %s, as %q", digits(x), SettingsFile, "barrow: 1/25 cord")
			}
			return digits(c.out.in(x * float64(s.Measure.Wood))), nil
		}
	default:
		as(c.kind.units[0].suffix)
		c.bare = unitless(c.kind.units[0].suffix)
	}
	return nil
}

// digits prints a number so that it is read back the same.
func digits(x float64) string { return strconv.FormatFloat(x, 'g', -1, 64) }

// owned hands on a cell that carries its own unit.
func (c *column) owned(s *Settings, text string) (string, error) {
	base, err := c.kind.own(s, text)
	if err == nil && math.IsInf(base, 0) {
		err = errors.New("the number is too large")
	}
	if err != nil {
		return "", err
	}
	return digits(c.out.in(base)), nil
}

// missing is what people and weather stations write for no figure.
const missing = "M"

// cell hands on a cell as a reader of plain numbers wants it.
func (c *column) cell(s *Settings, order dateOrder, text string, comma rune, on time.Time) (string, error) {
	switch c.kind {
	case asWritten:
		return text, nil
	case dateCell:
		return order.cell(text)
	}
	if text == "" || text == missing {
		return "", nil
	}
	if c.kind == clockCell {
		at, err := Clock(text)
		if err != nil {
			return "", err
		}
		return fmt.Sprintf("%02d:%02d", int(at.Hours()), int(at.Minutes())%60), nil
	}
	if comma == '\t' && thousand.MatchString(text) {
		return "", fmt.Errorf("%q: a thousand or a decimal comma? write %s or %s", text, strings.Replace(text, ",", "", 1), strings.Replace(text, ",", ".", 1))
	}
	if comma != ',' {
		if comma == ';' && c.kind == volumeCell && grouped.MatchString(text) {
			return "", fmt.Errorf("%q: a thousand, or a point for decimals? write %s, or %s with its unit", text, strings.Replace(text, ".", "", 1), text)
		}
		text = pointed(text)
	}
	x, isPlain := quick(text)
	if !isPlain {
		x, isPlain = plain(text)
	}
	switch {
	case !isPlain && c.kind == numberCell:
		return "", fmt.Errorf("%q is not a number such as %s", clip.Text(text), c.kind.example)
	case !isPlain:
		return c.owned(s, text)
	case c.asks != nil:
		if ask := c.asks(c, x, on); ask != "" {
			return "", errors.New(ask)
		}
	}
	if c.bare == nil {
		return text, nil
	}
	return c.bare(x)
}

// thousand is a number with a comma that tells either. Tabs part the cells where commas
// are decimal and where they are not.
var thousand = regexp.MustCompile(`^-?[1-9][0-9]{0,2},[0-9]{3}$`)

// pointed writes a decimal comma as a point.
func pointed(text string) string {
	if at := strings.IndexByte(text, ','); at >= 0 && strings.Count(text, ",") == 1 && !strings.Contains(text, ".") {
		return text[:at] + "." + text[at+1:]
	}
	return text
}

// quick reads the common number.
func quick(text string) (float64, bool) {
	if strings.Trim(text, "0123456789.-") != "" {
		return 0, false
	}
	x, err := strconv.ParseFloat(text, 64)
	return x, err == nil
}
