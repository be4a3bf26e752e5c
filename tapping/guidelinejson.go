package tapping

import (
	"encoding/json"
	"math"
	"slices"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/object"
	"example.org/sapreckoner/units"
)

// stepJSON is a step as JSON holds it.
type stepJSON struct {
	From   object.Number `json:"from"`
	To     object.Number `json:"to"`
	After  bool          `json:"after"`
	Before bool          `json:"before"`
	Taps   int           `json:"taps"`
}

// MarshalJSON gives an object with from, to, after, before and taps. An end that
// is none is the text "+Inf".
func (s Step) MarshalJSON() ([]byte, error) {
	return json.Marshal(stepJSON{object.Number(s.From), object.Number(s.To), s.After, s.Before, s.Taps})
}

// UnmarshalJSON reads what MarshalJSON gives. It refuses missing and unknown
// fields, and what is not a number; the step is then left alone. [NewGuideline]
// checks the numbers.
func (s *Step) UnmarshalJSON(b []byte) error {
	const fn = "tapping.Step.UnmarshalJSON"
	var in stepJSON
	if err := object.Whole(fn, b, &in); err != nil {
		return err
	}
	if err := limit.InAs(fn, "Step.From", "lower end of the step", float64(in.From), 0, math.Inf(1), "", "in the unit of the guideline"); err != nil {
		return err
	}
	if err := limit.InAs(fn, "Step.To", "upper end of the step", float64(in.To), 0, math.Inf(1), "", "in the unit of the guideline"); err != nil {
		return err
	}
	*s = Step{float64(in.From), float64(in.To), in.After, in.Before, in.Taps}
	return nil
}

// guidelineJSON is a guideline as JSON holds it.
type guidelineJSON struct {
	ID           string       `json:"id"`
	Jurisdiction string       `json:"jurisdiction"`
	Kind         string       `json:"kind"`
	Date         string       `json:"date"`
	Source       string       `json:"source"`
	Reading      string       `json:"reading"`
	Height       units.Length `json:"height"`
	Unit         units.Length `json:"unit"`
	Whole        bool         `json:"whole"`
	Steps        []Step       `json:"steps"`
}

// MarshalJSON gives an object with id, jurisdiction, kind, date, source, reading,
// height, unit, whole and steps: the guideline written out.
func (g Guideline) MarshalJSON() ([]byte, error) {
	out := guidelineJSON(g.Info())
	if out.Steps == nil {
		out.Steps = []Step{}
	}
	return json.Marshal(out)
}

// UnmarshalJSON reads what MarshalJSON gives. It refuses what [NewGuideline]
// refuses, and missing and unknown fields; the guideline is then left alone.
// One that is published here comes back as itself.
func (g *Guideline) UnmarshalJSON(b []byte) error {
	const fn = "tapping.Guideline.UnmarshalJSON"
	in := guidelineJSON{Height: unset, Unit: unset}
	if err := object.Whole(fn, b, &in); err != nil {
		return err
	}
	info := GuidelineInfo(in)
	if sameInfo(&info, &GuidelineInfo{}) {
		*g = Guideline{}
		return nil
	}
	made, err := NewGuideline(info)
	if err != nil {
		return units.Under(fn, err)
	}
	for _, p := range published {
		if sameInfo(p.info, made.info) {
			made = p
		}
	}
	*g = made
	return nil
}

// sameInfo reports whether two guidelines are written out the same.
func sameInfo(a, b *GuidelineInfo) bool {
	return a.ID == b.ID && a.Jurisdiction == b.Jurisdiction && a.Kind == b.Kind && a.Date == b.Date && a.Source == b.Source &&
		a.Reading == b.Reading && a.Height == b.Height && a.Unit == b.Unit && a.Whole == b.Whole && slices.Equal(a.Steps, b.Steps)
}

// silenceJSON is the silence of a guideline as JSON holds it.
type silenceJSON struct {
	Guideline string       `json:"guideline"`
	DBH       units.Length `json:"dbh"`
	Hint      string       `json:"hint"`
	Text      string       `json:"text"`
}

// MarshalJSON gives an object with guideline, dbh, hint and text. Text is
// [NotCoveredError.Text].
func (e *NotCoveredError) MarshalJSON() ([]byte, error) {
	return json.Marshal(silenceJSON{e.Guideline, e.DBH, e.Hint, e.Text(units.Both)})
}

// UnmarshalJSON reads what MarshalJSON gives.
func (e *NotCoveredError) UnmarshalJSON(b []byte) error {
	in := silenceJSON{DBH: unset}
	if err := json.Unmarshal(b, &in); err != nil {
		return err
	}
	*e = NotCoveredError{in.Guideline, in.DBH, in.Hint}
	return nil
}
