package main

import (
	"cmp"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// stepChooser is added to the package whose steps are left out.
const stepChooser = `
func bumpedStep(site int) bool { return site == bumpedSite }

func bumpedError(site int, err error) error {
	if site == bumpedSite {
		return nil
	}
	return err
}

func bumpedPick[T any](site int, own, other T) T {
	if site == bumpedSite {
		return other
	}
	return own
}

var bumpedSite = func() int {
	site, _, _ := strings.Cut(os.Getenv("` + choice + `"), ":")
	s, err := strconv.Atoi(site)
	if err != nil {
		return -1
	}
	return s
}()
`

// stepped makes all steps ones that can be left out, each to be chosen when the
// program starts. A site's number is its place in the list.
func stepped(t *target, sites []*site, names *typeNames, folder string) (overlay, error) {
	o := overlay{map[string]string{}}
	marks := map[string][]mark{}
	for i, s := range sites {
		for _, w := range s.wraps {
			number := func(text string) string { return strings.Replace(text, "%d", fmt.Sprint(i), 1) }
			seq := len(marks[s.file])
			before := mark{edit{w.from, 0, number(w.before)}, opens, w.to, seq}
			if w.from == w.to {
				before.what = place
			}
			marks[s.file] = append(marks[s.file], before)
			if w.after != "" {
				marks[s.file] = append(marks[s.file], mark{edit{w.to, 0, number(w.after)}, closes, w.from, seq})
			}
		}
	}
	for file, list := range marks {
		slices.SortFunc(list, mark.compare)
		name := filepath.Join(t.dir, filepath.Base(file))
		src, err := t.source(name)
		if err != nil {
			return o, err
		}
		edits := make([]edit, len(list))
		for i, m := range list {
			edits[i] = m.edit
		}
		to := filepath.Join(folder, filepath.Base(file))
		if err := os.WriteFile(to, splice(src, edits), 0o666); err != nil {
			return o, err
		}
		o.Replace[name] = to
	}
	to := filepath.Join(folder, "bumped_chooser.go")
	o.Replace[filepath.Join(t.dir, "bumped_chooser.go")] = to
	return o, os.WriteFile(to, []byte(names.header()+stepChooser+operatorChooser), 0o666)
}

// A mark is one end of a wrap, or a wrap of nothing.
type mark struct {
	edit
	what  int
	other int // the other end
	seq   int
}

// What stands at one place: what ends there, what lies between, what begins there.
const (
	closes = iota
	place
	opens
)

// compare puts what ends at a place first, the inner before the outer, and what
// begins there last, the outer before the inner.
func (m mark) compare(n mark) int {
	inner := n.other - m.other // the farther its other end, the outer it is
	seq := m.seq - n.seq
	if m.what == closes {
		seq = -seq
	}
	return cmp.Or(m.offset-n.offset, m.what-n.what, inner, seq)
}
