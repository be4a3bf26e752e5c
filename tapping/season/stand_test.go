package season_test

import (
	"io"
	"strings"
	"testing"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/tapping/season"
)

func TestReadersPassOnErrors(t *testing.T) {
	r := io.MultiReader(strings.NewReader("dbh_in\n12\n"), broken{})
	_, err := tapping.ReadStand(r)
	rowError(t, "stand", err, 0, "", errBroken)
	r = io.MultiReader(strings.NewReader("date,tmin_c,tmax_c\n"), broken{})
	_, err = season.ReadWeather(r)
	rowError(t, "weather", err, 0, "", errBroken)
}
