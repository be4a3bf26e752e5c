package main

import (
	"errors"
	"fmt"
	"math"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// holeColumns reads the old holes.
func (st *stand) holeColumns() table {
	var name string
	var year float64
	var bearing units.Angle
	var along, height, bit, depth units.Length
	return table{
		cols: []records.Col{
			records.Text("tree", &name), records.Number("year", &year),
			records.Angle("bearing", &bearing).Optional(), records.Length("along", &along).Optional(), records.Length("height", &height),
			records.Length("bit", &bit).Optional(), records.Length("depth", &depth).Optional(),
		},
		row: func(r *records.Reader) error {
			if st.holes == mostHoles {
				return r.Fail("", fmt.Errorf("more than %d holes: leave out those that closed long ago", mostHoles))
			}
			t, err := st.find(name)
			if err != nil {
				return r.Fail("tree", err)
			}
			if len(t.record) == mostOnATrunk {
				return r.Fail("tree", fmt.Errorf("more than %d holes of %s: leave out those that closed long ago", mostOnATrunk, name))
			}
			if !(year >= firstYear && year < mostYear && year == math.Trunc(year)) {
				return r.Fail("year", fmt.Errorf("write the year with four digits, from %d on", firstYear))
			}
			if plan := st.given.year; plan > 0 && year > float64(plan) {
				return nil // a later season, which this plan does not know of
			}
			h, wrong, err := st.given.oldHole(t, bearing, along, height, bit, depth)
			if err != nil {
				return r.Fail(wrong, err)
			}
			h.Year = int(year)
			t.record = append(t.record, h)
			st.holes++
			if st.given.year == 0 {
				st.year = max(st.year, h.Year+1)
			}
			return nil
		},
	}
}

// oldHole makes a hole of the cells. The error goes with the column that is
// wrong.
func (s *setup) oldHole(t *trunk, bearing units.Angle, along, height, bit, depth units.Length) (h tapping.OldHole, wrong string, err error) {
	taped := !math.IsNaN(float64(along))
	if taped == !math.IsNaN(float64(bearing)) {
		return h, "bearing", errors.New("give either the bearing or the distance along the girth")
	}
	const most = 20 * units.Foot
	if !(height >= 0 && height <= most) {
		return h, "height", errors.New("from 0 to 20 ft above the ground: mind the unit in the header")
	}
	if taped {
		if h.Position, err = tapping.PositionAlong(along, t.girth(), height); err != nil {
			return h, "along", err
		}
	} else {
		if !(bearing >= 0 && bearing <= units.Turn) {
			return h, "bearing", errors.New("from 0 to 360 deg, clockwise from the mark")
		}
		h.Position = tapping.Position{At: bearing, Height: height}
	}
	if h.Hole, err = tapping.NewHole(cli.Or(bit, s.bit), cli.Or(depth, s.depth), 0); err != nil {
		return h, cli.FlagOf(err, "bit", "depth", "depth"), err
	}
	return h, "", nil
}
