package sweep

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"reflect"
	"slices"
	"strings"
	"testing"

	"example.org/sapreckoner/units"
)

// A hole is one place among the arguments of a function where NaN can stand.
type hole struct {
	arg   int
	index int      // in a list, or -1
	path  []int    // fields, from the argument or the entry inward
	names []string // by which a range error may call it, the best first
	whole string   // the type that the fields lead inward from
}

// contract checks what units.RangeError promises: NaN in one place, with good
// values in all others, is answered with the range of that place under its
// stable name. A function that has no use for what stands there answers as
// before; the other rules judge that.
func (s *sweeper) contract(t *testing.T, name string, f reflect.Value, method bool, params []string) {
	typ := f.Type()
	if _, method, _ := strings.Cut(name, "."); strings.HasPrefix(method, "Marshal") || strings.HasPrefix(method, "Unmarshal") {
		return // NaN is unknown there: see Edges
	}
	if n := typ.NumOut(); n == 0 || typ.Out(n-1) != failure || s.Few[name] == 0 && s.few(name) || s.excepted(name, "contract") {
		return
	}
	if method {
		params = append([]string{""}, params...)
	}
	if len(params) != typ.NumIn() {
		t.Errorf("%s: the source has the parameters %q, the function %d", name, params, typ.NumIn())
		return
	}
	open := false // whether there is a place for NaN at all
	for i := range typ.NumIn() {
		open = open || numeric(typ.In(i))
	}
	if !open {
		return
	}
	good, err := s.goodCall(f)
	if good == nil {
		t.Errorf("%s: no values on the list with which it succeeds: %v", name, err)
		return
	}
	for _, h := range holes(good, params) {
		if err := s.fill(f, good, h); err != "" && !s.excepted(name+"("+h.names[0]+")", "contract") {
			t.Errorf("%s with NaN for %s alone: %s", name, h.names[0], err)
		}
	}
}

func (s *sweeper) few(name string) bool { _, ok := s.Few[name]; return ok }

// numeric reports whether NaN can stand in a value of that type.
func numeric(typ reflect.Type) bool {
	switch {
	case typ == temperature || typ.Kind() == reflect.Float64:
		return true
	case typ.Kind() == reflect.Slice || typ.Kind() == reflect.Pointer:
		return typ.Elem() != typ && numeric(typ.Elem())
	case typ.Kind() == reflect.Struct:
		for i := range typ.NumField() {
			if f := typ.Field(i); f.IsExported() && f.Type.Kind() != reflect.Pointer && numeric(f.Type) {
				return true
			}
		}
	}
	return false
}

// goodCall looks for arguments without an error: those that are on the list,
// then any.
func (s *sweeper) goodCall(f reflect.Value) (args []reflect.Value, err error) {
	const tries = 3000
	typ := f.Type()
	lists := make([][]reflect.Value, typ.NumIn())
	for i := range lists {
		var wrong []reflect.Value
		for _, c := range s.candidates(typ.In(i)) {
			switch {
			case c.nan:
			case c.hostile == "":
				lists[i] = append(lists[i], c.value)
			default:
				wrong = append(wrong, c.value)
			}
		}
		if len(lists[i]) == 0 {
			lists[i] = wrong
		}
		if len(lists[i]) == 0 {
			return nil, fmt.Errorf("no value of type %v", typ.In(i))
		}
	}
	args = make([]reflect.Value, len(lists))
	r := rand.New(rand.NewPCG(15, uint64(len(lists))))
	for k := range tries {
		for i, list := range lists {
			args[i] = list[0]
			if k > 0 {
				args[i] = list[r.IntN(len(list))]
			}
		}
		if err = call(f, args); err == nil {
			return args, nil
		}
	}
	return nil, err
}

// call returns the error of a call.
func call(f reflect.Value, args []reflect.Value) (err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("panic: %v", r)
		}
	}()
	var out []reflect.Value
	if f.Type().IsVariadic() {
		out = f.CallSlice(args)
	} else {
		out = f.Call(args)
	}
	err, _ = out[len(out)-1].Interface().(error)
	return err
}

// holes lists the places for NaN in arguments of those names. The receiver has
// none.
func holes(args []reflect.Value, params []string) []hole {
	var list []hole
	for i, a := range args {
		within(a, hole{arg: i, index: -1}, params[i], &list)
	}
	return list
}

// within adds the places in v, which is called name.
func within(v reflect.Value, at hole, name string, list *[]hole) {
	typ := v.Type()
	add := func(names ...string) {
		at.names = names
		*list = append(*list, at)
	}
	switch {
	case typ == temperature || typ.Kind() == reflect.Float64:
		if name == "" { // a receiver
			name = typeName(typ)
		}
		add(name)
	case typ.Kind() == reflect.Pointer && !v.IsNil() && typ.Elem().Kind() == reflect.Struct:
		fields(v.Elem(), at, name, []string{""}, list)
	case typ.Kind() == reflect.Struct:
		fields(v, at, name, []string{""}, list)
	case typ.Kind() == reflect.Slice && v.Len() > 0:
		if name == "" { // a receiver
			name = typeName(typ)
		}
		at.index = v.Len() - 1
		entry := fmt.Sprintf("%s[%d]", name, at.index)
		switch of := typ.Elem(); {
		case of == temperature || of.Kind() == reflect.Float64:
			add(entry, name)
		case of.Kind() == reflect.Struct:
			fields(v.Index(at.index), at, entry, []string{""}, list)
		}
	}
}

// fields adds the places in the exported fields of v, a struct called name that
// is reached by the fields outer: one way, or another where a field has no name of
// its own and its fields are promoted.
func fields(v reflect.Value, at hole, name string, outer []string, list *[]hole) {
	typ := v.Type()
	if slices.Equal(outer, []string{""}) {
		at.whole = typeName(typ)
	}
	for i := range typ.NumField() {
		f := typ.Field(i)
		if !f.IsExported() {
			continue
		}
		in := at
		in.path = append(append([]int(nil), at.path...), i)
		var paths []string
		for _, o := range outer {
			paths = append(paths, o+"."+f.Name)
		}
		switch {
		case f.Type == temperature || f.Type.Kind() == reflect.Float64:
			in.names = []string{typeName(typ) + "." + f.Name}
			for _, path := range paths {
				in.names = append(in.names, strings.TrimPrefix(path, "."))
				if in.whole != typeName(typ) {
					in.names = append(in.names, in.whole+path)
				}
				if name != "" { // no receiver
					in.names = append(in.names, name+path)
				}
			}
			*list = append(*list, in)
		case f.Type.Kind() == reflect.Struct:
			if f.Anonymous {
				paths = append(paths, outer...)
			}
			fields(v.Field(i), in, name, paths, list)
		}
	}
}

// fill calls f with NaN in one place and tells what is wrong with the answer.
func (s *sweeper) fill(f reflect.Value, good []reflect.Value, h hole) (broken string) {
	args := append([]reflect.Value(nil), good...)
	a := reflect.New(args[h.arg].Type()).Elem()
	a.Set(args[h.arg])
	place := a
	switch {
	case a.Kind() == reflect.Pointer:
		place = reflect.New(a.Type().Elem())
		place.Elem().Set(a.Elem())
		a.Set(place)
		place = place.Elem()
	case h.index >= 0:
		list := reflect.MakeSlice(a.Type(), a.Len(), a.Len())
		reflect.Copy(list, a)
		a.Set(list)
		place = list.Index(h.index)
	}
	for _, i := range h.path {
		place = place.Field(i)
	}
	if place.Type() == temperature {
		place.Set(reflect.ValueOf(units.Celsius(math.NaN())))
	} else {
		place.SetFloat(math.NaN())
	}
	args[h.arg] = a
	err := call(f, args)
	if err == nil {
		return "" // it has no use for it
	}
	var e *units.RangeError
	if !errors.As(err, &e) {
		return fmt.Sprintf("want its range, got: %v", err)
	}
	named := false
	for _, n := range h.names {
		named = named || e.Arg == n
	}
	switch {
	case !named:
		return fmt.Sprintf("the error names %q, want %q: %v", e.Arg, strings.Join(h.names, " or "), err)
	case !math.IsNaN(e.Value):
		return fmt.Sprintf("the error tells the value %v: %v", e.Value, err)
	case !finite(e.Low) && !finite(e.High):
		return fmt.Sprintf("the error tells no limits: %v", err)
	}
	return ""
}

func finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }
