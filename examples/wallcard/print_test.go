package main

import (
	"encoding/xml"
	"html"
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest/browser"
)

// A word stands on the paper at these points, from the upper left.
type word struct {
	XMin float64 `xml:"xMin,attr"`
	YMin float64 `xml:"yMin,attr"`
	XMax float64 `xml:"xMax,attr"`
	YMax float64 `xml:"yMax,attr"`
	Text string  `xml:",chardata"`
}

type sheet struct {
	Width  float64 `xml:"width,attr"`
	Height float64 `xml:"height,attr"`
	Words  []word  `xml:"word"`
}

func sheets(t *testing.T, pdf string) []sheet {
	t.Helper()
	var doc struct {
		Sheets []sheet `xml:"body>doc>page"`
	}
	d := xml.NewDecoder(strings.NewReader(browser.Output(t, "pdftotext", "-bbox", pdf, "-")))
	d.Strict, d.Entity = false, xml.HTMLEntity
	if err := d.Decode(&doc); err != nil {
		t.Fatal(err)
	}
	return doc.Sheets
}

const (
	millimeter = 72 / 25.4
	margin     = 10 * millimeter // of @page
	// Room below the demo, for a font that needs another line or two.
	room = 6 * millimeter
)

func TestPrintOneSheet(t *testing.T) {
	browser.Need(t)
	sizes := map[string][2]float64{"letter": {612, 792}, "a4": {595.28, 841.89}}
	for _, paper := range []string{"letter", "a4"} {
		for name, args := range map[string][]string{
			"demo":   nil,
			"metric": {"-metric"},
			"full": {"-name", strings.Repeat("Wide Ww ", longestName/8), "-altimeter", "30.42 inHg", "-elevation", "1640 ft",
				"-target", "68.9 Brix", "-hydrometer", "20 C", "-sap-hydrometer", "20 C"},
			"off":  {"-water-boils", "213.5 F", "-elevation", "1000 ft", "-target", "68.9 Brix"},
			"low":  {"-pressure", "110 kPa", "-target", "60 Brix"},
			"high": {"-water-boils", "81.5 C", "-target", "74 Brix", "-metric", "-name", strings.Repeat("W", longestName)},
		} {
			t.Run(paper+" "+name, func(t *testing.T) {
				page := page(t, append([]string{"-paper", paper}, args...)...)
				pdf := browser.Print(t, page)
				if info := browser.Output(t, "pdfinfo", pdf); !regexp.MustCompile(`(?m)^Pages:\s+1$`).MatchString(info) {
					t.Fatalf("not one page:\n%s", info)
				}
				on := sheets(t, pdf)[0]
				if want := sizes[paper]; math.Abs(on.Width-want[0]) > 1 || math.Abs(on.Height-want[1]) > 1 {
					t.Errorf("the sheet is %v by %v points, want %v", on.Width, on.Height, want)
				}
				everyWord(t, page, on, name == "high")
				inside(t, on)
				apart(t, on)
				if bottom := lowest(on); name == "demo" && bottom > on.Height-margin-room {
					t.Errorf("the last line ends %.1f mm above the margin, want %.1f", (on.Height-margin-bottom)/millimeter, room/millimeter)
				}
			})
		}
	}
}

// everyWord holds the words of the page against those on the paper: nothing is
// clipped, covered or left for a second sheet. A name without a space may be
// broken.
func everyWord(t *testing.T, page string, on sheet, broken bool) {
	t.Helper()
	page = styleElement.ReplaceAllString(page, " ")
	for _, unseen := range []string{"title", "desc"} {
		page = regexp.MustCompile(`(?s)<`+unseen+`.*?</`+unseen+`>`).ReplaceAllString(page, " ")
	}
	page = strings.NewReplacer("</strong>.", ".", "</strong>", "").Replace(page) // a tag inside of a word
	count := map[string]int{}
	for _, w := range strings.Fields(html.UnescapeString(tag.ReplaceAllString(page, " "))) {
		count[w]++
	}
	for _, w := range on.Words {
		for _, part := range strings.Fields(strings.NewReplacer("ﬁ", "fi", "ﬂ", "fl").Replace(w.Text)) {
			count[part]--
		}
	}
	for w, n := range count {
		if n != 0 && !(broken && strings.Trim(w, "W") == "") {
			t.Errorf("%q stands %d times more in the page than on the paper", w, n)
		}
	}
}

// inside holds every word against the margins.
func inside(t *testing.T, on sheet) {
	t.Helper()
	const slack = 0.5 // points
	for _, w := range on.Words {
		if w.XMin < margin-slack || w.XMax > on.Width-margin+slack || w.YMin < margin-slack || w.YMax > on.Height-margin+slack {
			t.Errorf("%q stands in the margin: %+v", w.Text, w)
		}
	}
}

// apart looks for words that run into each other. A line may touch the next,
// since the boxes are as high as the font and not as the letters.
func apart(t *testing.T, on sheet) {
	t.Helper()
	for i, a := range on.Words {
		for _, b := range on.Words[i+1:] {
			wide := min(a.XMax, b.XMax) - max(a.XMin, b.XMin)
			high := min(a.YMax, b.YMax) - max(a.YMin, b.YMin)
			if wide > 0.5 && high > 0.3*min(a.YMax-a.YMin, b.YMax-b.YMin) {
				t.Errorf("%q and %q overlap by %.1f by %.1f points", a.Text, b.Text, wide, high)
			}
		}
	}
}

func lowest(on sheet) float64 {
	return slices.MaxFunc(on.Words, func(a, b word) int {
		if a.YMax < b.YMax {
			return -1
		}
		return 1
	}).YMax
}

// The tables stand apart: the box around the words of one holds no word of
// another. A row is found by the words of its cells in one line.
func TestPrintTablesApart(t *testing.T) {
	browser.Need(t)
	page := page(t)
	on := sheets(t, browser.Print(t, page))[0]
	boxes := map[string]word{}
	for id, rows := range tables(t, page) {
		var box *word
		for _, cells := range rows {
			found := line(on, cells)
			if found == nil {
				t.Fatalf("table %s: the row %v is not on the paper", id, cells)
			}
			if box == nil {
				box = found
			}
			box.XMin, box.YMin = min(box.XMin, found.XMin), min(box.YMin, found.YMin)
			box.XMax, box.YMax = max(box.XMax, found.XMax), max(box.YMax, found.YMax)
		}
		boxes[id] = *box
	}
	for a, p := range boxes {
		for b, q := range boxes {
			if a < b && min(p.XMax, q.XMax) > max(p.XMin, q.XMin) && min(p.YMax, q.YMax) > max(p.YMin, q.YMin) {
				t.Errorf("tables %s and %s overlap: %+v, %+v", a, b, p, q)
			}
		}
	}
}

// line finds words that follow each other in one line and returns their box.
func line(on sheet, cells []string) *word {
	want := strings.Fields(strings.Join(cells, " "))
	for _, first := range on.Words {
		if first.Text != want[0] {
			continue
		}
		var row []word
		for _, w := range on.Words {
			if math.Abs(w.YMin-first.YMin) < 2 && w.XMin >= first.XMin {
				row = append(row, w)
			}
		}
		slices.SortFunc(row, func(a, b word) int {
			if a.XMin < b.XMin {
				return -1
			}
			return 1
		})
		if len(row) < len(want) {
			continue
		}
		box, same := first, true
		for i, w := range want {
			same = same && row[i].Text == w
			box.XMax, box.YMax = max(box.XMax, row[i].XMax), max(box.YMax, row[i].YMax)
		}
		if same {
			return &box
		}
	}
	return nil
}
