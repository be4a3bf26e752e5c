package sugar

import (
	"fmt"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Strengths between which syrup keeps in a closed jar.
const (
	// KeepsFrom is the least: thinner it ferments and grows mold. Common
	// practice, and the least that any rule in force allows.
	KeepsFrom units.Brix = 66
	// KeepsTo is from where on crystals are likely in the jar. Source: OMAFRA,
	// Maple syrup density to please customers, 2013: above 68, from room
	// temperature down; syrup of just 68 is counted with it.
	KeepsTo units.Brix = 68
)

// A Remedy is what to do with syrup whose strength was measured. The zero value
// asks for another reading.
type Remedy uint8

// The remedies.
const (
	ReadAgain Remedy = iota // a limit lies within the uncertainty: nothing is known yet
	Leave                   // clearly inside
	BoilOn                  // clearly too thin
	ThinDown                // clearly too dense
)

var remedies = enum.Names[Remedy]{Type: "sugar.Remedy", Of: []string{
	ReadAgain: "read again", Leave: "leave it", BoilOn: "boil it on", ThinDown: "thin it"}}

// String returns the remedy in words.
func (r Remedy) String() string { return remedies.String(r) }

// MarshalText returns what String returns.
func (r Remedy) MarshalText() ([]byte, error) { return remedies.Marshal(r) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (r *Remedy) UnmarshalText(text []byte) error { return remedies.Unmarshal(r, text) }

// An Advice is what to do about a measured strength.
type Advice struct {
	Do      Remedy
	Verdict Verdict // on the rule alone
	// Crystals warns of syrup at [KeepsTo] or above: crystals are likely in the
	// jar, though a rule may allow it.
	Crystals bool
}

const hair = 1e-9 // as of Judge

// thick reports whether syrup is as strong as [KeepsTo] or stronger.
func thick(b units.Brix) bool { return b >= KeepsTo-hair }

// Advise tells what to do with syrup of a measured strength: leave it, boil it
// on, thin it, or read again. What the reading cannot tell apart from right is
// never mended: heating again costs color and clearness, and thinning what was
// right makes it too thin.
//
// Arguments: the strength and its expanded uncertainty (k = 2), as for
// [Standard.Judge]; a target of one's own, or 0 to go by the rule alone. With a
// target, syrup further from it than the uncertainty is brought to it; nearer
// it is left, or read again if a limit of the rule lies as near.
//
// Range and errors are those of [Standard.Judge]; a target that the rule
// forbids is an [*InfeasibleError]. An error comes with the advice to read
// again.
//
// Check values: with a rule of 66 to 68.9 Brix leave 67.0 within 0.36, read 66.2 within 0.36
// again, thin 69.4 within 0.36; 67.6 within 0.36 is left by the rule and thinned
// to a target of 66.9 (by hand).
func (s Standard) Advise(measured, uncertainty, target units.Brix) (Advice, error) {
	const fn = "sugar.Standard.Advise"
	v, err := s.Judge(measured, uncertainty)
	if err != nil {
		return Advice{}, units.Under(fn, err)
	}
	a := Advice{Verdict: v, Crystals: thick(measured)}
	if target != target {
		most := s.Max
		if most == 0 {
			most = strongest
		}
		r := limit.Range{Arg: "target", Low: float64(s.Min), High: float64(most), Unit: "Brix"}
		return Advice{}, r.Check(fn, float64(target))
	}
	if target != 0 {
		if !(target >= s.Min && (s.Max == 0 || target <= s.Max) && target <= strongest) {
			return Advice{}, &InfeasibleError{Func: fn,
				Why:  fmt.Sprintf("the rule forbids a target of %s Brix", strength(target)),
				Hint: "take a target inside the rule"}
		}
		switch {
		case measured < target-uncertainty-hair:
			a.Do = BoilOn
			return a, nil
		case measured > target+uncertainty+hair:
			a.Do = ThinDown
			return a, nil
		}
	}
	a.Do = [...]Remedy{TooCloseToCall: ReadAgain, Inside: Leave, TooThin: BoilOn, TooDense: ThinDown}[v]
	return a, nil
}
