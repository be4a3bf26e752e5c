package main

import (
	"regexp"
	"runtime/debug"
	"time"

	"example.org/sapreckoner/yield"
)

// library is the module that does the reckoning.
const library = "example.org/sapreckoner"

// sources are the lines of the sheet that tells where the figures come from.
func sources(a *account) [][]any {
	version, date := libraryVersion()
	return [][]any{
		{"Figure", "Function", "Source", "Uncertainty"},
		{"Corrected strength", "density.Hydrometer.Brix",
			"Density of sucrose solutions: ICUMSA Specification and Standard SPS-4, as reprinted in Bubnik, Kadlec, Urban, Bruhns, Sugar Technologists Manual, 8th ed., 1995, p. 164. Expansion of the glass: ISO 1768:1975, clause 3.",
			"In the column beside it. The formulas are for sucrose; maple sap is near enough, saps of glucose and fructose such as birch are not."},
		{"Plus or minus", "density.Hydrometer.Measure",
			"JCGM 100:2008 (GUM), law of propagation of uncertainty, equation 10 (its number from memory). Surface tension on the stem: Aguilera, Wright, Bean, Measurement Science and Technology 19 (2008) 015104, abstract.",
			"Expanded uncertainty, k = 2: about 95 of 100 readings lie within it, if the doubts on the sheet of notes are true."},
		{"Syrup", "yield.Ratio", "Conservation of mass with the densities above; no sugar is lost.",
			"0.02 percent from the densities and that of the strength: 5 percent for 0.1 Brix at 2 Brix. Volumes count at 20 C; sap metered at 40 F holds 0.17 percent more."},
		{"Price per US gal", "money.Offer.Statement",
			"Share times price per pound times pounds of syrup in a gallon: Farming Magazine, Boiling it down. " + poundsFrom(a.rule),
			"As for the syrup. Rounded to " + priceStep.String() + ", halves up."},
		{"Payment", "money.Offer.Statement", "Volume on the sheet times price on the sheet, in exact decimals.",
			"None: each line is rounded to " + cent.String() + ", halves up, and only then added."},
		{"Statement", "money.Settle", "Carried plus earned, less deducted, advanced and paid, in exact decimals; due is what is owed less what was paid since, if that is not negative.",
			"None: what was posted is added up."},
		{"Units", "units.USGallon, units.ParseTemperature", "NIST Handbook 44, Appendix C: 1 US gal is 231 cubic inches, 3.785411784 L, and 1 imperial gal 4.54609 L.", "Exact."},
		{"Library", library, version, date},
	}
}

// poundsFrom tells where the pounds of syrup in a gallon of sap come from.
func poundsFrom(r yield.Rule) string {
	if r != 0 {
		return "The pounds are those of a gallon, 11 by custom, over the gallons of sap by the rule of thumb " + r.String() + ". The column Live of a delivery reckons them anew."
	}
	return "The pounds are those of the balance of mass and not of a rule of thumb. The column Live of a delivery reckons them anew, with the densities above at 20 C as a polynomial."
}

// libraryVersion tells which version of the library was built in, and of when.
func libraryVersion() (version, date string) {
	info, ok := debug.ReadBuildInfo()
	if !ok {
		return "not known", noDate
	}
	for _, m := range info.Deps {
		if m.Path == library {
			return moduleVersion(m)
		}
	}
	return "not known", noDate
}

const noDate = "It carries no date."

// pseudoVersion is the end of a version that stands for a commit: its time in
// UTC and its hash.
var pseudoVersion = regexp.MustCompile(`[-.]([0-9]{14})-[0-9a-f]{12}$`)

// moduleVersion words a version and, where the version tells it, its date.
func moduleVersion(m *debug.Module) (version, date string) {
	if m.Replace != nil {
		if m.Replace.Version == "" || m.Replace.Version == "(devel)" {
			return "taken from a folder", "A folder carries no date: note the day on which it was copied."
		}
		m = m.Replace
	}
	if found := pseudoVersion.FindStringSubmatch(m.Version); found != nil {
		if t, err := time.Parse("20060102150405", found[1]); err == nil {
			return m.Version, "Of " + t.Format(time.DateOnly) + "."
		}
	}
	return m.Version, "The change log of the library tells its date."
}

// notes are the lines of the sheet of settings and cautions.
func notes(a *account) [][]any {
	lines := [][]any{{"Settings", "Value"}}
	for _, asked := range a.asked {
		lines = append(lines, []any{asked.what, asked.text})
	}
	lines = append(lines, []any{"Latest delivery", a.last.Format(time.DateOnly)}, []any{"Period of the statements", a.periodText()})
	for _, text := range []string{
		"",
		"Cells are values and not formulas: a figure that is changed here changes nothing else. Mend the readings and write the sheets anew. The column Live of the statements alone is reckoned by the spreadsheet program from the sheets Deliveries and Paid: where it differs from what was reckoned, a cell was changed.",
		"Totals are sums of what the cells show. Volumes count to a hundredth of a US gallon, strengths to a hundredth of a Brix.",
		"Too close to call: the minimum lies within the uncertainty of the reading. It is paid or not by the figure alone; read such sap again, let a second person read it, or do what was agreed before the season.",
		"Buying and selling by measure is ruled by law: meters, scales and hydrometers may have to be approved and inspected. Ask the local office of weights and measures.",
		"Strength is not soundness: cloudy, warm or sour sap is a matter for the nose and the eye. Sap that ran over lead solder or old terneplate is not bought at any strength.",
		"Sap with ice in it reads stronger than it is, since the sugar stays in what has not frozen: let it thaw, and mix it.",
	} {
		lines = append(lines, []any{text})
	}
	return lines
}
