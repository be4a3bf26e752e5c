// Cup says where syrup is done under today's barometer, and what a hydrometer
// then reads in a hot cup:
//
//	go -C examples/consumers run ./cup -barometer "28.6 inHg" -cup "205 F"
package main

import (
	"flag"
	"fmt"
	"io"
	"os"
	"strings"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

func main() {
	if err := run(flag.CommandLine, os.Args[1:], os.Stdout); err != nil {
		fmt.Fprintln(os.Stderr, "cup:", units.Reason(err, units.US))
		os.Exit(2)
	}
}

func run(flags *flag.FlagSet, args []string, out io.Writer) error {
	var (
		pressure units.Pressure
		target   units.Brix
		glass    density.Hydrometer
		cup      units.Temperature
	)
	flags.Var(units.AsFlag(&pressure, "29.92 inHg"), "barometer", "`pressure` at the pan, not reduced to sea level")
	flags.Var(units.AsFlag(&target, "66.9 Brix"), "target", "`strength` of the syrup")
	flags.Var(units.AsFlag(&glass.GraduatedAt, "60 F"), "scale", "`temperature` printed on the hydrometer")
	flags.Var(units.AsFlag(&cup, "205 F"), "cup", "`temperature` of the syrup in the cup")
	if err := flags.Parse(args); err != nil {
		return err
	}
	if flags.NArg() > 0 {
		return fmt.Errorf("%q: there are flags only; put quotes around a number with its unit", flags.Arg(0))
	}
	at, err := boil.SyrupPoint(target, pressure)
	if err != nil {
		return err
	}
	reads, err := glass.Reading(target, cup)
	if err != nil {
		return err
	}
	if _, err = fmt.Fprintf(out, "Take it off at %s. In a cup at %s the hydrometer reads %s.\nIt sticks and scalds: gloves on, and no children or pets near.\n",
		at.Text(units.ScaleFahrenheit, 1), cup.Text(units.ScaleFahrenheit, 0), reads.Text(1)); err != nil {
		return err
	}
	return taken(flags, out)
}

// taken says what stands behind the answer though nobody told it.
func taken(flags *flag.FlagSet, out io.Writer) error {
	told := map[string]bool{}
	flags.Visit(func(f *flag.Flag) { told[f.Name] = true })
	var all []string
	flags.VisitAll(func(f *flag.Flag) {
		if !told[f.Name] {
			all = append(all, fmt.Sprintf("-%s %q", f.Name, f.DefValue))
		}
	})
	if len(all) == 0 {
		return nil
	}
	_, err := fmt.Fprintf(out, "Not told, and so taken as %s.\n", strings.Join(all, ", "))
	return err
}
