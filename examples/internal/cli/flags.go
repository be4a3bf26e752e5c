package cli

import (
	"encoding"
	"errors"
	"flag"
	"fmt"
	"io"
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

	quantities bool // some flags carry a unit
	begun      bool // the program began a group
	furnishing
}

type group struct {
	title string
	flags []entry
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
	f.groups = append(f.groups, group{title: title})
	f.begun = true
}

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

// Other reports whether a flag other than the named ones stands on the command
// line, or there is a folder: whether a program still plans its demo.
func (f *Flags) Other(names ...string) bool {
	other := f.dir != ""
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
			case source.Kind == Invented:
				kept = append(kept, "-"+e.name+" "+quote(source.Text))
			case !f.Given(e.name) && e.def != "":
				kept = append(kept, "-"+e.name+" "+quote(e.def))
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

// parse reads the command line.
func (f *Flags) parse(args []string) error {
	if f.err != nil {
		return f.err
	}
	err := f.set.Parse(args)
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

// quoting reminds of quotes by a flag of the program whose value has a space.
func (f *Flags) quoting() string {
	for _, g := range f.groups {
		for _, e := range g.flags {
			if strings.Contains(e.def, " ") {
				return "; put values with a space in quotes, as in -" + e.name + " " + quote(e.def)
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

// help prints what -h shows.
func (p Program) help(w io.Writer, f *Flags) {
	page := NewPage(w)
	page.Title(p.Name)
	page.Text(p.Does)
	page.Heading("Calls")
	for _, c := range p.Calls {
		for _, line := range callLines("  "+c, width) {
			page.Line(line)
		}
	}
	for _, g := range f.groups {
		page.Heading(g.title)
		for _, e := range g.flags {
			head := "-" + e.name
			if e.def != "" {
				head += " " + quote(e.def)
			}
			page.Line("  " + head)
			page.indented("      ", e.help)
		}
	}
	if p.Reads != "" {
		page.Heading("Files")
		for _, paragraph := range strings.Split(p.Reads, "\n") {
			if item, ok := strings.CutPrefix(paragraph, "- "); ok {
				page.Item(item)
			} else {
				page.Text(paragraph)
			}
		}
	}
	if f.quantities {
		page.Heading("Units")
		page.Text(`Every quantity carries its unit: "60 US gal", "2.2 Brix", "41 F", "29.4 inHg", "7/16 in". A bare gal is refused, since a US gallon and an imperial gallon are 20 percent apart.`)
	}
	if p.Caution != "" {
		page.Heading("Take care")
		page.Text(p.Caution)
	}
}

// callLines breaks a call before a flag or a redirection, as a shell reads it
// on, so that no line is longer than n where there is a place to break.
func callLines(call string, n int) (lines []string) {
	const on, further = " \\", "      "
	for length(call) > n {
		at := max(strings.LastIndex(call[:n-len(on)], " -"), strings.LastIndex(call[:n-len(on)], " >"))
		if at < len(further) {
			break
		}
		lines = append(lines, call[:at]+on)
		call = further + call[at+1:]
	}
	return append(lines, call)
}

func quote(s string) string {
	if strings.ContainsAny(s, " ") {
		return `"` + s + `"`
	}
	return s
}
