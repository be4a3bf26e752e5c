package tapping_test

import (
	"errors"
	"strings"
	"testing"

	"example.org/sapreckoner/tapping"
	"example.org/sapreckoner/units"
)

// Names of the trade and of botany (common practice): Acer saccharum is sugar
// maple, Acer saccharinum silver maple.
func TestSpeciesNamed(t *testing.T) {
	for text, want := range map[string]tapping.Species{
		"": tapping.Maple, " Sugar  Maple ": tapping.SugarMaple, "hard maple": tapping.SugarMaple, "Rock Maple": tapping.SugarMaple,
		"Acer saccharum": tapping.SugarMaple, "Acer saccharinum": tapping.SilverMaple, "ACER RUBRUM": tapping.RedMaple,
		"soft maple": tapping.Maple, "Acer negundo": tapping.Boxelder, "box-elder": tapping.Boxelder, "Acer platanoides": tapping.NorwayMaple,
		"oak": tapping.OtherTree, "red oak": tapping.OtherTree, "Quercus rubra": tapping.OtherTree, "white ash": tapping.OtherTree,
		"striped maple": tapping.OtherTree, "Acer pensylvanicum": tapping.OtherTree, "black walnut": tapping.BlackWalnut,
		"yellow birch": tapping.Birch, "Betula papyrifera": tapping.Birch, "other tree": tapping.OtherTree, "tulip tree": tapping.OtherTree,
	} {
		if got, err := tapping.SpeciesNamed(text); err != nil || got != want {
			t.Errorf("%q: %v, %v, want %v", text, got, err, want)
		}
	}
	for text, want := range map[string]string{
		"suger maple": `did you mean "sugar maple"?`, "acer sacharum": `did you mean "acer saccharum"?`, "had maple": `did you mean "hard maple"?`,
		"oka": `did you mean "oak"?`, "bech": `did you mean "beech"?`, "dogwood": "write one of",
		strings.Repeat("x", 60): "write one of maple",
	} {
		if _, err := tapping.SpeciesNamed(text); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%q: %v, want %s", text, err, want)
		}
	}
	var v tapping.Vigor
	if err := v.UnmarshalText([]byte("helthy")); err == nil || !strings.Contains(err.Error(), `did you mean "healthy"?`) {
		t.Errorf("helthy: %v", err)
	}
	oak := must[tapping.Trunk](t)(tapping.NewTrunk(20*units.Inch, tapping.OtherTree, tapping.Healthy))
	if n, err := oak.Taps(tapping.DefaultGuideline()); n != 0 || !errors.Is(err, tapping.ErrNotCovered) {
		t.Errorf("an oak bears %d, %v", n, err)
	}
}
