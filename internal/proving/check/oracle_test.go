package check

import (
	"os"
	"os/exec"
	"slices"
	"testing"
)

// TestOracleProgram is the oracle of the tests below: the test binary itself,
// which echoes its input, or fails when it is told to.
func TestOracleProgram(t *testing.T) {
	switch os.Getenv("CHECK_ORACLE") {
	case "echo":
		if _, err := os.Stdout.ReadFrom(os.Stdin); err != nil {
			os.Exit(1)
		}
		os.Exit(0)
	case "no module":
		os.Stderr.WriteString("ModuleNotFoundError: No module named 'water'\n")
		os.Exit(1)
	case "fail":
		os.Exit(1)
	}
}

// A recorder is a test that notes how it ended.
type recorder struct {
	testing.TB
	verdict string
}

func (r *recorder) Helper() {}
func (r *recorder) Skipf(string, ...any) {
	r.verdict = "skipped"
	panic(r)
}
func (r *recorder) Fatalf(string, ...any) {
	r.verdict = "failed"
	panic(r)
}

func ask(t *testing.T, program string) (lines []string, verdict string) {
	verdict = judged(t, func(r testing.TB) {
		lines = Oracle(r, "1\n2\n", program, "-test.run=TestOracleProgram")
	})
	return lines, verdict
}

// judged runs a part of a test on a recorder and tells how it ended.
func judged(t *testing.T, part func(testing.TB)) (verdict string) {
	r := &recorder{TB: t}
	defer func() {
		if p := recover(); p != nil && p != any(r) {
			panic(p)
		}
		verdict = r.verdict
	}()
	part(r)
	return ""
}

func TestOracle(t *testing.T) {
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	if _, err := exec.LookPath("an-oracle-that-no-one-has"); err == nil {
		t.Fatal("the oracle that no one has is installed")
	}
	tests := []struct {
		mode, program, required string
		verdict                 string
		lines                   []string
	}{
		{"echo", self, "required", "", []string{"1", "2"}},
		{"fail", self, "", "failed", nil},
		{"no module", self, "", "skipped", nil},
		{"no module", self, "required", "failed", nil},
		{"", "an-oracle-that-no-one-has", "", "skipped", nil},
		{"", "an-oracle-that-no-one-has", "required", "failed", nil},
		{"", "/nowhere/an-oracle-that-no-one-has", "", "skipped", nil},
	}
	for _, tt := range tests {
		t.Setenv("CHECK_ORACLE", tt.mode)
		t.Setenv(oraclesVariable, tt.required)
		lines, verdict := ask(t, tt.program)
		if verdict != tt.verdict || !slices.Equal(lines, tt.lines) {
			t.Errorf("mode %q, program %s, %q: %v, %q; want %v, %q", tt.mode, tt.program, tt.required, lines, verdict, tt.lines, tt.verdict)
		}
	}
}

func TestOracleNumbers(t *testing.T) {
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	t.Setenv("CHECK_ORACLE", "echo")
	tests := []struct {
		input   string
		verdict string
		numbers []float64
	}{
		{"1\n 2.5 \n", "", []float64{1, 2.5}},
		{"1\n", "failed", nil},
		{"1\n2\n3\n", "failed", nil},
		{"1\n2 K\n", "failed", nil},
	}
	for _, tt := range tests {
		var numbers []float64
		verdict := judged(t, func(r testing.TB) {
			numbers = Numbers(r, 2, tt.input, self, "-test.run=TestOracleProgram")
		})
		if verdict != tt.verdict || !slices.Equal(numbers, tt.numbers) {
			t.Errorf("%q: %v, %q; want %v, %q", tt.input, numbers, verdict, tt.numbers, tt.verdict)
		}
	}
}
