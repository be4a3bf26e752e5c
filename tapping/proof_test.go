package tapping_test

import (
	"testing"

	"example.org/sapreckoner/internal/proving/check"
	"example.org/sapreckoner/internal/proving/proof"
)

func TestPublished(t *testing.T) { check.Run(t, proof.Tapping()...) }
