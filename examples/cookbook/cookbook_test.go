package cookbook_test

import (
	"go/ast"
	"go/doc"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/cookbook"
	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// mostLines is how much Go an answer may take.
const mostLines = 8

// An example is a function of this folder, as the page shows it.
type example struct {
	check string // its comment: the hand calculation or the source
	code  []string
	gives string // what it prints
}

// examples reads those of the folder.
func examples(t *testing.T, folder string) map[string]example {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(folder, "example_*_test.go"))
	if err != nil || len(files) == 0 {
		t.Fatalf("no examples: %v", err)
	}
	all := map[string]example{}
	for _, name := range files {
		text, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		set := token.NewFileSet()
		file, err := parser.ParseFile(set, name, text, parser.ParseComments)
		if err != nil {
			t.Fatal(err)
		}
		for _, e := range doc.Examples(file) {
			if e.Output == "" {
				t.Errorf("%s: %s has no output, so that it does not run", name, e.Name)
			}
			all[strings.TrimPrefix(e.Name, "_")] = example{strings.Join(strings.Fields(e.Doc), " "), lines(set, text, e.Code), strings.TrimSpace(e.Output)}
		}
	}
	return all
}

// lines are those of the body of a function, without the output.
func lines(set *token.FileSet, text []byte, code ast.Node) (all []string) {
	body := string(text[set.Position(code.Pos()).Offset+1 : set.Position(code.End()).Offset-1])
	body, _, _ = strings.Cut(body, "\n\t// Output:")
	for line := range strings.Lines(body) {
		if line = strings.TrimRight(strings.TrimPrefix(line, "\t"), "\n"); strings.TrimSpace(line) != "" {
			all = append(all, line)
		}
	}
	return all
}

// holds reports whether a figure stands in a text whole: 62 does not in 62.5.
func holds(text, figure string) bool {
	whole := regexp.MustCompile(`(?:^|[^0-9A-Za-z.])` + regexp.QuoteMeta(figure) + `(?:$|[^0-9A-Za-z.]|\.(?:$|[^0-9]))`)
	return whole.MatchString(text)
}

// short reports whether a command is the name of a program, the folder and what is
// read at the moment, and nothing to be looked up.
func short(command string) bool {
	words := strings.Fields(strings.Replace(command, " -dir sugarhouse", "", 1))
	return len(words) > 0 && !slices.ContainsFunc(words, func(w string) bool { return strings.HasPrefix(w, "-") })
}

// Every command is run on the built programs, and the page holds the line; the Go
// beside it gives the same figure. The runs of the examples hold that they print it.
func TestQuestions(t *testing.T) {
	t.Chdir("..")
	all, err := cookbook.Questions()
	if err != nil {
		t.Fatal(err)
	}
	programs := map[string]clitest.Binary{}
	names := []string{"stand", "sapweek", "boilday", "potwatch", "packday", "logbook", "folder"}
	var folders []string
	for _, name := range names {
		folders = append(folders, "./"+name)
	}
	for i, b := range clitest.Programs(t, folders...) {
		programs[names[i]] = b
	}
	run := examples(t, "cookbook")
	pages, asked := map[string]string{}, map[string]bool{}
	inShort, goAlone, numbers := 0, 0, 0
	for _, q := range all {
		e, ok := run[q.Example]
		switch {
		case !ok:
			t.Fatalf("%s: no example %q", q.Question, q.Example)
		case asked[q.Question]:
			t.Errorf("%s: asked twice", q.Question)
		case len(e.code) > mostLines:
			t.Errorf("%s takes %d lines of Go", q.Example, len(e.code))
		case e.check == "":
			t.Errorf("%s does not say how it is known", q.Example)
		}
		asked[q.Question], asked[q.Example] = true, true
		if q.Command == "" {
			goAlone++
			continue
		}
		if short(q.Command) {
			inShort++
		}
		if strings.ContainsAny(q.Figure, "0123456789") {
			numbers++
		}
		if _, ok := pages[q.Command]; !ok {
			words := strings.Fields(q.Command)
			b, ok := programs[words[0]]
			if !ok {
				t.Fatalf("no program %s", words[0])
			}
			status, out, errs := b.Run(t, "", words[1:]...)
			if status != 0 || errs != "" {
				t.Errorf("%s: status %d, %s", q.Command, status, errs)
			}
			pages[q.Command] = strings.Join(strings.Fields(out), " ")
		}
		if !strings.Contains(pages[q.Command], q.Line) {
			t.Errorf("%s: the page does not say %q", q.Command, q.Line)
		}
		if q.Figure == "" || !holds(q.Line, q.Figure) || !holds(e.gives, q.Figure) {
			t.Errorf("%s: %q must stand in both %q and %q", q.Question, q.Figure, q.Line, e.gives)
		}
	}
	for name := range run {
		if !asked[name] {
			t.Errorf("%s answers no question", name)
		}
	}
	t.Logf("%d questions, %d by a short command, %d by Go alone, %d by the same number", len(all), inShort, goAlone, numbers)
	if len(all) < 60 || inShort < 40 || goAlone > 12 || numbers < 50 {
		t.Error("that are too few questions, or too few answers in short")
	}
	if err := clitest.Compare("../../docs/cookbook.md", page(t, all, run)); err != nil {
		t.Errorf("-update writes it anew: %v", err)
	}
}

// A figure stands whole or not at all.
func TestHolds(t *testing.T) {
	for _, c := range []struct {
		text, figure string
		want         bool
	}{
		{"holes 62 (2)", "62", true}, {"62.5 Brix", "62", false}, {"162", "62", false}, {"0.62", "62", false},
		{"runs: 27 F", "runs", true}, {"overruns", "runs", false}, {"at 23 F.", "23 F", true}, {"[3 5 8 7]", "3 5 8 7", true},
	} {
		if got := holds(c.text, c.figure); got != c.want {
			t.Errorf("%q in %q: %v", c.figure, c.text, got)
		}
	}
}
