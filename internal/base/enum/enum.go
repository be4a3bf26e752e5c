// Package enum gives the values of an enumeration their names, both ways.
package enum

import (
	"fmt"
	"slices"
	"strings"

	"example.org/sapreckoner/units"
)

// Names are the names of the values from zero on.
type Names[E ~uint8] struct {
	Type string       // the type, for errors, such as "boil.PanKind"
	Of   []string     // in the order of the values; empty for a value that is none
	Also map[string]E // further spellings that are read
	Zero bool         // whether no text at all is the zero value
}

// String returns the name, or the type and the number of a value that has none.
func (n *Names[E]) String(e E) string {
	if int(e) < len(n.Of) && n.Of[e] != "" {
		return n.Of[e]
	}
	_, short, _ := strings.Cut(n.Type, ".")
	return fmt.Sprintf("%s(%d)", short, uint8(e))
}

// Marshal returns the name, and an error for a value that has none. Where no
// text is the zero value, it has none and no error.
func (n *Names[E]) Marshal(e E) ([]byte, error) {
	if int(e) < len(n.Of) && (n.Of[e] != "" || n.Zero && e == 0) {
		return []byte(n.Of[e]), nil
	}
	return nil, n.unknown("MarshalText", n.String(e))
}

// Unmarshal reads a name in any case. It leaves e alone on error, and the error
// tells the nearest name.
func (n *Names[E]) Unmarshal(e *E, text []byte) error {
	s := strings.TrimSpace(string(text))
	if s == "" && n.Zero {
		*e = 0
		return nil
	}
	for i, name := range n.Of {
		if name != "" && strings.EqualFold(name, s) {
			*e = E(i)
			return nil
		}
	}
	for name, v := range n.Also {
		if strings.EqualFold(name, s) {
			*e = v
			return nil
		}
	}
	return n.unknown("UnmarshalText", string(text))
}

// List returns the values that have a name, in their order.
func (n *Names[E]) List() []E {
	list := make([]E, 0, len(n.Of))
	for i, name := range n.Of {
		if name != "" {
			list = append(list, E(i))
		}
	}
	return list
}

func (n *Names[E]) unknown(method, text string) error {
	names := slices.DeleteFunc(slices.Clone(n.Of), func(s string) bool { return s == "" })
	hint := "use one of: " + strings.Join(names, ", ")
	if near, ok := Nearest(text, slices.Values(names)); ok {
		hint = fmt.Sprintf("did you mean %q? Use one of: %s", near, strings.Join(names, ", "))
	}
	return &units.ParseError{Func: n.Type + "." + method, Input: text, Err: units.ErrName, Hint: hint}
}
