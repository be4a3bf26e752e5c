package money_test

import (
	"testing"

	"example.org/sapreckoner/internal/check"
	"example.org/sapreckoner/internal/proof"
)

func TestPublished(t *testing.T) { check.Run(t, proof.Money()...) }
