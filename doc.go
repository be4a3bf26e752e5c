// Package sapreckoner is the map of a module that answers the questions of a
// sugarhouse, from the trunk to the shared bottle. It holds no code: import the
// packages below it.
//
// # The map
//
//   - [example.org/sapreckoner/units]: quantities, their exact factors, text.
//   - [example.org/sapreckoner/density]: what a sugar solution weighs, and what
//     instruments in it read.
//   - [example.org/sapreckoner/sugar]: lots of liquid, blends, concentrating,
//     legal density, color, and what sugar does to water.
//   - [example.org/sapreckoner/boil]: boiling points, heat, fuel, pans, finishing.
//   - [example.org/sapreckoner/yield]: sap to syrup, the season's account,
//     packing, sharing, buying.
//   - [example.org/sapreckoner/tapping]: trunks, holes, wood, season.
//
// # Where a figure is checked
//
// Every published figure is a row of a table in internal/check/tables, whose
// header names the source, how the figure was obtained and its tolerance. The
// package internal/proof binds each column to the function that must reproduce
// it, and the tests of each package run them: go test -v lists them by table
// and row. The program examples/conformance prints the whole as one table,
// which README.md shows.
//
// # Scope
//
// Maple sap and syrup, whose sugar is sucrose for the most part. Not birch and
// other saps of simple sugars.
package sapreckoner
