package main

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

var sugars = regexp.MustCompile(`([0-9.]+) (?:lb|kg)`)

// Every number of the staircase is the sum of those it is made of, as they are printed:
// gathered is boiled, thrown out and what stands; boiled is drawn, lost and held; drawn is
// bottled, filtered and in stock. The verdict says the same of syrup.
func stairsAddUp(t *testing.T, b clitest.Binary) {
	for _, args := range []string{"", "-metric", "-season|2032", "-season|2032|-metric", "-season|2033", "-season|2033|-metric", "-season|2034|-set|elevation: 0 ft"} {
		page, read := b.Brief(t, "", strings.FieldsFunc(args, func(r rune) bool { return r == '|' })...)
		flat := strings.Join(strings.Fields(page), " ")
		first, rest := map[string]float64{}, map[string]float64{}
		for i, label := range []string{"Gathered", "Boiled", "Drawn", "Bottled", "In stock"} {
			_, row, ok := strings.Cut(flat, " "+label+" ")
			if row, _, _ = strings.Cut(row, ")"); !ok {
				t.Fatalf("%s: no %s\n%s", args, label, page)
			}
			for k, m := range sugars.FindAllStringSubmatch(row, -1) {
				x, err := strconv.ParseFloat(m[1], 64)
				if err != nil {
					t.Fatal(err)
				}
				if key := read.Answers[i].Key; k == 0 {
					first[key] = x
				} else {
					rest[key] += x
				}
			}
		}
		for _, c := range []struct{ whole, parts float64 }{
			{first["gathered"], first["boiled"] + rest["boiled"]},
			{first["boiled"], first["drawn"] + rest["drawn"]},
			{first["drawn"], first["bottled"] + rest["bottled"] + first["stock"] + rest["stock"]},
		} {
			if !(c.whole > 0) || !(math.Abs(c.whole-c.parts) < 1e-9) {
				t.Errorf("%s: %v is not %v\n%s", args, c.whole, c.parts, page)
			}
		}
		syrup := sugars.FindAllStringSubmatch(flat, 2)
		if x, _ := strconv.ParseFloat(syrup[1][1], 64); !(math.Abs(x-first["drawn"]) < 1e-9) {
			t.Errorf("%s: %v of the verdict, %v drawn", args, x, first["drawn"])
		}
	}
}
