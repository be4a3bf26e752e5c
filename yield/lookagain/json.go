package lookagain

import (
	"encoding/json"
	"strconv"

	"example.org/sapreckoner/internal/base/object"
)

type rowFields Row

// rowJSON is a row as JSON holds it: what is NaN is null.
type rowJSON struct {
	rowFields
	Strength, Volume, Price object.Number
}

// MarshalJSON gives an object with the fields by their names here. What is NaN is
// null.
func (r Row) MarshalJSON() ([]byte, error) {
	return json.Marshal(rowJSON{rowFields(r), object.Number(r.Strength), object.Number(r.Volume), object.Number(r.Price)})
}

// UnmarshalJSON reads what MarshalJSON gives. It refuses missing and unknown
// fields; the row is then left alone.
func (r *Row) UnmarshalJSON(b []byte) error {
	var in rowJSON
	if err := object.Whole("lookagain.Row.UnmarshalJSON", b, &in); err != nil {
		return err
	}
	made := Row(in.rowFields)
	made.Strength, made.Volume, made.Price = float64(in.Strength), float64(in.Volume), float64(in.Price)
	*r = made
	return nil
}

// String tells how much the list holds.
func (l *List) String() string {
	s := strconv.Itoa(len(l.rows)) + " rows"
	if len(l.rows) == 1 {
		s = "1 row"
	}
	if l.skipped > 0 {
		s += ", " + strconv.Itoa(l.skipped) + " skipped"
	}
	return s
}

const listParts = "encode the rows that it is made of, or its findings"

// MarshalJSON refuses: a list is made of what can be encoded.
func (l *List) MarshalJSON() ([]byte, error) {
	return nil, object.Refuse("lookagain.List.MarshalJSON", listParts)
}

// UnmarshalJSON refuses, as MarshalJSON does.
func (l *List) UnmarshalJSON([]byte) error {
	return object.Refuse("lookagain.List.UnmarshalJSON", listParts)
}
