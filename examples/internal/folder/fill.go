package folder

import (
	"bufio"
	"strings"
)

// A Fill is a flag that the folder fills, or a program that reads the setting itself.
type Fill struct {
	Program string   // empty for all that have such a flag
	Flag    string   // empty if the program reads the setting itself
	Text    string   // as it would stand on the command line
	Needs   []string // flags one of which must be given too, or this one is refused
	Unless  []string // flags beside which this one is refused

	part int // which of the texts of a setting
}

// to is a flag that a setting fills, as program.flag or as a flag of all.
func to(name string) Fill {
	program, flag, ok := strings.Cut(name, ".")
	if !ok {
		return Fill{Flag: name}
	}
	return Fill{Program: program, Flag: flag}
}

// reads is a program that reads a setting itself.
func reads(program string) Fill { return Fill{Program: program} }

func (f Fill) needs(flags string) Fill  { f.Needs = strings.Fields(flags); return f }
func (f Fill) unless(flags string) Fill { f.Unless = strings.Fields(flags); return f }
func (f Fill) from(part int) Fill       { f.part = part; return f }

// files lists the files of the record that fill a flag with their name.
var files = []struct {
	name   string
	fill   Fill
	beaten string
}{
	{"trees.csv", to("stand.tree-file"), ""},
	{"holes.csv", to("stand.hole-file").needs("tree-file"), "tree-file"},
	{"stops.csv", to("potwatch.stops"), ""},
	{"weather.csv", to("sapweek.weather"), ""},
	{"bought.csv", to("spreadsheet.in"), ""},
	{"paid.csv", to("spreadsheet.paid").needs("in"), "in"},
}

// FileFills lists the files of the folder that programs read themselves, each with
// the flag that it fills. One without a row below its header fills none.
func (h *House) FileFills() (lines []Line) {
	for _, f := range files {
		if !h.hasRows(f.name) {
			continue
		}
		f.fill.Text = h.Shown(f.name)
		lines = append(lines, Line{Name: f.name, Fills: []Fill{f.fill}, Beaten: strings.Fields(f.beaten)})
	}
	return lines
}

// hasRows reports whether a file has a row below its header.
func (h *House) hasRows(name string) bool {
	f, ok := h.File(name)
	if !ok {
		return false
	}
	defer f.Close()
	rows := 0
	for scan := bufio.NewScanner(f); rows < 2 && scan.Scan(); {
		if line := strings.TrimSpace(scan.Text()); line != "" && line[0] != '#' {
			rows++
		}
	}
	return rows > 1
}
