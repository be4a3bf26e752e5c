package book

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
)

// A question is one of the season's twelve: the command that answers it, the
// beginnings of the lines of its page that do, and the example at the root that
// gives the same.
type question struct {
	month, ask, say string
	args            string
	lines           []string
	example         string
}

const house = "-dir examples/sugarhouse"

var questions = []question{
	{"January", "How many taps does this trunk bear?", "The second tree is 58.2 inches round. The page goes by a cautious guideline and shows what the others say.",
		"stand " + house + " -full", []string{"G2 58.20"}, "Example_season01Taps"},
	{"February", "Where does this year's hole go?", "Three inches to the side of last year's and six inches up or down, clear of what older holes have stained.",
		"stand " + house + " -full", []string{"G1 1 "}, "Example_season02Hole"},
	{"March", "Which days will run?", "Lows and highs of the week, by the criterion of a paper. Wind, sun and frozen ground have their say.",
		"sapweek " + house + " -today 2034-03-12 -full", []string{"Days that run"}, "Example_season03Days"},
	{"March", "What is in the tank?", "A sap hydrometer is true at the temperature on its paper, 38 F here, and the sap had 46.",
		"boilday " + house + " -day 2034-03-11 -full", []string{"big Mar 11"}, "Example_season04Sap"},
	{"March", "How much syrup will it make?", "The balance of sugar. The rule of 86 would say 44.",
		"boilday " + house + " -day 2034-03-11 -full", []string{"Sap to one of syrup"}, "Example_season05Syrup"},
	{"March", "How much water must leave?", "88 gallons of sap, of 1.95 Brix all together.",
		"boilday " + house + " -day 2034-03-11 -full", []string{"Water to boil off"}, "Example_season06Water"},
	{"March", "Where does water boil up here?", "By elevation, in standard weather; boil water and give what your thermometer shows, which is better.",
		"boilday " + house + " -day 2034-03-11 -full", []string{"Pressure at the pan", "Water boils today at"}, "Example_season07Water"},
	{"March", "Where is it syrup?", "At today's pressure, and not at 219 F. The first page rounds to the safe side; -full gives the digits.",
		"boilday " + house + " -day 2034-03-11 -full", []string{"Syrup boils at"}, "Example_season08Stop"},
	{"March", "What must the hydrometer read in the hot cup?", "Not 66.9: its scale is true at 60 F.",
		"boilday " + house + " -day 2034-03-11 -full", []string{"Hydrometer must read"}, "Example_season09Cup"},
	{"March", "It reads 59.5 in a cup at 204 F. Is it syrup?", "Syrup at this heat burns deep and sticks: cup in a holder, sleeves, gloves, nobody near.",
		"potwatch " + house + " 59.5 at 204 F, water 209.6 F", []string{"It is syrup"}, "Example_season10Syrup"},
	{"April", "How warm must the smallest jars be?", "Poured at 187 F, syrup must still have 180 F once it has warmed the glass. Never pour hotter than 190 F; probe one jar.",
		"packday " + house + " -full", []string{"nip 161.7 F may not"}, "Example_season11Jars"},
	{"April", "Who gets which jars?", "By hours worked, whole jars, and whole jars: the largest are handed out first, each to whoever is then owed the most. The page lists the smallest first.",
		"packday " + house, []string{"Orchard house"}, "Example_season12Shares"},
}

// number finds the numbers of a line.
var number = regexp.MustCompile(`[0-9]+(\.[0-9]+)?`)

// seasonPage writes the chapter. It builds the programs and runs every command.
func seasonPage(root string) (map[string]string, error) {
	bodies, err := examples(filepath.Join(root, "season_test.go"))
	if err != nil {
		return nil, err
	}
	bin, err := os.MkdirTemp("", "season")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(bin)
	if out, err := command(root, "go", "build", "-o", bin+string(filepath.Separator), "./examples/stand", "./examples/sapweek", "./examples/boilday", "./examples/potwatch", "./examples/packday"); err != nil {
		return nil, fmt.Errorf("%w: %s", err, out)
	}
	pages := map[string]string{}
	var b strings.Builder
	b.WriteString("# A season in twelve questions\n\n" + made)
	b.WriteString("The sugarhouse of [examples/sugarhouse](../examples/sugarhouse/) is invented: 40 trees, 60 pails, a flat pan over an arch, three springs of records, four\n" +
		"households. Each question below has the command that answers it, the line of the page that is the answer, and the few lines of Go that give the same. They\n" +
		"are examples that run, and their numbers are held to the page's. Errors are left out in them: an answer outside its range is NaN, and prints so. Your own\n" +
		"folder begins with `go run ./examples/folder new sugar -set \"gallons: US\"`; the words of the\n" +
		"trade are in the [glossary](glossary.md), and eighty questions of a maker in the [cookbook](cookbook.md).\n")
	for i, q := range questions {
		page, ok := pages[q.args]
		if !ok {
			program, rest, _ := strings.Cut(q.args, " ")
			if page, err = command(root, filepath.Join(bin, program), strings.Fields(rest)...); err != nil {
				return nil, fmt.Errorf("%s: %w: %s", q.args, err, page)
			}
			pages[q.args] = page
		}
		var answer []string
		for _, begin := range q.lines {
			line, err := lineOf(page, begin)
			if err != nil {
				return nil, fmt.Errorf("%s: %w", q.args, err)
			}
			answer = append(answer, line)
		}
		body, ok := bodies[q.example]
		if !ok {
			return nil, fmt.Errorf("no example %s", q.example)
		}
		_, output, _ := strings.Cut(body, "// Output: ")
		if !number.MatchString(output) {
			return nil, fmt.Errorf("%s: it prints no number to hold to the page", q.example)
		}
		for _, n := range number.FindAllString(output, -1) {
			if !slices.Contains(number.FindAllString(strings.Join(answer, "\n"), -1), n) {
				return nil, fmt.Errorf("%s: the example prints %s, and the page has %q", q.example, n, answer)
			}
		}
		fmt.Fprintf(&b, "\n## %d. %s: %s\n\n%s\n\n```\ngo run ./examples/%s\n```\n\n```text\n%s\n```\n\n```go\n%s```\n", i+1, q.month, q.ask, q.say, q.args, strings.Join(answer, "\n"), body)
	}
	b.WriteString("\nThe year's account, with what is missing and how much of that the instruments leave open:\n\n```\ngo run ./examples/logbook " + house + "\n```\n")
	return map[string]string{"docs/season.md": b.String()}, nil
}

func command(dir, name string, args ...string) (string, error) {
	c := exec.Command(name, args...)
	c.Dir = dir
	out, err := c.CombinedOutput()
	return string(out), err
}

// lineOf finds the line of a page that begins so, whatever the width of its
// columns.
func lineOf(page, begin string) (string, error) {
	for line := range strings.Lines(page) {
		if strings.HasPrefix(strings.Join(strings.Fields(line), " ")+" ", begin) {
			return strings.TrimRight(line, "\n"), nil
		}
	}
	return "", fmt.Errorf("no line begins with %q", begin)
}

// examples gives the bodies of the examples in a file, without their indent.
func examples(path string) (map[string]string, error) {
	text, err := os.ReadFile(path)
	if err != nil {
		return nil, err
	}
	set := token.NewFileSet()
	file, err := parser.ParseFile(set, path, text, parser.ParseComments|parser.SkipObjectResolution)
	if err != nil {
		return nil, err
	}
	bodies := map[string]string{}
	for _, decl := range file.Decls {
		f, ok := decl.(*ast.FuncDecl)
		if !ok || !strings.HasPrefix(f.Name.Name, "Example") {
			continue
		}
		body := string(text[set.Position(f.Body.Lbrace).Offset+2 : set.Position(f.Body.Rbrace).Offset])
		bodies[f.Name.Name] = strings.ReplaceAll("\n"+body, "\n\t", "\n")[1:]
	}
	return bodies, nil
}
