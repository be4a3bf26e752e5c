package lookagain_test

import (
	"math"
	"testing"
	"time"

	"example.org/sapreckoner/internal/proving/sweep"
	"example.org/sapreckoner/yield/lookagain"
)

func swept() sweep.Package {
	row := lookagain.Row{File: "sap.csv", Line: 2, Name: "a", Day: time.Date(2024, 3, 10, 0, 0, 0, 0, time.UTC), Strength: 2, Volume: math.NaN(), Price: math.NaN()}
	return sweep.Package{
		Contract: true,
		Funcs:    []any{lookagain.Kinds},
		Values: []any{
			row, &lookagain.List{Most: 3}, lookagain.Far, lookagain.Syrup, lookagain.Finding{File: "sap.csv", Line: 2, Kind: lookagain.Far, Text: "far"}, []byte("a"),
		},
	}
}

func TestSweep(t *testing.T) { sweep.Run(t, swept()) }

func TestEdges(t *testing.T) { sweep.Edges(t, swept()) }

func FuzzJSON(f *testing.F) { sweep.Fuzz(f, swept()) }
