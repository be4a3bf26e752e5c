package sugar

import "example.org/sapreckoner/internal/base/object"

// UnmarshalJSON reads an object with Concentrate and Removed. It refuses
// missing and unknown fields; the separation is then left alone.
func (s *Separation) UnmarshalJSON(b []byte) error {
	type fields Separation
	var in fields
	if err := object.Whole("sugar.Separation.UnmarshalJSON", b, &in); err != nil {
		return err
	}
	*s = Separation(in)
	return nil
}

// UnmarshalJSON reads an object with Added and Result. It refuses missing and
// unknown fields; the addition is then left alone.
func (a *Addition) UnmarshalJSON(b []byte) error {
	type fields Addition
	var in fields
	if err := object.Whole("sugar.Addition.UnmarshalJSON", b, &in); err != nil {
		return err
	}
	*a = Addition(in)
	return nil
}

// UnmarshalJSON reads an object with Volume and Transmission. It refuses
// missing and unknown fields; the value is then left alone.
func (t *Tinted) UnmarshalJSON(b []byte) error {
	type fields Tinted
	var in fields
	if err := object.Whole("sugar.Tinted.UnmarshalJSON", b, &in); err != nil {
		return err
	}
	*t = Tinted(in)
	return nil
}
