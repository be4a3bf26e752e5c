module example.org/sapreckoner/examples/wallcard

go 1.25

replace example.org/sapreckoner => ../..

require (
	example.org/sapreckoner v0.0.0-00010101000000-000000000000
	github.com/google/go-cmp v0.7.0
)
