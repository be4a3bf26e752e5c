// Package cli is what the example programs share: how a program is started and
// ended, how flags with units are read, how a page is laid out, and how it is
// said what is wrong.
//
// A program prints one page or nothing: what it writes is held back until it
// has succeeded. Bad input gives one line on standard error that names the
// flag, or file, line and column, and the way out; the exit status is then 2.
//
// A page answers first: see [Brief]. With -json each program writes one object of
// this shape, and a key that has nothing to say holds an empty list or text:
//
//	program   the name of the program
//	verdict   what to do, a sentence
//	answers   a list of {key, label, text, us, metric} and perhaps note: the text as
//	          the page shows it; us and metric hold {value, unit}, rounded as the text
//	          is; unit is spelled as in a CSV header, and missing of clocks and words
//	list      the rows that the user brought, the unit in each key
//	known     {house, told, learned, assumed}: where the numbers come from
//	cautions  those that matter now
//	further   where to ask further
//	parts     an object with what -full shows: a member for each part, in it one for
//	          each row and system of units, the unit in the key; tables are lists of
//	          objects, ranges lists of two, and remarks a list of texts
//
// What nobody knows is null. Numbers of parts are as they were reckoned.
package cli

import (
	"bytes"
	"cmp"
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"io"
	"io/fs"
	"os"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Exit statuses.
const (
	OK       = 0
	Failed   = 1 // the machine failed
	BadInput = 2
)

// A Program is one example program.
type Program struct {
	Name    string
	Does    string   // one or two sentences for -h
	Calls   []string // worked calls for -h
	Reads   string   // files that it reads and their columns, a line a paragraph; may be empty
	Caution string   // where the work can hurt
	Demo    fs.FS    // the invented sugarhouse, read where the user has none; may be nil
	// DemoAlone keeps the demo whole: none of it stands in for what a user who tells
	// something left out.
	DemoAlone bool
	Needs     []string // files of the folder whose mistakes stop it; nil is all of them
	Apart     bool     // it has nothing to do with a sugarhouse and its folder
	// Setup declares the flags and returns what runs once they are read.
	Setup func(*Flags) func(*Env) error
}

// Env is what a running program is given.
type Env struct {
	In  io.Reader
	Out *bytes.Buffer // the page; printed when the program has succeeded
	Err io.Writer     // for progress and for rows that are left out

	program string
	flags   *Flags
	inputs  []fs.FileInfo          // files that the run reads
	read    map[string]fs.FileInfo // those of the folder, as they were first
}

// Main runs the program and returns the exit status.
func (p Program) Main(args []string, in io.Reader, out, errw io.Writer) int {
	flags := newFlags(p.Name)
	if !p.Apart {
		flags.declareFolder()
	}
	run := p.Setup(flags)
	err := flags.parse(args)
	env := &Env{In: in, Out: new(bytes.Buffer), Err: errw, program: p.Name, flags: flags}
	switch {
	case errors.Is(err, flag.ErrHelp):
		p.help(env.Out, flags)
		err = nil
	case err == nil:
		reads := !p.Apart
		if flags.raw != nil {
			reads, err = flags.raw(flags.words)
		}
		if err == nil && reads {
			err = flags.furnish(env, p)
		}
		if err == nil {
			err = flags.listen()
		}
		for _, check := range flags.checks {
			err = cmp.Or(err, check())
		}
		if err == nil {
			err = run(env)
		}
	}
	if err != nil {
		for _, err := range each(err) {
			fmt.Fprintf(errw, "%s: %s\n", p.Name, Line(flags.blame(err)))
		}
		return BadInput
	}
	if _, err := out.Write(env.Out.Bytes()); err != nil {
		fmt.Fprintf(errw, "%s: %s\n", p.Name, Line(err))
		return Failed
	}
	return OK
}

// Exit runs the program on the process's arguments and ends the process.
func (p Program) Exit() { os.Exit(p.Main(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

// A FlagError says which flag is wrong.
type FlagError struct {
	Flag string // without the dash
	Err  error
}

// Error names the flag and the way out.
func (e *FlagError) Error() string { return "-" + e.Flag + ": " + Reason(e.Err) }

// Unwrap returns the reason.
func (e *FlagError) Unwrap() error { return e.Err }

// For names the flag that an error of the library comes from. A nil error
// stays nil.
func For(name string, err error) error {
	if err == nil {
		return nil
	}
	return &FlagError{Flag: name, Err: err}
}

// Within holds the value of a flag against a range of the program's own and
// names the flag. The message tells value and range in the given unit.
func Within[Q ~float64](name, arg string, x, low, high Q, unit Q, symbol, hint string) error {
	return For(name, limit.Within("", arg, x, low, high, unit, symbol, hint))
}

// WithinTemperature is [Within] for a temperature, with the range in C.
func WithinTemperature(name, arg string, t units.Temperature, low, high float64, hint string) error {
	return Within(name, arg, t.Celsius(), low, high, 1, "C", hint)
}

// Graduation checks the graduation temperature of a hydrometer. The range is
// that of [example.org/sapreckoner/density.Hydrometer].
func Graduation(name string, t units.Temperature) error {
	return WithinTemperature(name, "graduation", t, 1, 40, "give the temperature printed on its scale, often 60 F or 68 F, 38 F for sap")
}

// each lists the errors that were joined, each for a line of its own.
func each(err error) (all []error) {
	joined, ok := err.(interface{ Unwrap() []error })
	if !ok {
		return []error{err}
	}
	for _, err := range joined.Unwrap() {
		all = append(all, each(err)...)
	}
	return all
}

// JSON writes v as indented JSON.
func (e *Env) JSON(v any) error {
	enc := json.NewEncoder(e.Out)
	enc.SetIndent("", "  ")
	enc.SetEscapeHTML(false)
	return enc.Encode(v)
}

// Open opens a file named by a flag; "-" is standard input. The caller closes
// it.
func (e *Env) Open(flagName, path string) (io.ReadCloser, error) {
	if e.flags != nil {
		if s := e.flags.Source(flagName); s.File != "" {
			if file, ok := e.flags.house.File(s.File); ok {
				return file, nil
			}
		}
	}
	if path == "-" {
		if f, ok := e.In.(fs.File); ok {
			e.Reads(f)
		}
		return io.NopCloser(e.In), nil
	}
	f, err := os.Open(path)
	if err != nil {
		var pe *os.PathError
		if errors.As(err, &pe) {
			err = fmt.Errorf("%s: %w", pe.Path, pe.Err)
		}
		return nil, For(flagName, err)
	}
	// A folder opens, and fails only when it is read.
	if info, err := f.Stat(); err == nil && info.IsDir() {
		return nil, errors.Join(For(flagName, fmt.Errorf("%s: is a directory", path)), f.Close())
	}
	e.Reads(f)
	return f, nil
}
