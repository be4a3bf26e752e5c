module example.org/consumers

go 1.25

replace example.org/sapreckoner => ../..

require example.org/sapreckoner v0.0.0
