package main

import (
	"bytes"
	"compress/gzip"
	"errors"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
)

// The page stays small enough for a phone, and brings no server and no templates.
func TestSize(t *testing.T) {
	page, err := built()
	if err != nil {
		t.Fatal(err)
	}
	const most = 1_700_000
	if len(page) > most {
		t.Errorf("the page has %d bytes, want at most %d", len(page), most)
	}
	t.Logf("%d bytes", len(page))
	cmd := exec.Command("go", "list", "-deps", "./wasm")
	cmd.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm")
	deps, err := cmd.Output()
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range []string{"net/http", "text/template", "html/template", "regexp", "testing"} {
		if strings.Contains("\n"+string(deps), "\n"+p+"\n") {
			t.Errorf("the library in the page brings %s", p)
		}
	}
}

// The page needs nothing but itself: it names no address, and its policy lets
// nothing in.
func TestSelfContained(t *testing.T) {
	page, err := built()
	if err != nil {
		t.Fatal(err)
	}
	text := strings.ReplaceAll(string(page), "http://www.w3.org/2000/svg", "")
	before, rest, _ := strings.Cut(text, `id="wasm"`)
	_, after, _ := strings.Cut(rest, "</script>")
	glue, err := glue() // the script of the Go release, whose remarks name addresses
	if err != nil {
		t.Fatal(err)
	}
	text = strings.Replace(before, string(glue), "", 1) + after
	for _, bad := range []string{"http://", "https://", "url(", "@import", "<link", "src=", "eval(", "innerHTML"} {
		if strings.Contains(text, bad) {
			t.Errorf("the page holds %q", bad)
		}
	}
	if !strings.Contains(text, `content="default-src 'none';`) || strings.Contains(text, "connect-src") {
		t.Error("the page may fetch")
	}
}

// Packing is undone by counting back, sign by sign.
func TestPack(t *testing.T) {
	file := bytes.Repeat([]byte("sap\x00\xff"), 1001)
	text, size, err := pack(file)
	if err != nil {
		t.Fatal(err)
	}
	if strings.ContainsAny(text, "\"&'<>\\` \n") || len(text)%5 != 0 {
		t.Error("signs that mean something in HTML")
	}
	var value [256]uint32
	n := uint32(0)
	for c := '!'; n < 85; c++ {
		if !strings.ContainsRune("\"&'<>\\`", c) {
			value[c] = n
			n++
		}
	}
	var packed []byte
	for i := 0; i < len(text); i += 5 {
		x := uint32(0)
		for _, c := range []byte(text[i : i+5]) {
			x = x*85 + value[c]
		}
		packed = append(packed, byte(x>>24), byte(x>>16), byte(x>>8), byte(x))
	}
	z, err := gzip.NewReader(bytes.NewReader(packed[:size]))
	if err != nil {
		t.Fatal(err)
	}
	if got, err := io.ReadAll(z); err != nil || !bytes.Equal(got, file) {
		t.Errorf("%d bytes, %v", len(got), err)
	}
}

func TestFlags(t *testing.T) {
	if testing.Short() {
		t.Skip("it builds the page five times")
	}
	dir := t.TempDir()
	own, other := filepath.Join(dir, "pocket.html"), filepath.Join(dir, "letter.html")
	if err := os.WriteFile(other, []byte("<p>a letter"), 0o600); err != nil {
		t.Fatal(err)
	}
	run := func(args ...string) (int, string) {
		var out, errs bytes.Buffer
		return program().Main(args, strings.NewReader(""), &out, &errs), errs.String()
	}
	for _, c := range []struct{ args, want string }{
		{"", "pocket: -out: give -out FILE to build the page, or -serve ADDRESS to serve it\n"},
		{"-out|a.html|-serve|:0", "pocket: -out: give -out FILE"},
		{"-serve|:0|-cert|a.pem", "pocket: -cert: give -cert and -key together\n"},
		{"-out|a.html|-cert|a.pem|-key|b.pem", "pocket: -cert: give -serve too\n"},
		{"-out|" + other, "pocket: -out: "},
		{"-out|" + filepath.Join(dir, "none", "a.html"), "pocket: -out: "},
		{"stray", "pocket: \"stray\""},
		{"-out|a.html|-dir|x", "pocket: "}, // the settings are read on the phone
	} {
		var args []string
		if c.args != "" {
			args = strings.Split(c.args, "|")
		}
		if status, errs := run(args...); status != cli.BadInput || !strings.HasPrefix(errs, c.want) {
			t.Errorf("%q: status %d, %q", c.args, status, errs)
		}
	}
	for range 2 { // the second time it replaces its own page
		if status, errs := run("-out", own); status != cli.OK || errs != "" {
			t.Fatalf("status %d, %s", status, errs)
		}
	}
	got, err := os.ReadFile(own)
	if err != nil {
		t.Fatal(err)
	}
	if want, _ := built(); !bytes.Equal(got, want) {
		t.Error("two builds differ")
	}
	if text, err := os.ReadFile(other); err != nil || string(text) != "<p>a letter" {
		t.Error("a letter was replaced", errors.Join(err))
	}
}
