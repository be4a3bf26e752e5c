package sweep

import (
	"errors"
	"fmt"
	"io"
	"math"
	"reflect"
	"strings"
	"time"

	"example.org/sapreckoner/units"
)

// A candidate is a value for an argument. The first of a list is good.
type candidate struct {
	value   reflect.Value
	hostile string // what is wrong with it, empty if nothing
	nan     bool   // whether NaN is in it
}

// Numbers that have undone programs.
var (
	floats = []float64{
		math.NaN(), math.Inf(1), math.Inf(-1), 0, math.Copysign(0, -1), math.SmallestNonzeroFloat64, -1, 1, 1e300, -1e300,
	}
	ints  = []int64{0, -1, 1, math.MaxInt64, math.MinInt64, 1 << 40}
	texts = []string{"", "\x00", "\xff", strings.Repeat("x", 100_000)}
)

var (
	temperature = reflect.TypeFor[units.Temperature]()
	duration    = reflect.TypeFor[time.Duration]()
	reader      = reflect.TypeFor[io.Reader]()
	moment      = reflect.TypeFor[time.Time]()
)

// candidates lists values of a type: the good ones, then each with one thing
// wrong.
func (s *sweeper) candidates(typ reflect.Type) []candidate {
	var list []candidate
	add := func(v reflect.Value, hostile string, nan bool) {
		list = append(list, candidate{v, hostile, nan})
	}
	for _, v := range s.pool[typ] {
		add(v, "", false)
	}
	for i, v := range s.Bad {
		if r := reflect.ValueOf(v); r.Type() == typ {
			add(r, fmt.Sprintf("%s no. %d on the bad list", typ, i+1), false)
		}
	}
	convert := func(x any, hostile string, nan bool) {
		add(reflect.ValueOf(x).Convert(typ), hostile, nan)
	}
	name := typ.String()
	switch {
	case typ == temperature:
		for _, x := range floats {
			add(reflect.ValueOf(units.Celsius(x)), name+" "+number(x), math.IsNaN(x))
		}
	case typ == moment:
		add(reflect.ValueOf(time.Time{}), "the zero time", false)
		add(reflect.ValueOf(time.Unix(1<<60, 0)), "a time after all", false)
	case typ == failure:
		add(reflect.Zero(typ), "no error", false)
		add(reflect.ValueOf(&units.RangeError{Arg: "x", High: 1, Value: 2}).Convert(typ), "", false)
		add(reflect.ValueOf(errors.New("something")).Convert(typ), "", false)
	case typ == reader:
		for _, x := range texts {
			add(reflect.ValueOf(strings.NewReader(x)).Convert(typ), "a reader", false)
		}
	case typ.Kind() == reflect.Float64:
		for _, x := range floats {
			convert(x, name+" "+number(x), math.IsNaN(x))
		}
	case typ.Kind() == reflect.Uint8:
		for x := range 6 {
			convert(x, "", false)
		}
		convert(255, name+" 255", false)
	case typ.Kind() == reflect.Bool:
		convert(false, "", false)
		convert(true, "", false)
	case typ.Kind() == reflect.String:
		convert("a", "", false)
		for i, x := range texts {
			convert(x, "text "+string(rune('0'+i)), false)
		}
	case typ.Kind() >= reflect.Int && typ.Kind() <= reflect.Int64:
		for _, x := range ints {
			v := reflect.ValueOf(x).Convert(typ)
			add(v, name+" "+v.String(), false)
		}
	case typ.Kind() == reflect.Struct:
		list = s.wrecks(typ, list)
	case typ.Kind() == reflect.Slice:
		list = s.slices(typ, list)
	case typ.Kind() == reflect.Pointer && ours(typ):
		add(reflect.New(typ.Elem()), name+" of the zero value", false)
	}
	return list
}

// wrecks adds the zero value, and each good value with one field after another
// set wrong.
func (s *sweeper) wrecks(typ reflect.Type, list []candidate) []candidate {
	good := s.pool[typ]
	if len(good) == 0 {
		v := reflect.New(typ).Elem()
		for i := range typ.NumField() {
			if typ.Field(i).IsExported() {
				if c := s.candidates(typ.Field(i).Type); len(c) > 0 {
					v.Field(i).Set(c[0].value)
				}
			}
		}
		list = append(list, candidate{value: v})
		good = []reflect.Value{v}
	}
	list = append(list, candidate{value: reflect.Zero(typ), hostile: "the zero " + typ.String()})
	for _, g := range good {
		for i := range typ.NumField() {
			if !typ.Field(i).IsExported() {
				continue
			}
			for _, c := range s.candidates(typ.Field(i).Type) {
				if c.hostile == "" {
					continue
				}
				v := reflect.New(typ).Elem()
				v.Set(g)
				v.Field(i).Set(c.value)
				name := typeName(typ) + "." + typ.Field(i).Name
				nan := c.nan && !s.excepted(name, "NaN")
				list = append(list, candidate{v, name + " " + c.hostile, nan})
			}
		}
	}
	return list
}

// slices adds a list of nothing, and lists of one and two of which the last may
// be wrong.
func (s *sweeper) slices(typ reflect.Type, list []candidate) []candidate {
	of := s.candidates(typ.Elem())
	for _, c := range of {
		v := reflect.MakeSlice(typ, 0, 2)
		v = reflect.Append(v, c.value)
		list = append(list, candidate{v, c.hostile, c.nan})
		if c.hostile != "" {
			v := reflect.MakeSlice(typ, 0, 2)
			v = reflect.Append(v, of[0].value, c.value)
			list = append(list, candidate{v, "a good one and " + c.hostile, c.nan})
		}
	}
	return append(list, candidate{value: reflect.Zero(typ), hostile: "none"})
}
