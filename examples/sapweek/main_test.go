package main

import (
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
)

func TestMain(m *testing.M) { clitest.Main(m, main) }
