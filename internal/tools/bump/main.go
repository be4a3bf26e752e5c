// Bump changes every numeric literal of the library packages, leaves out every
// step or changes every operator, one at a time, and reports the changes that no test notices:
//
//	file:line:column old -> new
//
// Each literal is bumped in up to three ways: its last digit by one, its sign,
// and its power of ten. With -bumps delete,swallow,swap,early it leaves out steps
// instead: a statement, the notice taken of an error, the order of two arguments
// of one type, and the rest of a function; with bound,turn,arith,logic it changes
// operators: the boundary of a comparison, its sense, minus for plus, or for and.
// From the root of the module, everything (hours), one package, what changed
// since a commit, or fifty literals drawn at random:
//
//	go -C internal/tools run ./bump -dir ../..
//	go -C internal/tools run ./bump -dir ../.. ./density
//	go -C internal/tools run ./bump -dir ../.. -file "$(git diff --name-only main | paste -sd'|')"
//	go -C internal/tools run ./bump -dir ../.. -sample 50 -seed 1
//
// It is no step of the gate: it takes too long. README.md here has what it found.
//
// A change goes through go test -overlay, so that no file is touched. A literal
// that may be a variable is built into one test program that holds the changes
// of the whole package and is told by the environment which one to make; a
// constant is compiled anew for every change. The tests are those of the
// package itself, first without the files that draw in packages built on it,
// then all of them, then those of the packages that import it directly; the
// tests beside the changed file come before the rest. Tests run with -short, and
// those against second opinions are skipped.
//
// Left alone are string and rune literals, lengths of arrays, expressions with
// iota, test files, and the argument that tells math.Inf the sign except for
// that sign. Survivors that are no fault stand in known.txt with a reason each
// and are not tried again.
//
// The exit status is 1 if a change survives or a line of known.txt fits
// nothing, and 2 if the tool cannot do its work.
package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"math/rand/v2"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"sync/atomic"
	"time"
)

func main() {
	survived, err := run(os.Args[1:], os.Stdout, os.Stderr)
	switch {
	case errors.Is(err, flag.ErrHelp):
		os.Exit(2)
	case err != nil:
		fmt.Fprintln(os.Stderr, "bump:", err)
		os.Exit(2)
	case survived:
		os.Exit(1)
	}
}

// options is what the command line says.
type options struct {
	dir       string
	known     string
	file      string
	bumps     string
	sample    int
	seed      uint64
	jobs      int
	timeout   time.Duration
	skip      string
	importers bool
	patterns  []string
}

func parse(args []string, stderr io.Writer) (options, error) {
	var o options
	flags := flag.NewFlagSet("bump", flag.ContinueOnError)
	flags.SetOutput(stderr)
	flags.StringVar(&o.dir, "dir", ".", "root `folder` of the module")
	flags.StringVar(&o.known, "known", "internal/tools/bump/known.txt", "`list` of survivors that are no fault, below -dir; empty for none")
	flags.StringVar(&o.file, "file", "", "only changes whose file below -dir and line, as in pans/pans.go:12:, match this `regexp`")
	flags.StringVar(&o.bumps, "bumps", "last,sign,ten", "`kinds` of change: of literals last, sign, ten; of steps delete, swallow, swap, early; of operators bound, turn, arith, logic")
	flags.IntVar(&o.sample, "sample", 0, "only `n` literals and steps drawn at random")
	flags.Uint64Var(&o.seed, "seed", 1, "seed of the draw")
	flags.IntVar(&o.jobs, "jobs", 2, "changes tried at once")
	flags.DurationVar(&o.timeout, "timeout", time.Minute, "a test program that runs longer counts as failed")
	flags.StringVar(&o.skip, "skip", "Oracle|Consumer", "tests not to run, a `regexp`")
	flags.BoolVar(&o.importers, "importers", true, "ask the packages that import the changed one, too")
	flags.Usage = func() {
		fmt.Fprintln(stderr, "usage: bump [options] [package pattern ...]\nChanges numeric literals, steps or operators of the packages and prints the changes that no test notices.\nWithout a pattern: the library packages and what they import of the module.")
		flags.PrintDefaults()
	}
	if err := flags.Parse(args); err != nil {
		return o, err
	}
	if o.jobs < 1 || o.sample < 0 || o.timeout <= 0 {
		return o, errors.New("-jobs and -timeout must be positive, -sample not negative")
	}
	o.patterns = flags.Args()
	return o, nil
}

// run reports whether a change survived.
func run(args []string, stdout, stderr io.Writer) (bool, error) {
	o, err := parse(args, stderr)
	if err != nil {
		return false, err
	}
	if o.dir, err = filepath.Abs(o.dir); err != nil {
		return false, err
	}
	kinds, err := parseKinds(o.bumps)
	if err != nil {
		return false, err
	}
	only, err := regexp.Compile(o.file)
	if err != nil {
		return false, err
	}
	known, err := readKnown(o)
	if err != nil {
		return false, err
	}
	targets, err := load(o.dir, o.patterns)
	if err != nil {
		return false, err
	}
	var sites []*site
	names := map[*target]*typeNames{}
	for _, t := range targets {
		numbers, err := t.sites(o.dir)
		if err != nil {
			return false, err
		}
		steps, types, err := t.steps(o.dir)
		if err != nil {
			return false, err
		}
		sites, names[t] = append(append(sites, numbers...), steps...), types
	}
	stale := known.apply(sites)
	sites = slices.DeleteFunc(sites, func(s *site) bool {
		return !only.MatchString(fmt.Sprintf("%s:%d:", s.file, s.line)) || !slices.ContainsFunc(kinds, s.changes)
	})
	sites = draw(sites, o.sample, o.seed)
	if len(sites) == 0 {
		return false, errors.New("nothing of the kind to change")
	}
	b, err := newBench(o)
	if err != nil {
		return false, err
	}
	defer b.close()
	var counts tally
	for _, t := range targets {
		began := time.Now()
		before := counts
		for _, types := range []*typeNames{nil, names[t]} { // literals, then steps
			mine := slices.DeleteFunc(slices.Clone(sites), func(s *site) bool { return s.target != t || (s.wraps == nil) != (types == nil) })
			if len(mine) == 0 {
				continue
			}
			if err := b.try(t, mine, types, kinds, stdout, &counts); err != nil {
				return false, err
			}
		}
		fmt.Fprintf(stderr, "%s: %s, %.0f s\n", t.rel, counts.less(before), time.Since(began).Seconds())
	}
	fmt.Fprintf(stdout, "\n%s\n", counts)
	for _, line := range stale {
		fmt.Fprintf(stdout, "%s: fits no literal: %s\n", o.known, line)
	}
	return counts.survived > 0 || len(stale) > 0, nil
}

// draw keeps n sites, in their order, or all if n is 0.
func draw(sites []*site, n int, seed uint64) []*site {
	if n == 0 || n >= len(sites) {
		return sites
	}
	picks := rand.New(rand.NewPCG(seed, 0)).Perm(len(sites))[:n]
	slices.Sort(picks)
	drawn := make([]*site, n)
	for i, k := range picks {
		drawn[i] = sites[k]
	}
	return drawn
}

// tally counts changes by what became of them.
type tally struct{ noticed, survived, known, invalid int }

func (t tally) less(u tally) tally {
	return tally{t.noticed - u.noticed, t.survived - u.survived, t.known - u.known, t.invalid - u.invalid}
}

func (t tally) String() string {
	return fmt.Sprintf("%d changes: %d noticed, %d survived, %d known, %d do not compile",
		t.noticed+t.survived+t.known+t.invalid, t.noticed, t.survived, t.known, t.invalid)
}

// try makes the changes of one package, several at once, and prints the
// survivors in their order.
func (b *bench) try(t *target, sites []*site, names *typeNames, kinds []kind, stdout io.Writer, counts *tally) error {
	trial, err := b.prepare(t, sites, names)
	if err != nil {
		return err
	}
	var changes []change
	for _, s := range sites {
		for _, k := range kinds {
			text, ok := s.bumped(k)
			switch {
			case !ok:
			case s.known[k]:
				counts.known++
			default:
				changes = append(changes, change{s, k, text})
			}
		}
	}
	results := make([]outcome, len(changes))
	errs := make([]error, len(changes))
	done := make([]chan struct{}, len(changes))
	for i := range done {
		done[i] = make(chan struct{})
	}
	var next atomic.Int64
	for range b.jobs {
		go func() {
			for i := int(next.Add(1)) - 1; i < len(changes); i = int(next.Add(1)) - 1 {
				results[i], errs[i] = trial.run(changes[i])
				close(done[i])
			}
		}()
	}
	for i, c := range changes {
		<-done[i]
		if errs[i] != nil {
			return errs[i]
		}
		switch results[i] {
		case noticed:
			counts.noticed++
		case invalid:
			counts.invalid++
		case survived:
			counts.survived++
			fmt.Fprintf(stdout, "%s:%d:%d %s -> %s\n", c.file, c.line, c.column, c.text, c.to)
		}
	}
	return nil
}

// A change is one bump of one literal, or one step left out.
type change struct {
	*site
	kind kind
	to   string
}

func parseKinds(text string) ([]kind, error) {
	var kinds []kind
	for name := range strings.SplitSeq(text, ",") {
		k := kind(slices.Index(kindNames[:], name))
		if k < 0 {
			return nil, fmt.Errorf("-bumps: %q is none of %s", name, strings.Join(kindNames[:], ", "))
		}
		kinds = append(kinds, k)
	}
	return kinds, nil
}
