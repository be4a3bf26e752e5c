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
//   - a message is short, and a range error tells a range that has two ends;
//   - if the package asks for it, the contract of units.RangeError: NaN in one
//     place alone gives the range of that place, under its stable name; and no
//     reason for a person has a name of Go in it.
//
// [Edges] walks the exported types and holds them to the rules of text and JSON.
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
	// Contract asks for the rule on NaN in one place, and for reasons without names
	// of Go. Its exceptions are "Func: contract" for a whole function, "Func(place):
	// contract" for one place, such as "Membrane.Time(Membrane.Pump): contract", and
	// "Func: words".
	Contract bool
}

// calls is how many a function gets. One whose arguments have fewer combinations
// gets every one.
const calls = 3000

// Run sweeps the package in the working directory.
func Run(t *testing.T, p Package) {
	s, src := sweeping(p), read(t)
	seen := map[string]bool{}
	one := func(name string, f reflect.Value, method bool) {
		seen[name] = true
		s.try(t, name, f)
		if params, ok := src.params[name]; p.Contract && ok {
			s.contract(t, name, f, method, params)
		}
	}
	for _, f := range p.Funcs {
		v := reflect.ValueOf(f)
		name, method := funcName(runtime.FuncForPC(v.Pointer()).Name())
		one(name, v, method)
	}
	methods := func(typ reflect.Type) {
		for i := range typ.NumMethod() {
			m := typ.Method(i)
			name := typeName(typ) + "." + m.Name
			if !seen[name] {
				one(name, m.Func, true)
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
	for _, name := range src.funcs {
		if !seen[name] {
			t.Errorf("%s is exported and not swept: put it, or a value of its type, on the list", name)
		}
	}
	for name := range p.Except {
		if !s.used[name] && !testing.Short() {
			if strings.HasSuffix(name, ": json") || strings.HasSuffix(name, ": text") || strings.HasSuffix(name, ": contract") && !p.Contract {
				continue // of Edges, or not asked for
			}
			t.Errorf("the exception %q is not needed", name)
		}
	}
}

func sweeping(p Package) *sweeper {
	s := &sweeper{Package: p, pool: map[reflect.Type][]reflect.Value{}, used: map[string]bool{}}
	for _, v := range p.Values {
		r := reflect.ValueOf(v)
		s.pool[r.Type()] = append(s.pool[r.Type()], r)
	}
	return s
}

// funcName cuts the name of a function, or of a method as Type.Method, from its
// name at run time: "a.org/b/pkg.Func[...]", "pkg.(*Type).Method" or
// "pkg.Type.Method-fm", whose receiver is bound and no argument.
func funcName(full string) (name string, method bool) {
	full, bound := strings.CutSuffix(full, "-fm")
	for {
		from := strings.Index(full, "[")
		to := strings.Index(full, "]")
		if from < 0 || to < from {
			break
		}
		full = full[:from] + full[to+1:]
	}
	full = full[strings.LastIndex(full, "/")+1:]
	_, name, _ = strings.Cut(full, ".")
	name = strings.NewReplacer("(*", "", ")", "").Replace(name)
	return name, strings.Contains(name, ".") && !bound
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
