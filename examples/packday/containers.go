package main

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
	"example.org/sapreckoner/yield/packing"
)

// supplies returns the containers on hand, in the order in which they are given: of
// the flag, of the folder, or plenty of the usual ones.
func (s *setup) supplies(h *folder.House, told bool) (all []packing.Supply, err error) {
	if !told {
		all, there, err := s.jars(h)
		if there {
			s.jarsFrom = folder.JarsFile
			return all, err
		}
	}
	for _, part := range strings.Split(s.containers, ",") {
		supply, err := parseSupply(part)
		if err == nil {
			_, err = addSupply(&all, supply)
		}
		if err != nil {
			return nil, cli.For("containers", err)
		}
	}
	return all, nil
}

// jars reads the containers of the folder, and whether it has any.
func (s *setup) jars(h *folder.House) (all []packing.Supply, there bool, err error) {
	var (
		c                       packing.Container
		onHand, atLeast, atMost float64
		wall                    string
	)
	cols := []records.Col{
		records.Text("container", &c.Name), records.Volume("label", &c.Label), records.Number("on_hand", &onHand).Optional(),
		records.Number("at_least", &atLeast).Optional(), records.Number("at_most", &atMost).Optional(),
		records.Volume("brim", &c.Brimful).Optional(), records.Mass("empty", &c.Mass).Optional(), records.Text("material", &wall).Optional(),
	}
	there, err = eachRow(h, folder.JarsFile, mostKinds, cols, func(r *records.Reader) error {
		supply := packing.Supply{Container: c, OnHand: packing.Plenty}
		if wrong, err := counts(&supply, onHand, atLeast, atMost); err != nil {
			return r.Fail(wrong, err)
		}
		// What is not known stays zero.
		if math.IsNaN(float64(c.Brimful)) {
			supply.Container.Brimful = 0
		} else if !(c.Brimful >= c.Label && c.Brimful <= 2*mostLabel) {
			return r.Fail("brim", errors.New("a container holds more than its label says"))
		}
		if math.IsNaN(float64(c.Mass)) {
			supply.Container.Mass = 0
		} else if !(c.Mass >= units.Gram && c.Mass <= 100*units.Kilogram) {
			return r.Fail("empty", errors.New("an empty container weighs from 1 g to 100 kg"))
		}
		if supply.Container.SpecificHeat, err = material(wall); err != nil {
			return r.Fail("material", err)
		}
		if wrong, err := addSupply(&all, supply); err != nil {
			return r.Fail(wrong, err)
		}
		return nil
	})
	return all, there, err
}

// addSupply checks what both ways of giving containers share. The error names
// the column that is wrong.
func addSupply(all *[]packing.Supply, s packing.Supply) (wrong string, err error) {
	if l := s.Container.Label; !(l >= leastLabel && l <= mostLabel) {
		return "label", named(s.Container.Name, errors.New("labels go from 5 mL to 60 L (0.17 US fl oz to 16 US gal): check the unit"))
	}
	if len(*all) == mostKinds {
		return "", fmt.Errorf("more than %d kinds of containers", mostKinds)
	}
	for _, other := range *all {
		if key(other.Container.Name) == key(s.Container.Name) {
			return "container", named(s.Container.Name, errors.New("there is one of that name already"))
		}
	}
	*all = append(*all, s)
	return "", nil
}

// named puts the name of a container before what is wrong with it.
func named(container string, err error) error { return fmt.Errorf("%s: %w", container, err) }

// key is a name as the key of a column.
func key(name string) string { return strings.ReplaceAll(strings.ToLower(name), " ", "_") }

// parseSupply reads "12x8 US fl oz", "any 1 US qt", "at least 6x1 US pt", "at most
// 6x1 US pt" or "exactly 6x1 US pt".
func parseSupply(s string) (packing.Supply, error) {
	s = strings.TrimSpace(s)
	supply := packing.Supply{OnHand: packing.Plenty}
	label, any := strings.CutPrefix(s, "any ")
	if !any {
		order, counted := "", s
		for _, word := range []string{"at least ", "at most ", "exactly "} {
			if rest, ok := strings.CutPrefix(s, word); ok {
				order, counted = word, rest
			}
		}
		count, rest, ok := strings.Cut(counted, "x")
		n, err := strconv.Atoi(strings.TrimSpace(count))
		if !ok || err != nil || n < 0 || n > packing.Plenty {
			return supply, fmt.Errorf("%q: write how many of which label, such as 12x8 US fl oz, any 1 US qt, or at least 6x1 US pt", s)
		}
		label = rest
		if order != "at least " {
			supply.OnHand = n
		}
		if order == "at least " || order == "exactly " {
			supply.AtLeast = n
		}
	}
	v, err := units.ParseVolume(label)
	supply.Container = packing.Container{Name: strings.Join(strings.Fields(label), " "), Label: v}
	return supply, err
}

// counts reads the columns of a file that count: what is on hand, and the orders.
// The error names the column that is wrong.
func counts(s *packing.Supply, onHand, atLeast, atMost float64) (wrong string, err error) {
	for _, c := range []struct {
		name  string
		count float64
	}{{"on_hand", onHand}, {"at_most", atMost}, {"at_least", atLeast}} {
		switch {
		case math.IsNaN(c.count):
			continue
		case !(c.count >= 0 && c.count <= packing.Plenty && c.count == math.Trunc(c.count)):
			return c.name, errors.New("a whole number of empty containers")
		case c.name != "at_least":
			s.OnHand = min(s.OnHand, int(c.count))
		case int(c.count) > s.OnHand:
			return c.name, fmt.Errorf("no more than %d are on hand or asked for", s.OnHand)
		default:
			s.AtLeast = int(c.count)
		}
	}
	return "", nil
}

// material returns the specific heat of a container's walls.
func material(name string) (units.SpecificHeat, error) {
	switch name {
	case "", "glass":
		return packing.GlassHeat, nil
	case "steel":
		return 0.47 * units.KilojoulePerKilogramKelvin, nil
	case "plastic":
		return 2 * units.KilojoulePerKilogramKelvin, nil
	}
	return 0, errors.New("it is glass, steel or plastic")
}
