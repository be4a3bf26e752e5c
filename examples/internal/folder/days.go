package folder

import (
	"cmp"
	"errors"
	"fmt"
	"time"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// A Day is what was done on a day, or in one tank on it.
type Day struct {
	Line   int // of the file
	Date   time.Time
	Tank   string
	Sap    units.Volume // gathered, also where a stick told it
	Dip    units.Length // as the stick told it
	Sugar  units.Brix   // as the hydrometer reads
	ReadAt units.Temperature
	Boiled units.Volume
	Thrown units.Volume // out of the tank
	Lit    time.Time
	Out    time.Time // after Lit, on the next day where midnight lies between
	Syrup  units.Volume
	Wood   units.Volume // as it is stacked
	Note   string
}

// Fired is how long the fire burned, 0 if that was not told.
func (d Day) Fired() time.Duration {
	if d.Lit.IsZero() || d.Out.IsZero() {
		return 0
	}
	return d.Out.Sub(d.Lit)
}

// longestFire is asked back beyond.
const longestFire = 18 * time.Hour

func (h *House) readDays() []error {
	var d Day
	var lit, out time.Time
	const clock = "15:04"
	cols := []records.Col{
		day(&d.Date), records.Text("tank", &d.Tank).Optional(), records.Volume("sap", &d.Sap).Optional(), records.Length("dip", &d.Dip).Optional(),
		records.Brix("sugar", &d.Sugar).Optional(), records.Temperature("read_at", &d.ReadAt).Optional(), records.Volume("boiled", &d.Boiled).Optional(), records.Volume("thrown", &d.Thrown).Optional(),
		records.Time("lit", &lit, clock).Optional(), records.Time("out", &out, clock).Optional(),
		records.Volume("syrup", &d.Syrup).Optional(), records.Volume("wood", &d.Wood).Optional(), records.Text("note", &d.Note).Optional(),
	}
	return h.rows(DaysFile, cols, func(r *records.Reader) error {
		d.Line, d.Lit, d.Out = r.Line(), on(d.Date, lit), on(d.Date, out)
		if d.Fired() < 0 {
			d.Out = d.Out.AddDate(0, 0, 1)
		}
		err := cmp.Or(
			name(r, "tank", d.Tank), positive(r, "sap", d.Sap, mostSap), positive(r, "boiled", d.Boiled, mostSap), positive(r, "thrown", d.Thrown, mostSap),
			positive(r, "syrup", d.Syrup, mostSap), positive(r, "wood", d.Wood, 1000*units.Cord), positive(r, "dip", d.Dip, 20*units.Foot),
			positive(r, "sugar", d.Sugar, 40),
		)
		if err == nil && d.Fired() > longestFire {
			err = r.Fail("out", fmt.Errorf("a fire of %.0f hours? write the times as 14:30, or as 2:30 pm", d.Fired().Hours()))
		}
		if err == nil && given(d.Dip) {
			err = h.dip(r, &d)
		}
		if err == nil {
			h.Days = append(h.Days, d)
		}
		return err
	})
}

// on puts a clock time on a day.
func on(date, clock time.Time) time.Time {
	if clock.IsZero() {
		return clock
	}
	return time.Date(date.Year(), date.Month(), date.Day(), clock.Hour(), clock.Minute(), 0, 0, time.UTC)
}

// dip finds the sap that a stick tells.
func (h *House) dip(r *records.Reader, d *Day) error {
	if given(d.Sap) {
		return r.Fail("dip", errors.New("a volume stands in the same row: give one of them"))
	}
	t, ok := h.Settings.Tank(d.Tank)
	switch {
	case !ok && d.Tank == "":
		return r.Fail("tank", errors.New("of which tank? name it as the settings do"))
	case !ok:
		return r.Fail("tank", fmt.Errorf("%q is no tank of %s: write there %q", d.Tank, SettingsFile, "tank: "+d.Tank+", 120 gallons, 2.5 gallons an inch"))
	case t.ByInch == 0:
		return r.Fail("dip", fmt.Errorf("%s does not tell what an inch of this tank holds: write it there behind what the tank holds, as %q", SettingsFile, ", 2.5 gallons an inch"))
	}
	// A stick stands as high as the tank, and a little over its mark.
	if d.Sap = t.At(d.Dip); d.Sap > 1.1*t.Holds {
		return r.Fail("dip", fmt.Errorf("that deep the tank would hold %s, and the settings say %s: check the dip and its unit",
			d.Sap.Text(units.USGallon, 0), t.Holds.Text(units.USGallon, 0)))
	}
	return nil
}
