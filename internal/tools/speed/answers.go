//go:build ignore

// Answers prints the library's results on the grid of kernels.c, one a line. It
// is run from the root of the module, which it belongs to: this folder's own
// module does not know the library.
package main

import (
	"fmt"
	"log"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

func good[T any](x T, err error) T {
	if err != nil {
		log.Fatal(err)
	}
	return x
}

func show[T ~float64](name string, x T) { fmt.Printf("%s %.17g\n", name, float64(x)) }

func main() {
	stem := density.Hydrometer{GraduatedAt: units.Celsius(20)}
	for c := 0; c <= 110; c += 5 {
		at := units.Celsius(float64(c))
		for b := units.Brix(0); b <= 80; b += 5 {
			d := good(density.Solution(b, at))
			show("solution", d)
			back := good(density.BrixFromDensity(d+0.5, at))
			show("brix_of", back)
			show("gsl_newton", back)
			show("gsl_brent", back)
			show("hydrometer", good(stem.Brix(b, units.Celsius(float64(20+c/5)))))
		}
	}
	for b := units.Brix(0); b <= 85; b++ {
		show("index", good(density.RefractiveIndex(b)))
	}
	for p := 20; p <= 120; p += 5 {
		kPa := units.Kilopascals(float64(p))
		water := good(boil.Water(kPa))
		show("saturation", water.Kelvin())
		show("vapor", good(boil.PressureFromWater(water)).Kilopascals())
		for b := units.Brix(5); b <= 90; b += 5 {
			rise := good(boil.Rise(b, kPa))
			point := water.Add(rise).Kelvin()
			show("rise", point)
			show("brix_of_rise", good(boil.BrixFromRise(rise, kPa)))
			show("gsl_rise_newton", point)
			show("gsl_rise_brent", point)
		}
	}
}
