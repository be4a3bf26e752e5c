// Package sweep calls the exported functions and methods of a package with
// hostile arguments among good ones, and holds every answer to the rules of the
// house:
//
//   - no panic;
//   - a nil error never comes with NaN or infinity;
//   - an error comes with nothing else: NaN, or the zero value;
//   - NaN never gives a finite answer, be it an argument or, if the function can
//     fail, in a field of one;
//   - a span's Low is at most its Middle, and that at most its High;
//   - a message is short, and a range error tells a range that has two ends.
package sweep

import (
	"fmt"
	"math/rand/v2"
	"reflect"
	"runtime"
	"strings"
	"testing"
)

// A Package lists what a sweep calls, and with what.
type Package struct {
	Funcs  []any             // the exported functions
	Values []any             // one good value or more of every type that has methods, and of every type that an argument has
	Bad    []any             // further hostile values
	Except map[string]string // a function or a field and a rule, such as "Rig.Pail: NaN", and why it is not held to it
	Few    map[string]int    // how many calls of a function that takes long; 0 leaves it out
}

// calls is how many a function gets. One whose arguments have fewer combinations
// gets every one.
const calls = 3000

// Run sweeps the package in the working directory.
func Run(t *testing.T, p Package) {
	s := &sweeper{Package: p, pool: map[reflect.Type][]reflect.Value{}, used: map[string]bool{}}
	for _, v := range p.Values {
		r := reflect.ValueOf(v)
		s.pool[r.Type()] = append(s.pool[r.Type()], r)
	}
	seen := map[string]bool{}
	for _, f := range p.Funcs {
		v := reflect.ValueOf(f)
		name := runtime.FuncForPC(v.Pointer()).Name()
		name = name[strings.LastIndex(name, ".")+1:]
		seen[name] = true
		s.try(t, name, v)
	}
	methods := func(typ reflect.Type) {
		for i := range typ.NumMethod() {
			m := typ.Method(i)
			name := typeName(typ) + "." + m.Name
			if !seen[name] {
				seen[name] = true
				s.try(t, name, m.Func)
			}
		}
	}
	for _, v := range p.Values {
		typ := reflect.TypeOf(v)
		if !ours(typ) {
			continue
		}
		methods(typ)
		if typ.Kind() != reflect.Pointer {
			methods(reflect.PointerTo(typ))
		}
	}
	for _, name := range exported(t) {
		if !seen[name] {
			t.Errorf("%s is exported and not swept: put it, or a value of its type, on the list", name)
		}
	}
	for name := range p.Except {
		if !s.used[name] && !testing.Short() {
			t.Errorf("the exception %q is not needed", name)
		}
	}
}

// ours tells whether a type belongs to the package under test, whose folder is
// the working directory.
func ours(typ reflect.Type) bool {
	if typ.Kind() == reflect.Pointer {
		typ = typ.Elem()
	}
	return strings.HasSuffix(typ.PkgPath(), "/"+folder())
}

func typeName(typ reflect.Type) string {
	if typ.Kind() == reflect.Pointer {
		typ = typ.Elem()
	}
	name, _, _ := strings.Cut(typ.Name(), "[")
	return name
}

type sweeper struct {
	Package
	pool map[reflect.Type][]reflect.Value
	used map[string]bool
}

// excepted tells whether a function is not held to a rule.
func (s *sweeper) excepted(name, rule string) bool {
	key := name + ": " + rule
	_, ok := s.Except[key]
	s.used[key] = s.used[key] || ok
	return ok
}

// try calls one function with every combination of candidates, or else with
// each alone among good ones and then with random ones.
func (s *sweeper) try(t *testing.T, name string, f reflect.Value) {
	n := calls
	if few, ok := s.Few[name]; ok {
		n = few
	}
	if testing.Short() {
		n = min(n, calls/10)
	}
	if n == 0 {
		return
	}
	typ := f.Type()
	lists := make([][]candidate, typ.NumIn())
	all := 1
	for i := range lists {
		lists[i] = s.candidates(typ.In(i))
		if len(lists[i]) == 0 {
			t.Errorf("%s: no value of type %v on the list", name, typ.In(i))
			return
		}
		all = min(all*len(lists[i]), 1<<30)
	}
	args := make([]candidate, len(lists))
	failed := 0
	call := func() bool {
		if err := s.judge(name, f, args); err != "" {
			t.Errorf("%s(%s): %s", name, describe(args), err)
			failed++
		}
		return failed < 3
	}
	if all <= n {
		for k := range all {
			for i, list := range lists {
				args[i] = list[k%len(list)]
				k /= len(list)
			}
			if !call() {
				return
			}
		}
		return
	}
	for i, list := range lists {
		for _, c := range list {
			for j := range args {
				args[j] = lists[j][0]
			}
			args[i] = c
			if n--; !call() || n == 0 {
				return
			}
		}
	}
	r := rand.New(rand.NewPCG(8, uint64(len(name))))
	for range n {
		for i, list := range lists {
			args[i] = list[r.IntN(len(list))]
			if r.IntN(2) == 0 {
				args[i] = list[0]
			}
		}
		if !call() {
			return
		}
	}
}

func describe(args []candidate) string {
	s := make([]string, len(args))
	for i, a := range args {
		s[i] = fmt.Sprintf("%+v", a.value)
		if a.hostile != "" {
			s[i] = a.hostile
		}
	}
	text := strings.Join(s, ", ")
	return text[:min(len(text), 400)]
}
