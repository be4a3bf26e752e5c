package cookbook_test

import (
	"fmt"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/cookbook"
)

const opening = `# Cookbook by question

What a maker asks through a season, with a command and with Go that answer it.
The sugarhouse is invented. Use your own: ` + "`folder new mine -set \"gallons: US\"`" + `
begins its folder.

A command such as ` + "`potwatch 59.5 at 204 F`" + ` stands for
` + "`go run ./potwatch 59.5 at 204 F`" + ` in the folder examples of this module. Below it
stands the part of the page that answers; the page says more, and its cautions go
with it. Syrup, sap and fire burn deep.

The Go is the inside of a function. It imports the standard library and packages
of ` + "`example.org/sapreckoner/`" + `, a room by its whole path: ` + "`finish`" + ` is
` + "`example.org/sapreckoner/boil/finish`" + `. [README](../README.md) lists them and tells how
to depend on them; words of the trade are in the [glossary](glossary.md).

It has these helpers, which a program of your own would write to its liking:

`

// page is the cookbook, made of the questions and the examples.
func page(t *testing.T, all []cookbook.Question, run map[string]example) string {
	t.Helper()
	help, err := os.ReadFile("cookbook/help_test.go")
	if err != nil {
		t.Fatal(err)
	}
	_, funcs, _ := strings.Cut(string(help), ")\n\n")
	var b, links strings.Builder
	b.WriteString(opening)
	fence(&b, "go", strings.TrimSpace(funcs))
	season, index := "", map[string][]string{}
	for i, q := range all {
		if q.Season != season {
			season = q.Season
			fmt.Fprintf(&b, "\n## %s\n", season)
		}
		e, title := run[q.Example], fmt.Sprintf("%d. %s", i+1, q.Question)
		fmt.Fprintf(&b, "\n### %s\n\n", title)
		if q.Command != "" {
			fence(&b, "", "$ "+q.Command+"\n"+q.Line)
			b.WriteString("\n")
		}
		fence(&b, "go", strings.Join(e.code, "\n"))
		b.WriteString("\n" + wrap("It prints `"+strings.ReplaceAll(e.gives, "\n", "`, `")+"`. "+e.check))
		fmt.Fprintf(&links, "[%d]: #%s\n", i+1, anchor(title))
		for word := range strings.SplitSeq(q.Words, ";") {
			word = strings.TrimSpace(word)
			index[word] = append(index[word], fmt.Sprintf("[%d]", i+1))
		}
	}
	b.WriteString("\n## Index by word\n\n")
	var words []string
	for word := range index {
		words = append(words, word)
	}
	slices.SortFunc(words, func(a, b string) int { return strings.Compare(strings.ToLower(a), strings.ToLower(b)) })
	for _, word := range words {
		fmt.Fprintf(&b, "- %s: %s\n", word, strings.Join(index[word], ", "))
	}
	return b.String() + "\n" + links.String()
}

// fence writes a block.
func fence(b *strings.Builder, kind, text string) { fmt.Fprintf(b, "```%s\n%s\n```\n", kind, text) }

// wrap breaks a paragraph into lines that read well as text.
func wrap(text string) string {
	var b strings.Builder
	column := 0
	for _, word := range strings.Fields(text) {
		switch {
		case column == 0:
		case column+1+len(word) > 80:
			b.WriteString("\n")
			column = 0
		default:
			b.WriteString(" ")
			column++
		}
		b.WriteString(word)
		column += len(word)
	}
	return b.String() + "\n"
}

var noAnchor = regexp.MustCompile(`[^a-z0-9 -]`)

// anchor is the name that a title has in a link.
func anchor(title string) string {
	return strings.ReplaceAll(noAnchor.ReplaceAllString(strings.ToLower(title), ""), " ", "-")
}
