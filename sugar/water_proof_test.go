package sugar_test

import (
	"testing"

	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/internal/proving/proof"
)

func TestPublishedWater(t *testing.T) { check.Run(t, proof.SugarWater()...) }
