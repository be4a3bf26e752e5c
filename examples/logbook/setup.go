package main

import (
	"cmp"
	"embed"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/sugar"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield"
)

// demo is the invented season.
//
//go:embed testdata/season/*.csv
var demo embed.FS

// The invented season's facts that stand in no file.
const (
	demoTaps      = 64
	demoHeldAfter = 3 * units.USGallon
)

// setup is what the flags say.
type setup struct {
	dir  string
	taps int

	heldBefore, heldAfter           units.Volume
	heldBeforeBrix, heldAfterBrix   units.Brix
	sapStem, stem                   units.Temperature
	elevation                       units.Length
	target                          units.Brix
	moisture                        units.Share
	sapGauge, syrupGauge, heldGauge units.Share
	sapLimit, syrupLimit, heldLimit units.Brix

	svg    string
	metric bool

	files    fs.FS          // the season's folder
	pressure units.Pressure // at the pan
}

func (s *setup) declare(f *cli.Flags) {
	f.Group("Season")
	f.Count(&s.taps, "taps", 0, 0, 1_000_000, "taps of the season; 0 leaves out what is counted by the tap")
	f.Quantity(&s.heldBefore, "held-before", "0 US gal", "sweet that stood in pans and tanks before the first gathering")
	f.Quantity(&s.heldBeforeBrix, "held-before-brix", "35 Brix", "its true strength")
	f.Quantity(&s.heldAfter, "held-after", "0 US gal", "sweet that stands in pans and tanks now")
	f.Quantity(&s.heldAfterBrix, "held-after-brix", "35 Brix", "its true strength")
	f.Group("Instruments")
	f.Quantity(&s.sapStem, "sap-hydrometer", "38 F", "graduation temperature printed on the sap hydrometer")
	f.Quantity(&s.stem, "hydrometer", "60 F", "graduation temperature printed on the syrup hydrometer")
	f.Quantity(&s.sapGauge, "sap-gauge", "2 %", "limits of the measured volumes of sap")
	f.Quantity(&s.sapLimit, "sap-limit", "0.1 Brix", "limits of the readings of sap")
	f.Quantity(&s.syrupGauge, "syrup-gauge", "1 %", "limits of the volumes or weights of syrup")
	f.Quantity(&s.syrupLimit, "syrup-limit", "0.3 Brix", "limits of the readings of syrup")
	f.Quantity(&s.heldGauge, "held-gauge", "5 %", "limits of the volumes held")
	f.Quantity(&s.heldLimit, "held-limit", "1 Brix", "limits of the strengths held")
	f.Group("Pan and fire")
	f.Quantity(&s.elevation, "elevation", "1000 ft", "elevation of the pan: standard weather is assumed")
	f.Quantity(&s.target, "target", "66.9 Brix", "strength at which a boil ends, where boils.csv has no end_brix")
	f.Quantity(&s.moisture, "moisture", "25 %", "moisture of the wood on the dry basis, where boils.csv has no moisture_pct")
	f.Group("Chart")
	f.String(&s.svg, "svg", "", "write a chart of sap and sugar by day to this file; - prints it instead of the page. A file that is there is replaced only if this program drew it")
	f.Page(&s.metric)
}

// check tests the flags that the library does not test, or only once the files
// are read.
func (s *setup) check(f *cli.Flags) (err error) {
	s.dir = f.Dir()
	if s.svg == "" && f.Given("svg") {
		return cli.For("svg", errors.New("name the file to write, or - for standard output"))
	}
	if s.svg == "-" && f.JSON() {
		return cli.For("json", errors.New("-svg - prints the chart instead of the page: give one of them"))
	}
	s.files = os.DirFS(s.dir)
	if s.dir == "" {
		if s.files, err = fs.Sub(demo, "testdata/season"); err != nil {
			return err
		}
		if !f.Given("taps") {
			s.taps = demoTaps
		}
		if !f.Given("held-after") {
			s.heldAfter = demoHeldAfter
		}
	}
	if s.pressure, err = boil.PressureAt(s.elevation); err != nil {
		return cli.For("elevation", err)
	}
	err = cmp.Or(
		cli.Graduation("sap-hydrometer", s.sapStem),
		cli.Graduation("hydrometer", s.stem),
		cli.Within("moisture", dryMoisture.Arg, s.moisture, units.Share(dryMoisture.Low), units.Share(dryMoisture.High), units.Percent, "%", dryMoisture.Above),
		cli.Within("target", "target", s.target, 30, 85, units.DegreeBrix, "Brix", "syrup is 66 to 69 Brix"),
	)
	for _, limits := range []struct {
		kind  string
		gauge units.Share
		brix  units.Brix
	}{{"sap", s.sapGauge, s.sapLimit}, {"syrup", s.syrupGauge, s.syrupLimit}, {"held", s.heldGauge, s.heldLimit}} {
		err = cmp.Or(err,
			cli.Within(limits.kind+"-gauge", "limits", limits.gauge, 0.01, 50, units.Percent, "%", "nobody measures without error"),
			cli.Within(limits.kind+"-limit", "limits", limits.brix, 0.01, 5, units.DegreeBrix, "Brix", "nobody reads without error"))
	}
	for _, sweet := range []struct {
		when   string
		volume units.Volume
		brix   units.Brix
	}{{"before", s.heldBefore, s.heldBeforeBrix}, {"after", s.heldAfter, s.heldAfterBrix}} {
		volumeErr := cli.Within("held-"+sweet.when, sapVolume.Arg, sweet.volume, 0, units.Liters(sapVolume.High), units.Liter, "L", "check its unit")
		_, brixErr := held(0, sweet.brix)
		err = cmp.Or(err, volumeErr, cli.For("held-"+sweet.when+"-brix", brixErr))
	}
	return err
}

func (s *setup) sapHydrometer() density.Hydrometer {
	return density.Hydrometer{GraduatedAt: s.sapStem}
}

func (s *setup) syrupHydrometer() density.Hydrometer {
	return density.Hydrometer{GraduatedAt: s.stem}
}

// held returns a lot held in a tank: sweet at the temperature of a room.
func held(v units.Volume, b units.Brix) (sugar.Lot, error) {
	return sugar.NewLot(v, b, label)
}

// measured returns the limits that the flags give to a kind of lots.
func measured(gauge units.Share, limit units.Brix) yield.Measured {
	return yield.Measured{Volume: gauge, Brix: limit}
}

// shown is a file of the season as messages name it.
func (s *setup) shown(name string) string {
	if s.dir == "" {
		return path.Join("season", name)
	}
	return filepath.Join(s.dir, name)
}

// open opens a file of the season. A file that is not there is nil without an
// error, unless it is needed.
func (s *setup) open(name string, needed bool) (fs.File, error) {
	file, err := s.files.Open(name)
	if errors.Is(err, fs.ErrNotExist) && !needed {
		return nil, nil
	}
	var pe *fs.PathError
	if errors.As(err, &pe) {
		return nil, cli.For("dir", fmt.Errorf("%s: %w", s.shown(name), pe.Err))
	}
	return file, err
}

// run reads the season and answers.
func (s *setup) run(e *cli.Env, f *cli.Flags) error {
	if err := s.check(f); err != nil {
		return err
	}
	b := newBook(s, e)
	defer b.progress.Done()
	if err := b.read(); err != nil {
		return err
	}
	account, err := b.balance()
	if err != nil {
		return err
	}
	page, err := b.sheet(account)
	if err != nil {
		return err
	}
	if s.svg != "-" {
		err = page.Show(e)
	}
	if err == nil && s.svg != "" {
		err = e.Draw("svg", s.svg, b.chart())
	}
	if err == nil && b.wrong.rows > 0 {
		err = &cli.LeftOut{Rows: b.wrong.rows}
	}
	return err
}
