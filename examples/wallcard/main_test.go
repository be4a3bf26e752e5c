package main

import (
	"bytes"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// page runs the program and returns its page.
func page(t testing.TB, args ...string) string {
	t.Helper()
	var out, errs bytes.Buffer
	if status := program().Main(args, strings.NewReader(""), &out, &errs); status != cli.OK || errs.Len() > 0 {
		t.Fatalf("%q: status %d: %s", args, status, errs.String())
	}
	return out.String()
}

// golden compares with a file in testdata, or writes it.
func golden(t *testing.T, file, got string) {
	t.Helper()
	if err := clitest.Compare(file, got); err != nil {
		t.Error(err)
	}
}

func TestDemo(t *testing.T) { golden(t, "demo.html", page(t)) }

var svgElement = regexp.MustCompile(`(?s)<svg .*?</svg>`)

// The chart that the README shows is the one of the demo.
func TestChartOfReadme(t *testing.T) {
	charts := svgElement.FindAllString(page(t), -1)
	if len(charts) != 2 {
		t.Fatalf("%d charts, want 2", len(charts))
	}
	onPaper := strings.Replace(charts[1], `role="img"`, `role="img" style="background:#fff"`, 1)
	golden(t, filepath.Join("..", "..", "..", "docs", "chart.svg"), onPaper+"\n")
}

func TestMain(m *testing.M) { clitest.Main(m, main) }

func TestBadInput(t *testing.T) {
	b := clitest.Build(t)
	for _, tc := range []struct{ args, want string }{
		{"-elevation|1200", `-elevation: "1200": no unit`},
		{"-elevation|1,200 ft", `-elevation: "1,200 ft": `},
		{"-elevation|20000 ft", `-elevation: elevation 20000 ft (6096 m) is outside -1640 to 16400 ft (-500 to 5000 m)`},
		{"-elevation|NaN m", `-elevation: "NaN m": `},
		{"-pressure|28.6", `-pressure: "28.6": no unit`},
		{"-pressure|28.6 psi", `-pressure: station pressure 58.23 inHg (197.2 kPa)`},
		{"-pressure|49.9 kPa", `-pressure: station pressure 14.74 inHg (49.9 kPa) is outside 14.77 to 32.48 inHg (50 to 110 kPa)`},
		{"-pressure|110.1 kPa", `-pressure: station pressure 32.51 inHg (110.1 kPa) is outside 14.77 to 32.48 inHg (50 to 110 kPa)`},
		{"-pressure|1019 hPa|-elevation|1500 ft", `-pressure: station pressure 30.09 inHg`},
		{"-pressure|970 hPa|-water-boils|209 F", `-water-boils: says the same as -pressure`},
		{"-water-boils|216 F|-elevation|1000 ft", `-water-boils: boiling point of water 216 F`},
		{"-altimeter|30 inHg", `-altimeter: give -elevation too`},
		{"-altimeter|20 inHg|-elevation|1200 ft", `-altimeter: altimeter setting 20 inHg (67.73 kPa) is outside`},
		{"-altimeter|30 inHg|-elevation|9 km", `-elevation: elevation 29530 ft (9000 m) is outside`},
		{"-water-boils|220 F", `-water-boils: boiling point of water 220 F (104.4 C) `},
		{"-water-boils|209", `-water-boils: "209": no unit`},
		{"-water-boils|50 F", `-water-boils: boiling point of water 50 F (10 C) is outside 178.5 to 216 F (81.4 to 102.2 C): no weather does that: check the thermometer`},
		{"-water-boils|209 C", `-water-boils: boiling point of water `},
		{"-water-boils|-4 F", `-water-boils: boiling point of water -4 F (-20 C) is outside`},
		{"-target|66.9", `-target: "66.9": no unit`},
		{"-target|66.9 %", `-target: "66.9 %": ambiguous unit`},
		{"-target|59.9 Brix", `-target: target 59.9 Brix is outside 60 to 74 Brix`},
		{"-target|74.1 Brix", `-target: target 74.1 Brix is outside 60 to 74 Brix`},
		{"-hydrometer|0 C", `-hydrometer: hydrometer graduation 32 F (0 C) is outside`},
		{"-hydrometer|200 F", `-hydrometer: hydrometer graduation 200 F (93.3 C)`},
		{"-sap-hydrometer|0 F", `-sap-hydrometer: hydrometer graduation 0 F (-17.8 C)`},
		{"-sap-hydrometer|38", `-sap-hydrometer: "38": no unit`},
		{"-paper|a3", `-paper: "a3" is not known: use one of letter, a4`},
		{"-metric=perhaps", `-metric: "perhaps" is neither true nor false`},
		{"-name|" + strings.Repeat("x", longestName+1), `-name: it does not fit on the card`},
		{"-name|a\x1bb", `-name: '\x1b' cannot be printed`},
		{"-name|a\xffb", `-name: `},
		{"-nosuch|1", `no such flag (-h lists them): -nosuch`},
		{"-elevation", `flag needs an argument: -elevation`},
		{"stray", `"stray": there are flags only`},
	} {
		status, out, errs := b.Run(t, "", strings.Split(tc.args, "|")...)
		if status != cli.BadInput || out != "" {
			t.Errorf("%q: status %d, %d bytes on standard output", tc.args, status, len(out))
		}
		if !strings.HasPrefix(errs, "wallcard: "+tc.want) || strings.Count(errs, "\n") != 1 {
			t.Errorf("%q:\n got %q\nwant %q", tc.args, errs, "wallcard: "+tc.want)
		}
	}
}

func TestHelp(t *testing.T) {
	help := strings.Join(strings.Fields(strings.ReplaceAll(page(t, "-h"), "\\\n", " ")), " ") // a long call is broken
	for _, want := range []string{`go -C examples/wallcard run . -name "Ridge Road" -elevation "1450 ft" > card.html`, `-target "66.9 Brix"`, "scald", "-sap-hydrometer"} {
		if !strings.Contains(help, want) {
			t.Errorf("-h does not show %q:\n%s", want, help)
		}
	}
}

// The worked calls of -h run.
func TestCallsOfHelp(t *testing.T) {
	word := regexp.MustCompile(`"([^"]*)"|(\S+)`)
	for _, call := range program().Calls {
		line, _, _ := strings.Cut(call, " >")
		var args []string
		_, line, ok := strings.Cut(line, "run . ")
		if !ok {
			t.Fatalf("%s: no arguments", call)
		}
		for _, m := range word.FindAllStringSubmatch(line, -1) {
			args = append(args, m[1]+m[2])
		}
		page(t, args...)
	}
}

// Whatever the limits of the flags, there is a card inside of them.
func TestLimits(t *testing.T) {
	for _, args := range []string{
		"-elevation|-500 m", "-elevation|5000 m", "-pressure|50 kPa", "-pressure|110 kPa",
		"-target|60 Brix", "-target|74 Brix", "-hydrometer|1 C|-sap-hydrometer|1 C", "-hydrometer|40 C|-sap-hydrometer|40 C",
		"-name|" + strings.Repeat("x", longestName),
	} {
		for _, more := range []string{"", "|-metric"} {
			if got := page(t, strings.Split(args+more, "|")...); strings.Contains(got, "NaN") || strings.Contains(got, "Inf") {
				t.Errorf("%s%s: a number is missing", args, more)
			}
		}
	}
}

func TestInventedPlaceIsSaid(t *testing.T) {
	const said = "Invented place"
	if !strings.Contains(page(t), said) || !strings.Contains(page(t, "-metric"), said) {
		t.Error("the demo does not say that its place is invented")
	}
	for _, args := range [][]string{{"-name", "Ridge Road"}, {"-water-boils", "209 F"}, {"-elevation", "1200 ft"}} {
		if strings.Contains(page(t, args...), said) {
			t.Errorf("%q: a place that was given is called invented", args)
		}
	}
}

func TestNameIsEscaped(t *testing.T) {
	if got := page(t, "-name", `<script>x("&")`); strings.Contains(got, "<script") || !strings.Contains(got, "<h1>&lt;script&gt;x(&#34;&amp;&#34;)</h1>") {
		t.Error("the name is not escaped")
	}
}

// The page must need nothing but itself.
func TestSelfContained(t *testing.T) {
	got := strings.ReplaceAll(page(t), `xmlns="http://www.w3.org/2000/svg"`, "")
	for _, bad := range []string{"<script", "http:", "https:", "url(", "@import", "src=", "href=", "<link"} {
		if strings.Contains(got, bad) {
			t.Errorf("the page holds %q", bad)
		}
	}
}

func TestAccessible(t *testing.T) {
	got := page(t)
	for _, m := range regexp.MustCompile(`<th[ >][^>]*>?`).FindAllString(got, -1) {
		if !strings.Contains(m, `scope="col"`) && !strings.Contains(m, `scope="row"`) {
			t.Errorf("a header without scope: %s", m)
		}
	}
	for _, want := range []string{`<html lang="en">`, "<main>", "<h1>", `role="img"`} {
		if !strings.Contains(got, want) {
			t.Errorf("the page lacks %s", want)
		}
	}
	if tables, captions := strings.Count(got, "<table"), strings.Count(got, "<caption>"); tables != 5 || captions != tables {
		t.Errorf("%d tables, %d captions", tables, captions)
	}
	ids := map[string]bool{}
	for _, m := range regexp.MustCompile(` id="([^"]*)"`).FindAllStringSubmatch(got, -1) {
		if ids[m[1]] {
			t.Errorf("two elements are called %s", m[1])
		}
		ids[m[1]] = true
	}
	for _, m := range regexp.MustCompile(`aria-labelledby="(\S+) (\S+)"`).FindAllStringSubmatch(got, -1) {
		if !ids[m[1]] || !ids[m[2]] {
			t.Errorf("%s or %s is missing", m[1], m[2])
		}
	}
}
