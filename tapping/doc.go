// Package tapping counts taps, places holes and reads the season.
package tapping
