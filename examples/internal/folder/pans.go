package folder

import (
	"errors"
	"fmt"
	"regexp"
	"strings"
	"time"
	"unicode/utf8"

	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// liquidArea reads the area of the liquid in a pan or in a part of one.
func liquidArea(v string) (units.Area, error) {
	a, err := rectangle(strings.TrimSpace(v))
	if err == nil {
		err = limit.Within("", "area", a, 0.1*units.SquareFoot, 1e4*units.SquareFoot, units.SquareFoot, "ft2", "width times length of the liquid")
	}
	return a, err
}

func onePan(_ *Settings, v string) ([]string, error) {
	if strings.Contains(v, ",") {
		return nil, errors.New("a pan of several compartments is the setting compartments")
	}
	a, err := liquidArea(v)
	return one(squareFeet(a), err)
}

// manyPans reads the compartments: the texts are these and their sum.
func manyPans(_ *Settings, v string) ([]string, error) {
	var all []string
	var sum units.Area
	for _, part := range strings.Split(v, ",") {
		a, err := liquidArea(part)
		if err != nil {
			return nil, err
		}
		all = append(all, squareFeet(a))
		sum += a
	}
	return []string{strings.Join(all, ", "), squareFeet(sum)}, nil
}

// potRate reads what a pot boils off: the texts are the water's volume and its
// weight.
func potRate(s *Settings, v string) ([]string, error) {
	q, err := s.rate(v)
	if err == nil {
		err = limit.Within("", "rate", q, 0.01*units.USGallonPerHour, 1e3*units.USGallonPerHour, units.USGallonPerHour, "US gal/h", "measure how far the level of the pot falls in an hour")
	}
	if err != nil {
		return nil, err
	}
	// A US gallon of cold water weighs 8.33 lb (999 kg/m3 at 60 F).
	const water = 999 * units.KilogramPerCubicMeter
	pounds := water.Mass(q.Over(time.Hour)).Pounds()
	return []string{s.Spell(v), fmt.Sprintf("%.4g lb/h", pounds)}, nil
}

var ofAStick = regexp.MustCompile(`(?i)^(.+?)(?: an| a| per| to the| to an|/)\s*(inch|in|centimeter|centimetre|cm)$`)

// tank reads a tank: its name, what it holds, what an inch of the stick is. The
// text is what all tanks hold.
func tank(s *Settings, v string) ([]string, error) {
	parts := strings.Split(v, ",")
	for i := range parts {
		parts[i] = strings.TrimSpace(parts[i])
	}
	var t Tank
	if _, err := s.Volume(parts[0]); err != nil && parts[0] != "" && (parts[0][0] < '0' || parts[0][0] > '9') {
		t.Name, parts = parts[0], parts[1:]
	}
	if len(parts) == 0 || len(parts) > 2 {
		return nil, errors.New("write its name, what it holds and what an inch of the stick is: big, 120 gallons, 2.5 gallons an inch")
	}
	if utf8.RuneCountInString(t.Name) > 40 {
		return nil, fmt.Errorf("the name %q is longer than 40 characters", clip.Text(t.Name))
	}
	for _, other := range s.Tanks {
		if sameName(other.Name, t.Name) || other.Name == "" || t.Name == "" {
			return nil, errors.New("another tank has the same name: of several each needs a name of its own")
		}
	}
	var err error
	if t.Holds, err = s.Volume(parts[0]); err != nil {
		return nil, err
	}
	if err := limit.Within("", "tank", t.Holds, units.USGallon, 1e6*units.USGallon, units.USGallon, "US gal", "what it holds to the brim"); err != nil {
		return nil, err
	}
	if len(parts) == 2 {
		if t.ByInch, err = s.byInch(parts[1]); err != nil {
			return nil, err
		}
		deep := units.Length(float64(t.Holds/t.ByInch)) * units.Inch
		if err := limit.Within("", "depth of the full tank", deep, 4*units.Inch, 20*units.Foot, units.Inch, "in", "what it holds divided by what an inch holds: check both"); err != nil {
			return nil, err
		}
	}
	s.Tanks = append(s.Tanks, t)
	var sum units.Volume
	for _, t := range s.Tanks {
		sum += t.Holds
	}
	return []string{fmt.Sprintf("%.12g US gal", sum.USGallons())}, nil
}

// byInch reads what an inch of a stick is.
func (s *Settings) byInch(v string) (units.Volume, error) {
	m := ofAStick.FindStringSubmatch(v)
	if m == nil {
		return 0, fmt.Errorf("%q: write what an inch of the stick is, as 2.5 gallons an inch", clip.Text(v))
	}
	q, err := s.Volume(m[1])
	if err == nil && !(q > 0) {
		err = fmt.Errorf("%q: an inch holds more than nothing", clip.Text(v))
	}
	if strings.EqualFold(m[2][:1], "c") {
		q *= units.Volume(units.Inch / units.Centimeter)
	}
	return q, err
}

// cord reads the measure of wood.
func cord(s *Settings, v string) ([]string, error) {
	q, err := units.ParseVolume(v)
	if err == nil {
		err = limit.Within("", "wood", q, units.Cord/1000, 2*units.Cord, units.Cord, "cord", "a barrow is near 1/25 cord, a face cord a third")
	}
	s.Measure.Wood = q
	return nil, err
}

type stem int

const (
	sapStem stem = iota
	syrupStem
)

// marked reads the temperature printed on a hydrometer.
func marked(which stem) reader {
	return func(s *Settings, v string) ([]string, error) {
		for _, join := range []string{"marked", "at"} {
			if len(v) > len(join) && strings.EqualFold(v[:len(join)], join) {
				v = strings.TrimSpace(v[len(join):])
			}
		}
		t, err := units.ParseTemperature(v)
		if err == nil {
			err = limit.Within("", "graduation", units.TempDiff(t.Celsius()), 1, 40, 1, "C", "give the temperature printed on its scale, often 60 F or 68 F, 38 F for sap")
		}
		if which == sapStem {
			s.SapHydrometer = t
		} else {
			s.SyrupHydrometer = t
		}
		return one(v, err)
	}
}

// sign takes high or low off a correction: the sign is + for what an instrument
// shows too much.
func sign(v string) (size string, low bool, err error) {
	size = strings.TrimSpace(v)
	for _, way := range []string{"high", "low"} {
		if n := len(size) - len(way); n > 0 && strings.EqualFold(size[n:], way) {
			size = strings.TrimSpace(size[:n])
			if strings.ContainsAny(size[:1], "+-") {
				return "", false, fmt.Errorf("%q: a sign and %q say it twice: write one of them", clip.Text(v), way)
			}
			return size, way == "low", nil
		}
	}
	if !strings.ContainsAny(size[:1], "+-") {
		return "", false, fmt.Errorf("%q: say which way, as %s high or %[2]s low", clip.Text(v), clip.Text(size))
	}
	return size, false, nil
}

func thermometerOff(s *Settings, v string) ([]string, error) {
	size, low, err := sign(v)
	if err != nil {
		return nil, err
	}
	if !strings.HasSuffix(strings.ToLower(size), "deg") {
		size += " deg"
	}
	d, err := units.ParseTempDiff(size)
	if low {
		d = -d
	}
	_, err = within("", "error", d, err, -10*units.FahrenheitDegree, 10*units.FahrenheitDegree, units.FahrenheitDegree, "F deg", "a thermometer that is further off is not worth reading")
	s.ThermometerOff = d
	return nil, err
}

func hydrometerOff(s *Settings, v string) ([]string, error) {
	size, low, err := sign(v)
	if err != nil {
		return nil, err
	}
	b, err := units.ParseBrix(size)
	if low {
		b = -b
	}
	_, err = within("", "error", b, err, -5, 5, units.DegreeBrix, "Brix", "a hydrometer that is further off is not worth reading")
	s.HydrometerOff = b
	return nil, err
}
