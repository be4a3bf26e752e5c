package sweep

import (
	"encoding"
	"encoding/json"
	"fmt"
	"math"
	"reflect"
	"strings"
	"testing"
)

// Edges walks the exported types of the package in the working directory, with
// the values on the list, and holds each to the rules of text and JSON:
//
//   - it goes out as JSON and comes back whole, bit for bit, or refuses both ways
//     with a reason of its own;
//   - none is {}, and none loses a field;
//   - a type that reads JSON itself refuses {}, null, what is cut short, unknown
//     fields and missing ones, unless they can be reckoned from the others, and is
//     left alone on error; errors are not held to this;
//   - a number has text with a unit, null for NaN both ways, and refuses a bare
//     number;
//   - an enumeration has names both ways, and refuses an unknown one;
//   - a struct with unexported fields has a String.
//
// An exception is "Type: json" or "Type: text" in Package.Except. Types of
// functions and interfaces are passed over.
func Edges(t *testing.T, p Package) {
	s, src := sweeping(p), read(t)
	for _, name := range src.types {
		values := s.of(name)
		if len(values) == 0 {
			t.Errorf("%s is exported and not tried: put a value of it on the list", name)
			continue
		}
		failed := map[string]bool{}
		for _, v := range values {
			if !s.excepted(name, "json") {
				report(t, failed, name, s.json(v))
			}
			if !s.excepted(name, "text") {
				report(t, failed, name, s.text(v))
			}
		}
	}
	for name := range p.Except {
		if (strings.HasSuffix(name, ": json") || strings.HasSuffix(name, ": text")) && !s.used[name] {
			t.Errorf("the exception %q is not needed", name)
		}
	}
}

// report tells each thing that is wrong with a type once.
func report(t *testing.T, failed map[string]bool, name string, broken []string) {
	t.Helper()
	for _, b := range broken {
		what, _, _ := strings.Cut(b, ":")
		if !failed[what] {
			failed[what] = true
			t.Errorf("%s: %.600s", name, b)
		}
	}
}

// of returns the values of an exported type: those on the list without their
// pointer, each with its exported fields set besides.
func (s *sweeper) of(name string) (values []reflect.Value) {
	for _, v := range s.Values {
		r := reflect.ValueOf(v)
		if r.Kind() == reflect.Pointer && !r.IsNil() {
			r = r.Elem()
		}
		if ours(r.Type()) && typeName(r.Type()) == name {
			values = append(values, r)
			if full, ok := s.filled(r.Type(), 0); ok && r.Kind() == reflect.Struct && !reads(r.Type()) {
				values = append(values, full)
			}
		}
	}
	return values
}

var (
	jsonReader = reflect.TypeFor[json.Unmarshaler]()
	jsonWriter = reflect.TypeFor[json.Marshaler]()
	textReader = reflect.TypeFor[encoding.TextUnmarshaler]()
	textWriter = reflect.TypeFor[encoding.TextMarshaler]()
	stringer   = reflect.TypeFor[fmt.Stringer]()
)

// has reports whether a value of the type, or a pointer to it, has the methods.
func has(typ, methods reflect.Type) bool {
	return typ.Implements(methods) || reflect.PointerTo(typ).Implements(methods)
}

// reads reports whether the type reads JSON by itself.
func reads(typ reflect.Type) bool { return has(typ, jsonReader) || has(typ, textReader) }

// marshal encodes what v points to, so that methods of the pointer count.
func marshal(v reflect.Value) ([]byte, error) {
	p := reflect.New(v.Type())
	p.Elem().Set(v)
	return json.Marshal(p.Interface())
}

// json tells what is wrong with the JSON of a value.
func (s *sweeper) json(v reflect.Value) (broken []string) {
	typ := v.Type()
	say := func(format string, args ...any) { broken = append(broken, fmt.Sprintf(format, args...)) }
	b, err := marshal(v)
	if err != nil {
		switch {
		case !has(typ, jsonWriter) && !has(typ, textWriter):
			say("it cannot go out: %v", err)
		case json.Unmarshal([]byte("{}"), reflect.New(typ).Interface()) == nil:
			say("it refuses to go out and is read from {}: %v", err)
		}
		return broken
	}
	if string(b) == "{}" && typ.Kind() == reflect.Struct && typ.NumField() > 0 {
		say("it goes out as {}: %+v", v)
		return broken
	}
	back := reflect.New(typ)
	if err := json.Unmarshal(b, back.Interface()); err != nil {
		say("it does not come back: %s: %v", b, err)
	} else if at := differ(v, back.Elem(), 0, ""); at != "" {
		say("it loses something: %s came back with other %s", b, at)
	}
	if typ.Kind() == reflect.Float64 || typ == temperature {
		broken = append(broken, nullable(v)...)
	}
	if typ.Kind() != reflect.Struct || !has(typ, jsonReader) || typ == temperature {
		return broken
	}
	for _, text := range s.hostile(b, typ) {
		into := reflect.New(typ)
		into.Elem().Set(v)
		err := json.Unmarshal([]byte(text), into.Interface())
		fresh := reflect.New(typ) // what was there before makes nothing whole
		switch {
		case err == nil && json.Unmarshal([]byte(text), fresh.Interface()) == nil && (differ(v, fresh.Elem(), 1e-12, "") == "" || says(fresh.Elem(), text)): // whole all the same
		case err == nil:
			say("it reads what is not whole: %s", text)
		case differ(v, into.Elem(), 0, "") != "":
			say("it is not left alone on error: %s: %v", text, err)
		}
	}
	return broken
}

// says reports whether a value goes out as that object, and so took all of it.
func says(v reflect.Value, text string) bool {
	var want, got map[string]any
	b, err := marshal(v)
	return err == nil && json.Unmarshal(b, &got) == nil && json.Unmarshal([]byte(text), &want) == nil && reflect.DeepEqual(want, got)
}

// hostile lists what a type that reads JSON should refuse: b with a field less or
// more, in pieces, and other things.
func (s *sweeper) hostile(b []byte, typ reflect.Type) (texts []string) {
	if has(typ, failure) {
		return nil
	}
	texts = []string{"{}", "null", "[]", "1", "true", `"x"`, "{", "", `{"zz":1}`}
	for n := 1; n < len(b); n += 1 + len(b)/20 {
		texts = append(texts, string(b[:n]))
	}
	var fields map[string]json.RawMessage
	if json.Unmarshal(b, &fields) != nil {
		return texts
	}
	with := func(name, text string, gone bool) {
		changed := map[string]json.RawMessage{}
		for k, v := range fields {
			changed[k] = v
		}
		if delete(changed, name); !gone {
			changed[name] = json.RawMessage(text)
		}
		if out, err := json.Marshal(changed); err == nil {
			texts = append(texts, string(out))
		}
	}
	for name := range fields {
		with(name, "", true)
		with(name, `"1e400 kg"`, false)
		with(name, `{"zz":1}`, false)
	}
	with("zz", "1", false)
	return texts
}

// nullable tells whether NaN goes out as null, null comes in as NaN, and a bare
// number is refused.
func nullable(v reflect.Value) (broken []string) {
	typ := v.Type()
	nan := reflect.New(typ)
	if json.Unmarshal([]byte("null"), nan.Interface()) != nil || !hasNaN(nan.Elem()) {
		broken = append(broken, "null does not come in as NaN")
	} else if b, err := marshal(nan.Elem()); err != nil || string(b) != "null" {
		broken = append(broken, fmt.Sprintf("NaN does not go out as null: %s, %v", b, err))
	}
	for _, text := range []string{"1", `"1"`, `"1 no such unit"`, `"NaN"`, "{}"} {
		into := reflect.New(typ)
		into.Elem().Set(v)
		if json.Unmarshal([]byte(text), into.Interface()) == nil {
			broken = append(broken, "it reads a number without its unit: "+text)
		} else if differ(v, into.Elem(), 0, "") != "" {
			broken = append(broken, "it is not left alone on error: "+text)
		}
	}
	return broken
}

func hasNaN(v reflect.Value) bool {
	switch v.Kind() {
	case reflect.Float64:
		return math.IsNaN(v.Float())
	case reflect.Struct:
		return v.NumField() > 0 && hasNaN(v.Field(0))
	}
	return false
}
