package boil_test

import (
	"testing"

	"example.org/sapreckoner/internal/check"
	"example.org/sapreckoner/internal/proof"
)

func TestPublishedHeat(t *testing.T) { check.Run(t, proof.BoilHeat()...) }
