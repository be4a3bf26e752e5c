package sweep

import (
	"encoding/json"
	"reflect"
	"testing"
)

// Fuzz feeds what comes in to every type on the list that reads JSON or text by
// itself: it is refused and touches nothing, or it goes out and comes back.
func Fuzz(f *testing.F, p Package) {
	var values []reflect.Value
	seen := map[reflect.Type]bool{}
	for _, v := range p.Values {
		r := reflect.ValueOf(v)
		if r.Kind() == reflect.Pointer && !r.IsNil() {
			r = r.Elem()
		}
		if typ := r.Type(); ours(typ) && reads(typ) && !has(typ, failure) {
			b, err := marshal(r)
			if err != nil {
				continue // it refuses
			}
			f.Add(b)
			if !seen[typ] {
				seen[typ] = true
				values = append(values, r)
			}
		}
	}
	for _, s := range []string{"{}", "null", "[]", `""`, `"x"`, `{"zz":1}`, `"1e400 kg"`} {
		f.Add([]byte(s))
	}
	if len(values) == 0 {
		f.Fatal("no type on the list reads by itself")
	}
	f.Fuzz(func(t *testing.T, b []byte) {
		for _, before := range values {
			into := reflect.New(before.Type())
			into.Elem().Set(before)
			if err := json.Unmarshal(b, into.Interface()); err != nil {
				if at := differ(before, into.Elem(), 0, ""); at != "" {
					t.Fatalf("%v: %q: %v, and it touches %s", before.Type(), b, err, at)
				}
				continue
			}
			out, err := marshal(into.Elem())
			back := reflect.New(before.Type())
			if err == nil {
				err = json.Unmarshal(out, back.Interface())
			}
			if err != nil {
				t.Fatalf("%v: %q goes out as %s: %v", before.Type(), b, out, err)
			}
			if at := differ(into.Elem(), back.Elem(), 0, ""); at != "" {
				t.Fatalf("%v: %q goes out as %s and comes back with other %s", before.Type(), b, out, at)
			}
		}
	})
}
