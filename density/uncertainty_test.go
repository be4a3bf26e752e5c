package density_test

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// drawn is what a Monte Carlo after JCGM 101:2008 gives: twice the standard
// deviation, and half of the interval that 95 of 100 values lie in, as many
// below as above.
type drawn struct{ twice, half float64 }

// monteCarlo sums up what trial gives for inputs drawn at random.
func monteCarlo(t *testing.T, trial func(rng *rand.Rand) (units.Brix, error)) drawn {
	t.Helper()
	const n = 40000 // 0.35 percent of a standard deviation, 0.7 of the half
	rng := rand.New(rand.NewPCG(100, 101))
	var mean, m2 float64
	all := make([]float64, n)
	for i := range n {
		b, err := trial(rng)
		if err != nil {
			t.Fatal(err)
		}
		all[i] = float64(b)
		d := float64(b) - mean
		mean += d / float64(i+1)
		m2 += d * (float64(b) - mean)
	}
	slices.Sort(all)
	return drawn{2 * math.Sqrt(m2/(n-1)), (all[n*975/1000] - all[n*25/1000]) / 2}
}

// rect draws a value that is as likely anywhere within plus or minus limit.
func rect(rng *rand.Rand, limit float64) float64 { return limit * (2*rng.Float64() - 1) }

// densityError draws an error of the density formula at temperature at, in
// kg/m3, by its own statement: 0.1 (k = 2) to 90 C, and above it the artifact of
// 0.035 Brix at 99 C and 0.075 at 105 C as a limit, 6.16 kg/m3 for a Brix.
func densityError(rng *rand.Rand, at float64) float64 {
	limit := 0.0
	switch {
	case at > 99:
		limit = 0.035 + (at-99)/6*0.040
	case at > 90:
		limit = 0.035 * (at - 90) / 9
	}
	return 0.05*rng.NormFloat64() + rect(rng, 6.16*limit)
}

// agree holds a propagated uncertainty and its half-width against a Monte Carlo,
// to 3 percent.
func agree(t *testing.T, name string, m density.Measurement, mc drawn) {
	t.Helper()
	if !(math.Abs(float64(m.Uncertainty)-mc.twice) <= 0.03*mc.twice) {
		t.Errorf("%s: propagated %v, Monte Carlo %v; parts %+v", name, m.Uncertainty, mc.twice, m.Parts)
	}
	if !(math.Abs(float64(m.Half95())-mc.half) <= 0.03*mc.half) {
		t.Errorf("%s: half-width %v, Monte Carlo %v; parts %+v", name, m.Half95(), mc.half, m.Parts)
	}
}

func TestHydrometerMonteCarlo(t *testing.T) {
	tests := []struct {
		name    string
		h       density.Hydrometer
		reading float64
		at      units.Temperature
		doubt   density.Doubt
	}{
		{"cold cup", stem, 66.5, units.Fahrenheit(68), doubt},
		{"hot cup", stem, 59.0, units.Fahrenheit(209), doubt},
		{"hotter cup", stem, 59.0, c(105), doubt},
		{"hot cup, good reading, glass rules", stem, 59.0, units.Fahrenheit(200), density.Doubt{Division: 0.05, Thermometer: 0.1, Calibration: 0.02}},
		{"poor thermometer", stem, 60, c(80), density.Doubt{Division: 0.2, Thermometer: 5, Calibration: 0.1}},
		{"NBS scale", density.Hydrometer{GraduatedAt: c20, Scale: density.NBSC440, ReadsHigh: 0.3}, 66, c(40), doubt},
		{"sap", density.Hydrometer{GraduatedAt: units.Fahrenheit(38)}, 2.0, units.Fahrenheit(60), density.Doubt{Division: 0.1, Thermometer: 1, Calibration: 0.1}},
		{"sap near its density maximum", density.Hydrometer{GraduatedAt: units.Fahrenheit(38)}, 2.0, c(4), density.Doubt{Division: 0.1, Thermometer: 1, Calibration: 0.1}},
		{"sap, the thermometer rules", density.Hydrometer{GraduatedAt: c20}, 3.0, c(25), density.Doubt{Division: 0.01, Thermometer: 2, Calibration: 0.01}},
	}
	for _, tt := range tests {
		m, err := tt.h.Measure(bx(tt.reading), tt.at, tt.doubt)
		if err != nil {
			t.Fatal(err)
		}
		mc := monteCarlo(t, func(rng *rand.Rand) (units.Brix, error) {
			h := tt.h
			h.Expansion = density.GlassExpansion + rect(rng, 5e-6)
			reading := tt.reading + rect(rng, float64(tt.doubt.Division)/2) + float64(tt.doubt.Calibration)/2*rng.NormFloat64()
			at := tt.at.Add(units.TempDiff(rect(rng, float64(tt.doubt.Thermometer))))
			b, err := h.Brix(bx(reading), at)
			if err != nil {
				return b, err
			}
			// Surface and formula shift the density that the stem was taken for.
			d, err := density.Solution(b, at)
			if err != nil {
				return b, err
			}
			d *= units.Density(1 + 370e-6/2*rng.NormFloat64())
			return density.BrixFromDensity(d+kg(densityError(rng, tt.at.Celsius())), at)
		})
		agree(t, tt.name, m, mc)
	}
}

func TestRefractometerMonteCarlo(t *testing.T) {
	tests := []struct {
		name    string
		r       density.Refractometer
		reading float64
		at      float64
		doubt   density.Doubt
		model   float64 // standard, Brix
	}{
		{"plain, warm", prism, 66.5, 25, density.Doubt{Division: 0.2, Thermometer: 1, Calibration: 0.2}, 0.02},
		{"plain, the thermometer rules", prism, 66.5, 15, density.Doubt{Division: 0.02, Thermometer: 3, Calibration: 0.02}, 0.02},
		{"plain, sap, reads high", density.Refractometer{ReadsHigh: 0.2}, 2.5, 12, density.Doubt{Division: 0.1, Thermometer: 1, Calibration: 0.1}, 0.02},
		{"compensated", atc, 66.9, 25, density.Doubt{Division: 0.2, Calibration: 0.2}, 0.003},
	}
	for _, tt := range tests {
		m, err := tt.r.Measure(bx(tt.reading), c(tt.at), tt.doubt)
		if err != nil {
			t.Fatal(err)
		}
		mc := monteCarlo(t, func(rng *rand.Rand) (units.Brix, error) {
			reading := tt.reading + rect(rng, float64(tt.doubt.Division)/2) + float64(tt.doubt.Calibration)/2*rng.NormFloat64()
			b, err := tt.r.Brix(bx(reading), c(tt.at+rect(rng, float64(tt.doubt.Thermometer))))
			return b + bx(tt.model*rng.NormFloat64()), err
		})
		agree(t, tt.name, m, mc)
	}
}

func TestFlaskMonteCarlo(t *testing.T) {
	tests := []struct {
		name  string
		f     density.Flask
		net   units.Mass
		at    float64
		doubt density.FlaskDoubt
	}{
		{"the volume rules", flask, 663.4 * units.Gram, 20, weighing},
		{"kitchen scale, warm", flask, 655 * units.Gram, 40, density.FlaskDoubt{Division: 5 * units.Gram, Calibration: 2 * units.Gram, Volume: 2 * units.Milliliter, Thermometer: 1}},
		{"steel, the thermometer rules", density.Flask{Volume: units.Liter, CalibratedAt: c20, Expansion: 50e-6}, 1.3, 60,
			density.FlaskDoubt{Division: 0.1 * units.Gram, Calibration: 0.1 * units.Gram, Volume: 0.1 * units.Milliliter, Thermometer: 5}},
		{"the formulas rule", flask, 663.4 * units.Gram, 20,
			density.FlaskDoubt{Division: 1e-3 * units.Gram, Calibration: 1e-3 * units.Gram, Volume: 1e-3 * units.Milliliter, Thermometer: 0.01}},
	}
	for _, tt := range tests {
		m, err := tt.f.Measure(tt.net, c(tt.at), tt.doubt)
		if err != nil {
			t.Fatal(err)
		}
		mc := monteCarlo(t, func(rng *rand.Rand) (units.Brix, error) {
			f := tt.f
			f.Volume += tt.doubt.Volume / 2 * m3(rng.NormFloat64())
			net := tt.net + units.Mass(rect(rng, float64(tt.doubt.Division)/2)) + tt.doubt.Calibration/2*units.Mass(rng.NormFloat64())
			at := c(tt.at + rect(rng, float64(tt.doubt.Thermometer)))
			b, err := f.Brix(net, at)
			if err != nil {
				return b, err
			}
			// Air of another density buoys another amount; the formula errs too.
			d, err := density.Solution(b, at)
			if err != nil {
				return b, err
			}
			air := rect(rng, 0.12)
			d += kg(air*(1-float64(d)/8000) + densityError(rng, tt.at))
			return density.BrixFromDensity(d, at)
		})
		agree(t, tt.name, m, mc)
	}
}

// The parts add up to the whole, and the part that was made large is the large
// one.
func TestParts(t *testing.T) {
	m, err := stem.Measure(60, c(70), density.Doubt{Division: 0.01, Thermometer: 5, Calibration: 0.01})
	if err != nil {
		t.Fatal(err)
	}
	p := m.Parts
	sum := 0.0
	for _, x := range []units.Brix{p.Division, p.Thermometer, p.Calibration, p.Glass, p.Surface, p.Volume, p.Model} {
		sum += float64(x * x)
		if x > p.Thermometer {
			t.Errorf("%v is more than the thermometer's %v", x, p.Thermometer)
		}
	}
	if !(math.Abs(float64(m.Uncertainty)-2*math.Sqrt(sum)) <= 1e-12) {
		t.Errorf("parts %+v make %v, not %v", p, 2*math.Sqrt(sum), m.Uncertainty)
	}
}

// The extrapolation above 90 C widens the uncertainty, step by step.
func TestExtrapolationWidens(t *testing.T) {
	fine := density.Doubt{Division: 0.01, Thermometer: 0.01, Calibration: 0.01}
	last := 0.0
	for at := 90.0; at <= 110; at++ {
		m, err := hotStem.Measure(66.9, c(at), fine)
		if err != nil {
			t.Fatal(err)
		}
		if !(float64(m.Parts.Model) > last) || m.Extrapolated != (at > 90) {
			t.Errorf("at %v C the model's part is %v after %v, extrapolated %v", at, m.Parts.Model, last, m.Extrapolated)
		}
		last = float64(m.Parts.Model)
	}
}

// hotStem is graduated as warm as a stem can be, so that hot syrup of every
// strength stays on it.
var hotStem = density.Hydrometer{GraduatedAt: c(40)}

// A Baume stem is measured by the strength that its marks stand for.
func TestMeasureOnBaume(t *testing.T) {
	for _, h := range []density.Hydrometer{stem, nbsStem} {
		mark, err := h.Scale.BrixFromBaume(32)
		if err != nil {
			t.Fatal(err)
		}
		m, err := h.Measure(mark, c(90), doubt)
		if err != nil {
			t.Fatal(err)
		}
		want, err := h.BrixFromBaume(32, c(90))
		if err != nil || !(math.Abs(float64(m.Brix-want)) <= 1e-10) {
			t.Errorf("%v: %v by the mark, %v by Baume, %v", h.Scale, m.Brix, want, err)
		}
	}
	wide := must(of(density.BrixFromBaume(36.5))) - must(of(density.BrixFromBaume(35.5)))
	if !(math.Abs(wide-2) <= 0.1) {
		t.Errorf("a degree Baume near syrup is %v Brix", wide)
	}
}
