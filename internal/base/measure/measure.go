// Package measure gives text and JSON to numbers that name their convention: a
// specific gravity, a degree Baume, an absorbance.
package measure

import (
	"encoding/json"
	"errors"
	"math"
	"strconv"
	"strings"

	"example.org/sapreckoner/units"
)

// A Symbol is a unit and how many of the base unit it is.
type Symbol struct {
	Size float64
	Text string
	Also []string // further spellings that are read
}

// Of is a number type and its units, the base unit first.
type Of[Q ~float64] struct {
	Parse string   // the function that reads its text, for errors
	Units []Symbol // those that end in another one before it
}

// Read reads a number with its unit. A number without one is refused.
func (m *Of[Q]) Read(s string) (Q, error) {
	text := strings.Join(strings.Fields(strings.NewReplacer("°", " ", "º", " ").Replace(s)), " ")
	for _, u := range m.Units {
		for _, name := range append([]string{u.Text}, u.Also...) {
			n := len(text) - len(name)
			if n < 0 || !strings.EqualFold(text[n:], name) {
				continue
			}
			// The number alone is read as package units reads it.
			x, err := units.ParseShare(text[:n] + "%")
			q := Q(float64(x) * u.Size)
			if err == nil && math.IsInf(float64(q), 0) {
				err = &units.ParseError{Err: units.ErrRange, Hint: "the number is too large"}
			}
			if err == nil {
				return q, nil
			}
			if e := new(units.ParseError); errors.As(err, &e) && !errors.Is(err, units.ErrUnit) {
				return m.refuse(s, e.Err, e.Hint)
			}
		}
	}
	_, err := units.ParseShare(text)
	if e := new(units.ParseError); errors.As(err, &e) && !errors.Is(err, units.ErrUnit) && !errors.Is(err, units.ErrNoUnit) {
		return m.refuse(s, e.Err, e.Hint)
	} else if errors.Is(err, units.ErrNoUnit) {
		return m.refuse(s, units.ErrNoUnit, "write the unit behind the number, one of: "+m.symbols())
	}
	return m.refuse(s, units.ErrUnit, "use one of: "+m.symbols())
}

func (m *Of[Q]) symbols() string {
	s := make([]string, len(m.Units))
	for i, u := range m.Units {
		s[i] = u.Text
	}
	return strings.Join(s, ", ")
}

func (m *Of[Q]) refuse(input string, reason error, hint string) (Q, error) {
	return Q(math.NaN()), &units.ParseError{Func: m.Parse, Input: input, Err: reason, Hint: hint}
}

// String prints 12 significant digits.
func (m *Of[Q]) String(q Q) string {
	return strconv.FormatFloat(float64(q)+0, 'g', 12, 64) + " " + m.Units[0].Text
}

// Text prints the number with so many decimals.
func (m *Of[Q]) Text(q Q, decimals int) string {
	number, _, _ := strings.Cut(units.Share(q).Text(decimals), " ")
	return number + " " + m.Units[0].Text
}

// Marshal prints the number without loss. NaN and infinity are errors.
func (m *Of[Q]) Marshal(q Q) ([]byte, error) {
	if x := float64(q); math.IsNaN(x) || math.IsInf(x, 0) {
		_, err := m.refuse(strconv.FormatFloat(x, 'g', -1, 64), units.ErrRange, "only finite quantities can be written")
		return nil, err
	}
	b := strconv.AppendFloat(nil, float64(q), 'g', -1, 64)
	return append(append(b, ' '), m.Units[0].Text...), nil
}

// Unmarshal reads what Read reads and leaves q alone on error.
func (m *Of[Q]) Unmarshal(q *Q, text []byte) error {
	x, err := m.Read(string(text))
	if err == nil {
		*q = x
	}
	return err
}

// ToJSON prints the text in quotes, and null for NaN.
func (m *Of[Q]) ToJSON(q Q) ([]byte, error) {
	if math.IsNaN(float64(q)) {
		return []byte("null"), nil
	}
	text, err := m.Marshal(q)
	if err != nil {
		return nil, err
	}
	return json.Marshal(string(text))
}

// FromJSON reads what ToJSON prints. Null is NaN: not known.
func (m *Of[Q]) FromJSON(q *Q, b []byte) error {
	var s *string
	if err := json.Unmarshal(b, &s); err != nil {
		_, err := m.refuse(string(b), units.ErrNoUnit, "write a text with its unit, in quotes, or null for what is not known")
		return err
	}
	if s == nil {
		*q = Q(math.NaN())
		return nil
	}
	return m.Unmarshal(q, []byte(*s))
}
