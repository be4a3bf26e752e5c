module example.org/sapreckoner/examples/pocket

go 1.25

replace example.org/sapreckoner => ../..

require (
	example.org/sapreckoner v0.0.0-00010101000000-000000000000
	github.com/chromedp/cdproto v0.159.0
	github.com/chromedp/chromedp v0.23.0
)

require github.com/go-json-experiment/json v0.0.0-20260213210345-44df1a37e875 // indirect
