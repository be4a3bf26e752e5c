package sugar

import (
	"encoding/json"
	"fmt"
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/object"
	"example.org/sapreckoner/units"
)

// lotJSON is a lot as JSON holds it.
type lotJSON struct {
	Mass        units.Mass        `json:"mass"`
	Brix        units.Brix        `json:"brix"`
	Sugar       units.Mass        `json:"sugar"`
	Temperature units.Temperature `json:"temperature"`
}

// String prints the lot for a person, "3 US gal (11.4 L) of 66.0 Brix at 140.0 F
// (60.0 C)"; [Lot.Text] takes one system of units.
func (l Lot) String() string { return l.Text(units.Both) }

// Text prints the lot in one system of units, or both.
func (l Lot) Text(in units.System) string {
	if l.Empty() {
		return "nothing"
	}
	return fmt.Sprintf("%s of %s at %s", l.Volume().TextIn(in, 3), l.Brix().Text(1), l.at.TextIn(in, 1))
}

// MarshalJSON gives an object with mass, brix, sugar and temperature. Mass and
// sugar are what the lot is made of; brix tells their ratio to whoever reads. Of
// the empty lot brix and temperature are null.
func (l Lot) MarshalJSON() ([]byte, error) {
	return json.Marshal(lotJSON{Mass: l.mass, Brix: l.Brix(), Sugar: l.sugar, Temperature: l.Temperature()})
}

// UnmarshalJSON reads what MarshalJSON gives, to the last bit. One of brix and
// sugar is enough; both must agree. What [NewLotByMass] refuses is refused here,
// and so are missing and unknown fields; the lot is then left alone.
func (l *Lot) UnmarshalJSON(b []byte) error {
	const fn = "sugar.Lot.UnmarshalJSON"
	unknown := math.NaN()
	in := lotJSON{units.Mass(unknown), units.Brix(unknown), units.Mass(unknown), units.Celsius(unknown)}
	if err := object.Read(fn, b, &in); err != nil {
		return err
	}
	if in.Mass == 0 && (math.IsNaN(float64(in.Sugar)) || in.Sugar == 0) {
		// Nothing needs neither strength nor heat; one that is told must be possible.
		brix, at := in.Brix, in.Temperature
		if math.IsNaN(float64(brix)) {
			brix = 0
		}
		if math.IsNaN(at.Celsius()) {
			at = units.Celsius(coldestLot)
		}
		if _, err := NewLotByMass(0, brix, at); err != nil {
			return units.Under(fn, err)
		}
		*l = Lot{}
		return nil
	}
	brix := in.Brix
	if math.IsNaN(float64(brix)) {
		brix = units.Brix(100 * float64(in.Sugar) / float64(in.Mass))
	}
	made, err := NewLotByMass(in.Mass, brix, in.Temperature)
	if err != nil {
		return units.Under(fn, err)
	}
	if !math.IsNaN(float64(in.Sugar)) {
		r := limit.Range{Arg: "sugar", What: "mass of the sugar", Low: float64(made.sugar) * (1 - limit.Hair), High: float64(made.sugar) * (1 + limit.Hair), Unit: "kg",
			Below: "it must be what the strength makes of the mass", Above: "it must be what the strength makes of the mass"}
		if err := r.Check(fn, float64(in.Sugar)); err != nil {
			return err
		}
		made.sugar = min(max(in.Sugar, 0), made.mass)
	}
	*l = made
	return nil
}
