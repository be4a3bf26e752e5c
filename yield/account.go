package yield

import (
	"math"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/internal/base/shelf"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
)

// Limits of a season.
const (
	maxTaps = 100_000_000
	maxDays = 366

	minVolumeLimits = 0.01 // percent
	maxVolumeLimits = 50.0
	minBrixLimits   = 0.01 // Brix
	maxBrixLimits   = 5.0

	minSyrupBrix = 60.0 // what may be called syrup
)

// densityRise is the relative growth of density with a Brix, 0.39 percent in sap
// and 0.46 in syrup: how a reading's error reaches the volume's mass.
const densityRise = 0.0045

// Measured says within which limits volumes and Brix of a kind were measured: a
// gauge good to 2 percent, a hydrometer good to 0.1 Brix. Nobody measures
// without error: zero limits are refused where there is something to measure.
//
// Limits are plus or minus. An [Account] only adds them up, by sums and by roots
// of squares: expanded uncertainties (k = 2) that go in come out as such, or a
// little wide, since those of volume and Brix of a list are summed.
type Measured struct {
	Volume units.Share // 0.01 to 50 percent
	Brix   units.Brix  // 0.01 to 5
}

// A Season is everything with sugar in it that came in, went out and was held
// over.
type Season struct {
	Sap        []sugar.Lot // gathered
	HeldBefore []sugar.Lot // in pans and tanks at the start
	HeldAfter  []sugar.Lot // in pans and tanks at the end
	Syrup      []sugar.Lot // drawn off, by lot
	Chased     []sugar.Lot // sweet chased out of the pans with water at the end and not boiled to syrup

	Taps int // 0 if not counted
	Days int // days on which sap was gathered, 0 if not counted

	SapMeasured   Measured // limits of Sap
	HeldMeasured  Measured // limits of HeldBefore, HeldAfter and Chased
	SyrupMeasured Measured // limits of Syrup
}

// An Account is a season's sugar in balance. Volumes are at 20 C (68 F).
type Account struct {
	SugarIn  units.Mass // in the sap and held at the start
	SugarOut units.Mass // in the syrup
	Kept     units.Mass // held at the end, and chased out

	// Each total is known within its limits, plus or minus, of the kind of those
	// in [Measured].
	SugarInLimits, SugarOutLimits, KeptLimits units.Mass

	// Lost is what is missing: to filters, foam, spills, scorched pans and,
	// if the sap stood warm, to what grows in it. It may come out negative.
	Lost        units.Mass
	LostShare   units.Share // of SugarIn
	Uncertainty units.Mass  // limits of Lost, of the same kind
	// Impossible says that more sugar came out than went in, beyond the
	// uncertainty: a reading, a volume or a lot is wrong or missing.
	Impossible bool

	Sap, Syrup         units.Volume
	SapBrix, SyrupBrix units.Brix // by mass; NaN if there is none

	// Ratio is sap per syrup as it came out, with what is held counted as syrup;
	// Exact is what it would be without loss. NaN without sap or syrup.
	Ratio, Exact float64

	SapPerTap, SyrupPerTap units.Volume // NaN if taps were not counted
	SugarPerTap            units.Mass   // in the sap; NaN if taps were not counted
	SapPerTapDay           units.Volume // NaN if taps or days were not counted
}

// sum is a list of lots added up.
type sum struct {
	mass, sugar, at20 float64 // kg, kg, m3
	limit             float64 // of the sugar, kg
}

// A kindOfLots is how errors name the limits of a list, and in words.
type kindOfLots struct{ volume, brix, volumes, strengths string }

var (
	sapLots   = kindOfLots{"Season.SapMeasured.Volume", "Season.SapMeasured.Brix", "limits of the volume of sap", "limits of the Brix of sap"}
	heldLots  = kindOfLots{"Season.HeldMeasured.Volume", "Season.HeldMeasured.Brix", "limits of the volume that is held", "limits of the Brix of what is held"}
	syrupLots = kindOfLots{"Season.SyrupMeasured.Volume", "Season.SyrupMeasured.Brix", "limits of the volume of syrup", "limits of the Brix of syrup"}
)

// add adds up lots. Errors of one instrument do not average out: they add.
func add(fn string, of *kindOfLots, lots []sugar.Lot, m Measured) (sum, error) {
	var s sum
	if len(lots) == 0 {
		return s, nil
	}
	if err := limit.InAs(fn, of.volume, of.volumes, m.Volume.Percents(), minVolumeLimits, maxVolumeLimits, "%", "how well the volumes were measured, such as 2 percent"); err != nil {
		return sum{}, err
	}
	if err := limit.InAs(fn, of.brix, of.strengths, float64(m.Brix), minBrixLimits, maxBrixLimits, "Brix", "how well the Brix was read, such as 0.1"); err != nil {
		return sum{}, err
	}
	for _, l := range lots {
		if l.Empty() {
			continue
		}
		v, err := l.VolumeAt(shelf.Temperature())
		if err != nil {
			return sum{}, units.Under(fn, err)
		}
		mass, sweet := l.Mass().Kilograms(), l.Sugar().Kilograms()
		s.mass += mass
		s.sugar += sweet
		s.at20 += v.CubicMeters()
		s.limit += sweet*m.Volume.Fraction() + mass*m.Brix.Fraction()*(1+densityRise*float64(l.Brix()))
	}
	return s, nil
}

// brix returns the mean strength by mass.
func (s sum) brix() units.Brix { return units.Brix(100 * s.sugar / s.mass) }

// totals adds up the five lists of a season.
func (s *Season) totals(fn string) (sap, before, after, syrup, chased sum, err error) {
	if sap, err = add(fn, &sapLots, s.Sap, s.SapMeasured); err != nil {
		return
	}
	if before, err = add(fn, &heldLots, s.HeldBefore, s.HeldMeasured); err != nil {
		return
	}
	if after, err = add(fn, &heldLots, s.HeldAfter, s.HeldMeasured); err != nil {
		return
	}
	if syrup, err = add(fn, &syrupLots, s.Syrup, s.SyrupMeasured); err != nil {
		return
	}
	if chased, err = add(fn, &heldLots, s.Chased, s.HeldMeasured); err != nil {
		return
	}
	in := sap.sugar + before.sugar
	err = limit.InAs(fn, "Season.Sap", "sugar in", in, leastMass, mostMass, "kg", "enter the sap gathered, or what was held at the start")
	return
}

// Account closes the balance of the season's sugar:
//
//	lost = sap + held before - syrup - held after - chased
//
// Loss is never measured; it is the remainder, and carries the errors of all the
// rest. Within a list the limits of all lots add up, since one gauge and one
// hydrometer are wrong the same way all season; lists are taken as independent
// and combine as the root of the sum of squares.
//
// Range: 1 mg to 1e9 kg of sugar in; limits of measurement as in [Measured];
// taps to 1e8, days to 366.
//
// Source: conservation of mass with the densities of
// [example.org/sapreckoner/density.Solution]. Check value: 25 US gal at 15 Brix
// held at the start are 33.15 lb of sugar in (computed).
func (s Season) Account() (Account, error) {
	const fn = "yield.Season.Account"
	sap, before, after, syrup, chased, err := s.totals(fn)
	if err != nil {
		return Account{}, err
	}
	if err := limit.InAs(fn, "Season.Taps", "taps", float64(s.Taps), 0, maxTaps, "", "0 if not counted"); err != nil {
		return Account{}, err
	}
	if err := limit.InAs(fn, "Season.Days", "days", float64(s.Days), 0, maxDays, "", "0 if not counted"); err != nil {
		return Account{}, err
	}
	in := sap.sugar + before.sugar
	lost := in - syrup.sugar - after.sugar - chased.sugar
	inLimit, keptLimit := math.Hypot(sap.limit, before.limit), math.Hypot(after.limit, chased.limit)
	limit := math.Hypot(math.Hypot(inLimit, keptLimit), syrup.limit)
	a := Account{
		SugarIn:  units.Mass(in),
		SugarOut: units.Mass(syrup.sugar),
		Kept:     units.Mass(after.sugar + chased.sugar),

		SugarInLimits:  units.Mass(inLimit),
		SugarOutLimits: units.Mass(syrup.limit),
		KeptLimits:     units.Mass(keptLimit),

		Lost:        units.Mass(lost),
		LostShare:   units.FractionShare(lost / in),
		Uncertainty: units.Mass(limit),
		Impossible:  lost < -limit,
		Sap:         units.Volume(sap.at20),
		Syrup:       units.Volume(syrup.at20),
		SapBrix:     sap.brix(),
		SyrupBrix:   syrup.brix(),
		Ratio:       math.NaN(),
		Exact:       math.NaN(),
		SapPerTap:   units.Volume(sap.at20 / counted(s.Taps)),
		SyrupPerTap: units.Volume(syrup.at20 / counted(s.Taps)),
		SugarPerTap: units.Mass(sap.sugar / counted(s.Taps)),
	}
	a.SapPerTapDay = a.SapPerTap / units.Volume(counted(s.Days))
	if sap.sugar > 0 && syrup.sugar > 0 {
		perVolume := syrup.sugar / syrup.at20
		a.Ratio = sap.at20 / (syrup.at20 + (after.sugar-before.sugar)/perVolume)
		a.Exact = perVolume / (sap.sugar / sap.at20)
	}
	return a, nil
}

// counted returns n, or NaN if it was not counted.
func counted(n int) float64 {
	if n == 0 {
		return math.NaN()
	}
	return float64(n)
}

// Expect returns the volume, at 20 C, of syrup of the given strength that the
// season's sap makes if the given share of the sugar is lost:
//
//	(sap + held before - held after - chased) (1 - loss) / (rho(B) B)
//
// It does not look at syrup already drawn off.
//
// Range: as in [Season.Account], loss from 0 to 100 percent, syrup from 60 to
// 85 Brix, and no more held than came in. Check value: 25 US gal at 15 Brix are
// 4.47 US gal of 66.9 Brix syrup (computed).
func (s Season) Expect(loss units.Share, syrup units.Brix) (units.Volume, error) {
	const fn = "yield.Season.Expect"
	sap, before, after, _, chased, err := s.totals(fn)
	if err != nil {
		return nan[units.Volume](), err
	}
	if err := limit.In(fn, "loss", loss.Percents(), 0, 100, "%", "the share of the sugar that is lost, from a past season's account"); err != nil {
		return nan[units.Volume](), err
	}
	if err := limit.In(fn, "syrup", float64(syrup), minSyrupBrix, shelf.MaxBrix, "Brix", "syrup is 66 to 68.9 in most laws"); err != nil {
		return nan[units.Volume](), err
	}
	per, err := shelf.Sugar(fn, syrup)
	if err != nil {
		return nan[units.Volume](), err
	}
	in, kept := sap.sugar+before.sugar, after.sugar+chased.sugar
	if err := limit.InAs(fn, "Season.HeldAfter", "sugar kept", kept, 0, in, "kg", "more is held than came in: check the readings of what is held"); err != nil {
		return nan[units.Volume](), err
	}
	return units.Volume(max(0, in-kept) * max(0, 1-loss.Fraction()) / per), nil
}
