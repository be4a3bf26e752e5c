package sweep

import (
	"fmt"
	"math"
	"reflect"
	"strings"
	"time"

	"example.org/sapreckoner/units"
)

// filled makes a value with something in every exported field, so that a field
// that gets lost is missed. It tells whether it could.
func (s *sweeper) filled(typ reflect.Type, depth int) (reflect.Value, bool) {
	v := reflect.New(typ).Elem()
	if depth > 5 {
		return v, false
	}
	n := float64(depth) + 1.0/3 // has all the digits
	switch {
	case typ == temperature:
		v.Set(reflect.ValueOf(units.Celsius(20 + n)))
	case typ == moment:
		v.Set(reflect.ValueOf(time.Date(2026, 3, 14, 6, 30, 0, 0, time.UTC)))
	case len(s.pool[typ]) > 0 && (typ.Kind() != reflect.Struct || bare(typ) || reads(typ)):
		v.Set(s.pool[typ][0])
	case typ.Kind() == reflect.Float64:
		v.SetFloat(1 + n)
	case typ.Kind() == reflect.Uint8:
		v.SetUint(1)
	case typ.Kind() >= reflect.Int && typ.Kind() <= reflect.Int64:
		v.SetInt(3)
	case typ.Kind() == reflect.Bool:
		v.SetBool(true)
	case typ.Kind() == reflect.String:
		v.SetString("some text")
	case typ.Kind() == reflect.Slice:
		e, ok := s.filled(typ.Elem(), depth+1)
		if !ok {
			return v, false
		}
		v.Set(reflect.Append(reflect.MakeSlice(typ, 0, 1), e))
	case typ.Kind() == reflect.Pointer:
		e, ok := s.filled(typ.Elem(), depth+1)
		if !ok {
			return v, false
		}
		v.Set(reflect.New(typ.Elem()))
		v.Elem().Set(e)
	case typ.Kind() == reflect.Array:
		for i := range v.Len() {
			e, ok := s.filled(typ.Elem(), depth+1)
			if !ok {
				return v, false
			}
			v.Index(i).Set(e)
		}
	case typ.Kind() == reflect.Struct:
		if reads(typ) { // only it knows what is whole
			return v, false
		}
		for i := range typ.NumField() {
			if !typ.Field(i).IsExported() {
				continue
			}
			e, ok := s.filled(typ.Field(i).Type, depth+1)
			if !ok {
				continue
			}
			v.Field(i).Set(e)
		}
	default:
		return v, false
	}
	return v, true
}

// equal asks a struct of another module, such as a decimal, whether it is the same
// as another one.
func equal(a, b reflect.Value) (same, ok bool) {
	if a.Kind() != reflect.Struct || !a.CanInterface() || strings.HasPrefix(a.Type().PkgPath(), module) {
		return false, false
	}
	m := a.MethodByName("Equal")
	if !m.IsValid() || m.Type().NumIn() != 1 || m.Type().In(0) != b.Type() || m.Type().NumOut() != 1 || m.Type().Out(0).Kind() != reflect.Bool {
		return false, false
	}
	return m.Call([]reflect.Value{b})[0].Bool(), true
}

const module = "example.org/sapreckoner"

// differ tells where two values differ, unexported fields too. NaN is the same as
// NaN, and a list of none the same as no list. Numbers may be apart by a part
// of themselves.
func differ(a, b reflect.Value, part float64, at string) string {
	if at == "" {
		at = "value"
	}
	if a.Type() != b.Type() {
		return at
	}
	if same, ok := equal(a, b); ok {
		if same {
			return ""
		}
		return at
	}
	switch a.Kind() {
	case reflect.Float64:
		x, y := a.Float(), b.Float()
		if math.IsNaN(x) && math.IsNaN(y) || x == y || math.Abs(x-y) <= part*math.Abs(x) {
			return ""
		}
		return fmt.Sprintf("%s, %v and not %v", at, y, x)
	case reflect.Struct:
		for i := range a.NumField() {
			if d := differ(a.Field(i), b.Field(i), part, a.Type().Field(i).Name); d != "" {
				return d
			}
		}
		return ""
	case reflect.Slice, reflect.Array:
		if a.Len() != b.Len() {
			return at
		}
		for i := range a.Len() {
			if d := differ(a.Index(i), b.Index(i), part, at); d != "" {
				return d
			}
		}
		return ""
	case reflect.Map:
		if a.Len() != b.Len() {
			return at
		}
		for _, k := range a.MapKeys() {
			y := b.MapIndex(k)
			if !y.IsValid() {
				return at
			}
			if d := differ(a.MapIndex(k), y, part, at); d != "" {
				return d
			}
		}
		return ""
	case reflect.Pointer, reflect.Interface:
		if a.IsNil() || b.IsNil() {
			if a.IsNil() && b.IsNil() {
				return ""
			}
			return at
		}
		return differ(a.Elem(), b.Elem(), part, at)
	case reflect.Func, reflect.Chan, reflect.UnsafePointer:
		if a.Pointer() == b.Pointer() {
			return ""
		}
		return at
	}
	if a.Equal(b) {
		return ""
	}
	return at
}
