package sweep

import (
	"encoding"
	"errors"
	"fmt"
	"reflect"
	"strings"

	"example.org/sapreckoner/units"
)

// text tells what is wrong with the text of a value.
func (s *sweeper) text(v reflect.Value) (broken []string) {
	typ := v.Type()
	say := func(format string, args ...any) { broken = append(broken, fmt.Sprintf(format, args...)) }
	switch typ.Kind() {
	case reflect.Float64:
		if !has(typ, stringer) {
			say("it prints as a bare number")
		}
		if !has(typ, textWriter) || !has(typ, textReader) {
			say("it has no text both ways")
		}
	case reflect.Uint8:
		broken = enumeration(typ)
	case reflect.Struct:
		if bare(typ) && !has(typ, stringer) && !has(typ, failure) {
			say("it prints as a raw struct: %+v", v)
		}
	}
	// What prints is short and has no number of more than 12 digits.
	p := reflect.New(typ)
	p.Elem().Set(v)
	if str, ok := p.Interface().(fmt.Stringer); ok {
		switch text := str.String(); {
		case len(text) > 300:
			say("it prints %d bytes: %.100s", len(text), text)
		case manyDigits(text):
			say("it prints more digits than mean something: %s", text)
		case strings.HasPrefix(text, "{") || strings.Contains(text, "0x"):
			say("it prints a raw struct: %s", text)
		}
	}
	return broken
}

// bare reports whether a struct has unexported fields.
func bare(typ reflect.Type) bool {
	for i := range typ.NumField() {
		if !typ.Field(i).IsExported() {
			return true
		}
	}
	return false
}

// manyDigits reports whether a text has more than 12 digits in a row, leading
// zeros and the point left out.
func manyDigits(text string) bool {
	n := 0
	for _, r := range text {
		switch {
		case r >= '1' && r <= '9' || r == '0' && n > 0:
			n++
		case r == '0' || r == '.':
		default:
			n = 0
		}
		if n > 12 {
			return true
		}
	}
	return false
}

// enumeration tells what is wrong with the names of the values of a type.
func enumeration(typ reflect.Type) (broken []string) {
	say := func(format string, args ...any) { broken = append(broken, fmt.Sprintf(format, args...)) }
	if !has(typ, stringer) || !has(typ, textWriter) || !has(typ, textReader) {
		return []string{"it has no names both ways: String, MarshalText and UnmarshalText"}
	}
	known := 0
	for i := range 256 {
		v := reflect.New(typ)
		v.Elem().SetUint(uint64(i))
		b, err := v.Interface().(encoding.TextMarshaler).MarshalText()
		if err != nil {
			continue
		}
		known++
		back := reflect.New(typ)
		if err := back.Interface().(encoding.TextUnmarshaler).UnmarshalText(b); err != nil || back.Elem().Uint() != uint64(i) {
			say("its name does not come back: %d is %q, which is %d, %v", i, b, back.Elem().Uint(), err)
		}
	}
	if known == 0 || known == 256 {
		say("%d values have a name", known)
	}
	v := reflect.New(typ)
	v.Elem().SetUint(255)
	err := v.Interface().(encoding.TextUnmarshaler).UnmarshalText([]byte("no such name"))
	var pe *units.ParseError
	if !errors.As(err, &pe) || !errors.Is(err, units.ErrName) || pe.Hint == "" || v.Elem().Uint() != 255 {
		say("an unknown name is not refused: it is %d, %v", v.Elem().Uint(), err)
	}
	return broken
}
