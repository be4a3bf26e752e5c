package pan

import (
	"time"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// Backlog is what the fire and the tanks can take of the sap of many days:
//
//	plan, err := pan.Backlog{
//		Storage: 400 * units.USGallon,
//		Hours:   5 * time.Hour,
//		Heat:    rig.Heat,
//		Syrup:   66.9,
//		Keep:    24 * time.Hour,
//		...
//	}.Plan(forecast...)
//
// Keep is how long sap may wait before it must be boiled; zero is no limit.
// There is no formula for it. As guidance: bacteria grow slowly below 40 F and
// fast above 50 F ([Spoiling]); concentrate from a membrane feeds them better and
// spoils sooner, in hours and not days, so that it has a Keep of its own in
// [Gathering]. Look at the sap and smell it: cloudy or sour sap makes dark, ropy
// syrup, and a clean cold tank does more than any number here.
type Backlog struct {
	Storage units.Volume   // of all tanks
	Hours   time.Duration  // willing to fire in a day
	Warmup  time.Duration  // of these, until the pans boil
	Heat    units.Power    // what reaches the liquid, as of [Rig]
	Syrup   units.Brix     // strength to boil to
	At      units.Pressure // station pressure at the pans
	Keep    time.Duration
}

// Gathering is the sap gathered on one day, or foreseen for it. A day without sap
// is one with no volume.
type Gathering struct {
	Volume      units.Volume
	Brix        units.Brix
	Temperature units.Temperature
	Keep        time.Duration // if it differs from that of the rest
}

// Evening is one day of a [Plan]. Days count from 0, the first of the forecast.
type Evening struct {
	// Spilled is what found no room of the day's sap, which all comes before the
	// fire is lit.
	Spilled units.Volume

	// First is the day whose sap must be boiled first, or -1 if none waits. Sap
	// that stood in the tanks at the start is of day 0.
	First int

	Hours   time.Duration // of fire, with the warm-up
	Boiled  units.Volume
	Heat    units.Energy // with that of the warm-up
	Sugar   units.Mass   // in the syrup
	Waiting units.Volume // in the tanks afterwards

	// Overdue is what of it is now older than it should have become.
	Overdue units.Volume
}

// Plan is a plan of firing: what a forecast of sap comes to, day by day. The days
// of the first spill and of the first sap that waited too long are -1 if there is
// none.
type Plan struct {
	Evenings     []Evening
	FirstSpill   int
	FirstOverdue int
	Peak         units.Volume // most sap waiting at the lighting of a fire
	PeakDay      int

	// Sums over the evenings.
	Hours   time.Duration
	Heat    units.Energy
	Sugar   units.Mass
	Spilled units.Volume

	LeftAfter units.Volume // waiting after the last evening
}

// What a backlog may be.
var (
	backlogDays = limit.Range{Arg: "days", What: "number of days", Low: 1, High: 1000,
		Below: "give the sap of each day",
		Above: "plan one season at a time"}
	backlogHours = limit.Range{Arg: "Backlog.Hours", What: "hours of fire in a day", Low: 0, High: 24, Unit: "h",
		Above: "a day has 24 hours"}
	backlogWarmup = limit.Range{Arg: "Backlog.Warmup", What: "warm-up", Low: 0, High: 24, Unit: "h"}
	backlogSyrup  = limit.Range{Arg: "Backlog.Syrup", What: "strength of the syrup", Low: drawAt.Low, High: drawAt.High, Unit: "Brix",
		Above: drawAt.Above}
	backlogKeep = limit.Range{Arg: "Backlog.Keep", What: "keep time", Low: 0, High: 60 * 24, Unit: "h",
		Above: "no sap keeps for months"}
)

func (b *Backlog) check(fn string, days []Gathering) error {
	for _, q := range [...]struct {
		r   *limit.Range
		arg string
		x   float64
	}{
		{&backlogDays, backlogDays.Arg, float64(len(days))}, {&sapVolume, "Backlog.Storage", float64(b.Storage)}, {&backlogHours, backlogHours.Arg, b.Hours.Hours()},
		{&backlogWarmup, backlogWarmup.Arg, b.Warmup.Hours()}, {&rigHeat, "Backlog.Heat", float64(b.Heat)},
		{&backlogSyrup, backlogSyrup.Arg, float64(b.Syrup)}, {&backlogKeep, backlogKeep.Arg, b.Keep.Hours()},
	} {
		if err := q.r.CheckAs(fn, q.arg, q.x); err != nil {
			return err
		}
	}
	for i, d := range days {
		if err := b.checkSap(fn, "days", i, d); err != nil {
			return err
		}
	}
	return nil
}

func (b *Backlog) checkSap(fn, list string, i int, d Gathering) error {
	s := Sap{Volume: d.Volume, Brix: d.Brix, Temperature: d.Temperature}
	if err := s.check(fn, list, i); err != nil {
		return err
	}
	thin := sapBrix
	thin.High = float64(b.Syrup) - leastGap
	thin.Above = "the sap is as thick as the syrup"
	if err := thin.CheckItem(fn, list, i, "Brix", float64(d.Brix)); err != nil {
		return err
	}
	return backlogKeep.CheckItem(fn, list, i, "Keep", d.Keep.Hours())
}

// Plan boils down the sap of a forecast, each evening up to the hours given, the
// most urgent first, and tells when the tanks overflow and what waits too long.
//
// The sap of a day is in the tank before the fire is lit, and what finds no room
// is lost. Sap of different days counts as if it stood apart. Sap that is overdue
// is boiled all the same.
//
// Range: 1 to 1000 days, and as the fields of [Day] and [Rig]. Uncertainty:
// that of the forecast; boiling at the temperature of water instead of at the
// rising one of the syrup is worth less than 1 percent.
//
// Method: heat = m (h(boiling) - h(sap)) + water off times latent heat, by mass
// balance. Check value: 404,680 Btu for a gallon of syrup of 66.0 Brix from sap of
// 2.0 Brix and 40 F at 1 atm, to 0.1 percent (computed).
func (b Backlog) Plan(days ...Gathering) (Plan, error) {
	return b.plan("pan.Backlog.Plan", nil, days)
}

// plan fires on every evening.
func (b *Backlog) plan(fn string, start []Standing, days []Gathering) (Plan, error) {
	h, err := b.ready(fn, start, days)
	if err != nil {
		return Plan{}, err
	}
	return b.planOn(fn, h, start, days, func(int) bool { return true })
}

// ready checks the backlog and its sap.
func (b *Backlog) ready(fn string, start []Standing, days []Gathering) (*hot, error) {
	if err := b.check(fn, days); err != nil {
		return nil, err
	}
	if err := b.checkStart(fn, start); err != nil {
		return nil, err
	}
	return newHot(fn, "Backlog.At", b.At)
}

// planOn plans with a fire on the evenings that are told.
func (b *Backlog) planOn(fn string, h *hot, start []Standing, days []Gathering, fires func(evening int) bool) (Plan, error) {
	p := Plan{Evenings: make([]Evening, len(days)), FirstSpill: -1, FirstOverdue: -1}
	var queue []waiting
	held := 0.0
	for _, s := range start {
		if s.Volume > 0 {
			lot, err := b.lot(fn, h, 0, s.Age, s.Gathering)
			if err != nil {
				return Plan{}, err
			}
			held += lot.volume
			queue = lot.into(queue)
		}
	}
	for i, d := range days {
		e := &p.Evenings[i]
		if d.Volume > 0 {
			lot, err := b.lot(fn, h, i, 0, d)
			if err != nil {
				return Plan{}, err
			}
			room := max(0, float64(b.Storage)-held)
			e.Spilled = units.Volume(max(0, lot.volume-room))
			lot.volume = min(lot.volume, room)
			held += lot.volume
			queue = lot.into(queue)
		}
		if peak := float64(p.Peak); held > peak && !limit.Same(held, peak) { // the first of days as full
			p.Peak, p.PeakDay = units.Volume(held), i
		}
		queue = b.fire(e, queue, fires(i))
		held = 0
		for _, q := range queue {
			held += q.volume
			if q.due <= float64(i) {
				e.Overdue += units.Volume(q.volume)
			}
		}
		e.Waiting = units.Volume(held)
		p.add(i, e)
	}
	p.LeftAfter = units.Volume(held)
	return p, nil
}

// add counts evening i in.
func (p *Plan) add(i int, e *Evening) {
	if e.Spilled > 0 && p.FirstSpill < 0 {
		p.FirstSpill = i
	}
	if e.Overdue > 0 && p.FirstOverdue < 0 {
		p.FirstOverdue = i
	}
	p.Hours += e.Hours
	p.Heat += e.Heat
	p.Sugar += e.Sugar
	p.Spilled += e.Spilled
}

// fire boils from the head of the queue for an evening, if it is lit, and returns
// what is left of it.
func (b *Backlog) fire(e *Evening, queue []waiting, lit bool) []waiting {
	e.First = -1
	if len(queue) == 0 {
		return queue
	}
	e.First = queue[0].day
	if !lit {
		return queue
	}
	fire := max(0, (b.Hours-b.Warmup).Seconds()) * float64(b.Heat)
	spent := 0.0
	done := 0
	for i := range queue {
		q := &queue[i]
		v := min(q.volume, (fire-spent)/q.heat)
		spent += v * q.heat
		q.volume -= v
		e.Boiled += units.Volume(v)
		e.Sugar += units.Mass(v * q.sugar)
		if q.volume > 0 {
			break
		}
		done++
	}
	if spent > 0 {
		burned := time.Duration(spent / float64(b.Heat) * 1e9)
		e.Hours = b.Warmup + burned
		e.Heat = b.Heat.Over(e.Hours)
	}
	return queue[done:]
}
