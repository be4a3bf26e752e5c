package folder

import (
	"strconv"

	"example.org/sapreckoner/units"
)

// Settings are what stands in the settings file, one field for each that the
// record or a page needs beside the flags. The zero value is that of a folder in
// which nothing was set.
type Settings struct {
	Name    string
	Gallon  units.Volume // what a bare gallon means; 0 if the file does not say
	Metric  bool
	South   bool // spring is in the second half of the year
	Roof    bool // the fire stands under a roof
	Tanks   []Tank
	Measure Measure // of the wood column
	Scale   Scale   // of a bare reading of syrup

	SapHydrometer, SyrupHydrometer units.Temperature // graduation; 38 F and 60 F if not set
	Refractometer                  string            // plain or compensated, where one reads the sap; else empty
	ThermometerOff                 units.TempDiff    // what it shows too much
	HydrometerOff                  units.Brix        // what it reads too much
	Taps                           int               // 0 if not set
	Elevation                      units.Length      // NaN if not set
	Target                         units.Brix        // 66.9 Brix if not set

	Fuel     string      // wood if not set, oil, propane or pellets
	Wood     string      // sugar maple if not set
	Moisture units.Share // of the wood, on the dry basis; 25 % if not set

	lines []Line
}

// A Tank is a tank that is read with a stick.
type Tank struct {
	Name   string // empty if it is the only one
	Holds  units.Volume
	ByInch units.Volume // sap in an inch of depth; 0 if it is not told
}

// At returns the sap that stands in the tank to a depth, 0 if the settings do
// not tell what an inch holds.
func (t Tank) At(depth units.Length) units.Volume {
	return units.Volume(float64(t.ByInch) * depth.Inches())
}

// Tank finds a tank by its name. A folder with one tank needs no name.
func (s *Settings) Tank(name string) (Tank, bool) {
	for _, t := range s.Tanks {
		if sameName(t.Name, name) || name == "" && len(s.Tanks) == 1 {
			return t, true
		}
	}
	return Tank{}, false
}

// A Measure is the wood that goes to the fire at a time: a barrow, a face cord.
type Measure struct {
	Name string // as the settings call it; empty if they do not
	Wood units.Volume
}

// A Scale is that of a syrup hydrometer.
type Scale uint8

// Scales.
const (
	NoScale Scale = iota // the settings do not say
	BrixScale
	BaumeScale
)

// A Line is one setting as it was written.
type Line struct {
	Name, Value string
	Number      int      // of the line in the file; 0 if it was set on the command line
	From        string   // what it was learned from, such as 6 boils; empty if it was written
	Fills       []Fill   // flags that it fills
	Beaten      []string // flags of the same subject: one on the command line puts it aside
}

// Place is the line of the settings file, as messages name it behind the folder.
func (l Line) Place() string {
	return SettingsFile + ":" + strconv.Itoa(l.Number)
}

// Lines lists the settings as they were written, in order. Those that the
// command line overruled are not there.
func (s *Settings) Lines() []Line { return s.lines }

// Set returns the setting of that name as it was written.
func (s *Settings) Set(name string) (Line, bool) {
	for _, l := range s.lines {
		if l.Name == name {
			return l, true
		}
	}
	return Line{}, false
}
