// Package proof binds each published table of package
// [example.org/sapreckoner/internal/proving/check] to the function that must reproduce
// it.
//
// There is one file a package, with one function that returns its claims, as in
//
//	func Density() []check.Claim
//
// The package's own external test runs them with check.Run, and the example
// program conformance prints them all as a table.
package proof
