package boil_test

import (
	"testing"

	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/internal/proving/proof"
)

func TestPublishedHeat(t *testing.T) { check.Run(t, proof.BoilHeat()...) }
