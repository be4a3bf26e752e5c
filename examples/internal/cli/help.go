package cli

import (
	"io"
	"strings"
)

// head shows a flag with its default.
func (e entry) head() string {
	if e.def == "" {
		return "-" + e.name
	}
	return "-" + e.name + " " + Quote(e.def)
}

// list shows the flags of a group in a line.
func (g group) list() string {
	var all []string
	for _, e := range g.flags {
		all = append(all, e.head())
	}
	return g.title + ": " + strings.Join(all, ", ")
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
		if g.more && !f.full {
			continue
		}
		page.Heading(g.title)
		for _, e := range g.flags {
			page.Line("  " + e.head())
			page.indented("      ", e.help)
		}
	}
	if f.more && !f.full {
		page.Heading("More flags (-h -full tells what each is for)")
		for _, g := range f.groups {
			if g.more {
				page.Item(g.list())
			}
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

// Quote writes a word as it stands on a command line.
func Quote(s string) string {
	if strings.ContainsAny(s, " ") {
		return `"` + s + `"`
	}
	return s
}
