package boil_test

import (
	"testing"

	"example.org/sapreckoner/internal/check"
	"example.org/sapreckoner/internal/proof"
)

func TestPublishedPan(t *testing.T) { check.Run(t, proof.BoilPan()...) }
