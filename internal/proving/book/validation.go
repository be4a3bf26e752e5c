package book

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"example.org/sapreckoner/internal/proving/check"
)

// folder holds the figures of the chapter.
const folder = "docs/validation/"

// validation writes the chapter and its figures.
func validation(root string) (map[string]string, error) {
	tables, err := published()
	if err != nil {
		return nil, err
	}
	files := map[string]string{folder + "all.svg": overview(tables)}
	var b strings.Builder
	b.WriteString("# Validation\n\n" + made)
	fmt.Fprintf(&b, "Each figure below is one table of figures that were read or recalled and that the library reckons. A dot is one of them: what the library gives less what\n"+
		"stands there, as a share of the tolerance that the table grants. The shade is the tolerance: half a unit of the last printed digit, plus what the source says of\n"+
		"its own fit. Red dots are figures that the library does not meet by a documented amount; what is drawn is what is left of it. Figures that were recalled\n"+
		"and not seen again are drawn too: their lines say so. Tables that only copy constants and those that this project computed have no figure; [sources](sources.md)\n"+
		"lists all. A dot outside the shade fails the tests.\n\n")
	fmt.Fprintf(&b, "## All on one page\n\n%d tables.\n\n![Every figure, read or recalled, that is reckoned, by table](validation/all.svg)\n\n", len(tables))
	b.WriteString("## Where sources disagree\n")
	if _, err := os.Stat(filepath.Join(root, "docs", "rules.md")); err == nil {
		b.WriteString("\nRules of the sugarhouse by name, and what each misses by: [rules and charts audited](rules.md).\n")
	}
	for _, s := range sides {
		svg, table, err := s.draw()
		if err != nil {
			return nil, fmt.Errorf("%s: %w", s.name, err)
		}
		files[folder+"side-"+s.name+".svg"] = svg
		fmt.Fprintf(&b, "\n### %s\n\n%s\n\n![%s](validation/side-%s.svg)\n", s.heading, s.text, s.heading, s.name)
		if table != "" {
			b.WriteString("\n" + table)
		}
	}
	b.WriteString("\n## Table by table\n")
	for _, d := range tables {
		name := d.table.ID + ".svg"
		files[folder+name] = d.svg()
		fmt.Fprintf(&b, "\n### %s\n\n%s. Obtained: %s. Sources: %s.\n\n![%s](validation/%s)\n\n", d.table.ID, d.table.Title, d.table.Obtained, keys(d.table), d.table.Title, name)
		for _, c := range d.claims {
			col, _ := d.table.Column(c.Column)
			worst, apart, memory := c.residuals[0], 0, 0
			for _, r := range c.residuals {
				if abs(r.Share()) > abs(worst.Share()) {
					worst = r
				}
				if r.Apart {
					apart++
				}
				if r.Row.FromMemory() {
					memory++
				}
			}
			fmt.Fprintf(&b, "- `%s`, %s: %s; worst at %s. Tolerance %s: %s.", c.Func, c.Column, count(len(c.residuals), apart, memory), worst.Row.Name(), col.Tolerance, strings.TrimSuffix(col.Reason, "."))
			if c.With != "" {
				fmt.Fprintf(&b, " With: %s.", strings.TrimSuffix(c.With, "."))
			}
			b.WriteString("\n")
		}
		if d.table.Basis != "" {
			fmt.Fprintf(&b, "- Basis: %s.\n", d.table.Basis)
		}
		for _, n := range d.table.Notes {
			fmt.Fprintf(&b, "- Note: %s.\n", strings.TrimSuffix(n, "."))
		}
	}
	files["docs/validation.md"] = b.String()
	return files, nil
}

func keys(t *check.Table) string {
	if len(t.Keys) == 0 {
		return "none"
	}
	var links []string
	for _, k := range t.Keys {
		links = append(links, "["+k+"](bibliography.md#"+anchor(k)+")")
	}
	return strings.Join(links, ", ")
}

// anchor is what a heading is linked by: letters, digits and hyphens, in lower
// case.
func anchor(heading string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r == ' ':
			return '-'
		case r == '-' || r == '_' || r >= 'a' && r <= 'z' || r >= '0' && r <= '9':
			return r
		case r >= 'A' && r <= 'Z':
			return r + 'a' - 'A'
		}
		return -1
	}, heading)
}

func count(all, apart, memory int) string {
	s := fmt.Sprintf("%d figures", all)
	if all == 1 {
		s = "1 figure"
	}
	if apart > 0 {
		s += fmt.Sprintf(", %d apart", apart)
	}
	if memory > 0 {
		s += fmt.Sprintf(", %d from memory", memory)
	}
	return s
}

func abs(x float64) float64 { return max(x, -x) }
