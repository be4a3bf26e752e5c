package packing

import (
	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/shelf"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// GlassHeat is the specific heat of bottle glass, from memory. Steel has 0.47,
// plastics about 2 kJ/(kg K).
const GlassHeat = 0.84 * units.KilojoulePerKilogramKelvin

// Published temperatures of packing, in degrees Fahrenheit.
const (
	cappingF = 180.0 // at capping or above: Ontario food safety manual D.6.3
	fillerF  = 185.0 // at the filler: Ontario food safety manual D.6.3; OMAFRA 2014
	hottestF = 190.0 // no source read goes above it
)

// PourLeast returns the least temperature at which published advice fills
// syrup, 185 F. Sources: Ontario food safety manual D.6.3; OMAFRA 2014.
func PourLeast() units.Temperature { return units.Fahrenheit(fillerF) }

// PourMost returns the highest temperature at which published advice fills
// syrup, 190 F. Source: Ontario food safety manual D.6.3; Ohio State University
// Extension.
func PourMost() units.Temperature { return units.Fahrenheit(hottestF) }

// CappingLeast returns the least temperature of syrup at which a container is
// sealed, 180 F. Source: Ontario food safety manual D.6.3.
func CappingLeast() units.Temperature { return units.Fahrenheit(cappingF) }

// A PackingHeat is how the temperature of syrup at packing stands to published
// advice.
type PackingHeat uint8

const (
	noHeat         PackingHeat = iota
	TooCool                    // below 180 F
	EnoughToCap                // 180 F to below 185 F
	RightToFill                // 185 to 190 F
	HotterThanRead             // above 190 F
)

var heatNames = enum.Names[PackingHeat]{Type: "packing.PackingHeat", Zero: true, Of: []string{
	TooCool: "too cool", EnoughToCap: "enough to cap", RightToFill: "right to fill", HotterThanRead: "hotter than read",
}}

// String returns the name, such as "right to fill".
func (h PackingHeat) String() string {
	if h == noHeat || int(h) >= len(heats) {
		return heats[noHeat]
	}
	return heatNames.String(h)
}

// MarshalText returns the name, and nothing for none.
func (h PackingHeat) MarshalText() ([]byte, error) { return heatNames.Marshal(h) }

// UnmarshalText reads it. An unknown one is an error that tells the nearest.
func (h *PackingHeat) UnmarshalText(text []byte) error { return heatNames.Unmarshal(h, text) }

var heats = [...]string{
	noHeat:         "no temperature",
	TooCool:        "too cool to seal: mold may grow; heat it again",
	EnoughToCap:    "enough at capping, too cool at the filler: it will cool on the way",
	RightToFill:    "right at the filler: seal at 180 F or above and hold sealed 5 minutes",
	HotterThanRead: "hotter than any source read advises: let it cool to 190 F; it darkens, throws niter and scalds",
}

// Advice returns what published advice says of it, in a sentence.
func (h PackingHeat) Advice() string {
	if int(h) >= len(heats) {
		h = noHeat
	}
	return heats[h]
}

// PackingHeatOf compares a temperature of syrup with published advice on
// packing: 185 to 190 F at the filler so that capping is at 180 F or above.
//
// Range: 0 to 110 C. Sources: Ontario food safety manual D.6.3; OMAFRA Hort
// Matters 2014; Ohio State University Extension. 200 F is common practice at
// bottling and in no source read.
//
// Cautions: hot syrup scalds and sticks. Moldy syrup may hold toxins that heat
// does not destroy (University of Maine Extension): it is thrown away, and neither
// tasted, skimmed, boiled again nor blended. Opened, syrup is kept cold.
//
// Cites ontario-food-safety, omafra, ohio-extension.
func PackingHeatOf(at units.Temperature) (PackingHeat, error) {
	if err := limit.InAs("packing.PackingHeatOf", "at", "temperature", at.Celsius(), 0, maxPackC, "C", "the syrup's own, as it is packed"); err != nil {
		return noHeat, err
	}
	// A hair of rounding must not fail 180 F typed in Fahrenheit.
	switch f := at.Fahrenheit() + 1e-9; {
	case f < cappingF:
		return TooCool, nil
	case f < fillerF:
		return EnoughToCap, nil
	case f <= hottestF+2e-9:
		return RightToFill, nil
	}
	return HotterThanRead, nil
}

// AfterFilling returns the temperature of syrup of that Brix poured at fillAt once
// the container, which was at the temperature of wall, has warmed to that of the
// syrup: the balance of heat over the syrup and the container's own mass.
//
// It is the cautious reading of the heat at capping: capped at once, the middle
// of the jar is still hotter; filled slowly, or left open, it loses more to the
// air. Probe one filled jar. Where it is below [CappingLeast], warm the empties:
// see [Container.WarmTo].
//
// Range: Label as in [Container.Fill], Mass from 1 g to 100 kg, SpecificHeat
// zero for [GlassHeat] or 0.1 to 5 kJ/(kg K), 0 to 85 Brix, both temperatures
// from 0 to 110 C. Uncertainty: about 5 percent of the fall in temperature,
// from the specific heat of the walls (an estimate), and the losses to the air.
//
// Source: conservation of heat, with
// [example.org/sapreckoner/sugar.SpecificHeat] and the label's volume at 68 F.
// Check value: 50 mL of 66.9 Brix at 187 F in 60 g of glass at 68 F meet it at
// 162 F (computed).
//
// Cites maine-extension.
func (c Container) AfterFilling(brix units.Brix, fillAt, wall units.Temperature) (units.Temperature, error) {
	const fn = "packing.Container.AfterFilling"
	syrup, container, err := c.heatCapacity(fn, brix)
	if err != nil {
		return noTemperature(), err
	}
	if err := packingTemperatures(fn, "fillAt", fillAt, wall); err != nil {
		return noTemperature(), err
	}
	// The specific heat is linear in temperature, so that its mean between two
	// temperatures is that at their middle. Each step leaves a hundredth of the
	// error.
	t := fillAt
	for range 9 {
		mean, err := sugar.SpecificHeat(brix, fillAt.Add(t.Sub(fillAt)/2))
		if err != nil {
			return noTemperature(), units.Under(fn, err)
		}
		hot := syrup * mean.JoulesPerKilogramKelvin()
		t = fillAt.Add(wall.Sub(fillAt) * units.TempDiff(container/(hot+container)))
	}
	return t, nil
}

// FillAt returns how hot syrup of that Brix must be poured into a container at the
// temperature of wall so that both meet at capAt: the inverse of
// [Container.AfterFilling], with the same range and uncertainty.
//
// It is physics and no advice: no source read fills syrup above [PourMost].
// Warm the empties instead ([Container.WarmTo]). Check value: 187 F for 162 F
// in the little bottle of [Container.AfterFilling] (computed).
func (c Container) FillAt(brix units.Brix, capAt, wall units.Temperature) (units.Temperature, error) {
	const fn = "packing.Container.FillAt"
	syrup, container, err := c.heatCapacity(fn, brix)
	if err != nil {
		return noTemperature(), err
	}
	if err := packingTemperatures(fn, "capAt", capAt, wall); err != nil {
		return noTemperature(), err
	}
	h, err := sugar.Enthalpy(brix, capAt)
	if err != nil {
		return noTemperature(), units.Under(fn, err)
	}
	h += units.JoulesPerKilogram(container / syrup * float64(capAt.Sub(wall)))
	t, err := sugar.TemperatureFromEnthalpy(brix, h)
	if err != nil {
		return noTemperature(), units.Under(fn, err)
	}
	return t, limit.InAs(fn, "answer", "temperature of the syrup", t.Celsius(), 0, maxPackC, "C", "warm the container: syrup does not get so hot")
}

// WarmTo returns how warm an empty container must be, so that syrup of that
// Brix poured into it at fillAt stands at capAt once the container has warmed:
// what [Container.AfterFilling] takes for wall. An answer of 0 C means that any
// empties will do.
//
// Range: that of [Container.AfterFilling], with capAt no higher than fillAt.
// Uncertainty: 5 percent of how far fillAt lies above the answer. Check value:
// 109 F for a quart of 440 g that is filled at 187 F and stands at 180 F
// (computed).
//
// Caution: glass that is warmed or filled in a draft may crack. Water left in the
// jar thins the syrup: drain it.
func (c Container) WarmTo(brix units.Brix, fillAt, capAt units.Temperature) (units.Temperature, error) {
	const fn = "packing.Container.WarmTo"
	syrup, container, err := c.heatCapacity(fn, brix)
	if err != nil {
		return noTemperature(), err
	}
	if err := limit.InAs(fn, "fillAt", "temperature of the syrup", fillAt.Celsius(), 0, maxPackC, "C", "syrup is packed near 85 C, 185 F"); err != nil {
		return noTemperature(), err
	}
	if err := limit.InAs(fn, "capAt", "temperature at capping", capAt.Celsius(), 0, fillAt.Celsius(), "C", "no warm container heats the syrup: pour it hotter"); err != nil {
		return noTemperature(), err
	}
	mean, err := sugar.SpecificHeat(brix, capAt.Add(fillAt.Sub(capAt)/2))
	if err != nil {
		return noTemperature(), units.Under(fn, err)
	}
	hot := syrup * mean.JoulesPerKilogramKelvin()
	wall := capAt.Add(-units.TempDiff(hot/container) * fillAt.Sub(capAt))
	return units.Celsius(max(wall.Celsius(), 0)), nil
}

// maxPackC bounds the temperatures of packing, in degrees Celsius.
const maxPackC = 110.0

// heatCapacity returns the mass of the syrup in kg and the heat capacity of the
// container in J/K.
func (c *Container) heatCapacity(fn string, brix units.Brix) (syrup, container float64, err error) {
	fill, err := c.fill(fn, brix, shelf.Temperature(), 0)
	if err != nil {
		return 0, 0, err
	}
	if err := limit.InAs(fn, "Container.Mass", "mass of the container", c.Mass.Kilograms(), 0.001, 100, "kg", "weigh the container empty"); err != nil {
		return 0, 0, err
	}
	wall := c.SpecificHeat
	if unknown(float64(wall)) {
		wall = GlassHeat
	}
	if err := limit.InAs(fn, "Container.SpecificHeat", "specific heat of the container", wall.KilojoulesPerKilogramKelvin(), 0.1, 5, "kJ/(kg K)", "zero for glass; steel has 0.47, plastics about 2"); err != nil {
		return 0, 0, err
	}
	return fill.NetMass.Kilograms(), wall.JoulesPerKilogramKelvin() * c.Mass.Kilograms(), nil
}

// packingTemperatures checks the temperatures of syrup and container.
func packingTemperatures(fn, arg string, syrup, wall units.Temperature) error {
	if err := limit.InAs(fn, arg, "temperature of the syrup", syrup.Celsius(), 0, maxPackC, "C", "syrup is packed near 85 C, 185 F"); err != nil {
		return err
	}
	return limit.InAs(fn, "wall", "temperature of the container", wall.Celsius(), 0, maxPackC, "C", "the temperature of the empty container")
}

func noTemperature() units.Temperature { return units.Celsius(nan[float64]()) }
