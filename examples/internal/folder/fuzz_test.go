package folder

import (
	"bytes"
	"io"
	"io/fs"
	"maps"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"example.org/sapreckoner/examples/sugarhouse"
	"example.org/sapreckoner/units/records"
)

// around are files without a mistake beside the one that is tried.
var around = map[string]string{
	SettingsFile: "gallons: US\ntank: big, 120 gallons, 2.5 gallons an inch\nbarrow: 1/25 cord\nscale: Brix\n",
	BatchesFile:  "batch,date,volume_gal\n32-1,2032-03-13,2.8\n34-1,2034-03-13,2.8\n",
}

// try opens a folder in which one file holds that content.
func try(name string, content []byte) (*House, error) {
	files := fstest.MapFS{}
	for other, text := range around {
		files[other] = &fstest.MapFile{Data: []byte(text)}
	}
	files[name] = &fstest.MapFile{Data: content}
	return Open(files, "", 0)
}

// seeds adds a piece of each file of the invented sugarhouse.
func seeds(f *testing.F, add func(which uint8, content []byte)) {
	for i, sp := range specs {
		add(uint8(i), []byte(sp.header+"\n"))
		text, err := fs.ReadFile(sugarhouse.Files(), sp.name)
		if err != nil {
			continue // it has no such file
		}
		if len(text) > 1500 {
			text = text[:bytes.LastIndexByte(text[:1500], '\n')+1]
		}
		add(uint8(i), text)
		add(uint8(i), []byte(strings.NewReplacer(",", ";", ".", ",", "\n", "\r\n").Replace(string(text))))
	}
}

// rows counts the rows of a typed file.
func (h *House) count(name string) (n int, typed bool) {
	switch name {
	case DaysFile:
		n = len(h.Days)
	case BatchesFile:
		n = len(h.Batches)
	case BottledFile:
		n = len(h.Bottled)
	case BlendsFile:
		n = len(h.Blends)
	case BoughtFile:
		n = len(h.Bought)
	case CostsFile:
		n = len(h.Costs)
	case SeasonsFile:
		n = len(h.Seasons)
	case PanFile:
		n = len(h.Pan)
	default:
		return 0, false
	}
	return n, true
}

// Whatever a file holds, it is refused in short lines, or read whole: as many rows as
// stand in it.
func FuzzFolder(f *testing.F) {
	seeds(f, func(which uint8, content []byte) { f.Add(which, content) })
	f.Fuzz(func(t *testing.T, which uint8, content []byte) {
		name := specs[int(which)%len(specs)].name
		h, err := try(name, content)
		if err != nil {
			short(t, err)
			return
		}
		raw, err := begin(name, content)
		if err != nil {
			t.Fatalf("read, and cannot be parted: %v", err)
		}
		if n, typed := h.count(name); typed && n != len(raw.rows) {
			t.Errorf("%d rows of %d", n, len(raw.rows))
		}
		file, ok := h.File(name)
		if !ok {
			t.Fatal("it is not there")
		}
		defer file.Close()
		r, err := records.Open(name, file)
		if err != nil {
			t.Fatal(err)
		}
		n := 0
		for ; ; n++ {
			if err = r.Next(); err != nil {
				break
			}
			if !(r.Line() > 0) {
				t.Error("a row without a line")
			}
		}
		if err != io.EOF || n != len(raw.rows) {
			t.Errorf("%d rows are handed on of %d: %v", n, len(raw.rows), err)
		}
		h.Learned()
		h.Unread()
		h.FileFills()
	})
}

// short wants a refusal in lines that can be printed and read.
func short(t *testing.T, err error) {
	t.Helper()
	if n := strings.Count(err.Error(), "\n"); n >= mostMistakes || len(err.Error()) > 900*(n+1) {
		t.Errorf("%d lines, %d bytes", n+1, len(err.Error()))
	}
}

// Whatever is added to whatever file, it is refused, or the file is read as before
// and with one row more.
func FuzzAppend(f *testing.F) {
	seeds(f, func(which uint8, content []byte) {
		f.Add(which, content, "note", `a "b", c;d`, "36.7 US gal", true)
		f.Add(which, bytes.TrimRight(content, "\r\n"), "sap", "#1", "50 1/2 in", false)
	})
	f.Fuzz(func(t *testing.T, which uint8, content []byte, column, text, much string, dated bool) {
		sp := specs[int(which)%len(specs)]
		h, err := try(sp.name, content)
		if err != nil {
			return
		}
		row := Row{{column, text}}
		for _, name := range slices.Sorted(maps.Keys(sp.columns)) {
			if cell := (Cell{name, much}); name != column && name != "date" && name != "day" {
				row = append(row, cell)
			}
		}
		if dated {
			row = append(row, Cell{"date", "2034-03-20"}, Cell{"day", "2034-03-20"}, Cell{"batch", "34-1"}, Cell{"count", "3"})
		}
		for len(row) > 0 {
			adds, err := h.Append(Rows{sp.name, []Row{row}})
			row = row[:len(row)/2]
			if err != nil {
				short(t, err)
				continue
			}
			a := adds[0]
			if !bytes.HasPrefix(a.New, a.Old) || a.There == 0 && len(a.New) == len(a.Old) {
				t.Errorf("%q became %q", a.Old, a.New)
			}
			then, err := try(sp.name, a.New)
			if err != nil {
				t.Fatalf("%q: %v", a.New, err)
			}
			before, typed := h.count(sp.name)
			if after, _ := then.count(sp.name); typed && after != before+1-a.There {
				t.Errorf("%d rows became %d: %q", before, after, a.New)
			}
		}
	})
}
