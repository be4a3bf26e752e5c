package season

import (
	"encoding/json"
	"errors"
	"fmt"
	"math"

	"example.org/sapreckoner/internal/base/object"
	"example.org/sapreckoner/units"
)

var unset = units.Celsius(math.NaN()) // a temperature that was not written: a constructor refuses it

// criterionJSON is a criterion as JSON holds it.
type criterionJSON struct {
	Name  string            `json:"name"`
	Below units.Temperature `json:"below"`
	Above units.Temperature `json:"above"`
}

// String returns the name of the criterion.
func (c Criterion) String() string {
	if c == (Criterion{}) {
		return "(none)"
	}
	return c.name
}

func (c Criterion) written() criterionJSON {
	if c == (Criterion{}) {
		return criterionJSON{Below: unset, Above: unset}
	}
	// A published one has its highest limit a bit below a round figure.
	return criterionJSON{c.name, units.Celsius(c.minTo), units.Celsius(rounded(units.Celsius(c.maxAbove)))}
}

// MarshalJSON gives an object with name, below and above: what the minimum of a
// day must be below, and its maximum above.
func (c Criterion) MarshalJSON() ([]byte, error) { return json.Marshal(c.written()) }

// UnmarshalJSON reads what MarshalJSON gives. One that is published here comes
// back as itself, with its other limits. It refuses what [NewCriterion]
// refuses, and missing and unknown fields; the criterion is then left alone.
func (c *Criterion) UnmarshalJSON(b []byte) error {
	const fn = "season.Criterion.UnmarshalJSON"
	in := criterionJSON{Below: unset, Above: unset}
	if err := object.Whole(fn, b, &in); err != nil {
		return err
	}
	if in.Name == "" && math.IsNaN(in.Below.Celsius()) && math.IsNaN(in.Above.Celsius()) {
		*c = Criterion{}
		return nil
	}
	for _, p := range Criteria() {
		if p.written() == in {
			*c = p
			return nil
		}
	}
	made, err := NewCriterion(in.Name, in.Below, in.Above)
	if err != nil {
		var e *CriterionError
		if errors.As(err, &e) {
			return &CriterionError{fn, e.Why}
		}
		return units.Under(fn, err)
	}
	*c = made
	return nil
}

// upperJSON is a temperature, or none: infinite.
type upperJSON float64

const noUpper = `"+Inf"`

func (u upperJSON) MarshalJSON() ([]byte, error) {
	if math.IsInf(float64(u), 1) {
		return []byte(noUpper), nil
	}
	return units.Celsius(float64(u)).MarshalJSON()
}

func (u *upperJSON) UnmarshalJSON(b []byte) error {
	if string(b) == noUpper {
		*u = upperJSON(math.Inf(1))
		return nil
	}
	var t units.Temperature
	err := t.UnmarshalJSON(b)
	*u = upperJSON(t.Celsius())
	return err
}

// ruleJSON is a rule of degree-days as JSON holds it.
type ruleJSON struct {
	Method DegreeDayMethod   `json:"method"`
	Base   units.Temperature `json:"base"`
	Upper  upperJSON         `json:"upper"`
}

// String prints the rule for a person, "modified sine wave over 50.0 F (10.0 C) up
// to 86.0 F (30.0 C)".
func (r DegreeDayRule) String() string { return r.Text(units.Both) }

// Text prints the rule in one system of units, or both.
func (r DegreeDayRule) Text(in units.System) string {
	s := fmt.Sprintf("%v over %s", r.method, r.Base().TextIn(in, 1))
	if !math.IsInf(r.upper, 1) {
		s += " up to " + r.Upper().TextIn(in, 1)
	}
	return s
}

// MarshalJSON gives an object with method, base and upper, which is "+Inf" for
// none.
func (r DegreeDayRule) MarshalJSON() ([]byte, error) {
	return json.Marshal(ruleJSON{r.method, r.Base(), upperJSON(r.upper)})
}

// UnmarshalJSON reads what MarshalJSON gives. It refuses what
// [NewDegreeDayRule] refuses, and missing and unknown fields; the rule is then
// left alone.
func (r *DegreeDayRule) UnmarshalJSON(b []byte) error {
	const fn = "season.DegreeDayRule.UnmarshalJSON"
	in := ruleJSON{Base: unset}
	if err := object.Whole(fn, b, &in); err != nil {
		return err
	}
	made, err := NewDegreeDayRule(in.Method, in.Base, units.Celsius(float64(in.Upper)))
	if err != nil {
		return units.Under(fn, err)
	}
	*r = made
	return nil
}

// methodJSON is a way of collecting as JSON holds it.
type methodJSON struct {
	Vacuum units.Pressure `json:"vacuum"`
}

// String prints the method for a person, "gravity" or "vacuum of 20 inHg (67.7
// kPa)".
func (m Method) String() string { return m.Text(units.Both) }

// Text prints the method in one system of units, or both.
func (m Method) Text(in units.System) string {
	if m == (Method{}) {
		return "gravity"
	}
	return "vacuum of " + m.vacuum.TextIn(in, 3)
}

// MarshalJSON gives an object with vacuum, which is nothing for gravity.
func (m Method) MarshalJSON() ([]byte, error) { return json.Marshal(methodJSON{m.vacuum}) }

// UnmarshalJSON reads what MarshalJSON gives. It refuses what [WithVacuum]
// refuses, and missing and unknown fields; the method is then left alone.
func (m *Method) UnmarshalJSON(b []byte) error {
	const fn = "season.Method.UnmarshalJSON"
	in := methodJSON{nan[units.Pressure]()}
	if err := object.Read(fn, b, &in); err != nil {
		return err
	}
	made, err := WithVacuum(in.Vacuum)
	if err != nil {
		return units.Under(fn, err)
	}
	*m = made
	return nil
}

// String tells what the model is for.
func (s SapModel) String() string {
	return fmt.Sprintf("%v, %.4g running days", s.method, s.flowDays)
}

const modelParts = "encode the method and the number of running days that it is made of"

// MarshalJSON refuses: a model is made of what can be encoded.
func (s SapModel) MarshalJSON() ([]byte, error) {
	return nil, object.Refuse("season.SapModel.MarshalJSON", modelParts)
}

// UnmarshalJSON refuses, as MarshalJSON does.
func (s *SapModel) UnmarshalJSON([]byte) error {
	return object.Refuse("season.SapModel.UnmarshalJSON", modelParts)
}

// String tells what the timing rests on.
func (t TapTiming) String() string {
	return fmt.Sprintf("%d springs, holes of %v days", len(t.springs), t.life)
}

const timingParts = "encode the weather, the rule and the life of a hole that it is made of"

// MarshalJSON refuses: a timing is made of what can be encoded.
func (t TapTiming) MarshalJSON() ([]byte, error) {
	return nil, object.Refuse("season.TapTiming.MarshalJSON", timingParts)
}

// UnmarshalJSON refuses, as MarshalJSON does.
func (t *TapTiming) UnmarshalJSON([]byte) error {
	return object.Refuse("season.TapTiming.UnmarshalJSON", timingParts)
}

// String tells what the record taught.
func (r SapRecord) String() string {
	return fmt.Sprintf("%d gatherings, %d of them of %d", r.taught, r.own, r.season)
}

const recordParts = "encode the model, the criterion, the weather and the gatherings that it is made of"

// MarshalJSON refuses: a record is made of what can be encoded.
func (r SapRecord) MarshalJSON() ([]byte, error) {
	return nil, object.Refuse("season.SapRecord.MarshalJSON", recordParts)
}

// UnmarshalJSON refuses, as MarshalJSON does.
func (r *SapRecord) UnmarshalJSON([]byte) error {
	return object.Refuse("season.SapRecord.UnmarshalJSON", recordParts)
}
