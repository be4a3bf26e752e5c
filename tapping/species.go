package tapping

import (
	"slices"
	"strings"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/units"
)

// alsoCalled are the trade's and the Latin names of the species, in small
// letters (common practice). The trade's soft maple is red or silver maple, and
// so a maple not told further; black maple is tapped as sugar maple.
var alsoCalled = map[string]Species{
	"acer": Maple, "soft maple": Maple, "bigleaf maple": Maple, "acer macrophyllum": Maple,
	"hard maple": SugarMaple, "rock maple": SugarMaple, "acer saccharum": SugarMaple,
	"black maple": SugarMaple, "acer nigrum": SugarMaple,
	"swamp maple": RedMaple, "scarlet maple": RedMaple, "acer rubrum": RedMaple,
	"white maple": SilverMaple, "acer saccharinum": SilverMaple,
	"acer platanoides": NorwayMaple,
	"box elder":        Boxelder, "ashleaf maple": Boxelder, "manitoba maple": Boxelder, "acer negundo": Boxelder,
	"juglans nigra": BlackWalnut, "betula": Birch, "paper birch": Birch, "yellow birch": Birch, "sweet birch": Birch,
	"black birch": Birch, "white birch": Birch,
}

// otherTrees are trees of maple country that no guideline for maples is about,
// by their common and Latin names. Striped and mountain maple stay too small.
var otherTrees = []string{
	"alder", "apple", "ash", "aspen", "basswood", "beech", "butternut", "cedar", "cherry", "chestnut", "cottonwood", "elm", "fir",
	"hackberry", "hawthorn", "hemlock", "hickory", "hop hornbeam", "hornbeam", "ironwood", "juniper", "larch", "linden", "locust",
	"mountain maple", "mulberry", "oak", "pear", "pine", "poplar", "spruce", "striped maple", "sycamore", "tamarack", "tulip tree",
	"walnut", "willow",
	"abies", "acer pensylvanicum", "acer spicatum", "carpinus", "carya", "castanea", "fagus", "fraxinus", "juglans", "larix",
	"ostrya", "picea", "pinus", "platanus", "populus", "prunus", "quercus", "robinia", "salix", "thuja", "tilia", "tsuga", "ulmus",
}

// SpeciesNamed reads the name of a tree: a species of this package, the trade's
// or the Latin name of one, such as hard maple or Acer rubrum, or another tree
// such as oak or white ash, which is [OtherTree]. An empty text is a maple.
//
// A name that is none of these is a [*units.ParseError] that tells the nearest.
func SpeciesNamed(text string) (Species, error) { return speciesNamed("tapping.SpeciesNamed", text) }

func speciesNamed(fn, text string) (Species, error) {
	name := strings.ToLower(strings.Join(strings.Fields(strings.ReplaceAll(text, "-", " ")), " "))
	var s Species
	if err := speciesNames.Unmarshal(&s, []byte(name)); err == nil {
		return s, nil
	}
	if s, ok := alsoCalled[name]; ok {
		return s, nil
	}
	for _, tree := range otherTrees {
		if name == tree || strings.HasSuffix(name, " "+tree) || strings.HasPrefix(name, tree+" ") {
			return OtherTree, nil
		}
	}
	if genus, _, _ := strings.Cut(name, " "); genus == "betula" {
		return Birch, nil
	}
	known := append(slices.Clone(speciesNames.Of), otherTrees...)
	for also := range alsoCalled {
		known = append(known, also)
	}
	slices.Sort(known) // of names that are as near, the first
	hint := "write one of " + strings.Join(speciesNames.Of, ", ") + ", its trade or Latin name, or another tree such as oak"
	if near, ok := enum.Nearest(name, slices.Values(known)); ok {
		hint = "did you mean \"" + near + "\"?"
	}
	return 0, &units.ParseError{Func: fn, Input: strings.TrimSpace(text), Err: units.ErrName, Hint: hint}
}
