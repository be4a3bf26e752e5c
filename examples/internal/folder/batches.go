package folder

import (
	"cmp"
	"errors"
	"fmt"
	"slices"
	"strings"
	"time"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// A Batch is syrup that was drawn and kept apart.
type Batch struct {
	Line    int // of the file
	Name    string
	Date    time.Time
	Volume  units.Volume // at Temp; NaN if it was weighed
	Weight  units.Mass   // on a scale, the can or the drum taken off; NaN if it was measured
	Drum    bool         // weighed full and empty
	Reading units.Brix   // as the hydrometer reads in a cup at Cup
	Cup     units.Temperature
	Temp    units.Temperature
	Light   units.Share
	Mold    bool // then it is thrown away, and needs no reading
}

func (h *House) readBatches() []error {
	var b Batch
	var gross, tare units.Mass
	var mold string
	at := map[string]int{}
	cols := []records.Col{
		records.Text("batch", &b.Name), day(&b.Date), records.Volume("volume", &b.Volume).Optional(), records.Mass("weight", &b.Weight).Optional(),
		records.Mass("gross", &gross).Optional(), records.Mass("tare", &tare).Optional(), records.Brix("reading", &b.Reading).Optional(), records.Temperature("cup", &b.Cup).Optional(), records.Temperature("temp", &b.Temp).Optional(),
		records.Share("light", &b.Light).Optional(), records.Text("mold", &mold).Optional(),
	}
	return h.rows(BatchesFile, cols, func(r *records.Reader) error {
		b.Line, b.Mold, b.Drum = r.Line(), strings.EqualFold(mold, "yes"), given(gross) || given(tare)
		err := cmp.Or(
			yes(r, "mold", mold), name(r, "batch", b.Name), positive(r, "volume", b.Volume, mostSap), positive(r, "weight", b.Weight, mostWeight),
			positive(r, "reading", b.Reading, 90), positive(r, "light", b.Light, 100),
			positive(r, "gross", gross, mostWeight), positive(r, "tare", tare, mostWeight),
		)
		switch before := at[alike(b.Name)]; {
		case err != nil:
			return err
		case before != 0:
			return r.Fail("batch", fmt.Errorf("%s stands in line %d already: each batch has a name of its own", b.Name, before))
		case b.Drum && (given(b.Volume) || given(b.Weight)):
			return r.Fail("gross", errors.New("give the drum's full and empty weight, or else the volume or the weight"))
		case b.Drum && !(given(gross) && given(tare)):
			return r.Fail("gross", errors.New("a drum is weighed full and empty: give both gross and tare"))
		case b.Drum && !(gross > tare):
			return r.Fail("gross", errors.New("the full drum weighs no more than the empty one: are gross and tare the other way round?"))
		case b.Drum:
			b.Weight = gross - tare
		case given(b.Volume) == given(b.Weight):
			return r.Fail("volume", errors.New("give either the volume or the weight"))
		}
		at[alike(b.Name)] = b.Line
		h.Batches = append(h.Batches, b)
		return nil
	})
}

// yes refuses what is neither yes, no nor empty.
func yes(r *records.Reader, column, word string) error {
	if word == "" || strings.EqualFold(word, "yes") || strings.EqualFold(word, "no") {
		return nil
	}
	return r.Fail(column, errors.New("write yes or no: a batch with any mold is thrown away"))
}

// Batch finds a batch by its name.
func (h *House) Batch(name string) (Batch, bool) {
	for _, b := range h.Batches {
		if sameName(b.Name, name) {
			return b, true
		}
	}
	return Batch{}, false
}

// Jars are containers of one size that were filled of a batch on a day.
type Jars struct {
	Line  int // of the file
	Date  time.Time
	Batch string       // as the batch calls itself
	Size  units.Volume // of one, by its label
	Count int
}

func (h *House) readBottled() []error {
	var j Jars
	var count float64
	names := map[string]string{}
	var all []string
	for _, b := range h.Batches {
		names[alike(b.Name)] = b.Name
		all = append(all, b.Name)
	}
	cols := []records.Col{
		day(&j.Date), records.Text("batch", &j.Batch), records.Volume("size", &j.Size), records.Number("count", &count),
	}
	return h.rows(BottledFile, cols, func(r *records.Reader) (err error) {
		j.Line = r.Line()
		if j.Count, err = whole(r, "count", count, 1, 1e6); err != nil {
			return err
		}
		if !(j.Size >= units.Milliliter && j.Size <= 100*units.USGallon) {
			return r.Fail("size", errors.New("out of range: what the label of one says, such as 1 pt"))
		}
		batch, ok := names[alike(j.Batch)]
		if !ok {
			hint := "write it there too"
			if near, ok := enum.Nearest(j.Batch, slices.Values(all)); ok {
				hint = "is it " + near + "?"
			}
			return r.Fail("batch", fmt.Errorf("no batch %q in %s: %s", j.Batch, BatchesFile, hint))
		}
		j.Batch = batch
		h.Bottled = append(h.Bottled, j)
		return nil
	})
}
