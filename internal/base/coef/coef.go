// Package coef holds the coefficients of published correlations, copied digit
// by digit.
//
// They stand apart from the functions that use them so that a test can hold
// each against the table of its source with no tolerance at all.
package coef
