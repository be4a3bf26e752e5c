package sweep

import (
	"errors"
	"fmt"
	"math"
	"reflect"
	"regexp"
	"strconv"
	"strings"

	"example.org/sapreckoner/units"
)

var failure = reflect.TypeFor[error]()

// judge calls f and tells which rule its answer breaks.
func (s *sweeper) judge(name string, f reflect.Value, args []candidate) (broken string) {
	in := make([]reflect.Value, len(args))
	nan, bare := false, false // NaN somewhere, and as an argument itself
	for i, a := range args {
		in[i] = a.value
		nan = nan || a.nan
		bare = bare || a.nan && (a.value.Kind() == reflect.Float64 || a.value.Type() == temperature)
	}
	defer func() {
		if r := recover(); r != nil {
			broken = fmt.Sprintf("panic: %v", r)
		}
	}()
	var out []reflect.Value
	if f.Type().IsVariadic() {
		out = f.CallSlice(in)
	} else {
		out = f.Call(in)
	}
	fails := len(out) > 0 && out[len(out)-1].Type() == failure
	var err error
	if fails {
		err, _ = out[len(out)-1].Interface().(error)
		out = out[:len(out)-1]
	}
	var a answer
	for _, v := range out {
		a.walk(v)
	}
	switch {
	case err != nil && a.something && !s.excepted(name, "half"):
		return fmt.Sprintf("an answer %v beside the error %v", out, err)
	case err != nil:
		return s.message(name, err)
	case fails && (a.nan || a.inf) && !s.excepted(name, "finite"):
		return fmt.Sprintf("%v and no error", out)
	case strings.HasSuffix(name, ".MarshalJSON"): // where NaN is null
	case (nan && fails || bare && a.floats) && !a.nan && !s.excepted(name, "NaN"):
		return fmt.Sprintf("NaN went in, %v came out", out)
	case a.crossed != "" && !nan && fails:
		return a.crossed
	}
	return ""
}

// oddEnd finds an end of a range that tells nothing.
var oddEnd = regexp.MustCompile(`(outside|in) .* to [+-]?(NaN|Inf)|(NaN|Inf) to |-0 |(most|least|than) [+-]?(NaN|Inf)`)

// GoName finds what only a programmer reads: pkg.Name and Type.Field, an entry of
// a list, a call, or a name of two words.
var GoName = regexp.MustCompile(`\b[A-Za-z]\w*\.[A-Z]\w+|\w+\[\d+\]|\w+\(\)|\b[A-Z][a-z]+[A-Z][a-z]\w*`)

// message tells what is wrong with an error.
func (s *sweeper) message(name string, err error) string {
	text := err.Error()
	if len(text) > 1000 {
		return fmt.Sprintf("a message of %d bytes: %.200s", len(text), text)
	}
	if oddEnd.MatchString(text) {
		return text
	}
	if said := units.Reason(err, units.Both); s.Contract && GoName.MatchString(said) && !strings.Contains(name, ".Marshal") && !s.excepted(name, "words") {
		return "a person reads a name of Go: " + said
	}
	var e *units.RangeError
	if !errors.As(err, &e) {
		return ""
	}
	if e.Low > e.High || e.Value > e.Low && e.Value < e.High {
		return "the range that it tells is wrong: " + text
	}
	if len(e.Unit) > 12 || strings.Count(e.Unit, " ") > 1 {
		return fmt.Sprintf("%q is no unit: %s", e.Unit, text)
	}
	if want := folder() + "." + name; e.Func != want && !s.excepted(name, "name") {
		return fmt.Sprintf("an error in the name of %s: %s", e.Func, text)
	}
	return ""
}

// An answer is what came out of a call.
type answer struct {
	floats    bool   // a number came out
	nan, inf  bool   // that is none
	something bool   // neither zero nor NaN
	crossed   string // a span whose ends are crossed
}

func (a *answer) walk(v reflect.Value) {
	switch v.Kind() {
	case reflect.Float64:
		x := v.Float()
		a.floats = true
		a.nan = a.nan || math.IsNaN(x)
		a.inf = a.inf || math.IsInf(x, 0)
		a.something = a.something || !(x == 0 || math.IsNaN(x))
	case reflect.Struct:
		for i := range v.NumField() {
			a.walk(v.Field(i))
		}
		low, middle, high := v.FieldByName("Low"), v.FieldByName("Middle"), v.FieldByName("High")
		if low.IsValid() && high.IsValid() && low.Kind() == reflect.Float64 {
			ok := low.Float() <= high.Float()
			if middle.IsValid() {
				ok = ok && low.Float() <= middle.Float() && middle.Float() <= high.Float()
			}
			if !ok {
				a.crossed = fmt.Sprintf("crossed ends: %+v", v)
			}
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			a.walk(v.Index(i))
		}
	case reflect.Pointer:
		if !v.IsNil() {
			a.walk(v.Elem())
		}
	case reflect.Int64:
		// A conversion of too large a number ends on one of these.
		a.inf = a.inf || v.Type() == duration && (v.Int() == math.MinInt64 || v.Int() == math.MaxInt64)
		a.something = a.something || v.Int() != 0
	default:
		a.something = a.something || !v.IsZero()
	}
}

func number(x float64) string { return strconv.FormatFloat(x, 'g', -1, 64) }
