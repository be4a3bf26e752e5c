package main

import (
	"encoding/xml"
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// A drawing is written to a file beside the page, is XML, and says in words
// what it shows.
func drawings(t *testing.T, b clitest.Binary) {
	path := filepath.Join(t.TempDir(), "trunk.svg")
	_, page, _ := b.Run(t, "")
	status, out, errs := b.Run(t, "", "-map", "G7", "-svg", path)
	if status != 0 || out != page {
		t.Fatalf("status %d, %s; the page differs from that without a drawing", status, errs)
	}
	written, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	_, printed, _ := b.Run(t, "", "-map", "G7", "-svg", "-")
	if string(written) != printed {
		t.Error("the file differs from what is printed")
	}
	const trees = "tree,girth_in,species,vigor\n\"<&\"\"'>\",60,sugar maple,healthy\nthin,4,sugar maple,healthy\n"
	_, odd, _ := b.Run(t, trees, "-tree-file", "-", "-map", `<&"'>`, "-svg", "-")
	for _, svg := range []string{printed, odd} {
		elements := map[string]int{}
		d := xml.NewDecoder(strings.NewReader(svg))
		for {
			token, err := d.Token()
			if errors.Is(err, io.EOF) {
				break
			}
			if err != nil {
				t.Fatalf("%v in\n%s", err, svg)
			}
			if e, ok := token.(xml.StartElement); ok {
				elements[e.Name.Local]++
			}
		}
		if elements["title"] != 1 || elements["desc"] != 1 || elements["svg"] != 1 || strings.Contains(svg, "NaN") {
			t.Errorf("%v", elements)
		}
	}
	if !strings.Contains(odd, "&lt;&amp;&#34;&#39;&gt;") || !strings.Contains(odd, "0 old holes") {
		t.Errorf("the label is not there in\n%s", odd)
	}
}
