package folder

import (
	"cmp"
	"errors"
	"fmt"
	"slices"
	"strconv"
	"time"

	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// A Blend is syrup of one batch that was poured into another.
type Blend struct {
	Line       int // of the file
	Date       time.Time
	From, Into string
	Volume     units.Volume
}

func (h *House) readBlends() []error {
	var b Blend
	cols := []records.Col{
		day(&b.Date), records.Text("from", &b.From), records.Text("into", &b.Into), records.Volume("volume", &b.Volume),
	}
	return h.rows(BlendsFile, cols, func(r *records.Reader) error {
		b.Line = r.Line()
		if err := cmp.Or(name(r, "from", b.From), name(r, "into", b.Into), positive(r, "volume", b.Volume, mostSap)); err != nil {
			return err
		}
		if sameName(b.From, b.Into) {
			return r.Fail("into", errors.New("a batch poured into itself: check the names"))
		}
		h.Blends = append(h.Blends, b)
		return nil
	})
}

// Moldy names the batches that hold moldy syrup: those marked so, and all into which
// syrup of one was poured, at once or by way of others. When mold grew is not told: what
// was poured of a marked batch before it was seen counts too. Poured on one day, one
// counts as poured after the other.
func (h *House) Moldy() map[string]bool {
	since := map[string]time.Time{} // holds it
	for _, b := range h.Batches {
		if b.Mold {
			since[b.Name] = time.Time{}
		}
	}
	called := func(name string) string {
		if b, ok := h.Batch(name); ok {
			return b.Name
		}
		return name
	}
	for more := len(since) > 0; more; {
		more = false
		for _, p := range h.Blends {
			into := called(p.Into)
			from, holds := since[called(p.From)]
			if at, already := since[into]; holds && !p.Date.Before(from) && (!already || p.Date.Before(at)) {
				since[into], more = p.Date, true
			}
		}
	}
	moldy := map[string]bool{}
	for name := range since {
		moldy[name] = true
	}
	return moldy
}

// A Delivery is sap that was bought.
type Delivery struct {
	Line    int // of the file
	Date    time.Time
	Seller  string
	Volume  units.Volume
	Reading units.Brix // as the hydrometer reads in a cup at Cup
	Cup     units.Temperature
}

func (h *House) readBought() []error {
	var d Delivery
	cols := []records.Col{
		day(&d.Date), records.Text("seller", &d.Seller), records.Volume("volume", &d.Volume), records.Brix("reading", &d.Reading).Optional(),
		records.Temperature("cup", &d.Cup).Optional(),
	}
	return h.rows(BoughtFile, cols, func(r *records.Reader) error {
		d.Line = r.Line()
		err := cmp.Or(name(r, "seller", d.Seller), positive(r, "volume", d.Volume, mostSap), positive(r, "reading", d.Reading, 40))
		if err == nil {
			h.Bought = append(h.Bought, d)
		}
		return err
	})
}

// A Cost is what was paid, and over how many years it is spread.
type Cost struct {
	Line  int // of the file
	Date  time.Time
	What  string
	Paid  string // a plain decimal, in whatever money
	Years float64
}

func (h *House) readCosts() []error {
	var c Cost
	var paid float64
	cols := []records.Col{
		day(&c.Date), records.Text("what", &c.What), records.Number("cost", &paid), records.Number("years", &c.Years).Optional(),
	}
	return h.rows(CostsFile, cols, func(r *records.Reader) error {
		c.Line = r.Line()
		if !given(c.Years) {
			c.Years = 1
		}
		switch {
		case !(paid >= 0 && paid <= 1e9):
			return r.Fail("cost", errors.New("what was paid goes from 0 to a billion"))
		case !(c.Years >= 1 && c.Years <= 100):
			return r.Fail("years", errors.New("what lasts is spread over 1 to 100 years"))
		}
		c.Paid = strconv.FormatFloat(paid, 'f', -1, 64)
		h.Costs = append(h.Costs, c)
		return name(r, "what", c.What)
	})
}

// A PastSeason is a season before the days were written down.
type PastSeason struct {
	Line  int // of the file
	Year  int
	Taps  int
	Syrup units.Volume
}

// mostPerTap is far more syrup of a tap than any survey reports: 0.35 US gal in
// the best state of [example.org/sapreckoner/yield.State].
const mostPerTap = 2 * units.USGallon

func (h *House) readSeasons() []error {
	var s PastSeason
	var year, taps float64
	cols := []records.Col{records.Number("year", &year), records.Number("taps", &taps), records.Volume("syrup", &s.Syrup)}
	return h.rows(SeasonsFile, cols, func(r *records.Reader) (err error) {
		s.Line = r.Line()
		if s.Year, err = whole(r, "year", year, firstYear, lastYear); err == nil {
			s.Taps, err = whole(r, "taps", taps, 1, 1e6)
		}
		if err == nil {
			err = positive(r, "syrup", s.Syrup, mostSap)
		}
		if err != nil {
			return err
		}
		if err := limit.Within("", "syrup of a tap", s.Syrup/units.Volume(s.Taps), 0, mostPerTap, units.USGallon, "US gal", "give the syrup and not the sap, and all taps of that season"); err != nil {
			return r.Fail("syrup", err)
		}
		if slices.ContainsFunc(h.Seasons, func(o PastSeason) bool { return o.Year == s.Year }) {
			return r.Fail("year", fmt.Errorf("%d is given twice", s.Year))
		}
		h.Seasons = append(h.Seasons, s)
		return nil
	})
}

// A Sweet is what stands in a compartment of the pan, the fire out.
type Sweet struct {
	Line        int // of the file
	Date        time.Time
	Compartment int // from 1, where sap comes in
	Depth       units.Length
	Brix        units.Brix
}

func (h *House) readPan() []error {
	var s Sweet
	var compartment, brix float64
	cols := []records.Col{
		day(&s.Date), records.Number("compartment", &compartment).Optional(), records.Length("depth", &s.Depth), records.Number("brix", &brix),
	}
	return h.rows(PanFile, cols, func(r *records.Reader) (err error) {
		s.Line, s.Brix = r.Line(), units.Brix(brix)
		if !given(compartment) {
			compartment = 1
		}
		if s.Compartment, err = whole(r, "compartment", compartment, 1, 100); err != nil {
			return err
		}
		if !(s.Brix >= 0 && s.Brix <= 85) {
			return r.Fail("brix", errors.New("out of range: sweet in a pan has 0 to 85 Brix"))
		}
		if err := positive(r, "depth", s.Depth, 40*units.Inch); err != nil {
			return err
		}
		h.Pan = append(h.Pan, s)
		return nil
	})
}
