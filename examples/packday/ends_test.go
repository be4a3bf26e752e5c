package main

import (
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

// What a message quotes as the range of a flag is accepted.
func TestQuotedEnds(t *testing.T) { clitest.Build(t).TakesEnds(t) }
