package main

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
)

// A survivor is a line of known.txt: changes that no test can or need notice.
type survivor struct {
	at     string // line of known.txt
	file   string
	source string // the line of code
	old    string
	nth    int      // which of the literals that read so in the line, from 1; 0 for all
	to     []string // * for all
	fits   bool
}

// knownList is what known.txt says.
type knownList []*survivor

// readKnown reads paragraphs of four parts: file, line of code, "old -> new, new"
// with * for every change of that literal, and the reason. Where several literals
// of the line read alike, "old#2 -> new" means the second. Lines that start with #
// are comments.
func readKnown(o options) (knownList, error) {
	if o.known == "" {
		return nil, nil
	}
	data, err := os.ReadFile(filepath.Join(o.dir, o.known))
	if err != nil {
		return nil, err
	}
	var list knownList
	var part []string
	end := func(number int) error {
		defer func() { part = nil }()
		if len(part) == 0 {
			return nil
		}
		if len(part) < 4 {
			return fmt.Errorf("%s:%d: want a file, a line of code, a change and a reason", o.known, number)
		}
		old, to, ok := strings.Cut(part[2], " -> ")
		if !ok {
			return fmt.Errorf("%s:%d: want old -> new, not %q", o.known, number, part[2])
		}
		old, place, chosen := strings.Cut(old, "#")
		nth, err := strconv.Atoi(place)
		if chosen && (err != nil || nth < 1) {
			return fmt.Errorf("%s:%d: want a number from 1 after #, not %q", o.known, number, part[2])
		}
		list = append(list, &survivor{
			at:   fmt.Sprintf("%s: %s: %s", part[0], part[1], part[2]),
			file: part[0], source: part[1], old: old, nth: nth, to: strings.Split(to, ", "),
		})
		return nil
	}
	number := 0
	for line := range strings.Lines(string(data)) {
		number++
		line = strings.TrimSpace(line)
		switch {
		case strings.HasPrefix(line, "#"):
		case line != "":
			part = append(part, line)
		default:
			if err := end(number); err != nil {
				return nil, err
			}
		}
	}
	return list, errors.Join(end(number))
}

// apply marks the known changes of the sites and returns the lines that fit
// nothing in the packages the sites lie in.
func (list knownList) apply(sites []*site) (stale []string) {
	folders := map[string]bool{}
	type alike struct {
		file string
		line int
		text string
		step kind
	}
	count := map[alike]int{}
	for _, s := range sites {
		reads := alike{s.file, s.line, s.text, s.step}
		count[reads]++
		folders[filepath.Dir(s.file)] = true
		for _, k := range list {
			if k.file != s.file || k.source != s.source || k.old != s.text || k.nth != 0 && k.nth != count[reads] {
				continue
			}
			for kind := range kinds {
				text, ok := s.bumped(kind)
				if ok && (k.to[0] == "*" || slices.Contains(k.to, text)) {
					s.known[kind] = true
					k.fits = true
				}
			}
		}
	}
	for _, k := range list {
		if !k.fits && folders[filepath.Dir(k.file)] {
			stale = append(stale, k.at)
		}
	}
	return stale
}
