package sugar

import (
	"fmt"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// CleanIce is the strength of ice that carries no sugar, the value to take when
// nothing was measured. Ice is pure in itself; what sugar it carries is liquid
// that hangs on it and between its crystals, less in a slow frost and after
// draining (common practice). Melt a piece and read it: the sugar in it is lost.
const CleanIce units.Brix = 0

// What taking ice off may be asked for: what [FreezingPoint] covers.
var (
	iceC      = limit.Range{Arg: "at", What: "temperature", Low: -10, High: 0, Unit: "C", Below: "colder, sugar may come out with the ice", Above: "no ice forms above 0 C"}
	iceTarget = limit.Range{Arg: "target", Low: 0, High: 60, Unit: "Brix", Above: "stronger, sugar may come out with the ice: boil the rest of the way"}
	iceMass   = limit.Range{Arg: "ice", What: "ice taken off", Low: 0, High: 1e9, Unit: "kg", Above: "check its unit"}
)

// TakeIce returns what is left of sap after ice of a given mass and strength was
// lifted off, and the ice as melted.
//
// Arguments: the sap before it froze; the mass of the ice; the strength of the
// melted ice, [CleanIce] if it was not measured. Range: 0 to 1e9 kg, 0 to 60
// Brix left. More ice than the sap could give, ice no thinner than the sap, or
// an empty lot, is an [*InfeasibleError]; an argument outside its range is a
// [*units.RangeError]. Both lots come at the temperature of the sap, so that
// volumes compare.
//
// Method: mass balance. Check value: 50 kg of clean ice off 100 kg of 2 Brix
// leave 50 kg of 4 Brix.
func TakeIce(sap Lot, ice units.Mass, strength units.Brix) (Separation, error) {
	const fn = "sugar.TakeIce"
	if err := iceMass.Check(fn, float64(ice)); err != nil {
		return Separation{}, err
	}
	if err := checkIce(fn, sap, strength); err != nil {
		return Separation{}, err
	}
	if ice > sap.mass {
		return Separation{}, &InfeasibleError{Func: fn, Why: "the ice weighs more than the sap did", Hint: "give the sap as it was before it froze"}
	}
	s := part(sap, ice, strength)
	if b := s.Concentrate.Brix(); !limit.Holds(b, 0, units.Brix(iceTarget.High)) {
		return Separation{}, &InfeasibleError{Func: fn, Why: fmt.Sprintf("that much ice would leave more than %.4g Brix", iceTarget.High), Hint: "weigh the ice again, drained"}
	}
	return s, nil
}

// IceToReach returns the ice that must come off for the sap to reach the
// target, and what is left.
//
// Arguments: the sap; the target; the strength of the melted ice, [CleanIce] if
// it was not measured. Range: target 0 to 60 Brix. A target below the sap, ice
// no thinner than the sap, or an empty lot, is an [*InfeasibleError]. [FreezingPoint] of
// the target tells how cold that is.
//
// Method: mass balance, ice = m (B1 - B0)/(B1 - B_ice). Check value: 100 kg of 2
// Brix to 4 give 50 kg of clean ice, or 57.14 kg of ice of 0.5 Brix (computed).
func IceToReach(sap Lot, target, strength units.Brix) (Separation, error) {
	const fn = "sugar.IceToReach"
	if err := iceTarget.Check(fn, float64(target)); err != nil {
		return Separation{}, err
	}
	if err := checkIce(fn, sap, strength); err != nil {
		return Separation{}, err
	}
	if err := checkThickening(fn, "target", sap, target); err != nil {
		return Separation{}, err
	}
	return iceTo(sap, target, strength), nil
}

// FreezeTo returns the ice in sap that stands at the given temperature until no
// more freezes, and the liquid between: it is as strong as the freezing curve
// has it at that temperature. Sap warmer than its freezing point gives no ice.
//
// Arguments: the sap; the temperature; the strength of the melted ice,
// [CleanIce] if it was not measured. Range: -10 to 0 C. Ice no thinner than the
// sap, or an empty lot, is an [*InfeasibleError]. Uncertainty: that of
// [FreezingPoint]; a pail in one frosty night is not yet in balance, and gives
// less.
//
// Method: freezing point depression of the liquid. Check value: 2 Brix at
// -0.63 C leaves liquid of 10 Brix and a fifth of the mass (computed).
func FreezeTo(sap Lot, at units.Temperature, strength units.Brix) (Separation, error) {
	const fn = "sugar.FreezeTo"
	if err := iceC.Check(fn, at.Celsius()); err != nil {
		return Separation{}, err
	}
	if err := checkIce(fn, sap, strength); err != nil {
		return Separation{}, err
	}
	liquid, err := BrixFromFreezingPoint(at)
	if err != nil {
		return Separation{}, units.Under(fn, err)
	}
	if sap.has(liquid) || !(liquid > sap.Brix()) {
		return Separation{Concentrate: sap}, nil
	}
	return iceTo(sap, liquid, strength), nil
}

// checkIce returns an error unless ice of that strength may be taken off sap.
func checkIce(fn string, sap Lot, strength units.Brix) error {
	if err := checkBrix(fn, "strength", "strength of the ice", strength); err != nil {
		return err
	}
	switch {
	case sap.Empty():
		return nothing(fn)
	case strength > 0 && (sap.has(strength) || strength > sap.Brix()):
		return &InfeasibleError{Func: fn, Why: "ice as strong as the sap takes no water out of it", Hint: "let the ice drain, melt a piece and read it again"}
	}
	return nil
}

// iceTo is [IceToReach], unchecked but for sap that is there already.
func iceTo(sap Lot, target, strength units.Brix) Separation {
	if sap.has(target) {
		return Separation{Concentrate: sap}
	}
	ice := float64(sap.mass) * float64(target-sap.Brix()) / float64(target-strength)
	return part(sap, units.Mass(ice), strength)
}
