package units_test

import (
	"fmt"
	"time"

	"example.org/sapreckoner/units"
)

// 1 Btu(IT) is 1055.05585262 J, a kilowatt hour 3.6 MJ (NIST SP 811, App. B).
func ExampleEnergy() {
	fmt.Println(units.BtusIT(1).Joules(), units.KilowattHours(1).Megajoules())
	fmt.Printf("%.0f %.3f\n", units.MillionBtusIT(1).BtusIT(), units.ThermsUS(1).MillionBtusIT())
	fmt.Println(units.Megajoules(3.6).KilowattHours(), units.Joules(4184).In(units.CalorieThermochemical), units.ThermUS.ThermsUS())
	// Output:
	// 1055.05585262 3.6
	// 1000000 0.100
	// 1 1000 1
}

// Energy in a time is power, and energy over a heat value is fuel.
func ExampleEnergy_Per() {
	fmt.Println(units.KilowattHour.Per(time.Hour).Text(units.Kilowatt, 0))
	fmt.Println(units.MegajoulePerKilogram.Energy(2*units.Kilogram).Divide(units.MegajoulePerKilogram).Text(units.Kilogram, 0))
	// Output:
	// 1 kW
	// 2 kg
}

func ExampleParseEnergy() {
	e, err := units.ParseEnergy("400000 Btu")
	fmt.Println(e.Text(units.MillionBtuIT, 1), err)
	// Output: 0.4 MMBtu <nil>
}

// A boiler horsepower is 9809.5 W (NIST SP 811, App. B).
func ExamplePower() {
	fmt.Println(units.Kilowatts(2).Watts(), units.Watts(500).Kilowatts(), units.BoilerHorsepower.In(units.Watt))
	fmt.Printf("%.0f Btu/h\n", units.BtusITPerHour(3412).BtusITPerHour())
	fmt.Println(units.Kilowatts(1).Over(2*time.Hour).Text(units.KilowattHour, 0))
	// Output:
	// 2000 0.5 9809.5
	// 3412 Btu/h
	// 2 kWh
}

func ExampleParsePower() {
	p, err := units.ParsePower("1500 W")
	fmt.Println(p.Text(units.Kilowatt, 1), err)
	// Output: 1.5 kW <nil>
}

// 1 Btu/lb is 2326 J/kg by definition.
func ExampleSpecificEnergy() {
	fmt.Println(units.BtusITPerPound(1).JoulesPerKilogram(), units.KilojoulesPerKilogram(2326).BtusITPerPound())
	fmt.Println(units.JoulesPerKilogram(1000).KilojoulesPerKilogram(), units.MegajoulePerKilogram.In(units.KilojoulePerKilogram))
	fmt.Printf("%.0f Btu\n", units.BtusITPerPound(970).Energy(10*units.Pound).BtusIT())
	// Output:
	// 2326 1000
	// 1 1000
	// 9700 Btu
}

func ExampleParseSpecificEnergy() {
	e, err := units.ParseSpecificEnergy("2326 kJ/kg")
	fmt.Println(e.Text(units.BtuITPerPound, 0), err)
	// Output: 1000 Btu/lb <nil>
}

// A Btu warms a pound of water by about 1 F: 4186.8 J/(kg K).
func ExampleSpecificHeat() {
	c := units.BtusITPerPoundFahrenheit(1)
	fmt.Println(c.JoulesPerKilogramKelvin(), c.KilojoulesPerKilogramKelvin())
	fmt.Printf("%.0f Btu\n", c.Energy(10*units.Pound, 172*units.FahrenheitDegree).BtusIT())
	fmt.Println(units.JoulesPerKilogramKelvin(4186.8).BtusITPerPoundFahrenheit(), units.KilojoulesPerKilogramKelvin(4.1868).In(units.BtuITPerPoundFahrenheit))
	// Output:
	// 4186.8 4.1868
	// 1720 Btu
	// 1 1
}

func ExampleParseSpecificHeat() {
	c, err := units.ParseSpecificHeat("2.629 kJ/(kg K)")
	fmt.Println(c.Text(units.JoulePerKilogramKelvin, 0), err)
	// Output: 2629 J/(kg K) <nil>
}

func ExampleVolumeRate() {
	q := units.USGallonsPerHour(60)
	fmt.Printf("%.0f US gal/min, %.0f US gal/day\n", q.In(units.USGallonPerMinute), q.USGallonsPerDay())
	fmt.Println(q.Time(90 * units.USGallon))
	fmt.Printf("%.1f %.0f %.0f\n", units.LitersPerHour(120).In(units.LiterPerMinute), units.CubicMetersPerSecond(1).LitersPerHour(), units.USGallonsPerDay(24).USGallonsPerHour())
	fmt.Printf("%.0f %.0f\n", units.ImperialGallonsPerHour(5).ImperialGallonsPerHour(), units.CubicMeterPerSecond.CubicMetersPerSecond())
	// Output:
	// 1 US gal/min, 1440 US gal/day
	// 1h30m0s
	// 2.0 3600000 1
	// 5 1
}

func ExampleParseVolumeRate() {
	q, err := units.ParseVolumeRate("30 US gal/h")
	fmt.Println(q.Text(units.USGallonPerMinute, 1), err)
	// Output: 0.5 US gal/min <nil>
}

func ExampleMassRate() {
	q := units.PoundsPerHour(10)
	fmt.Println(q.Over(90*time.Minute).Text(units.Pound, 0), q.Time(20*units.Pound))
	fmt.Printf("%.0f %.0f %.0f\n", q.PoundsPerHour(), units.KilogramsPerSecond(1).KilogramsPerHour(), units.KilogramsPerHour(7200).KilogramsPerSecond())
	water := units.KilogramsPerCubicMeter(1000)
	fmt.Println(units.KilogramsPerHour(50).VolumeRate(water).Text(units.LiterPerHour, 0), water.MassRate(units.LitersPerHour(50)).In(units.KilogramPerHour))
	// Output:
	// 15 lb 2h0m0s
	// 10 3600 2
	// 50 L/h 50
}

func ExampleParseMassRate() {
	q, err := units.ParseMassRate("10 lb/h")
	fmt.Println(q.Text(units.PoundPerHour, 0), err)
	// Output: 10 lb/h <nil>
}

// Two gallons for a square foot and hour off a pan of 12 square feet.
func ExampleFlux() {
	f := units.USGallonsPerSquareFootHour(2)
	fmt.Println(f.Through(12*units.SquareFoot).Text(units.USGallonPerHour, 0))
	fmt.Println(f.Text(units.InchPerHour, 2)) // 2 x 231/144
	fmt.Printf("%.0f %.0f\n", f.USGallonsPerSquareFootHour(), units.InchesPerHour(3).InchesPerHour())
	fmt.Printf("%.0f %.0f %.3f\n", units.MetersPerSecond(1).MetersPerSecond(), units.LitersPerSquareMeterHour(20).LitersPerSquareMeterHour(),
		units.ImperialGallonPerSquareFootHour.In(units.USGallonPerSquareFootHour))
	// Output:
	// 24 US gal/h
	// 3.21 in/h
	// 2 3
	// 1 20 1.201
}

func ExampleParseFlux() {
	f, err := units.ParseFlux("20 L/m2/h")
	fmt.Println(f.Text(units.LiterPerSquareMeterHour, 0), err)
	// Output: 20 L/m2/h <nil>
}

func ExampleViscosity() {
	v := units.MillipascalSeconds(184)
	fmt.Println(v.PascalSeconds(), units.PascalSeconds(0.184).MillipascalSeconds(), v.In(units.MillipascalSecond))
	// Output: 0.184 184 184
}

func ExampleParseViscosity() {
	v, err := units.ParseViscosity("184 mPa s")
	fmt.Println(v.Text(units.PascalSecond, 3), err)
	// Output: 0.184 Pa s <nil>
}
