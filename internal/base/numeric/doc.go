// Package numeric finds the root of a function inside a bracket, which is how
// this module turns a forward formula round: the strength of syrup from its
// density, the pressure from the boiling point of water.
//
// [Newton] takes the slope with the value and is the first choice. [Root] does
// without a slope. Neither panics, allocates, or keeps the function it is
// given, so that a closure passed to them stays on the caller's stack. Both
// answer NaN and false rather than a number that is not a root.
package numeric
