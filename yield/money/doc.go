// Package money prices sap, divides what was made, and adds up what it cost, to
// the last cent and the last jar.
//
// # Sharing, buying and cost
//
// Prices, payments and jars are exact decimals
// ([github.com/shopspring/decimal.Decimal]) or integers, never binary
// fractions. [Divide] rounds every portion down and hands out what is left, to
// the last cent, by largest remainder, so that the parts always add up to the
// whole; [DivideJars] does it with jars. An [Offer] prices sap by its sugar,
//
//	price of a gallon of sap = share x price of a pound of syrup x pounds in it
//
// and a [Statement] rounds line by line and adds up to the cent. [Settle] takes
// what was earned, deducted, advanced and paid through pay periods, so that what
// was paid is not paid again, and [Ledger] adds it up by category and payee.
// [Together] divides by several measures at once, and [DivideJarsAfter] counts
// what was already taken.
//
// A [Venture] tells what a gallon cost with wages and without, what must be sold to
// cover it, and what an hour earned; [StraightLine] spreads what lasts over its
// years, and [PublishedCosts] are budgets of others. A decimal
// beyond 30 digits before or behind the point is refused, because money never
// needs it and memory is finite.
//
// # Numbers
//
// Outside its range the answer is the zero value and a [*units.RangeError] or a
// [*DecimalError] that tells the way out.
//
// # Cautions
//
// What may be bought and sold, and what a partner is owed, is a matter of local
// law and of what was agreed.
//
// In the book: docs/theory/money.md derives the formulas and says what they leave out,
// docs/cookbook.md answers what a maker asks.
package money
