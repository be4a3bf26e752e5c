package tapping

import "time"

// LifeFigure is how long a hole gives sap, by a source.
type LifeFigure struct {
	How       string        // it is collected
	Low, High time.Duration // equal where the source tells one
	Obtained  string
	Source    string
}

const week = 7 * 24 * time.Hour

var lifeFigures = []LifeFigure{
	{"open spout and pail or bag", 3 * week, 4 * week, "read (practice)", "a Wisconsin bag-and-bucket producer, season notes of February 2016"},
	{"open spout and pail or bag", 4 * week, 6 * week, "memory", "extension advice"},
	{"tubing with vacuum", 8 * week, 9 * week, "read, second-hand", "about two months: a maple authority quoted in a public forum, undated"},
}

// LifeFigures returns the published lives of a hole. No figure of tubing
// without a pump was read. Sources agree that warm days and dirty spouts
// shorten it, and that a hole walls itself off slowly while it is cold.
func LifeFigures() []LifeFigure { return append([]LifeFigure(nil), lifeFigures...) }
