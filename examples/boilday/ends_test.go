package main

import (
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// What a message quotes as the range of a flag is accepted; but a reading at the
// end of the float's scale is not yet a strength within it, once the temperature
// is allowed for.
func TestQuotedEnds(t *testing.T) { clitest.Build(t).TakesEnds(t, "-reading") }
