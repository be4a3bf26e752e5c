module example.org/sapreckoner

go 1.26
