package book

import (
	"fmt"
	"math"
	"strings"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// A side shows sources that disagree, drawn side by side.
type side struct {
	name, heading, text string
	draw                func() (svg, table string, err error)
}

var sides = []side{
	{"rise", "The boiling rise, by two models and by practice", riseText, risePlot},
	{"saturation", "Saturation, by four hands", saturationText, saturationPlot},
	{"stem", "A straight line between the cold and the hot mark", stemText, stemPlot},
	{"rules", "The rules of thumb, in syrup and in money", rulesText, rulesPlot},
	{"scales", "Two scales of density", scalesText, scalesPlot},
}

// steps gives n+1 places from low to high.
func steps(low, high float64, n int) []float64 {
	xs := make([]float64, n+1)
	for i := range xs {
		xs[i] = low + (high-low)*float64(i)/float64(n)
	}
	return xs
}

// each calls f at every place and stops at the first error.
func each(xs []float64, f func(x float64) (float64, error)) ([]float64, error) {
	ys := make([]float64, len(xs))
	for i, x := range xs {
		y, err := f(x)
		if err != nil {
			return nil, err
		}
		ys[i] = y
	}
	return ys, nil
}

const riseText = `The line is ` + "`boil.Rise`" + ` at 1 atm, after starzak-peacock-1997 with the water of iapws-if97; the shade is
` + "`boil.RiseDoubt`" + `, one standard uncertainty to each side. The green dot is what a second activity model gives at 66 Brix (activity-2006, from memory);
the red dots are the published stops of practice. Practice lies below, the second model above, none more than 0.2 F away. The rise is
not corrected: nobody has shown which is right. Boil to a stop that your own hydrometer has confirmed.`

func risePlot() (string, string, error) {
	atm := 1 * units.Atmosphere
	xs := steps(60, 72, 24)
	ys, err := each(xs, func(x float64) (float64, error) {
		d, err := boil.Rise(units.Brix(x), atm)
		return d.FahrenheitDegrees(), err
	})
	if err != nil {
		return "", "", err
	}
	doubt, err := each(xs, func(x float64) (float64, error) {
		d, err := boil.RiseDoubt(units.Brix(x), atm)
		return d.FahrenheitDegrees(), err
	})
	if err != nil {
		return "", "", err
	}
	low, high := make([]float64, len(xs)), make([]float64, len(xs))
	for i := range xs {
		low[i], high[i] = ys[i]-doubt[i], ys[i]+doubt[i]
	}
	p := &plot{title: "Boiling rise of syrup at 1 atm by two models and by practice"}
	a := p.panel("rise over boiling water at 1 atm, F", 240, 60, 72, 5, 10.5)
	a.band(xs, low, high, band)
	a.line(xs, ys, blue, "")
	a.dots([]float64{66}, []float64{4.098 * 1.8}, green, 7)
	stops, err := check.Load("syrup-finish-rise")
	if err != nil {
		return "", "", err
	}
	var bx, by []float64
	var t strings.Builder
	t.WriteString("| Brix | by | stop over water, F | `boil.Rise`, F | practice is below by, F |\n|--:|---|--:|--:|--:|\n")
	for _, r := range stops.Rows {
		bx, by = append(bx, r.Float("brix")), append(by, r.Float("rise_F"))
		d, err := boil.Rise(units.Brix(r.Float("brix")), atm)
		if err != nil {
			return "", "", err
		}
		fmt.Fprintf(&t, "| %s | %s | %s | %.2f | %.2f |\n", r.Text("brix"), r.Text("source"), r.Text("rise_F"), d.FahrenheitDegrees(), d.FahrenheitDegrees()-r.Float("rise_F"))
	}
	a.dots(bx, by, red, 7)
	a.key(0, blue, "boil.Rise (Starzak and Peacock 1997), and its doubt")
	a.key(1, green, "a second activity model, 2006")
	a.key(2, red, "stops of practice")
	a.axes("Brix", "F", 2, 1)
	return p.svg(), t.String(), nil
}

const saturationText = `How much sugar water can hold, less what Herzfeld has (mohos-2010, read), over the range that all four cover. Vavrinecz and Charles are
formulas from memory, Herzfeld and Sokolovsky printed tables of every 5 C and more. Half a Brix in the cellar is what a person should think of any of them:
crystals at 68 Brix are likely on a cool shelf, whichever is right.`

func saturationPlot() (string, string, error) {
	xs := steps(5, 90, 34)
	p := &plot{title: "Saturation of sucrose in water by four sources, less Herzfeld"}
	a := p.panel("saturation less Herzfeld's, Brix", 200, 5, 90, -1.2, 1.2)
	colors := map[sugar.Solubility]string{sugar.Vavrinecz: blue, sugar.Charles: red, sugar.Herzfeld: "#999", sugar.Sokolovsky: green}
	var t strings.Builder
	t.WriteString("| at | Vavrinecz | Charles | Herzfeld | Sokolovsky |\n|---|--:|--:|--:|--:|\n")
	for _, c := range []float64{5, 10, 20, 40, 60, 90} {
		fmt.Fprintf(&t, "| %.0f C, %.0f F |", c, 32+1.8*c)
		for _, s := range []sugar.Solubility{sugar.Vavrinecz, sugar.Charles, sugar.Herzfeld, sugar.Sokolovsky} {
			if b, err := s.Saturation(units.Celsius(c)); err == nil {
				fmt.Fprintf(&t, " %.2f |", float64(b))
			} else {
				t.WriteString(" - |")
			}
		}
		t.WriteString("\n")
	}
	for i, s := range sugar.Solubilities() {
		ys := make([]float64, len(xs))
		for j, x := range xs {
			of, err := s.Saturation(units.Celsius(x))
			if err != nil {
				ys[j] = math.NaN() // beyond its range
				continue
			}
			by, err := sugar.Herzfeld.Saturation(units.Celsius(x))
			if err != nil {
				return "", "", err
			}
			ys[j] = float64(of - by)
		}
		a.line(xs, ys, colors[s], "")
		a.key(i, colors[s], s.String())
	}
	a.axes("C", "Brix", 10, 0.5)
	return p.svg(), t.String(), nil
}

const stemText = `Some stems have two red lines for syrup of 66.9 Brix: one for the cold cup, one for the hot. Between them a straight line seems natural: at
135 F, half of the way. The stem does not work so: syrup swells more in the heat than in the cold. The picture shows what the syrup truly is when the surface
stands on that straight line (` + "`density.Mark.StraightLine`" + `), on a hydrometer graduated at 60 F. In the middle the cup reads syrup that is not: too thin by
0.4 Brix, and thin syrup ferments. Read the stem at one of its two marks, or by the table of the cup that boilday and the wall card print.`

func stemPlot() (string, string, error) {
	const cold, hot, want = 60.0, 211.0, 66.9
	cup := density.Hydrometer{GraduatedAt: units.Fahrenheit(60)}
	read := func(brix, f float64) (float64, error) {
		b, err := cup.Reading(units.Brix(brix), units.Fahrenheit(f))
		return float64(b), err
	}
	mark := density.Mark{For: want, At: units.Fahrenheit(hot)}
	off := func(f float64) (float64, error) {
		miss, err := mark.StraightLine(units.Fahrenheit(cold), units.Fahrenheit(f), 0)
		return float64(miss.Brix), err
	}
	xs := steps(cold, hot, 38)
	ys, err := each(xs, off)
	if err != nil {
		return "", "", err
	}
	low, high := span(ys)
	p := &plot{title: "What syrup is when its hydrometer stands on a straight line between the marks for a cold and a hot cup, less 66.9 Brix"}
	a := p.panel("true strength on the straight line, less 66.9 Brix", 180, cold, hot, min(-0.1, low-0.1), max(0.1, high+0.1))
	a.line([]float64{cold, hot}, []float64{0, 0}, "#999", "")
	a.line(xs, ys, blue, "")
	a.axes("cup, F", "Brix", 20, 0.1)
	var t strings.Builder
	t.WriteString("| cup, F | a 60 F hydrometer reads, in 66.9 Brix | the straight line has | syrup there is, Brix |\n|--:|--:|--:|--:|\n")
	for _, f := range []float64{60, 100, 135, 170, 190, 211} {
		r, err := read(want, f)
		if err != nil {
			return "", "", err
		}
		o, err := off(f)
		if err != nil {
			return "", "", err
		}
		line, err := read(want+o, f)
		if err != nil {
			return "", "", err
		}
		fmt.Fprintf(&t, "| %.0f | %.2f | %.2f | %.2f |\n", f, r, line, want+o)
	}
	return p.svg(), t.String(), nil
}

const rulesText = `Each rule of thumb against the exact balance of sugar, for the syrup that the rule means. A rule that says too little sap promises too
much syrup. The columns of money are 1,000 gallons of sap at an invented 60 dollars a gallon of syrup: what one who pays or is paid by the rule is off by.`

func rulesPlot() (string, string, error) {
	xs := steps(1, 20, 38)
	p := &plot{title: "Error of the rules of thumb for sap to a gallon of syrup"}
	a := p.panel("sap by the rule, over the exact, percent", 220, 1, 20, -4, 8)
	a.line([]float64{1, 20}, []float64{0, 0}, "#999", "")
	colors := []string{blue, red, green, gold, "#7a3fa0"}
	var t strings.Builder
	t.WriteString("| rule | syrup of | at 2 Brix | syrup off, gal | money off | at 3 Brix | at 10 Brix |\n|---|--:|--:|--:|--:|--:|--:|\n")
	for i, r := range yield.Rules() {
		ys, err := each(xs, func(x float64) (float64, error) {
			e, err := r.ErrorAt(units.Brix(x))
			return e.Percents(), err
		})
		if err != nil {
			return "", "", err
		}
		a.line(xs, ys, colors[i%len(colors)], "")
		a.key(i, colors[i%len(colors)], fmt.Sprintf("%s, for %.1f Brix", r, float64(r.Syrup())))
		at := map[float64]float64{}
		for _, x := range []float64{2, 3, 10} {
			e, err := r.ErrorAt(units.Brix(x))
			if err != nil {
				return "", "", err
			}
			at[x] = e.Percents()
		}
		exact, err := yield.Ratio(2, r.Syrup())
		if err != nil {
			return "", "", err
		}
		by, err := r.Ratio(2)
		if err != nil {
			return "", "", err
		}
		gallons := 1000/by - 1000/exact
		fmt.Fprintf(&t, "| %s | %.1f | %+.1f %% | %+.2f | %+.0f dollars | %+.1f %% | %+.1f %% |\n", r, float64(r.Syrup()), at[2], gallons, 60*gallons, at[3], at[10])
	}
	a.axes("sap, Brix", "%", 2, 2)
	return p.svg(), t.String(), nil
}

const scalesText = `Marks on glass follow one of two relations of density and strength: Plato's of 1900, printed in nbs-c440, or ICUMSA's (icumsa-sps4). The line
is what the older scale reads more than the newer at the same specific gravity. At syrup it is half of what a good hydrometer is uncertain by.
The kinks are those of the printed digits of the older table.`

func scalesPlot() (string, string, error) {
	xs := steps(0, 85, 34)
	ys, err := each(xs, func(x float64) (float64, error) {
		sg, err := density.ICUMSA.SG2020(units.Brix(x))
		if err != nil {
			return 0, err
		}
		b, err := density.NBSC440.Brix(sg)
		if err != nil {
			return math.NaN(), nil // the ends of the two do not meet
		}
		return float64(b) - x, nil
	})
	if err != nil {
		return "", "", err
	}
	p := &plot{title: "NBS C440 less ICUMSA at equal specific gravity"}
	a := p.panel("NBS C440 less ICUMSA at equal specific gravity, Brix", 150, 0, 85, -0.02, 0.12)
	a.line([]float64{0, 85}, []float64{0, 0}, "#999", "")
	a.line(xs, ys, blue, "")
	a.axes("Brix", "Brix", 10, 0.02)
	return p.svg(), "", nil
}
