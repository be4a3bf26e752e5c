// Wallcard prints the numbers of one's own sugarhouse on one sheet of paper:
// where water and syrup boil by the barometer, what the hydrometer reads by the
// temperature of the cup, what to add to the sap hydrometer, how much sap a
// gallon of syrup takes, how much more to fill at packing heat, and cautions.
//
//	go -C examples/wallcard run . > card.html
//	go -C examples/wallcard run . -name "Ridge Road" -elevation "1450 ft" > card.html
//	go -C examples/wallcard run . -water-boils "98.4 C" -metric -paper a4 > card.html
//
// The page needs no network and no script. Open it in a browser and print it.
package main

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/units"
)

func main() { program().Exit() }

// program is the program with its flags.
func program() cli.Program {
	return cli.Program{
		Name: "wallcard",
		Does: "Prints the numbers of your sugarhouse as one HTML page for one sheet of paper. Send it to a file, open that in a browser and print it; it needs no network and no script. Without flags it prints the card of an invented sugarhouse.",
		Calls: []string{
			`go -C examples/wallcard run . -name "Ridge Road" -elevation "1450 ft" > card.html`,
			`go -C examples/wallcard run . -water-boils "208.9 F" -target "66.9 Brix" -hydrometer "60 F" > card.html`,
			`go -C examples/wallcard run . -altimeter "1016 hPa" -elevation "420 m" -metric -paper a4 > card.html`,
		},
		Caution: "Boiling sap and syrup scald, and syrup sticks. Hang the card where nobody leans over the pan to read it. Fire, smoke and the sale of syrup are ruled by the local code, which comes first.",
		Setup:   setup,
	}
}

// flags is what the command line says.
type flags struct {
	name, paper                    string
	place                          cli.Place
	target                         units.Brix
	syrupGraduation, sapGraduation units.Temperature
	metric, demo, held             bool // held: the elevation is given
}

func setup(f *cli.Flags) func(*cli.Env) error {
	var in flags
	f.Place(&in.place, "1200 ft")
	f.Group("Syrup and instruments")
	f.Quantity(&in.target, "target", "66.9 Brix", "strength of the syrup, 60 to 74 Brix; below 66 it ferments, from 68 on crystals are likely")
	f.Quantity(&in.syrupGraduation, "hydrometer", "60 F", "temperature printed on the syrup hydrometer, at which its scale is true")
	f.Quantity(&in.sapGraduation, "sap-hydrometer", "38 F", "the same of the sap hydrometer")
	f.Group("Sheet")
	f.String(&in.name, "name", "", "whose card it is, at most 40 characters")
	f.Bool(&in.metric, "metric", "metric units in round steps, US units beside them")
	f.Choice(&in.paper, "paper", "letter", []string{"letter", "a4"}, "size of the sheet: letter or a4")
	return func(e *cli.Env) error {
		where, err := in.place.Given()
		if err != nil {
			return err
		}
		in.held = f.Given(cli.ByElevation)
		in.demo = where == cli.ByElevation && !f.Given("elevation") && !f.Given("name")
		if err := in.checkName(); err != nil {
			return cli.For("name", err)
		}
		c, err := newCard(&in)
		if err != nil {
			return err
		}
		return c.write(e.Out)
	}
}

// longestName is what fits beside the title, in characters.
const longestName = 40

func (in *flags) checkName() error {
	in.name = strings.Join(strings.Fields(in.name), " ")
	if utf8.RuneCountInString(in.name) > longestName {
		return fmt.Errorf("it does not fit on the card: use at most %d characters", longestName)
	}
	for _, r := range in.name {
		if !unicode.IsPrint(r) || r == utf8.RuneError {
			return fmt.Errorf("%q cannot be printed: use letters, digits and spaces", r)
		}
	}
	return nil
}
