// Package boil tells where water and syrup boil, at the elevation and in the
// weather of the day, what it costs to boil water off in heat, fuel and hours,
// how a pan behaves through a day, and when the syrup is done.
//
// # Pressure first
//
// A boiling point follows the pressure at the pan. There are three kinds of
// pressure, and only the first boils water:
//
//   - station pressure, what a barometer without any correction shows where it
//     hangs;
//   - an altimeter setting, what airports and weather stations report: station
//     pressure brought to sea level by the standard atmosphere. [StationPressure]
//     brings it back;
//   - sea-level pressure as on weather maps, reduced with the temperature of the
//     air: it cannot be brought back without that temperature. Within a few
//     hundred feet of the sea it may be used as an altimeter setting; higher up,
//     do not.
//
// The surest way needs no barometer: boil water before the run and read the
// thermometer. [PressureFromWater] turns that into the pressure at the probe,
// with the error of the thermometer already in it:
//
//	p, err := boil.PressureFromWater(units.Fahrenheit(208.9))
//	syrup, err := boil.SyrupPoint(66.9, p)
//
// # Boiling points
//
// [Water] boils where its vapor pressure is that of the air. Sugar lowers the
// vapor pressure by the water activity a, so that syrup of B Brix boils where
//
//	a(B, T) p_water(T) = p        T = Water(p) + Rise(B, p)
//
// [Rise] solves that, [BrixFromRise] goes back, and [SyrupPoint] is the sum. The
// rise is 7.56 F at 66.9 Brix and 1 atm and shrinks with the pressure, which a
// fixed "7 degrees over water" leaves out. Inverted sugar raises it: [sugar.Solute].
//
// # Heat
//
// [Heat] takes a lot of sap to a strength. With m the mass of the sap, h its
// enthalpy and L the latent heat of steam ([LatentHeat]),
//
//	water off = m (1 - B0/B1)
//	heat = m (h(boiling) - h(sap)) + sum of L over the water off + climb
//
// where climb warms what is left as its boiling point rises. A gallon of syrup
// from 2 Brix takes about 400,000 Btu, and 15 percent of them go into warming
// the sap: that is all a preheater can save, and only one that takes its heat
// from steam or smoke saves any ([HeatDemand.PreheaterCeiling], [example.org/sapreckoner/boil/fuel.Effects]).
//
// # Fuel
//
// A heat value means little without its [example.org/sapreckoner/boil/fuel.Basis]: gross, less the moisture of
// the fuel, net, or delivered. An [example.org/sapreckoner/boil/fuel.Efficiency] belongs to one of them, and one
// that does not fit its fuel is refused with a [example.org/sapreckoner/boil/fuel.BasisError]. [example.org/sapreckoner/boil/fuel.Fuel.Needed] and
// [example.org/sapreckoner/boil/fuel.Fuel.Makes] are
//
//	fuel = heat/(heat value x efficiency)
//
// Wood is bought by the cord and burned by its moisture M, as a part of its wet
// weight ([example.org/sapreckoner/boil/fuel.WoodHeat], [example.org/sapreckoner/boil/fuel.Firewood]):
//
//	net heat = 8600 (1-M) - 1050 (M + 0.54 (1-M))   Btu/lb
//
// There is no safe default for the efficiency. [example.org/sapreckoner/boil/fuel.LearnEfficiency] takes it from
// past boils; [example.org/sapreckoner/boil/fuel.HomeBuiltPan] and [example.org/sapreckoner/boil/fuel.BuiltEvaporator] are the published ranges, and
// an answer from a range is a [units.Span]. [PanRate], [LevelRate] and [example.org/sapreckoner/boil/fuel.HeatRate] tell
// how much water goes off in an hour: by rule, by a dipstick, or by the fire.
//
// # A pan through the day
//
// A [example.org/sapreckoner/boil/pan.Rig] is a row of compartments over one fire, from kettle to partitioned
// pan, and a [example.org/sapreckoner/boil/pan.Day] is what comes to it. [example.org/sapreckoner/boil/pan.Rig.Run] boils through the day by the
// balances of each compartment,
//
//	d(sugar)/dt = sugar in - sugar out
//	d(water)/dt = water in - water out - (heat - warming)/L
//
// and tells syrup, hours, heat and what is left; [example.org/sapreckoner/boil/pan.Rig.Trace] shows each moment.
// A fire of wood is not out when the wood is: with P its full heat and H the
// half-life of its coals ([example.org/sapreckoner/boil/pan.Rig.Coals]), they still give
//
//	integral of P 2^(-t/H) dt = P H/ln 2
//
// and the last wood goes on so much earlier.
// After hours of one sap it comes to [example.org/sapreckoner/boil/pan.Rig.Steady]: the same flow S of sugar runs
// through every compartment, which then stands at B = 100 S/outflow. Without any
// mixing, a share f of the way along, that is [example.org/sapreckoner/boil/pan.PlugFlow]:
//
//	B = B0/(1 - f (1 - B0/Bs))
//
// [example.org/sapreckoner/boil/pan.Contents.Overnight] cools what stays in the pans, [example.org/sapreckoner/boil/pan.Rig.Chase] saves it with
// water at the end of the season, and [example.org/sapreckoner/boil/pan.Compare] boils one day on two rigs.
// [example.org/sapreckoner/boil/pan.Backlog] is about many days: tanks, hours of fire, and sap that waits too
// long.
//
// # The finish
//
// What stands in the finishing pan with nothing poured in is a [example.org/sapreckoner/boil/finish.Batch]. Its
// sugar stays, so with m the mass and E the water that goes off in a time
//
//	dB/dt = B E/m        1/B falls along a straight line in time
//
// and the strength climbs ever faster. A [example.org/sapreckoner/boil/finish.Watch] fits that line to readings of
// the thermometer and tells the minutes left and their uncertainty. A batch
// climbs on after the last firing: [example.org/sapreckoner/boil/finish.Batch.Coast], [example.org/sapreckoner/boil/finish.Batch.LastFiring].
//
// [example.org/sapreckoner/boil/finish.ThermometerStop.Parts] and [example.org/sapreckoner/boil/finish.HydrometerStop.Parts] tell how uncertain a stop by
// each instrument is, [example.org/sapreckoner/boil/finish.ErrorCost] and [example.org/sapreckoner/boil/finish.DepthCost] what an error does to the syrup,
// and [example.org/sapreckoner/boil/finish.LearnOffset] what one's own rig shows. [example.org/sapreckoner/boil/finish.PotReading] needs neither: a pot
// weighed half way to syrup is done at mass x B/B1. [example.org/sapreckoner/boil/finish.SyrupFinishes] and
// [example.org/sapreckoner/boil/finish.ConfectionFinishes] are published points, and [example.org/sapreckoner/boil/finish.Finish.At] takes one to the
// pressure of the day.
//
// # Numbers
//
// Amounts of sap are cold ones at the temperature given; levels, depths and
// volumes in a pan are hot. What ends in By is a standard uncertainty, two times
// of three, where package density reports an expanded one of twice that.
// Outside its range a function answers NaN, or its zero value, and a
// [units.RangeError] that tells the way out.
//
// # Cautions
//
// Boiling sap and syrup scald, and syrup sticks: keep children and animals away,
// never leave the pan, keep its level above the least safe depth, and keep
// defoamer at hand. Burn only where smoke and carbon monoxide go outdoors, with
// the clearances of local code. A pan cleaned with acid is rinsed and never meets
// bleach: together they give off chlorine. A simulation does not watch the pan.
package boil
