package finish

import (
	"math"
	"time"

	"example.org/sapreckoner/internal/base/numeric"
	"example.org/sapreckoner/units"
)

// A lean is an error that all readings share: so many degrees, and such a share of
// the rise.
type lean struct {
	by    units.TempDiff
	share units.TempDiff
}

// widen adds to the uncertainties of an outlook what an error that all readings
// share makes of them. It moves the answers as a whole, and adds to what the
// scatter leaves open.
func (w Watch) widen(fn string, out *Outlook, used []WatchReading, p units.Pressure, all lean) error {
	off, err := w.fit(fn, used, p, all)
	if err != nil { // hotter readings may lie beyond the range
		if off, err = w.fit(fn, used, p, lean{-all.by, -all.share}); err != nil {
			return err
		}
	}
	out.NowBy = hypot(out.NowBy, off.Now-out.Now)
	out.PerMinuteBy = hypot(out.PerMinuteBy, off.PerMinute-out.PerMinute)
	out.LeftBy = time.Duration(hypot(float64(out.LeftBy), float64(off.Left-out.Left)))
	return nil
}

// leaps reports whether a reading lies over the line through those before it by
// more than both can be off.
func (w Watch) leaps(fn string, before []WatchReading, r WatchReading, p units.Pressure) (bool, error) {
	l, sigma, err := w.line(fn, before, r.At, p, lean{})
	if err != nil {
		return false, err
	}
	u, by, err := w.inverse(fn, r, p, lean{})
	return l.At(0)-u > oddSigma*math.Hypot(l.ErrorAt(0, sigma), sigma*by), err
}

// inverse returns u = 1/B of a reading with the error that all share, and its
// standard uncertainty.
func (w Watch) inverse(fn string, r WatchReading, p units.Pressure, all lean) (u, by float64, err error) {
	rise := r.Shown.Sub(w.Water)*(1+all.share) + all.by
	b, err := strength(fn, w.Sugar, max(rise, 0), p)
	if err != nil {
		return 0, 0, err
	}
	if err := watchBrix.Check(fn, float64(b)); err != nil {
		return 0, 0, err
	}
	// The slope toward the thin side always has an answer.
	step := min(w.ProbeBy, rise/2)
	thin, err := strength(fn, w.Sugar, rise-step, p)
	if err != nil {
		return 0, 0, err
	}
	// The standard uncertainty is that of the rise times du/drise.
	u = 1 / float64(b)
	return u, (1/float64(thin) - u) / float64(step) * float64(w.ProbeBy), nil
}

// line lays the line through the readings with the error that all share; its
// times are minutes from now. Sigma is how many times the stated uncertainty
// the readings scatter, 1 at least.
func (w Watch) line(fn string, readings []WatchReading, now time.Duration, p units.Pressure, all lean) (l numeric.Line, sigma float64, err error) {
	var sum numeric.LineSum
	for _, r := range readings {
		u, by, err := w.inverse(fn, r, p, all)
		if err != nil {
			return l, 0, err
		}
		sum.Add((r.At - now).Minutes(), u, 1/(by*by))
	}
	l = sum.Fit()
	sigma = 1
	if s := sum.Scatter(l); s > 1 {
		sigma = s
	}
	return l, sigma, nil
}

// fit lays the line through the readings with the error that all share, and looks
// out along it from the last.
func (w Watch) fit(fn string, readings []WatchReading, p units.Pressure, all lean) (Outlook, error) {
	now := readings[len(readings)-1].At
	l, sigma, err := w.line(fn, readings, now, p, all)
	if err != nil {
		return Outlook{}, err
	}
	// Everything follows from the height of the line at its middle and its
	// slope, which err independently of each other.
	u, target := l.At(0), 1/float64(w.Target)
	heightBy, slopeBy := sigma/math.Sqrt(l.W), l.SlopeError(sigma)
	back := 0 - l.X0 // from the middle of the readings to the last
	out := Outlook{
		Now:         units.Brix(1 / u),
		NowBy:       units.Brix(l.ErrorAt(0, sigma) / (u * u)),
		PerMinute:   units.Brix(-l.Slope / (u * u)),
		PerMinuteBy: units.Brix(math.Hypot(2*l.Slope/(u*u*u)*heightBy, (-1/(u*u)+2*l.Slope*back/(u*u*u))*slopeBy)),
		Climbs:      l.Slope < 0,
		Used:        len(readings),
	}
	if !out.Climbs {
		return out, nil
	}
	out.Left = minutes(l.X0 + (target-l.Y0)/l.Slope)
	out.LeftBy = minutes(math.Hypot(heightBy/l.Slope, (target-l.Y0)/(l.Slope*l.Slope)*slopeBy))
	return out, nil
}

// minutes returns a duration, held at the longest where the climb is all but
// nothing.
func minutes(m float64) time.Duration {
	ns := m * float64(time.Minute)
	return time.Duration(min(max(ns, -math.MaxInt64/2), math.MaxInt64/2))
}

func hypot[Q ~float64](a, b Q) Q { return Q(math.Hypot(float64(a), float64(b))) }
