package main

import (
	"context"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"slices"
	"strings"
	"sync"
	"time"
)

// An outcome is what became of a change.
type outcome int

const (
	noticed outcome = iota
	survived
	invalid // it does not compile
)

// A bench builds and runs test programs in a scratch folder of its own.
type bench struct {
	options
	scratch string
}

func newBench(o options) (*bench, error) {
	scratch, err := os.MkdirTemp("", "bump")
	return &bench{o, scratch}, err
}

func (b *bench) close() { os.RemoveAll(b.scratch) }

// A stage is one test program that is asked about every change that the stages
// before it did not notice.
type stage struct {
	t       *target
	dropped []string // test files left out
	ready   func() (string, error)
}

// A trial is all that is asked about the changes of one package.
type trial struct {
	*bench
	index  map[*site]int
	stages []stage
}

// prepare builds the first test program and sees that it passes unchanged. If
// literals cannot be made variables in this package, all are constants. The names
// are those that steps need, nil for literals.
func (b *bench) prepare(t *target, sites []*site, names *typeNames) (*trial, error) {
	folder, err := os.MkdirTemp(b.scratch, "switched")
	if err != nil {
		return nil, err
	}
	stages, err := b.stages(t)
	if err != nil {
		return nil, err
	}
	tr := &trial{bench: b, index: map[*site]int{}, stages: stages}
	for i, s := range sites {
		tr.index[s] = i
	}
	var o overlay
	if names != nil {
		o, err = stepped(t, sites, names, folder)
	} else {
		o, err = switched(t, sites, folder)
	}
	if err != nil {
		return nil, err
	}
	for i := range tr.stages {
		st := &tr.stages[i]
		st.ready = sync.OnceValues(func() (string, error) { return b.pass(st, o) })
	}
	for len(tr.stages) > 0 {
		_, err = tr.stages[0].ready()
		if err == nil || len(tr.stages) == 1 || tr.stages[0].dropped == nil {
			return tr, err
		}
		// The files left out may hold what the others need.
		tr.stages = tr.stages[1:]
	}
	return nil, fmt.Errorf("%s: nothing tests it", t.rel)
}

// stages lists whom to ask about a change of t.
func (b *bench) stages(t *target) ([]stage, error) {
	all, far, err := t.testFiles()
	if err != nil {
		return nil, err
	}
	var list []stage
	if len(far) > 0 && len(far) < len(all) {
		list = append(list, stage{t: t, dropped: far})
	}
	if len(all) > 0 {
		list = append(list, stage{t: t})
	}
	if b.importers {
		for _, u := range t.importers {
			if tests, _, err := u.testFiles(); err != nil {
				return nil, err
			} else if len(tests) > 0 {
				list = append(list, stage{t: u})
			}
		}
	}
	return list, nil
}

// pass builds the test program of a stage with all changes in it and returns
// its name if it passes while none is made.
func (b *bench) pass(st *stage, o overlay) (string, error) {
	program, out, err := b.build(st, o, b.scratch)
	if err != nil {
		return "", fmt.Errorf("%s does not compile: %w\n%s", st.t.rel, err, out)
	}
	if out, ok := b.test(st, program, "", ""); !ok {
		return "", fmt.Errorf("%s fails before any change:\n%s", st.t.rel, out)
	}
	return program, nil
}

// build compiles the test program of a stage.
func (b *bench) build(st *stage, o overlay, folder string) (program string, out []byte, err error) {
	name, err := o.write(folder, st.dropped)
	if err != nil {
		return "", nil, err
	}
	program = strings.TrimSuffix(name, ".json") + ".test"
	cmd := exec.Command("go", "test", "-c", "-p=1", "-ldflags=-w", "-overlay="+name, "-o", program, "./"+st.t.rel)
	cmd.Dir = b.dir
	cmd.Env = append(os.Environ(), "GOWORK=off")
	out, err = cmd.CombinedOutput()
	return program, out, err
}

// test runs those tests of a program whose names match only, and reports whether
// they passed in time.
func (b *bench) test(st *stage, program, only, chosen string) ([]byte, bool) {
	ctx, cancel := context.WithTimeout(context.Background(), b.timeout)
	defer cancel()
	cmd := exec.CommandContext(ctx, program, "-test.short", "-test.failfast", "-test.count=1", "-test.run="+only, "-test.skip="+b.skip)
	cmd.Dir = st.t.dir
	cmd.Env = append(slices.DeleteFunc(os.Environ(), func(v string) bool { return strings.HasPrefix(v, choice+"=") }), choice+"="+chosen)
	cmd.WaitDelay = time.Second
	out, err := cmd.CombinedOutput()
	return out, err == nil
}

// run makes a change and asks the stages in turn.
func (tr *trial) run(c change) (outcome, error) {
	if c.whole.typ != nil || c.wraps != nil {
		return tr.choose(c)
	}
	return tr.compile(c)
}

// passes asks the tests beside the changed file first: they are few, and the
// likeliest to notice.
func (tr *trial) passes(st *stage, program string, c change, chosen string) bool {
	if near := st.t.testsOf(c.file); st.t == c.target && near != "" {
		if _, ok := tr.test(st, program, near, chosen); !ok {
			return false
		}
	}
	_, ok := tr.test(st, program, "", chosen)
	return ok
}

func (tr *trial) choose(c change) (outcome, error) {
	if c.wraps == nil && c.variants[c.kind] == "" {
		return invalid, nil
	}
	for i := range tr.stages {
		program, err := tr.stages[i].ready()
		if err != nil {
			return 0, err
		}
		if !tr.passes(&tr.stages[i], program, c, fmt.Sprintf("%d:%d", tr.index[c.site], c.kind)) {
			return noticed, nil
		}
	}
	return survived, nil
}

func (tr *trial) compile(c change) (outcome, error) {
	folder, err := os.MkdirTemp(tr.scratch, "single")
	if err != nil {
		return 0, err
	}
	defer os.RemoveAll(folder)
	o, err := c.single(folder)
	if err != nil {
		return 0, err
	}
	for i := range tr.stages {
		st := &tr.stages[i]
		if _, err := st.ready(); err != nil {
			return 0, err
		}
		program, _, err := tr.build(st, o, folder)
		if exit := (*exec.ExitError)(nil); errors.As(err, &exit) {
			if i == 0 {
				return invalid, nil
			}
			return noticed, nil
		} else if err != nil {
			return 0, err
		}
		if !tr.passes(st, program, c, "") {
			return noticed, nil
		}
	}
	return survived, nil
}
