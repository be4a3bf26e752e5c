package main

import (
	"cmp"

	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// kinds are the further products: the word of the flag, and what the packages
// call the same in their points, their weights and their syrups.
var kinds = []struct {
	word, finish, figure string
	syrup                sugar.Confection // 0 if inverted sugar is not told
}{
	{"cream", "cream or butter", "cream", sugar.MapleCream},
	{"molded candy", "soft molded candy", "molded soft sugar", sugar.MoldedSugar},
	{"granulated sugar", "granulated sugar", "granulated sugar", 0},
	{"block sugar", "hard block sugar", "", 0},
	{"sugar on snow", "sugar on snow", "", 0},
	{"fudge", "fudge", "", 0},
	{"fondant", "fondant", "", 0},
}

func products() (words []string) {
	for _, k := range kinds {
		words = append(words, k.word)
	}
	return words
}

// label is the temperature at which syrup is sold by volume: 68 F.
var label = units.Celsius(20)

// product is where a further product is done, and what it weighs.
type product struct {
	name    string
	points  []point
	figures []finish.ProductFigure
	grains  []finish.Graining
	syrup   sugar.Confection
}

// point is one published point, today.
type point struct {
	finish.Finish
	low, high   units.Temperature
	strength    units.Span[units.Brix]
	moisture    units.Span[units.Share]
	least, most units.Mass // of a US gallon of syrup, if nothing sticks
}

// product looks up what to make.
func (s *setup) product(t *thermometer) (*product, error) {
	syrup, err := sugar.NewLot(units.USGallon, s.target, label)
	if err != nil {
		return nil, cli.For("target", err)
	}
	for _, k := range kinds {
		if k.word != s.making {
			continue
		}
		m := &product{name: k.word, syrup: k.syrup}
		for _, f := range finish.ConfectionFinishes() {
			if f.Product != k.finish {
				continue
			}
			p := point{Finish: f}
			if err := p.today(t.pressure, syrup); err != nil {
				return nil, cli.For(t.from, err)
			}
			m.points = append(m.points, p)
		}
		for _, g := range finish.Grainings() {
			if g.Product == k.finish {
				m.grains = append(m.grains, g)
			}
		}
		for _, f := range finish.ProductFigures() {
			if f.Product == k.figure {
				m.figures = append(m.figures, f)
			}
		}
		return m, nil
	}
	return nil, nil
}

// today brings the point to the pressure of the day.
func (p *point) today(pressure units.Pressure, syrup sugar.Lot) error {
	var errs [5]error
	p.low, p.high, errs[0] = p.At(pressure)
	p.strength, errs[1] = p.Strength()
	p.moisture, errs[2] = p.Moisture()
	p.least, errs[3] = finish.ProductWeight(syrup, p.moisture.Low)
	p.most, errs[4] = finish.ProductWeight(syrup, p.moisture.High)
	return cmp.Or(errs[:]...)
}
