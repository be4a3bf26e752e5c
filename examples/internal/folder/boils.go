package folder

import (
	"slices"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// A boilRow is what was boiled on a day.
type boilRow struct {
	line   int
	sap    units.Volume
	sugar  units.Brix // true
	at     units.Temperature
	fired  time.Duration
	wood   units.Volume
	target units.Brix
}

// rate is the water that went off in an hour, in US gallons.
func (b boilRow) rate() float64 {
	return b.sap.USGallons() * float64(1-b.sugar/b.target) / b.fired.Hours()
}

// oldest is how many years back boils still teach.
const oldest = 5

// boils lists those of the season, or of the last one before it that has a few.
func (h *House) boils() (boils []boilRow, year int) {
	for year = h.Season(); year > h.Season()-oldest; year-- {
		if boils = h.boilsOf(year); len(boils) >= fewest {
			return boils, year
		}
	}
	return nil, 0
}

// boilsOf lists the boils of a year, the rows of a day together.
func (h *House) boilsOf(year int) (boils []boilRow) {
	const shortest = 30 * time.Minute
	strength, at := units.Brix(2), units.Fahrenheit(40) // until a reading tells
	days := h.daysOf(year)
	for i := 0; i < len(days); {
		b := boilRow{target: h.Settings.Target}
		for date := days[i].Date; i < len(days) && days[i].Date.Equal(date); i++ {
			d := days[i]
			if s, ok := h.TrueSugar(d); ok {
				strength = s
				if given(d.ReadAt.Celsius()) && h.Settings.Refractometer == "" { // a prism is warmer than the sap
					at = d.ReadAt
				}
			}
			if given(d.Boiled) && d.Boiled > 0 {
				b.sap += d.Boiled
				b.line = d.Line
			}
			if given(d.Wood) {
				b.wood += d.Wood
			}
			b.fired += d.Fired()
		}
		b.sugar, b.at = strength, at
		if b.sap > 0 && b.fired >= shortest {
			boils = append(boils, b)
		}
	}
	return boils
}

// daysOf lists the rows of a year in the order of time.
func (h *House) daysOf(year int) (days []Day) {
	for _, d := range h.Days {
		if d.Date.Year() == year {
			days = append(days, d)
		}
	}
	slices.SortStableFunc(days, func(a, b Day) int { return a.Date.Compare(b.Date) })
	return days
}

// TrueSugar is the strength of the sap of a day, if it was read. A reading without
// a temperature counts as read where the scale is true.
func (h *House) TrueSugar(d Day) (units.Brix, bool) {
	if !given(d.Sugar) {
		return 0, false
	}
	b, err := h.Settings.TrueSap(d.Sugar, d.ReadAt)
	return b, err == nil && b >= 0.3
}

// TrueSap is the strength of sap that was read at a temperature, by the instrument of the
// settings: of the sap in the cup, or of the prism. NaN is where its scale is true.
func (s *Settings) TrueSap(reading units.Brix, at units.Temperature) (units.Brix, error) {
	room := units.Celsius(20)
	switch told := given(at.Celsius()); {
	case s.Refractometer == atcPrism:
		return density.Refractometer{Compensated: true}.Brix(reading, room)
	case s.Refractometer == plainPrism && !told:
		return density.Refractometer{}.Brix(reading, room)
	case s.Refractometer == plainPrism:
		return density.Refractometer{}.Brix(reading, at)
	case !told:
		at = s.SapHydrometer
	}
	return density.Hydrometer{GraduatedAt: s.SapHydrometer}.Brix(reading, at)
}

// Pressure is the usual one at the pan: that of the sea where the settings tell no
// elevation, which matters a part in a hundred of the heat.
func (s *Settings) Pressure() units.Pressure {
	if p, err := boil.PressureAt(s.Elevation); err == nil {
		return p
	}
	return units.Atmosphere
}

// Heat is the heat in what burned, net of wood at its moisture and gross of oil and
// propane.
func (s *Settings) Heat(v units.Volume) (fuel.Heat, error) {
	switch s.Fuel {
	case "oil":
		return fuel.HeatingOil().Of(v)
	case "propane":
		return fuel.Propane().Of(v)
	}
	stock := fuel.GenericCordwood()
	for _, w := range fuel.FirewoodKentucky() {
		if w.Species == s.Wood {
			net, err := w.Net(fuel.DryMoisture(s.Moisture))
			if err != nil {
				return fuel.Heat{}, err
			}
			stock = net
		}
	}
	return stock.Of(v)
}

// firings learns the efficiency of the fire from boils whose wood was counted, and
// nothing of a fire that is not wood.
func (h *House) firings(boils []boilRow) (learned fuel.Learned, left []odd) {
	if h.Settings.Fuel != "wood" {
		return learned, nil
	}
	into := map[int]fuel.Firing{}
	fired := slices.DeleteFunc(slices.Clone(boils), func(b boilRow) bool {
		if !(b.wood > 0) {
			return true
		}
		lot, err := sugar.NewLot(b.sap, b.sugar, b.at)
		if err != nil {
			return true
		}
		demand, err := boil.Heat(lot, b.target, h.Settings.Pressure())
		if err != nil {
			return true
		}
		held, err := h.Settings.Heat(b.wood)
		into[b.line] = fuel.Firing{Into: demand.Total(), Burned: held}
		return err != nil
	})
	part := func(b boilRow) float64 { return float64(into[b.line].Into / into[b.line].Burned.Energy) }
	fired, left = typical(fired, part)
	var firings []fuel.Firing
	for _, b := range fired {
		if part(b) <= 1 { // no sap takes in more than the wood holds
			firings = append(firings, into[b.line])
		}
	}
	learned, err := fuel.LearnEfficiency(firings...)
	if err != nil {
		return fuel.Learned{}, left
	}
	return learned, left
}
