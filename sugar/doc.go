// Package sugar mends batches and knows any liquid between sap and candy: what
// a lot of it holds, what it becomes when lots are blended, thinned or
// concentrated, whether it may be sold as syrup and in which color class, and
// what the sugar does to the water.
//
// # Lots
//
// A [Lot] is an amount of liquid at one strength and one temperature, made of a
// volume by [NewLot] or of a mass by [NewLotByMass]. It holds what is
// conserved, mass and sugar; its volume follows from the density of
// [example.org/sapreckoner/density.Solution]:
//
//	mass = volume rho(B, t)    sugar = mass B/100    water = mass - sugar
//
// Every operation keeps mass and sugar to the last digits of the arithmetic.
// All lots are checked when they are made; the zero Lot is empty. What cannot
// be had, such as a blend stronger than its parts, is an [*InfeasibleError]
// that says why and what to do instead. Outside its documented range, and for NaN,
// a function answers NaN or the zero value and a
// [*example.org/sapreckoner/units.RangeError] that names the argument, its range
// and the way out; the documentation of a function gives its range and does not
// repeat this. NaN for one argument alone asks for its range.
//
// # Blending and mending
//
// [Blend] pours lots together. Masses add, volumes contract: a gallon of syrup
// and a cup of water are less than a gallon and a cup. To mend a batch, one
// balance serves for all, with B the strengths and m the masses:
//
//	m_add = m (B - B_target)/(B_target - B_add)
//	m_water = m (1 - B/B_target)
//	B_add = ((m + m_add) B_target - m B)/m_add
//	m_a : m_b = (B_target - B_b) : (B_a - B_target)
//
// Given the target and two of amount, strength and result, they give the third:
// [Thin] and [Thicken] an amount, [Concentrate] the water, [AdditionBrix] a
// strength, [SquareParts] and [Recipe] the parts of a wanted result. The square
// rule is a rule for mass; taken for volumes it misses, by three quarters of a
// Brix when syrup of 70 is thinned with sap.
//
// Thinned syrup goes back to packing temperature and through the filter again.
// Syrup at that heat burns and sticks: pour slowly, stir, keep children away.
//
// # Concentrating before the fire
//
// A [Membrane] presses water out of sap, and frost freezes it out ([TakeIce],
// [IceToReach], [FreezeTo]). Both are balances by mass; the sugar that leaves
// with the permeate or the ice is an input. With a passage s of sugar through
// the membrane,
//
//	B1/B0 = (m0/m1)^(1-s)
//
// whether in one run, in several passes or recirculated. The membrane's time
// follows from its rated flow and a factor for the temperature, by default the
// viscosity of water ([FlowFactor]), and its end from the osmotic pressure that
// its pump can overcome ([Membrane.Limit]). [Separation.EvaporationSaved] tells
// what it spares the fire.
//
// # Density in law
//
// [Jurisdiction.Standard] gives the rule on density of a place, with its
// source, and [Standard.Judge] compares a reading and its uncertainty with it.
// Local rules come first.
//
// # Color
//
// Light goes down with every millimeter of syrup by the same share, so that
// absorbances, not transmissions, add and average:
//
//	A = -log10(T/100)    A(L) = A(10 mm) L/(10 mm)    A_blend = sum v_i A_i
//	A2/A1 = rho2 B2/(rho1 B1)    when the strength changes
//
// [ColorClassOf], [BlendTransmission], [LightShare] and [TransmissionAtBrix]
// follow. A [ColorClass] is not a grade.
//
// # Inverted sugar
//
// Microbes in warm sap and long heat split sucrose into glucose and fructose.
// [Inversion] is what heat does of it, which is little; [InvertedFromMeter]
// estimates how much there is, [Confection.Suits] and
// [Confection.Blend] tell what to make of it. Its effect on the boiling point is
// in package boil.
//
// # What sugar does to water
//
// It lowers the [WaterActivity] a, on which most of the rest depends. With x the
// mole fraction of the sugar and T in kelvin,
//
//	ln a = ln(1-x) + Q/(R T) x^2 (1 + a1 x + a2 x^2)
//	x = (B/342.3)/(B/342.3 + (100-B)/18.02)
//	Q = -17638 J/mol    a1 = -1.0038    a2 = -0.24653
//
// With it goes the freezing point ([FreezingPoint]); it raises the
// [OsmoticPressure], the [Viscosity] and the boiling point; it lowers the
// [SpecificHeat] and the [Enthalpy]. More of it than [Solubility.Saturation]
// crystallizes in time ([Crystals]).
//
// In the book: docs/theory/sugar.md derives the formulas and says what they leave out,
// docs/cookbook.md answers what a maker asks.
package sugar
