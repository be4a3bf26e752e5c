// Package sapreckoner is the map of a module that answers the questions of a
// sugarhouse, from the trunk to the shared bottle. It holds no code: import the
// packages below it.
//
// # The map
//
//   - [example.org/sapreckoner/units]: quantities, their exact factors, text.
//   - [example.org/sapreckoner/units/records]: CSV with units in its header.
//   - [example.org/sapreckoner/density]: what a sugar solution weighs, and what
//     instruments in it read.
//   - [example.org/sapreckoner/sugar]: lots of liquid, blends, concentrating,
//     legal density, color, and what sugar does to water.
//   - [example.org/sapreckoner/boil]: pressure, boiling points, the heat that
//     boiling takes, rates.
//   - [example.org/sapreckoner/boil/fuel]: wood, other fuels, efficiency.
//   - [example.org/sapreckoner/boil/pan]: a rig, a day, the night, many days.
//   - [example.org/sapreckoner/boil/finish]: when it is syrup or candy, and how
//     sure that is.
//   - [example.org/sapreckoner/yield]: sap to syrup, forecast, the season's
//     account, tanks, trace.
//   - [example.org/sapreckoner/yield/packing]: containers, hot filling, filters,
//     what to lay in.
//   - [example.org/sapreckoner/yield/money]: buying, sharing, cost.
//   - [example.org/sapreckoner/yield/lookagain]: rows of a record to see again.
//   - [example.org/sapreckoner/tapping]: trunks, guidelines, holes, wood.
//   - [example.org/sapreckoner/tapping/season]: weather, running days, sap to
//     come.
//
// # Start here
//
// Each package comment teaches its part of the job in about a page, and every
// exported name appears in an example that runs. Three of them are whole: a finishing
// in package finish, a mended blend in package sugar, a season in package yield.
// The programs in examples do a whole piece of the job from the command line;
// each answers -h.
//
// docs/cookbook.md asks what a maker asks through a season ("my thermometer says
// 218.6, now what?") and answers each by a command and by a few lines of Go, which
// are the examples of [example.org/sapreckoner/examples/cookbook]. Other chapters of
// the book in docs: season.md, the way in; theory.md, where the formulas come from;
// validation.md, how far off they are; uncertainty.md; bibliography.md; glossary.md.
//
// # Where a figure is checked
//
// Every figure that a formula is held to is a row of a table in
// internal/proving/check/tables, whose header names the source, the tolerance, and
// how the figure was obtained: read, recalled, or computed by this project. The
// package internal/proving/proof binds each column to the function that must reproduce
// it, and the tests called TestPublished of each package run them, one subtest
// for a row:
//
//	go test -v -run Published/kell-1975-water ./density
//
// The program examples/conformance prints how close each comes, and with -table
// the source of one. From table to function, by the package that tests it:
//
//	units
//	  units                             units constants
//	  temperature-scales                units.Temperature
//	density
//	  kell-1975-water                   density.Water
//	  icumsa-density-coefficients       density.Solution
//	  refractive-index-fit              density.RefractiveIndex
//	  iapws-water-refraction            density.Refractometer
//	  hydrometer-constants              density.GlassExpansion
//	  water-density-published           density.Water
//	  solution-density-worked           density.Solution
//	  nbs-c440-table114                 density.Scale.SG2020
//	                                    density.SG2020FromBrix
//	  plato-d20-4                       density.Scale.SG2020
//	                                    density.Solution
//	  baume-worked                      density.Scale.Baume
//	  syrup-density-published           density.Scale.Baume
//	                                    density.WeightInAir
//	  brix-scales-worked                density.Scale
//	  gallon-weight-brix                density.Scale.Brix
//	  nbs-hydrometer-correction-20C     density.Hydrometer.Brix
//	  hydrometer-worked                 density.Hydrometer
//	  hydrometer-traps-worked           density.Hydrometer
//	  icumsa-1974-nd20                  density.RefractiveIndex
//	  refractometer-correction-1936     density.Refractometer.Brix
//	  refractometer-temperature-worked  density.Refractometer.Reading
//	  cup-weights-published             density.Mass
//	  weight-per-gallon                 density.Mass
//	                                    density.WeightInAir
//	                                    density.Scale.Convert
//	  hot-cold-volume-worked            density.Contraction
//	sugar
//	  water-activity-constants          sugar.WaterActivity
//	  saturation-coefficients           sugar.Solubility.Saturation
//	  viscosity-coefficients            sugar.Viscosity
//	  inversion-constants               sugar.Inversion
//	  inversion-worked                  sugar.Inversion
//	  water-activity-worked             sugar.WaterActivity
//	  osmotic-worked                    sugar.OsmoticPressure
//	  osmotic-pressure                  sugar.OsmoticPressure
//	  isopiestic-sucrose                sugar.WaterActivity
//	  freezing-worked                   sugar.FreezingPoint
//	  freezing-point                    sugar.FreezingPoint
//	  saturation                        sugar.Solubility.Saturation
//	                                    sugar.Solubility.SaturationTemperature
//	  saturation-herzfeld               sugar.Solubility.Saturation
//	  saturation-sokolovsky             sugar.Solubility.Saturation
//	  saturation-herzfeld               sugar.Solubility.Saturation by the other author
//	  saturation-sokolovsky             sugar.Solubility.Saturation by the other author
//	  iapws-viscosity-check             sugar.WaterViscosity
//	  water-heat-published              sugar.SpecificHeat
//	                                    sugar.Enthalpy
//	  viscosity-worked                  sugar.Viscosity
//	  viscosity-crc                     sugar.Viscosity
//	  specific-heat-read                sugar.SpecificHeat
//	  water-activity-published          sugar.WaterActivity
//	  specific-heat-worked              sugar.SpecificHeat
//	  thinning-examples                 sugar.Thin
//	                                    sugar.Concentrate
//	                                    sugar.SquareParts
//	                                    sugar.Blend
//	  syrup-standards                   sugar.Jurisdiction.Standard
//	  color-classes                     sugar.ColorClass.Limits
//	  color-blend                       sugar.AbsorbanceOf
//	                                    sugar.BlendTransmission
//	                                    sugar.LightShare
//	  invert-by-glucose-meter           sugar.InvertedFromMeter
//	  flue-pan-worked                   sugar.Concentrate
//	  ro-worked                         sugar.Membrane.Concentrate
//	                                    sugar.Separation.EvaporationSaved
//	  ro-flow-factor                    sugar.FlowFactor
//	boil
//	  iapws-if97-region4                boil.Water
//	  iapws-sr1-86                      boil.LatentHeat
//	  iapws-if97-check                  boil.PressureFromWater
//	                                    boil.Water
//	  iapws-95-saturation               boil.Water
//	  syrup-point-published             boil.SyrupPoint
//	  pan-rate-published                boil.PanRate
//	  us-standard-atmosphere            boil.PressureAt
//	  altimeter-examples                boil.StationPressure
//	  water-boiling-elevation           boil.Water
//	  sucrose-boiling-rise-1atm         closed form of the rise
//	  boiling-rise-exact                boil.Rise
//	  syrup-finish-rise                 boil.Rise
//	  rise-inverted                     boil.BrixFromRiseOf
//	                                    sugar.Solute.BrixFromWaterActivity
//	  syrup-point-worked                boil.Water
//	                                    boil.SyrupPoint
//	                                    boil.Rise
//	                                    boil.BrixFromRise
//	  boiling-errors-worked             boil.SyrupPoint and others
//	                                    boil.Probe.Shows
//	  latent-heat                       boil.LatentHeat
//	  evaporation-heat-worked           boil.LatentHeat on the masses of boil.Heat
//	  evaporation-published             boil.LatentHeat on the masses of boil.Heat
//	  evaporation-worked                boil.Heat
//	  boiling-heat-worked               boil.HeatDemand.PreheaterCeiling
//	  preheater-published               boil.HeatDemand.PreheaterCeiling
//	  boiling-heat-worked               units.Area.Volume
//	boil/fuel
//	  cordwood-kentucky                 fuel.Firewood
//	  cordwood-missouri                 fuel.Firewood
//	                                    fuel.Fuel.Of
//	  boiling-heat-worked               fuel.LearnEfficiency
//	  fuel-heat                         fuel.ByVolume and others
//	  wood-net-heat                     fuel.WoodHeat
//	  wood-heat-published               fuel.WoodHeat
//	  wood-net-heat                     fuel.WetMoisture.Dry
//	  firewood-net-constants            fuel.WoodHeat
//	boil/pan
//	  plug-flow-worked                  pan.PlugFlow
//	                                    pan.Rig.Steady
//	                                    pan.Transit
//	  transit-published                 pan.Transit
//	boil/finish
//	  confection-ceilings               finish.ProductWeight
//	  confections                       finish.ConfectionFinishes
//	                                    finish.Finish.At
//	  confection-graining               finish.Grainings
//	  syrup-finish-rise                 finish.SyrupFinishes and boil.Rise
//	  boiling-errors-worked             finish.ErrorCost
//	                                    finish.ThermometerStop.Parts
//	yield
//	  ratio-rules-worked                yield.Rule.ErrorAt
//	  sap-to-syrup-rules                yield.Rule.Constants
//	  sap-to-syrup-published            yield.Rule.Ratio
//	  nass-yield-per-tap                yield.State.PerTap
//	                                    yield.PastSeason.PerTap
//	  season-account-worked             yield.Season.Account
//	                                    yield.Season.Expect
//	  tank-worked                       yield.Tank.Volume
//	  tank-factors                      yield.UprightCylinder
//	yield/money
//	  sap-purchase                      money.Offer.PerUSGallon
//	  sap-cost-published                money.CostPerUSGallon
//	  pool-shares-worked                money.Divide
//	  maple-costs                       money.PublishedCosts
//	yield/packing
//	  capping-temperature               packing.Container.AfterFilling
//	                                    packing.Container.FillAt
//	  net-contents-canada               packing.CanadianTolerance
//	  net-contents-canada-lot           packing.CanadianLotRule
//	                                    Student's distribution by numeric.BetaBelow
//	  net-contents-canada-sample        packing.CanadianSample
//	tapping
//	  tap-guidelines                    tapping.Guideline.Taps
//	  hole-worked                       tapping.Hole.Volume
//	  conductive-wood                   tapping.TappingBand.GrowthNeeded
//	  growth-two-taps                   tapping.TappingBand.GrowthNeeded
//	  tree-growth                       tapping.UsualGrowth
//	                                    tapping.LeastGrowth
//	tapping/season
//	  natural-vacuum-worked             season.NaturalVacuum
//	                                    density.Solution times g
//	  producing-week-coefficients       season.HouleProbability
//	  producing-week-worked             season.HouleProbability
//	  degree-day-methods                season.GrowingDegreeDays
//	                                    season.DegreeDayRule.Day
//	  sap-sugar                         season.SugarFigures
//
// The other tables there hold facts, such as cautions.
//
// # Scope
//
// Maple sap and syrup, whose sugar is sucrose for the most part. Not birch and
// other saps of simple sugars.
package sapreckoner
