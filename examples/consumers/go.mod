module example.org/consumers

go 1.26.0

replace example.org/sapreckoner => ../..

require example.org/sapreckoner v0.0.0
