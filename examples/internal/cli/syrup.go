package cli

import (
	"fmt"
	"math"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// What all programs say of finished syrup stands here, so that one thing has one
// figure. Give or take is k = 2 wherever a program prints it.

// Strengths that a program takes as a target.
const (
	LeastTarget units.Brix = 60
	MostTarget  units.Brix = 74
)

// Legal words what rules ask of a target.
const Legal = "the United States and Canada ask for 66.0 to 68.9, some places for 66.9 or more: local rules come first"

// legalMost is the most that the rules of most places allow. Source: as of
// [sugar.UnitedStates].
const legalMost units.Brix = 68.9

// NineteenOfTwenty tells, once on a page, what its give or take means.
const NineteenOfTwenty = "Give or take holds 19 times of 20 (k = 2), on all of this page."

// Target checks the strength to finish at.
func Target(name string, b units.Brix) error {
	return Within(name, "target", b, LeastTarget, MostTarget, 1, "Brix",
		"syrup is 66 to 68.9 Brix; thinner it ferments, thicker it grows crystals, and candy is finished by its temperature")
}

// Target declares the strength to finish at, and holds it to what is syrup.
func (f *Flags) Target(b *units.Brix, name string) {
	f.Quantity(b, name, "66.9 Brix", "strength of the syrup")
	f.checks = append(f.checks, func() error { return Target(name, *b) })
}

// Keeping warns of syrup too thin or too thick to keep in a closed jar; it is
// empty for other syrup.
func Keeping(b units.Brix) string {
	switch {
	case b < sugar.KeepsFrom:
		return fmt.Sprintf("Syrup of %s is thin: below %s it ferments or molds in the jar, and it may not be sold as syrup. Boil on, or keep it cold and use it soon.", b.Text(1), sugar.KeepsFrom.Text(0))
	case b > legalMost:
		return fmt.Sprintf("Syrup of %s is too thick: most rules end at %s, and from %s on crystals are likely in the jar.", b.Text(1), legalMost.Text(1), sugar.KeepsTo.Text(0))
	case b >= sugar.KeepsTo-1e-9: // what is poured together is rounded
		return fmt.Sprintf("Syrup of %s is thick: from %s on crystals are likely in the jar.", b.Text(1), sugar.KeepsTo.Text(0))
	}
	return ""
}

// WaterOrSap is what syrup that went too far is usually thinned with.
const WaterOrSap = "hot water or hot sap"

// BringBack tells how syrup that went too far is brought back, with something hot
// such as [WaterOrSap]. Common practice.
func BringBack(with string) []string {
	return []string{
		"Off the fire first. Thin it there with " + with + ", in small pours, stirring after each. Stand back: it foams up and spits, and syrup burns deep.",
		"Then bring it to the boil again, filter it, and read again. What is cold or not boiled again spoils the jar.",
	}
}

// ReadAgain tells how to read so that the reading decides. Common practice.
const ReadAgain = "Read again, the hydrometer first: stem clean and dry, cup full and deep, the temperature of the cup taken with the reading."

// InCup notes the cup that a hydrometer stands in: how hot it is, whether somebody
// told so, and near the boil that the density is extrapolated.
func (s *Sheet) InCup(cup units.Temperature, told bool) []string {
	notes := []string{"in the cup at " + s.In(Temperature(cup))}
	if !told {
		notes[0] += ", as is usual: measure yours and give -cup"
	}
	if density.Extrapolated(cup) {
		notes = append(notes, "above "+s.Degrees(units.Celsius(90))+" the density is extrapolated, by less than 0.1 Brix")
	}
	return notes
}

// UsualCup is the temperature in the cup if nobody tells: 211 F, near which hot
// marks are read (common practice), or a whole degree just below the boiling
// point of syrup where that is lower.
func UsualCup(boils units.Temperature, metric bool) units.Temperature {
	const below = 2 * units.FahrenheitDegree // poured, it cools at once
	usual, cup := units.Fahrenheit(211), boils.Add(-below)
	if cup.Compare(usual) >= 0 {
		return usual
	}
	if metric {
		return units.Celsius(math.Floor(cup.Celsius()))
	}
	return units.Fahrenheit(math.Floor(cup.Fahrenheit()))
}

// TrueCup is how hot a cup is whose thermometer is off by what the settings say. What
// nobody read is taken as it is.
func (f *Flags) TrueCup(shows units.Temperature, read bool) units.Temperature {
	if !read {
		return shows
	}
	return shows.Add(-f.Off("").Thermometer)
}

// Cup refuses a cup that is hotter than syrup boils today, by more than its
// thermometer may be off.
func (s *Sheet) Cup(name string, cup, boils units.Temperature, by units.TempDiff) error {
	if cup.Compare(boils.Add(by)) <= 0 {
		return nil
	}
	return For(name, fmt.Errorf("syrup boils at %s today and is no hotter in the cup: leave this out, or give what the thermometer in the cup shows", s.In(Temperature(boils))))
}

// KeepingBrief is [Keeping] in a line or two.
func KeepingBrief(b units.Brix) string {
	switch {
	case Keeping(b) == "":
		return ""
	case b < sugar.KeepsFrom:
		return b.Text(1) + " is thin: it ferments, and may not be sold as syrup."
	case b > legalMost:
		return b.Text(1) + " is too thick for most rules, and grows crystals."
	}
	return b.Text(1) + " is thick: crystals are likely in the jar."
}
