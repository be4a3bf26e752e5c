package yield

import (
	"math"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/shelf"
	"example.org/sapreckoner/units"
)

// Least sap that a ratio is given for, in Brix. Thinner than this, no pan pays.
const minSapBrix = 0.1

const ratioHint = "sap reads 1 to 4 Brix, a concentrate up to 20 or so; syrup is the stronger of the two"

// Ratio returns the volumes of sap of one strength that make a volume of syrup
// of the other when no sugar is lost, both measured at 20 C (68 F). It is the
// balance of the sugar:
//
//	B_syrup rho(B_syrup) / (B_sap rho(B_sap))
//
// Range: sap from 0.1 Brix to that of the syrup, syrup to 85 Brix. Uncertainty:
// 0.02 percent of the ratio from the densities; that of the sap's reading is
// far greater, 5 percent for 0.1 Brix at 2 Brix. Measured at 40 F, sap fills
// 0.17 percent less and the ratio is as much smaller.
//
// Source: conservation of mass with the densities of
// [example.org/sapreckoner/density.Solution]. Check value: 43.389 from 2.0 to
// 66.0 Brix (computed).
func Ratio(sap, syrup units.Brix) (float64, error) {
	const fn = "yield.Ratio"
	if err := limit.In(fn, "syrup", float64(syrup), minSapBrix, shelf.MaxBrix, "Brix", ratioHint); err != nil {
		return math.NaN(), err
	}
	if err := limit.In(fn, "sap", float64(sap), minSapBrix, float64(syrup), "Brix", ratioHint); err != nil {
		return math.NaN(), err
	}
	in, err := shelf.Sugar(fn, sap)
	if err != nil {
		return math.NaN(), err
	}
	out, err := shelf.Sugar(fn, syrup)
	if err != nil {
		return math.NaN(), err
	}
	return out / in, nil
}

// BrixFromRatio returns the strength of sap of which ratio volumes make one
// volume of syrup: the inverse of [Ratio]. With the ratio of a whole season it
// tells what the sap would have read had nothing been lost.
//
// Range: syrup from 0.1 to 85 Brix, ratio from 1 to that of 0.1 Brix sap. Check
// value: 43.389 to 66.0 Brix is sap of 2.000 Brix (computed).
func BrixFromRatio(ratio float64, syrup units.Brix) (units.Brix, error) {
	const fn = "yield.BrixFromRatio"
	if err := limit.In(fn, "syrup", float64(syrup), minSapBrix, shelf.MaxBrix, "Brix", ratioHint); err != nil {
		return nan[units.Brix](), err
	}
	out, err := shelf.Sugar(fn, syrup)
	if err != nil {
		return nan[units.Brix](), err
	}
	least, err := shelf.Sugar(fn, minSapBrix)
	if err != nil {
		return nan[units.Brix](), err
	}
	if err := limit.In(fn, "ratio", ratio, 1, out/least, "", "volumes of sap per volume of syrup: 43 for sap of 2 Brix"); err != nil {
		return nan[units.Brix](), err
	}
	ratio = min(max(ratio, 1), out/least) // by a hair
	b, err := shelf.Strength(fn, "ratio", out/ratio)
	if err != nil {
		return nan[units.Brix](), err
	}
	return min(max(b, minSapBrix), syrup), nil
}

// A Rule is a rule of thumb for the volumes of sap that make one of syrup: a
// constant over the sap's Brix, with or without an offset. The zero Rule is
// none and refused.
//
// The rules leave out the density of the sap and drift from the truth as the sap
// gets stronger: see [Rule.ErrorAt].
//
// Cites jones-1946, perkins-isselhardt-rule.
type Rule uint8

// The rules of thumb in use. The revised figures were read second-hand, in
// pages of the University of Vermont on the work of Perkins and Isselhardt; the
// offset of 0.32 is from memory, and a page that prints 8.5 gal at 10 Brix
// supports it.
const (
	noRule         Rule = iota
	Jones1946           // 86/X: C. H. Jones, rule of 86, 1946
	Revised66           // 87.1/X, for syrup of 66.0 Brix
	Revised669          // 88.2/X, for syrup of 66.9 Brix
	Revised66Less       // 87.1/X - 0.32, for syrup of 66.0 Brix, offset from memory
	Revised669Less      // 88.2/X - 0.32, for syrup of 66.9 Brix, offset from memory
)

// rules holds constant, offset and text of each rule.
var rules = [...]struct {
	over, less float64
	syrup      units.Brix
	text       string
}{
	noRule:         {math.NaN(), math.NaN(), nan[units.Brix](), "no rule"},
	Jones1946:      {86, 0, 66.0, "86/X"},
	Revised66:      {87.1, 0, 66.0, "87.1/X"},
	Revised669:     {88.2, 0, 66.9, "88.2/X"},
	Revised66Less:  {87.1, 0.32, 66.0, "87.1/X - 0.32"},
	Revised669Less: {88.2, 0.32, 66.9, "88.2/X - 0.32"},
}

// Range of the rules, in Brix of sap. Thicker than 30 Brix nobody uses them.
const (
	minRuleBrix = 0.5
	maxRuleBrix = 30.0
)

// Constants returns what the rule is made of: over/X - less. A value that is no
// rule gives NaN.
func (r Rule) Constants() (over, less float64) {
	if r.valid("") != nil {
		r = noRule
	}
	return rules[r].over, rules[r].less
}

// valid checks that r is one of the rules.
func (r Rule) valid(fn string) error {
	return limit.InAs(fn, "Rule", "rule", float64(r), float64(Jones1946), float64(Revised669Less), "", "choose one, such as 86/X")
}

// String returns the rule as it is written, such as "86/X".
func (r Rule) String() string {
	if r.valid("") != nil {
		r = noRule
	}
	return rules[r].text
}

var ruleNames = enum.Names[Rule]{Type: "yield.Rule", Zero: true, Of: func() []string {
	names := make([]string, len(rules))
	for i := Jones1946; i <= Revised669Less; i++ {
		names[i] = rules[i].text
	}
	return names
}()}

// Rules lists the rules of thumb.
func Rules() []Rule { return ruleNames.List() }

// MarshalText returns the rule as it is written, and nothing for none.
func (r Rule) MarshalText() ([]byte, error) { return ruleNames.Marshal(r) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (r *Rule) UnmarshalText(text []byte) error { return ruleNames.Unmarshal(r, text) }

// Syrup returns the strength of syrup that the rule is meant for. The rule of
// 86 dates from a time of several standards and names none; it is held against
// 66.0 Brix, today's least in most laws. A value that is no rule gives NaN.
func (r Rule) Syrup() units.Brix {
	if r.valid("") != nil {
		r = noRule
	}
	return rules[r].syrup
}

// Ratio returns the volumes of sap per volume of syrup by the rule.
//
// Range: sap of 0.5 to 30 Brix, and one of the rules. Uncertainty: see
// [Rule.ErrorAt]. Check value: 86/2.5 is 34.4 (University of New Hampshire
// Cooperative Extension).
func (r Rule) Ratio(sap units.Brix) (float64, error) {
	return r.ratio("yield.Rule.Ratio", sap)
}

func (r Rule) ratio(fn string, sap units.Brix) (float64, error) {
	if err := r.valid(fn); err != nil {
		return math.NaN(), err
	}
	if err := limit.In(fn, "sap", float64(sap), minRuleBrix, maxRuleBrix, "Brix", "beyond it use the exact ratio"); err != nil {
		return math.NaN(), err
	}
	return rules[r].over/float64(sap) - rules[r].less, nil
}

// ErrorAt returns by how much the rule's ratio is off the exact [Ratio] to the
// rule's [Rule.Syrup], in percent of the exact one. Where it is positive the
// rule asks for more sap than is needed and so promises too little syrup.
//
// Range and errors: those of [Rule.Ratio]. Check values: 86/X is off by -0.90,
// +2.27 and +6.49 percent at 2, 10 and 20 Brix; 88.2/X - 0.32 by -0.87, -0.69
// and -0.49 percent (computed).
func (r Rule) ErrorAt(sap units.Brix) (units.Share, error) {
	const fn = "yield.Rule.ErrorAt"
	byRule, err := r.ratio(fn, sap)
	if err != nil {
		return nan[units.Share](), err
	}
	exact, err := Ratio(sap, rules[r].syrup)
	if err != nil {
		return nan[units.Share](), units.Under(fn, err)
	}
	return units.FractionShare(byRule/exact - 1), nil
}

// Miss returns what comes of boiling a volume of sap down to the volume that the
// rule promises, against the exact [Ratio] to the rule's [Rule.Syrup]; both are
// measured at 20 C. Its Syrup is what the rule promises too much.
//
// Range: 0 to 1e6 m3 of sap, and that of [Rule.Ratio]. Check values: of 86 US gal
// of 2 Brix 86/X promises 2 gal where 1.982 come of it, 0.018 too much, and
// drawn off at 2 gal it is 0.46 Brix thinner than 66 (computed).
func (r Rule) Miss(sap units.Brix, volume units.Volume) (units.Miss, error) {
	const fn = "yield.Rule.Miss"
	byRule, err := r.ratio(fn, sap)
	if err != nil {
		return limit.NoMiss(), err
	}
	if err := shelf.Amount(fn, "volume", volume); err != nil {
		return limit.NoMiss(), err
	}
	exact, err := Ratio(sap, rules[r].syrup)
	if err != nil {
		return limit.NoMiss(), units.Under(fn, err)
	}
	return shelf.Promised(fn, "sap", volume/units.Volume(exact), volume/units.Volume(byRule), rules[r].syrup)
}

// RuleOf86 returns 86/X, the volumes of sap of X Brix that make one of syrup by
// the rule of thumb of 1946: [Jones1946] as a function.
//
// Range, uncertainty and errors: those of [Rule.Ratio]; the rule is 1 percent
// low at 2 Brix and 2 percent high at 10. Source: C. H. Jones 1946, as given by
// the University of Vermont. Check value: 43 at 2
// Brix (University of New Hampshire Cooperative Extension).
//
// Cites jones-1946, unh-extension, uvm.
func RuleOf86(sap units.Brix) (float64, error) {
	return Jones1946.ratio("yield.RuleOf86", sap)
}
