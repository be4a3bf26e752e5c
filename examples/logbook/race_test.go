//go:build race

package main

// million is fewer rows where the race detector makes each ten times as slow:
// nothing in the program runs side by side.
const million = 100_000
