package fuel_test

import (
	"errors"
	"fmt"
	"time"

	"example.org/sapreckoner/boil/fuel"
	"example.org/sapreckoner/units"
)

// Ohio State University Extension: 22 gallons of syrup to the cord, each of
// 400,000 Btu, on a cord of 20 million Btu.
func ExampleLearnEfficiency() {
	burned, err := fuel.GenericCordwood().Of(units.Cord)
	if err != nil {
		fmt.Println(err)
		return
	}
	learned, err := fuel.LearnEfficiency(fuel.Firing{Into: 22 * 400000 * units.BtuIT, Burned: burned})
	fmt.Println(learned.Middle().Text(0), learned.Basis, err)
	// Output: 44 % gross <nil>
}

func ExampleLearned() {
	day := func(share units.Share) fuel.Firing {
		return fuel.Firing{
			Into:   units.MillionBtusIT(share.Fraction()),
			Burned: fuel.Heat{Energy: units.MillionBtuIT, Basis: fuel.Net},
		}
	}
	learned, err := fuel.LearnEfficiency(day(40), day(44), day(48))
	fmt.Printf("%.0f %% from %d days, spread %.0f %v\n", float64(learned.Middle()), learned.Boils, float64(learned.Spread), err)
	// Output: 44 % from 3 days, spread 4 <nil>
}

func ExampleFiring() {
	burned, _ := fuel.Propane().Of(10 * units.USGallon)
	f := fuel.Firing{Into: 400000 * units.BtuIT, Burned: burned}
	fmt.Println(f.Burned.Energy.Text(units.BtuIT, 0), f.Burned.Basis)
	// Output: 913330 Btu gross
}

// From memory: 15 to 40 percent.
func ExampleHomeBuiltPan() {
	e := fuel.HomeBuiltPan()
	fmt.Println(e.Low, e.High, e.Basis)
	// Output: 15 % 40 % gross
}

// Ohio State University Extension from 40, USDA Forest Service to 67 percent.
func ExampleBuiltEvaporator() {
	e := fuel.BuiltEvaporator()
	fmt.Println(e.Low, e.High, e.Basis)
	// Output: 40 % 67 % gross
}

func ExampleEfficiency() {
	e := fuel.Efficiency{Low: 40 * units.Percent, High: 60 * units.Percent, Basis: fuel.Gross}
	need, err := fuel.Propane().Needed(units.MillionBtuIT, e)
	fmt.Printf("%.0f to %.0f gal %v\n", need.Low.USGallons(), need.High.USGallons(), err)
	// Output: 18 to 27 gal <nil>
}

func ExampleEfficiency_Middle() {
	fmt.Println(fuel.Efficiency{Low: 40, High: 60, Basis: fuel.Gross}.Middle())
	// Output: 50 %
}

// Propane at 50 percent for 404,680 Btu, a US gallon of syrup from 2 Brix sap.
// A pound of air-dry wood is 0.8333 lb of oven-dry wood, 7,167 Btu; 648 of them go with the
// water of it and of its burning.
func ExampleOnNetWood() {
	net, err := fuel.OnNetWood(fuel.Efficiency{Low: 50, High: 100, Basis: fuel.Gross})
	fmt.Println(net.Low.Text(0), net.High.Text(1), net.Basis, err)
	// Output: 55 % 109.9 % net <nil>
}

func ExampleFuel_Needed() {
	half := fuel.Efficiency{Low: 50 * units.Percent, High: 50 * units.Percent, Basis: fuel.Gross}
	need, err := fuel.Propane().Needed(404680*units.BtuIT, half)
	fmt.Println(need.Middle.Text(units.USGallon, 2), err)
	// Output: 8.86 US gal <nil>
}

// Wood for a fire that gives a pan 150,000 Btu/h, every ten minutes.
func ExampleFuel_Needed_firing() {
	wood, err := fuel.NetWood(20)
	if err != nil {
		fmt.Println(err)
		return
	}
	half := fuel.Efficiency{Low: 50 * units.Percent, High: 50 * units.Percent, Basis: fuel.Net}
	need, err := wood.Needed((150000 * units.BtuITPerHour).Over(10*time.Minute), half)
	// 50,000 Btu of wood of 6,216 Btu/lb.
	fmt.Println(need.Middle.Text(units.Pound, 1), err)
	// Output: 8.0 lb <nil>
}

// Ohio State University Extension: 22 gallons of syrup to the cord.
func ExampleFuel_Makes() {
	at := fuel.Efficiency{Low: 44 * units.Percent, High: 44 * units.Percent, Basis: fuel.Gross}
	heat, err := fuel.GenericCordwood().Makes(units.Cord, at)
	fmt.Printf("%.0f gal of 400,000 Btu %v\n", heat.Middle.BtusIT()/400000, err)
	// Output: 22 gal of 400,000 Btu <nil>
}

func ExampleFuel_Of() {
	heat, err := fuel.HeatingOil().Of(units.USGallon)
	fmt.Println(heat.Energy.Text(units.BtuIT, 0), heat.Basis, err)
	// Output: 138690 Btu gross <nil>
}

// An efficiency cannot be counted twice.
func ExampleBasisError() {
	delivered := fuel.Fuel[units.Volume]{Name: "seasoned firewood", Heat: 15.3 * units.MillionBtuIT, Per: units.Cord, Basis: fuel.Delivered}
	_, err := delivered.Needed(units.MillionBtuIT, fuel.HomeBuiltPan())
	var twice *fuel.BasisError
	fmt.Println(errors.As(err, &twice))
	// Output: true
}

func ExampleBasis() {
	fmt.Println(fuel.Gross, fuel.LessMoisture, fuel.Net, fuel.Delivered)
	// Output: gross less moisture net delivered
}

func ExampleHeat() {
	h := fuel.Heat{Energy: 20 * units.MillionBtuIT, Basis: fuel.Gross}
	fmt.Println(h.Energy.Text(units.MillionBtuIT, 0), h.Basis)
	// Output: 20 MMBtu gross
}

// US DOE, Federal Register 2007-03-21.
func ExamplePropane() {
	fmt.Println(fuel.Propane().Heat.Text(units.BtuIT, 0), fuel.Propane().Basis)
	// Output: 91333 Btu gross
}

// US DOE, Federal Register 2007-03-21.
func ExampleHeatingOil() {
	fmt.Println(fuel.HeatingOil().Heat.Text(units.BtuIT, 0))
	// Output: 138690 Btu
}

// US EIA, average of 2007, for a cubic foot.
func ExampleNaturalGas() {
	fmt.Println(fuel.NaturalGas().Heat.Text(units.BtuIT, 0))
	// Output: 1028 Btu
}

func ExampleNaturalGasTherms() {
	heat, err := fuel.NaturalGasTherms().Of(3 * units.ThermUS)
	fmt.Println(heat.Energy.Text(units.ThermUS, 0), heat.Basis, err)
	// Output: 3 therm gross <nil>
}

func ExampleElectricity() {
	fmt.Println(fuel.Electricity().Heat.Text(units.BtuIT, 0))
	// Output: 3412 Btu
}

// USDA Forest Products Laboratory, from memory, for a short ton.
func ExamplePellets() {
	fmt.Println(fuel.Pellets().Heat.Text(units.MillionBtuIT, 1))
	// Output: 16.4 MMBtu
}

// US EIA, an estimate, from memory.
func ExampleGenericCordwood() {
	fmt.Println(fuel.GenericCordwood().Heat.Text(units.MillionBtuIT, 0))
	// Output: 20 MMBtu
}

// USDA Forest Products Laboratory, 5th ed.: seasoned firewood, delivered.
func ExampleByVolume() {
	for _, f := range fuel.ByVolume() {
		if f.Basis == fuel.Delivered && f.Per == units.Cord {
			fmt.Println(f.Name, f.Heat.Text(units.MillionBtuIT, 1))
		}
	}
	// Output: seasoned firewood 15.3 MMBtu
}

// USDA Forest Products Laboratory, 5th ed.: premium pellets, delivered.
func ExampleByMass() {
	for _, f := range fuel.ByMass() {
		if f.Basis == fuel.Delivered {
			fmt.Println(f.Name, f.Heat.Text(units.MillionBtuIT, 1))
		}
	}
	// Output: wood pellets, premium 13.6 MMBtu
}

func ExampleByEnergy() {
	for _, f := range fuel.ByEnergy() {
		fmt.Println(f.Name, f.Basis)
	}
	// Output:
	// natural gas gross
	// electricity gross
}
