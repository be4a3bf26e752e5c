// Package sugarhouse holds the folder of an invented sugarhouse, the demo of
// the programs: settings and three springs, from the first hole to the last jar.
//
// The numbers of one file are those of the next: the holes of a year are its
// taps, the sap that was boiled makes the batches, and the batches fill the jars.
package sugarhouse

import (
	"embed"
	"time"
)

//go:embed sugarhouse.txt *.csv
var files embed.FS

// Files returns the folder.
func Files() embed.FS { return files }

// Today is a day in the middle of the last season, for pages that look ahead
// from it: a Sunday with a run before it and a run to come.
func Today() time.Time { return time.Date(2034, time.March, 12, 0, 0, 0, 0, time.UTC) }
