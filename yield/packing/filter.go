package packing

import (
	"math"
	"time"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// GravityFilter is the syrup that passes a gravity fabric filter before it must
// be changed: about 3 US gal. Source: University of Vermont, Ask Proctor, Maple
// Syrup Digest 55(4), 2016.
const GravityFilter = 3 * units.USGallon

// Limits of filters.
const (
	minPerFilter  = 0.1    // US gal
	maxPerFilter  = 1000.0 // US gal
	maxDose       = 200.0  // kg of filter aid per m3
	maxCake       = 1e6    // kg
	maxFilterTime = 1000.0 // h
	maxTimeTold   = 1e6    // h
)

// FiltersFor returns how many gravity filters a volume of syrup needs.
//
// Range: syrup to 1e6 m3, perFilter from 0.1 to 1000 US gal; [GravityFilter] is
// the published figure, and what was measured in one's own house is better.
//
// The filter catches niter, calcium salts of malic acid and other minerals
// (source as for [GravityFilter]). Check value: 7 US gal at 3 to a filter take
// 3.
//
// Caution: syrup is filtered hot, scalds and sticks.
func FiltersFor(syrup, perFilter units.Volume) (int, error) {
	const fn = "packing.FiltersFor"
	if err := limit.In(fn, "syrup", syrup.CubicMeters(), 0, maxVolume, "m3", "check its unit"); err != nil {
		return 0, err
	}
	if err := limit.InAs(fn, "perFilter", "syrup through a filter", perFilter.USGallons(), minPerFilter, maxPerFilter, "US gal", "3 US gal if it was not measured"); err != nil {
		return 0, err
	}
	return wholes(fn, "number of filters", float64(syrup/perFilter))
}

// FilterTime returns how long a filter takes at one temperature that took
// measured at another, for the same filter and the same syrup: the time grows
// with the viscosity (see [example.org/sapreckoner/sugar.Viscosity]).
//
// Range: measured from 0 to 1000 hours, temperatures and Brix as for the
// viscosity. Uncertainty: that of the viscosity, some percent; it does not know
// how the filter clogs. It refuses what would take more than a million hours.
//
// Check value: 66 Brix is 20.5 mPa s at 60 C and 10.0 at 80 C (computed), so that
// a filter that took 10 minutes at 80 C takes 20 at 60 C.
//
// Cites uvm.
func FilterTime(measured time.Duration, brix units.Brix, at, now units.Temperature) (time.Duration, error) {
	const fn = "packing.FilterTime"
	if err := limit.InAs(fn, "measured", "measured time", measured.Hours(), 0, maxFilterTime, "h", "how long the filter took"); err != nil {
		return 0, err
	}
	before, err := sugar.Viscosity(brix, at)
	if err != nil {
		return 0, units.Under(fn, err)
	}
	after, err := sugar.Viscosity(brix, now)
	if err != nil {
		return 0, units.UnderArg(fn, "now", err)
	}
	t := measured.Seconds() * float64(after/before)
	if err := limit.InAs(fn, "answer", "time", t/3600, 0, maxTimeTold, "h", "so cold and thick a syrup does not pass a filter: warm it"); err != nil {
		return 0, err
	}
	return time.Duration(math.Round(t * float64(time.Second))), nil
}

// FilterAid returns the filter aid for a volume of syrup at a dose, mass per
// volume. The dose has no public source: it is the press maker's or one's own.
//
// Range: syrup to 1e6 m3, dose from 0 to 200 kg/m3 (1.7 lb per US gal).
//
// Caution: only food-grade diatomaceous earth (New Hampshire Agr 1003.04). Its
// dust harms the lungs: NIOSH's limits are 6 mg/m3, and 0.05 mg/m3 of crystalline
// silica. Pour it low, wet it at once, wear a respirator made for such dust.
func FilterAid(syrup units.Volume, dose units.Density) (units.Mass, error) {
	const fn = "packing.FilterAid"
	if err := limit.In(fn, "syrup", syrup.CubicMeters(), 0, maxVolume, "m3", "check its unit"); err != nil {
		return nan[units.Mass](), err
	}
	if err := limit.In(fn, "dose", dose.KilogramsPerCubicMeter(), 0, maxDose, "kg/m3", "mass of filter aid for a volume of syrup"); err != nil {
		return nan[units.Mass](), err
	}
	return dose.Mass(syrup), nil
}

// CakeLoss returns the syrup that stays in a filter cake: what the wet cake
// weighs beyond the dry filter aid that went in, less the niter it caught. A
// rinse with hot water brings most of it back as sweet for the next boil.
//
// Range: wet cake from 0 to 1e6 kg, dry aid and niter together not more; brix
// and at as for a lot. Niter is an input, 0 where it was not weighed, and the
// loss is then too large by as much. Check value: 5 kg of cake of 2 kg of aid
// and 1 kg of niter hold 2 kg of syrup.
//
// Cites new-hampshire-agr, niosh.
func CakeLoss(wetCake, dryAid, niter units.Mass, brix units.Brix, at units.Temperature) (sugar.Lot, error) {
	const fn = "packing.CakeLoss"
	if err := limit.InAs(fn, "wetCake", "wet cake", wetCake.Kilograms(), 0, maxCake, "kg", "weigh the cake as it comes out"); err != nil {
		return sugar.Lot{}, err
	}
	if err := limit.InAs(fn, "dryAid", "dry aid", dryAid.Kilograms(), 0, wetCake.Kilograms(), "kg", "it weighs no more than the wet cake"); err != nil {
		return sugar.Lot{}, err
	}
	rest := max(0, wetCake-dryAid)
	if err := limit.In(fn, "niter", niter.Kilograms(), 0, rest.Kilograms(), "kg", "it weighs no more than the rest of the wet cake"); err != nil {
		return sugar.Lot{}, err
	}
	lost, err := sugar.NewLotByMass(max(0, rest-niter), brix, at)
	return lost, units.Under(fn, err)
}
