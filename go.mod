module example.org/sapreckoner

go 1.25

require (
	github.com/google/go-cmp v0.7.0
	github.com/shopspring/decimal v1.6.0
)
