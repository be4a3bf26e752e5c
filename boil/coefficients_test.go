package boil

import (
	"fmt"
	"testing"

	"example.org/sapreckoner/internal/check"
)

func TestCoefficients(t *testing.T) {
	check.Run(t,
		check.Claim{Table: "iapws-if97-region4", Column: "n", Func: "boil.Water",
			Got: func(r check.Row) (float64, error) { return region4[int(r.Float("i"))-1], nil }},
		check.Claim{Table: "iapws-sr1-86", Column: "coefficient", Func: "boil.LatentHeat",
			Got: func(r check.Row) (float64, error) {
				series := map[string][6]power{"a": vaporPressure, "b": liquidDensity, "c": vaporDensity}
				for _, p := range series[r.Text("series")] {
					if float64(p.sixths)*r.Float("under") == 6*r.Float("over") {
						return p.c, nil
					}
				}
				return 0, fmt.Errorf("no term with the exponent %s", r.Text("exponent"))
			}},
	)
}
