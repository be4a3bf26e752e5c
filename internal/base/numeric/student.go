package numeric

// What few measurements say about the next one: factors of Student's
// distribution by degrees of freedom, from 1 on. They are from memory; a test
// integrates the distribution.
var (
	// twoThirds holds 68.27 percent within on both sides.
	twoThirds = [...]float64{1.837, 1.321, 1.197, 1.142, 1.111, 1.091, 1.077, 1.067, 1.059}
	// nineteenIn20 holds 95 percent within on both sides.
	nineteenIn20 = [...]float64{12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228}
)

// Widen returns the factor by which to widen a standard deviation so that it
// holds the next value two times of three. Beyond the table it falls toward one,
// within 0.005.
func Widen(free int) float64 {
	if free <= len(twoThirds) {
		return twoThirds[free-1]
	}
	return 1 + 1/(2*float64(free))
}

// Tail returns how many standard deviations chance exceeds once in twenty times.
// Beyond the table it is right within 0.005.
func Tail(free int) float64 {
	if free <= len(nineteenIn20) {
		return nineteenIn20[free-1]
	}
	return 1.96 + 2.6/float64(free)
}
