package ask

import (
	"errors"
	"fmt"
	"math"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/boil/finish"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// A Stamp is a reading of the thermometer in the pot, as it was typed, with the
// phone's clock in milliseconds since 1970.
type Stamp struct {
	At    int64  `json:"at"`
	Shown string `json:"shown"`
}

// An Alarm is when the page calls, by the phone's clock.
type Alarm struct {
	At       int64  `json:"at"`
	Earliest int64  `json:"earliest"`
	Text     string `json:"text"`
}

// ahead is how long before the earliest the alarm calls: the time to walk over
// and fill a cup. Common practice.
const ahead = time.Minute

// longest is the most that stamps foretell.
const longest = 12 * time.Hour

// watch tells from the stamps how long the pot still takes.
func watch(f *Form) {
	stamps := f.request.Stamps
	if len(stamps) == 0 || f.failed {
		return
	}
	p, ok := f.place()
	target := f.brix("target")
	if !ok || f.failed {
		return
	}
	readings := make([]finish.WatchReading, len(stamps))
	for i, s := range stamps {
		shown, err := units.ParseTemperature(s.Shown)
		if f.blame(err, "shows") {
			return
		}
		readings[i] = finish.WatchReading{At: time.Duration(s.At-stamps[0].At) * time.Millisecond, Shown: shown}
	}
	water := p.water.Add(f.shift(p))
	thin := passed(readings, water, p.pressure)
	readings = readings[thin:]
	w := finish.Watch{Target: target, Water: water, WaterBy: waterBy / 2, ProbeBy: probeBy / 2}
	if p.by != "water" {
		w.WaterBy = units.FahrenheitDegree // of a thermometer that nobody checked, and of the weather: common practice
	}
	o, err := w.Outlook(readings...)
	f.caution(stays)
	switch {
	case errors.Is(err, finish.ErrFewReadings):
		f.verdict("wait", "Stamp another reading, a minute or more later.")
		return
	case err != nil:
		f.verdict("stop", "These stamps tell nothing: "+reason(err, f.System)+". Drop the wrong one.")
		return
	}
	f.row("now", "Strength by the thermometer", o.Now.Text(1), (density.Coverage * o.NowBy).Text(1), fmt.Sprintf("from %d of %d stamps", o.Used, len(stamps)))
	if thin > 0 {
		f.note(&f.answer.Known, fmt.Sprintf("stamps of liquid too thin for a thermometer were left out: %d", thin))
	}
	for _, odd := range o.Odd {
		f.caution(fmt.Sprintf("The stamp of %s, %s, stands off the line and was left out: %s.", f.clockOf(stamps[thin+odd.Index].At), f.temp(readings[odd.Index].Shown), odd.What))
	}
	if !o.Climbs || o.Left > longest {
		f.verdict("wait", "It does not climb: feed the fire evenly, and stamp on.")
		return
	}
	f.row("climbs", "It climbs in a minute", o.PerMinute.Text(2), (density.Coverage * o.PerMinuteBy).Text(2))
	last := stamps[0].At + readings[o.Last].At.Milliseconds()
	by := density.Coverage * o.LeftBy
	likely, earliest := last+o.Left.Milliseconds(), last+(o.Left-by).Milliseconds()
	f.row("left", "Left from the last stamp", minutes(o.Left), minutes(by))
	f.row("likely", "Likely done at", f.clockOf(likely), "", "not before "+f.clockOf(earliest)+", not after "+f.clockOf(last+(o.Left+by).Milliseconds()))
	f.answer.Alarm = &Alarm{At: earliest - ahead.Milliseconds(), Earliest: earliest, Text: f.clockOf(earliest - ahead.Milliseconds())}
	switch {
	case o.Left <= 0:
		f.verdict("stop", "The thermometer says syrup: read the cup now.")
	case o.Left-by <= 0:
		f.verdict("stop", "It may be syrup already: read the cup now.")
	default:
		f.verdict("wait", "Read the cup from "+f.clockOf(earliest)+" on.")
	}
}

// thinnest is the strength from which the library watches by a thermometer.
const thinnest units.Brix = 30

// passed counts the readings before the boil, too cold for a strength that a
// thermometer tells, and those before two that were as cold since: sap was poured
// in. One cold reading among warm ones is a dip, which the watch finds.
func passed(readings []finish.WatchReading, water units.Temperature, pressure units.Pressure) (n int) {
	cold := func(r finish.WatchReading) bool {
		b, err := boil.BrixFromRise(max(r.Shown.Sub(water), 0), pressure)
		return err == nil && b < thinnest
	}
	for i, r := range readings {
		if cold(r) && (i == n || cold(readings[i-1])) {
			n = i + 1
		}
	}
	return n
}

// clockOf words a time of the phone's clock: now is its local time.
func (f *Form) clockOf(ms int64) string {
	zone := f.request.Zone
	return time.UnixMilli(ms + zone*time.Minute.Milliseconds()).UTC().Format("15:04:05")
}

// minutes words a stretch of time to a tenth of a minute.
func minutes(d time.Duration) string {
	return fmt.Sprintf("%.1f min", math.Round(d.Minutes()*10)/10)
}
