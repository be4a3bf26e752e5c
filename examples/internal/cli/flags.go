package cli

import (
	"encoding"
	"errors"
	"flag"
	"fmt"
	"io"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"time"

	"example.org/sapreckoner/internal/base/clip"
)

// Flags declares the flags of a program, in the groups in which -h shows them.
type Flags struct {
	set    *flag.FlagSet
	groups []group
	err    error // why the value of a flag was refused

	quantities bool           // some flags carry a unit
	more       bool           // see [Flags.More]
	full, json bool           // see [Flags.Page]
	begun      bool           // the program began a group
	standard   string         // the input from it
	printed    string         // the drawing on standard output
	checks     []func() error // of what the flags say, before the program runs
	furnishing
	spoken
}

type group struct {
	title string
	flags []entry
	more  bool // see [Flags.More]
}

type entry struct{ name, def, help string }

func newFlags(program string) *Flags {
	f := &Flags{set: flag.NewFlagSet(program, flag.ContinueOnError), furnishing: furnishing{sources: map[string]Source{}}}
	f.set.SetOutput(io.Discard)
	f.set.Usage = func() {}
	f.set.Bool("h", false, "") // shown by help itself
	return f
}

// Group begins a group of flags.
func (f *Flags) Group(title string) {
	f.groups = append(f.groups, group{title: title, more: f.more})
	f.begun = true
}

// More begins what few people need: -h lists the flags that follow with their defaults
// alone, and explains them behind -full.
func (f *Flags) More() { f.more = true }

func (f *Flags) add(name, def, help string, v flag.Value) {
	if !f.begun {
		f.Group("Flags")
	}
	g := &f.groups[len(f.groups)-1]
	g.flags = append(g.flags, entry{name, def, help})
	f.set.Var(v, name, help)
}

// Quantity declares a flag whose value carries its unit. A default that does
// not parse is a mistake of the program and ends in the error of every run. An
// empty default leaves the quantity alone.
func (f *Flags) Quantity(p encoding.TextUnmarshaler, name, def, help string) {
	f.quantities = true
	if def != "" {
		if err := p.UnmarshalText([]byte(def)); err != nil {
			f.err = For(name, err)
		}
	}
	f.add(name, def, help, &value{f: f, name: name, set: func(s string) error { return p.UnmarshalText([]byte(s)) }})
}

// String declares a flag of words.
func (f *Flags) String(p *string, name, def, help string) {
	*p = def
	f.add(name, def, help, &value{f: f, name: name, set: func(s string) error { *p = s; return nil }})
}

// Count declares a flag of a whole number from low to high.
func (f *Flags) Count(p *int, name string, def, low, high int, help string) {
	*p = def
	f.add(name, strconv.Itoa(def), help, &value{f: f, name: name, set: func(s string) error {
		n, err := strconv.Atoi(s)
		if err != nil || n < low || n > high {
			return fmt.Errorf("%q is not a whole number from %d to %d", clip.Text(s), low, high)
		}
		*p = n
		return nil
	}})
}

// Duration declares a flag of a stretch of time such as 8m or 1h30m, up to a
// week.
func (f *Flags) Duration(p *time.Duration, name, def, help string) {
	const longest = 7 * 24 * time.Hour
	set := func(s string) error {
		d, err := time.ParseDuration(s)
		if err != nil || d < 0 || d > longest {
			return fmt.Errorf("%q is not a stretch of time such as 8m or 1h30m, up to a week", clip.Text(s))
		}
		*p = d
		return nil
	}
	if err := set(def); err != nil {
		f.err = For(name, err)
	}
	f.add(name, def, help, &value{f: f, name: name, set: set})
}

// Date declares a flag of a day; it is zero if nobody tells.
func (f *Flags) Date(p *time.Time, name, help string) {
	f.add(name, "", help, &value{f: f, name: name, set: func(s string) (err error) {
		if *p, err = time.Parse(time.DateOnly, s); err != nil {
			return errors.New("write a date as 2034-03-11")
		}
		return nil
	}})
}

// Choice declares a flag that takes one of the given words.
func (f *Flags) Choice(p *string, name, def string, words []string, help string) {
	*p = def
	f.add(name, def, help, &value{f: f, name: name, set: func(s string) error {
		for _, w := range words {
			if strings.EqualFold(w, s) {
				*p = w
				return nil
			}
		}
		return fmt.Errorf("%q is not known: use one of %s", clip.Text(s), strings.Join(words, ", "))
	}})
}

// Bool declares a flag that is on or off.
func (f *Flags) Bool(p *bool, name, help string) {
	f.add(name, "", help, &value{f: f, name: name, bool: true, set: func(s string) error {
		on, err := strconv.ParseBool(s)
		if err != nil {
			return fmt.Errorf("%q is neither true nor false", clip.Text(s))
		}
		*p = on
		return nil
	}})
}

// Given reports whether the flag stands on the command line, or the folder says
// or has taught it: [Flags.Source] tells which.
func (f *Flags) Given(name string) bool {
	given := false
	f.set.Visit(func(fl *flag.Flag) { given = given || fl.Name == name })
	return given
}

// Other reports whether a flag other than the named ones, those of [Flags.Page] and
// the days of the demo stands on the command line, or there is a folder: whether a program still plans its
// demo.
func (f *Flags) Other(names ...string) bool {
	names = append(names, fullFlag, jsonFlag, metricFlag, seasonFlag, todayFlag)
	other := f.dir != "" || len(f.words) > 0
	f.set.Visit(func(fl *flag.Flag) {
		other = other || !slices.Contains(names, fl.Name) && f.Source(fl.Name).Kind == Told
	})
	return other
}

// Invent sets flags as if they stood on the command line, a name and a value in
// turn: for a demo that is a call like any other.
func (f *Flags) Invent(call ...string) error {
	for i := 0; i+1 < len(call); i += 2 {
		if err := f.set.Set(call[i], call[i+1]); err != nil {
			return For(call[i], err)
		}
	}
	return nil
}

// Kept lists those of the named flags that keep their default or have the value of
// the invented sugarhouse, as one would write them: what a program takes from its
// demo.
func (f *Flags) Kept(names ...string) string {
	var kept []string
	for _, g := range f.groups {
		for _, e := range g.flags {
			switch source := f.Source(e.name); {
			case !slices.Contains(names, e.name):
			case source.demo:
				kept = append(kept, "-"+e.name+" "+Quote(source.Text))
			case !f.Given(e.name) && e.def != "":
				kept = append(kept, "-"+e.name+" "+Quote(e.def))
			}
		}
	}
	return strings.Join(kept, ", ")
}

// Alone returns an error if more than one of the named flags is given.
func (f *Flags) Alone(names ...string) error {
	first := ""
	for _, name := range names {
		switch {
		case !f.Given(name):
		case first == "":
			first = name
		default:
			return For(name, fmt.Errorf("says the same as -%s: give one of them", first))
		}
	}
	return nil
}

// With returns an error if one of the named flags is given without any of the others,
// one of which it needs: how tells what to give.
func (f *Flags) With(others []string, how string, names ...string) error {
	if i := slices.IndexFunc(names, f.Given); i >= 0 && !slices.ContainsFunc(others, f.Given) {
		return For(names[i], errors.New(how))
	}
	return nil
}

// parse reads the command line. Flags may stand before the words and behind them.
func (f *Flags) parse(args []string) error {
	if f.err != nil {
		return f.err
	}
	err := f.set.Parse(args)
	for err == nil && f.set.NArg() > 0 && f.take != nil {
		rest := f.set.Args()
		n := slices.IndexFunc(rest, func(s string) bool { return dashed.MatchString(s) })
		if n == 0 {
			break // behind --
		}
		if n < 0 {
			n = len(rest)
		}
		f.words = append(f.words, rest[:n]...)
		err = f.set.Parse(rest[n:])
	}
	switch {
	case f.err == nil && (f.Given("h") || errors.Is(err, flag.ErrHelp)):
		return flag.ErrHelp
	case f.err != nil:
		return f.err
	case err != nil:
		return errors.New(strings.Replace(err.Error(), "flag provided but not defined: ", "no such flag (-h lists them): ", 1))
	case f.set.NArg() > 0:
		return fmt.Errorf("%q: there are flags only%s", clip.Text(f.set.Arg(0)), f.quoting())
	}
	return nil
}

// dashed is a flag, and not a number below zero.
var dashed = regexp.MustCompile(`^--?[a-z]`)

// quoting reminds of quotes by a flag of the program whose value has a space.
func (f *Flags) quoting() string {
	for _, g := range f.groups {
		for _, e := range g.flags {
			if strings.Contains(e.def, " ") {
				return "; put values with a space in quotes, as in -" + e.name + " " + Quote(e.def)
			}
		}
	}
	return ""
}

// value is a flag.Value that keeps the error of its Set, which package flag
// would reduce to words.
type value struct {
	f    *Flags
	name string
	bool bool
	set  func(string) error
}

func (v *value) String() string   { return "" }
func (v *value) IsBoolFlag() bool { return v.bool }
func (v *value) Set(s string) error {
	err := v.set(s)
	if err != nil {
		v.f.err = For(v.name, err)
	}
	return err
}
