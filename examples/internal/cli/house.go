package cli

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"example.org/sapreckoner/examples/internal/folder"
)

// The flags of the folder, which every program has that is not [Program.Apart].
const (
	dirFlag    = "dir"
	seasonFlag = "season"
	setFlag    = "set"

	todayFlag = "today" // of programs that look ahead
)

// A furnishing is the folder and what it fills.
type furnishing struct {
	dir       string
	season    int
	overrules []string // settings
	write     bool     // see [Flags.Adds]
	needs     []string // see [Flags.Needs]

	house   *folder.House
	sources map[string]Source
}

// declareFolder declares the flags of the folder.
func (f *Flags) declareFolder() {
	f.Group("Your sugarhouse")
	f.String(&f.dir, dirFlag, "", "its folder; without it the current one, if that has "+folder.SettingsFile)
	f.add(setFlag, "", `overrules a line of its settings, as -set "pan: 2 x 3 ft"; may be given again`,
		&value{f: f, name: setFlag, set: func(s string) error {
			f.overrules = append(f.overrules, s)
			return nil
		}})
	f.Count(&f.season, seasonFlag, 0, 0, 2999, "year that counts; 0 is that of the last date in the folder")
	f.begun = false // what stands in no group begins one
}

// A Kind is a kind of [Source].
type Kind uint8

// Kinds, each of which overrules those before it.
const (
	Assumed  Kind = iota // the default of the flag
	Invented             // from the invented sugarhouse
	Learned              // from the record of the folder
	InFolder             // from the settings of the folder, or a file of it
	Told                 // on the command line
)

// A Source tells where the value of a flag comes from.
type Source struct {
	Kind    Kind
	Setting string // as the folder calls it; empty if it was not the folder
	Line    int    // of the settings; 0 if it does not stand there
	File    string // of the record, which the flag names
	From    string // what it was learned from, such as 6 boils
	Text    string // the value, as it would stand on the command line; empty for what was told there

	set, demo bool // by -set; by the invented sugarhouse
}

// Source tells where the value of a flag comes from.
func (f *Flags) Source(name string) Source {
	if s, ok := f.sources[name]; ok {
		return s
	}
	if f.Given(name) {
		return Source{Kind: Told}
	}
	return Source{}
}

// House returns the sugarhouse: that of the folder, or else the invented one of
// [Program.Demo], or else one of which nothing is known. It is there once the
// program runs.
func (f *Flags) House() *folder.House { return f.house }

// Dir returns the folder of the sugarhouse; it is empty if the user has none.
func (f *Flags) Dir() string { return f.dir }

// Invented says whose numbers a page has where the user has no folder; it is empty
// where there is one. The named flags say nothing of a sugarhouse.
func (f *Flags) Invented(names ...string) string {
	switch {
	case f.dir != "":
		return ""
	case f.Other(names...):
		return "What was not told is of " + f.house.Settings.Name + ", which is invented."
	}
	return f.house.Settings.Name + " is invented."
}

// Demo says of a page that needs a folder, and was given none, whose numbers it has.
func (f *Flags) Demo() string {
	if f.dir != "" {
		return ""
	}
	return "An invented sugarhouse: give -dir."
}

// Needs is [Program.Needs] of one thing that the program does: see [Flags.Commands].
func (f *Flags) Needs(files ...string) { f.needs = files }

// Overrules returns what -set said, a setting each.
func (f *Flags) Overrules() []string { return f.overrules }

// furnish opens the folder and fills the flags that it tells and that were not
// given.
func (f *Flags) furnish(e *Env, p Program) error {
	if f.dir == "" && f.Given(dirFlag) {
		return For(dirFlag, errors.New("name the folder of your sugarhouse"))
	}
	var files fs.FS
	shown := f.dir
	switch _, err := os.Stat(folder.SettingsFile); {
	case f.dir != "":
		if info, err := os.Stat(f.dir); err != nil {
			return For(dirFlag, fmt.Errorf("%s: %w", f.dir, errors.Unwrap(err)))
		} else if !info.IsDir() {
			return For(dirFlag, fmt.Errorf("%s: is a file: name the folder that it lies in", f.dir))
		}
		files = e.folder(f.dir)
	case err == nil:
		f.dir, files = ".", e.folder(".")
	case p.DemoAlone && f.Other():
		shown = ""
	default:
		files = p.Demo
		shown = ""
	}
	if f.season != 0 && f.season < 1900 {
		return For(seasonFlag, fmt.Errorf("%d: write the year with its four digits", f.season))
	}
	if files == nil && f.season != 0 {
		return For(seasonFlag, errors.New("there is no record to take it from: give -dir too"))
	}
	needs := p.Needs
	if f.needs != nil {
		needs = f.needs
	}
	var err error
	if f.house, err = folder.OpenFor(needs, files, shown, f.season, f.overrules...); err != nil {
		return err
	}
	if aside := f.house.Aside(); len(aside) > 0 {
		fmt.Fprintf(e.Err, "%s: left aside for the mistakes in it: %s (folder check -dir %s tells them)\n", p.Name, strings.Join(aside, ", "), Quote(f.dir))
	}
	if f.dir != "" {
		for _, note := range append(f.house.Unread(), f.house.Turned()...) {
			fmt.Fprintf(e.Err, "%s: %s\n", p.Name, Line(errors.New(note)))
		}
	}
	return f.fill(p.Name)
}

// A candidate is a flag that may be filled.
type candidate struct {
	folder.Fill
	beaten []string
	from   Source
}

// fill fills the flags.
func (f *Flags) fill(program string) error {
	all := slices.DeleteFunc(f.candidates(), func(c candidate) bool {
		return c.Program != "" && c.Program != program || f.set.Lookup(c.Flag) == nil
	})
	var refused []error
	// What depends on other flags comes once those are filled.
	for _, depends := range []bool{false, true, true} {
		for _, c := range all {
			if depends != (c.Needs != nil || c.Unless != nil) || f.Given(c.Flag) || f.beats(c) ||
				c.Needs != nil && !slices.ContainsFunc(c.Needs, f.Given) || slices.ContainsFunc(c.Unless, f.Given) {
				continue
			}
			f.sources[c.Flag] = c.from
			if err := f.set.Set(c.Flag, c.Text); err != nil {
				refused = append(refused, f.blame(For(c.Flag, err)))
			}
		}
	}
	return errors.Join(refused...)
}

// candidates lists what may be filled, the strongest first.
func (f *Flags) candidates() (all []candidate) {
	var set, rest []candidate
	add := func(l folder.Line, from Source) {
		for _, fill := range l.Fills {
			from.Text = fill.Text
			c := candidate{fill, l.Beaten, from}
			switch {
			case from.set:
				c.from.Kind = Told
				set = append(set, c)
			case f.dir == "" && from.Kind == InFolder:
				c.from.Kind = Invented
				fallthrough
			default:
				c.from.demo = f.dir == ""
				rest = append(rest, c)
			}
		}
	}
	for _, l := range f.house.Settings.Lines() {
		add(l, Source{Kind: InFolder, Setting: l.Name, Line: l.Number, set: l.Number == 0})
	}
	for _, l := range f.house.FileFills() {
		add(l, Source{Kind: InFolder, Setting: l.Name, File: l.Name})
	}
	lessons, _ := f.house.Learned()
	for _, l := range lessons {
		add(l, Source{Kind: Learned, Setting: l.Name, From: l.From})
	}
	return append(set, rest...)
}

// beats reports whether the command line says something else of the same
// subject.
func (f *Flags) beats(c candidate) bool {
	return slices.ContainsFunc(c.beaten, func(name string) bool {
		s := f.Source(name)
		return f.Given(name) && s.Kind == Told && !(s.set && c.from.set)
	})
}

// blame names the line of the settings where an error comes from a flag that the
// folder filled.
func (f *Flags) blame(err error) error {
	var fe *FlagError
	if !errors.As(err, &fe) {
		return err
	}
	place, out := "", ""
	switch s := f.Source(fe.Flag); {
	case s.set:
		place = "-" + setFlag + ": " + s.Setting
	case s.File != "":
		place = f.house.Shown(s.File)
	case s.Line != 0:
		place = fmt.Sprintf("%s:%d: %s", f.house.Shown(folder.SettingsFile), s.Line, s.Setting)
	case s.Kind == Learned:
		place, out = s.Setting+", learned from "+s.From, "; overrule it with -"+fe.Flag
	default:
		return err
	}
	return errors.New(strings.Replace(Reason(err), fe.Error(), place+": "+Reason(fe.Err)+out, 1))
}

// folder is a folder that the run reads: what is read there is not written over.
func (e *Env) folder(path string) fs.FS { return plainFiles{os.DirFS(path), path, e} }

type plainFiles struct {
	fs.FS
	path string
	env  *Env
}

// Open opens a plain file or a folder: nothing else is read to its end.
func (r plainFiles) Open(name string) (fs.File, error) {
	info, err := fs.Stat(r.FS, name)
	if err == nil && !info.Mode().IsRegular() && !info.IsDir() {
		err = &fs.PathError{Op: "open", Path: name, Err: errors.New("not a plain file")}
	}
	if err != nil {
		return nil, err
	}
	file, err := r.FS.Open(name)
	if err == nil && !info.IsDir() {
		r.env.Reads(file)
		r.env.first(filepath.Join(r.path, name), file)
	}
	return file, err
}

// first keeps what a file of the folder was when the run read it first.
func (e *Env) first(path string, f fs.File) {
	if _, before := e.read[path]; before {
		return
	}
	if info, err := f.Stat(); err == nil {
		if e.read == nil {
			e.read = map[string]fs.FileInfo{}
		}
		e.read[path] = info
	}
}
