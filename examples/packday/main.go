// Packday packs the syrup of a season: cans of different strength and color are
// poured together, brought to the mark, filtered, put into containers and
// shared.
//
//	go run ./examples/packday
//	go run ./examples/packday -h
package main

import "example.org/sapreckoner/examples/internal/cli"

func main() { program().Exit() }

func program() cli.Program {
	return cli.Program{
		Name: "packday",
		Does: "Plans a day of packing syrup: what the cans make together, how much water to boil off or what to thin with, how it stands to the rule on density, filters, color, how many containers to fill and how far, what is left over, who gets which jars, and how it keeps. Without flags it packs invented cans.",
		Calls: []string{
			`go run ./examples/packday -volume "3 US gal" -reading "67.8 Brix" -read-at "66 F"`,
			`go run ./examples/packday -can-file cans.csv -containers "12x1 US qt, any 8 US fl oz"`,
			`go run ./examples/packday -can-file cans.csv -container-file jars.csv -helper-file helpers.csv -metric`,
			`go run ./examples/packday -weight "33 lb" -reading "69.5 Brix" -thin-with "64.5 Brix" -thin-temp "65 F"`,
		},
		Reads: "-can-file: one can a line, with the columns can, volume_us_gal (or volume_l, volume_imp_gal) or weight_lb (or weight_kg) of the syrup alone, reading_brix, read_at_f (or read_at_c: the temperature of the cup), temp_f or temp_c of the can, and, if known, light_pct (light transmission at 560 nm in 10 mm) and mold (yes or no: a moldy can enters no blend, and needs no reading). " +
			"-container-file: one kind a line, with the columns container, label_ml (or label_us_fl_oz, label_us_qt) and, if known, on_hand (empty: as many as are needed), at_least and at_most (what is ordered), brim_ml, empty_g (or empty_oz) and material: glass, steel or plastic. " +
			"-helper-file: one name a line, with the column name and one of worked_h, taps, sugar_lb (or sugar_kg) and parts. " +
			"Lines that begin with # are remarks. One of the files may be -, standard input.",
		Caution: "Syrup is filtered and packed near 185 F: it scalds at once and sticks. Keep children away, and never lift a full pot alone.",
		Setup: func(f *cli.Flags) func(*cli.Env) error {
			s := new(setup)
			s.declare(f)
			return func(e *cli.Env) error {
				p, err := s.work(e, f)
				if err != nil {
					return err
				}
				return p.sheet().Show(e)
			}
		},
	}
}
