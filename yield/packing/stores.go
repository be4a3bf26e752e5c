package packing

import (
	"math"
	"time"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// PeakFromMemory is the sap that a tap gives on its best day when nothing better
// is known, from memory. It differs with the trees and the spring: measure it.
const PeakFromMemory = 2 * units.USGallon

// Habits are what a sugarhouse knows of itself. A zero is what is not known; the
// fields say what then follows.
type Habits struct {
	// SyrupPerCord is the syrup from a full cord of wood. Zero: no wood is told,
	// since a home-built pan makes 7 to 20 US gal where a built evaporator makes 32.
	SyrupPerCord units.Volume
	PerFilter    units.Volume  // syrup through a gravity filter before a change; zero: [GravityFilter]
	PeakPerTap   units.Volume  // sap of a tap on the best day; zero: [PeakFromMemory], see [PeakPerTap]
	Held         time.Duration // how long sap waits for the fire, as the tank must hold it; zero: one day
	Spare        units.Share   // containers beyond the count, for breakage
}

// Stores are what to lay in before a season.
type Stores struct {
	Wood       units.Volume // stacked; NaN if SyrupPerCord is not known
	Containers int
	Filters    int
	Tank       units.Volume
	// PeakRemembered says that Tank rests on [PeakFromMemory] and not on the
	// user's own peak.
	PeakRemembered bool
}

// LayIn returns what to lay in for a season: wood, containers of one label,
// filters, and the tank for the best day's sap. Give it the high end of a
// forecast: jars keep, and a run waits for nobody.
//
// Range: taps from 1 to 1e8, syrup to 1e6 m3, containers as in
// [Container.Fill], habits as stated: a cord makes 0.1 to 100 US gal, a filter
// passes 0.1 to 1000 US gal, a tap gives 0.1 to 20 US gal on a day, sap is held
// 1 hour to 30 days, spares are 0 to 100 percent.
//
// Sap that waits spoils: keep it near freezing. Figures for wood are from
// memory and computed from an efficiency of 15 to 40 percent and of 65; 22 US
// gal per cord of dry wood on a standard rig is read (Ohio State University
// Extension).
func LayIn(taps int, syrup units.Volume, container Container, h Habits) (Stores, error) {
	const fn = "packing.LayIn"
	h, remembered := h.filled()
	for _, g := range [...]struct {
		arg, what  string
		x          float64
		low, high  float64
		unit, hint string
	}{
		{"taps", "taps", float64(taps), 1, maxTaps, "", "the taps to be set"},
		{"syrup", "syrup", syrup.CubicMeters(), 0, maxVolume, "m3", "check its unit"},
		{"Container.Label", "content on the label", container.Label.Liters(), minContainer / float64(units.Liter), maxContainer / float64(units.Liter), "L", containerHint},
		{"Habits.PerFilter", "syrup through a filter", h.PerFilter.USGallons(), minPerFilter, maxPerFilter, "US gal", habitHint},
		{"Habits.PeakPerTap", "sap of a tap on the best day", h.PeakPerTap.USGallons(), 0.1, 20, "US gal", habitHint},
		{"Habits.Held", "time that sap is held", h.Held.Hours(), 1, 30 * 24, "h", habitHint},
		{"Habits.Spare", "spare containers", h.Spare.Percents(), 0, 100, "%", "what breaks, such as 5 percent"},
	} {
		if err := limit.InAs(fn, g.arg, g.what, g.x, g.low, g.high, g.unit, g.hint); err != nil {
			return Stores{}, err
		}
	}
	wood := nan[units.Volume]()
	if !unknown(float64(h.SyrupPerCord)) {
		if err := limit.InAs(fn, "Habits.SyrupPerCord", "syrup from a cord", h.SyrupPerCord.USGallons(), 0.1, 100, "US gal", "what a full cord made in a past season"); err != nil {
			return Stores{}, err
		}
		wood = units.Cord * syrup / h.SyrupPerCord
	}
	containers, err := wholes(fn, "number of containers", float64(syrup/container.Label)*(1+h.Spare.Fraction()))
	if err != nil {
		return Stores{}, err
	}
	filters, err := wholes(fn, "number of filters", float64(syrup/h.PerFilter))
	if err != nil {
		return Stores{}, err
	}
	return Stores{
		Wood:           wood,
		Containers:     containers,
		Filters:        filters,
		Tank:           units.Volume(float64(taps)*h.Held.Hours()/24) * h.PeakPerTap,
		PeakRemembered: remembered,
	}, nil
}

const habitHint = "leave it zero if it is not known"

// filled puts in what stands for what is not known, and tells whether the peak
// is remembered.
func (h Habits) filled() (Habits, bool) {
	if unknown(float64(h.PerFilter)) {
		h.PerFilter = GravityFilter
	}
	if h.Held == 0 {
		h.Held = 24 * time.Hour
	}
	remembered := unknown(float64(h.PeakPerTap))
	if remembered {
		h.PeakPerTap = PeakFromMemory
	}
	return h, remembered
}

// unknown reports whether x was left zero. NaN was not.
func unknown(x float64) bool { return x >= 0 && x <= 0 }

// wholes returns x rounded up, a part in a billion being rounding.
func wholes(fn, what string, x float64) (int, error) {
	if err := limit.InAs(fn, "answer", what, x, 0, math.MaxInt32, "", "more than can be counted: check the unit of the syrup"); err != nil {
		return 0, err
	}
	return int(math.Ceil(x * (1 - 1e-9))), nil
}

// PeakPerTap returns the sap of a tap on the best of the days given: the figure
// for [Habits]. Give it the sap of each day of past seasons.
//
// Range: 1 to 100,000 days, sap to 1e6 m3 a day, taps from 1 to 1e8. Check
// value: 90 US gal of 60 taps are 1.5 a tap.
func PeakPerTap(gathered []units.Volume, taps int) (units.Volume, error) {
	const fn = "packing.PeakPerTap"
	if err := limit.Entries(fn, "gathered", len(gathered)); err != nil {
		return nan[units.Volume](), err
	}
	if err := limit.In(fn, "taps", float64(taps), 1, maxTaps, "", "the taps that were set"); err != nil {
		return nan[units.Volume](), err
	}
	peak := units.Volume(0)
	for i, v := range gathered {
		if err := limit.InItem(fn, "gathered", i, "", "sap of a day", v.CubicMeters(), 0, maxVolume, "m3", "the sap of a day"); err != nil {
			return nan[units.Volume](), err
		}
		peak = max(peak, v)
	}
	return peak / units.Volume(taps), nil
}
