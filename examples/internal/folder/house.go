// Package folder reads one sugarhouse from one folder: its settings, lines of
// words of the trade, and its record, a few CSV files that are kept over the
// years.
//
// What is wrong anywhere in the folder is told at once, each mistake with file,
// line and the way out.
package folder

import (
	"errors"
	"io/fs"
	"maps"
	"math"
	"slices"

	"example.org/sapreckoner/units"
)

// SettingsFile is the name of the settings of a folder.
const SettingsFile = "sugarhouse.txt"

// A House is one sugarhouse.
type House struct {
	Settings Settings
	Records

	files  fs.FS
	path   string // as messages name the folder; empty for the current one
	season int    // asked for; 0 takes that of the last date
	aside  map[string]bool
	orders map[string]string // of dates, by file: see [House.Turned]
}

// Open reads the folder. Messages name its files behind name, which may be
// empty. The season is a year, or 0 for that of the last date. Each of set is a
// line that overrules one setting of the file, such as "pan: 2 x 3 ft".
func Open(files fs.FS, name string, season int, set ...string) (*House, error) {
	return OpenFor(nil, files, name, season, set...)
}

// OpenFor is [Open] for who needs only some of the files, or all if it is nil.
// Mistakes in another file do not stop it: that file is left aside, as if it were
// not there. See [House.Aside].
func OpenFor(needs []string, files fs.FS, name string, season int, set ...string) (*House, error) {
	h := &House{files: files, path: name, season: season}
	h.Settings = Settings{SapHydrometer: units.Fahrenheit(38), SyrupHydrometer: units.Fahrenheit(60), Elevation: units.Length(math.NaN()), Target: 66.9,
		Fuel: "wood", Wood: "Sugar maple", Moisture: 25}
	mistakes := h.readSettings(set)
	if own := slices.DeleteFunc(slices.Clone(mistakes), func(err error) bool { return placeOf(err).File != onCommandLine }); len(own) > 0 {
		return nil, errors.Join(own...) // others may follow from them
	}
	mistakes = append(mistakes, h.readRecords(needs)...)
	if len(mistakes) > 0 {
		mistakes = mistakes[:min(len(mistakes), mostMistakes)]
		for _, note := range h.Unread() { // which may be why something is missing
			mistakes = append(mistakes, errors.New(note))
		}
		return nil, errors.Join(mistakes...)
	}
	return h, nil
}

// Aside lists the files that were left aside for the mistakes in them.
func (h *House) Aside() []string { return slices.Sorted(maps.Keys(h.aside)) }

// mostMistakes are told at once.
const mostMistakes = 20

// Shown is a file of the folder as messages name it.
func (h *House) Shown(file string) string {
	if h.path == "" {
		return file
	}
	return h.path + "/" + file
}
