package sapreckoner_test

import (
	"os/exec"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"testing"
)

// elsewhere lists the beginnings of commands that other tests run, or the gate.
var elsewhere = []string{
	"go test ./...", "go test ./density", // this is one of them
	"go test -update .", "go test . ./examples/cookbook -update", // the same tests, writing
	"go test -v -run Published/sugar-per-volume-worked ./density", // TestAdding
	"go test -run Published ./density",                            // the gate; TestPublished
	"go mod ",                                                     // TestConsumer
	"go doc ",                                                     // prints what the source has
	"go -C internal/tools ", "go tool ",                           // the gate
	"go vet ",                       // the gate
	"go run ./examples/folder new ", // writes: TestNewFolderCommand
}

// Every command on a page does what it says: the programs are built once, each
// command runs at the root, and answers with status 0.
func TestDocCommands(t *testing.T) {
	if testing.Short() {
		t.Skip("builds the programs")
	}
	bin := t.TempDir()
	goRun(t, ".", "build", "-o", bin+string(filepath.Separator), "./examples/...")
	built := map[string]bool{}
	ran := 0
	for page, commands := range docCommands(t) {
		for _, c := range commands {
			if slices.ContainsFunc(elsewhere, func(begin string) bool { return strings.HasPrefix(c, begin) }) {
				continue
			}
			ran++
			t.Run(c, func(t *testing.T) {
				// A shell takes the quotes away; what is written goes into a folder of the test.
				words := strings.Fields(strings.NewReplacer(`"`, "", "$PWD", filepath.ToSlash(t.TempDir())).Replace(c))
				var cmd *exec.Cmd
				switch {
				case strings.HasPrefix(c, "go run ./examples/"):
					cmd = exec.Command(filepath.Join(bin, program(words[2])), words[3:]...)
				case strings.HasPrefix(c, "go -C examples/") && len(words) > 4 && words[3] == "run":
					// A module of its own; what it writes goes nowhere.
					if at := slices.Index(words, ">"); at >= 0 {
						words = words[:at]
					}
					name := program(words[2])
					if out, err := exec.Command("go", "-C", words[2], "list", "-m").CombinedOutput(); err != nil && strings.Contains(string(out), "requires go") {
						t.Skipf("this Go is older than the module asks for: %s", out)
					}
					if !built[name] {
						goRun(t, words[2], "build", "-o", filepath.Join(bin, name), ".")
						built[name] = true
					}
					cmd = exec.Command(filepath.Join(bin, name), words[5:]...)
					cmd.Dir = words[2]
				case strings.HasPrefix(c, "go test ") && !strings.Contains(c+" ", " . ") && !strings.Contains(c, "..."): // which would call this
					cmd = exec.Command("go", words[1:]...)
				default:
					t.Fatalf("%s: nothing runs it", page)
				}
				if out, err := cmd.CombinedOutput(); err != nil || strings.Contains(string(out), "no tests to run") {
					t.Errorf("%s: %v: %s", page, err, out)
				}
			})
		}
	}
	if ran < 15 {
		t.Errorf("%d commands ran", ran)
	}
}

// program names what is built of a folder.
func program(folder string) string {
	name := filepath.Base(folder)
	if runtime.GOOS == "windows" {
		name += ".exe"
	}
	return name
}

// docCommands lists, by page, the commands of its blocks, and those among its
// words that run a program.
func docCommands(t *testing.T) map[string][]string {
	t.Helper()
	commands := map[string][]string{}
	seen := map[string]bool{}
	add := func(page, c string) {
		if c = strings.TrimPrefix(strings.TrimSpace(c), "$ "); strings.HasPrefix(c, "go ") && !seen[c] {
			seen[c] = true
			commands[page] = append(commands[page], c)
		}
	}
	for page, text := range prosePages(t) {
		if page == cookbookPage {
			continue
		}
		for _, m := range docFence.FindAllStringSubmatch(text, -1) {
			if m[1] == "" || m[1] == "sh" {
				for line := range strings.Lines(m[2]) {
					add(page, line)
				}
			}
		}
		for _, m := range docInline.FindAllStringSubmatch(docFence.ReplaceAllString(text, ""), -1) {
			if strings.Contains(m[1], " ") {
				add(page, m[1])
			}
		}
	}
	return commands
}

// The folder that the chapter begins is one that can be read.
func TestNewFolderCommand(t *testing.T) {
	if testing.Short() {
		t.Skip("builds a program")
	}
	dir := t.TempDir()
	bin := filepath.Join(dir, program("./examples/folder"))
	goRun(t, ".", "build", "-o", bin, "./examples/folder")
	for _, args := range [][]string{{"new", "sugar", "-set", "gallons: US"}, {"check", "-dir", "sugar"}} {
		cmd := exec.Command(bin, args...)
		cmd.Dir = dir
		if out, err := cmd.CombinedOutput(); err != nil {
			t.Errorf("folder %s: %v: %s", strings.Join(args, " "), err, out)
		}
	}
}
