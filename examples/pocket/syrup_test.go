package main

import (
	"encoding/json"
	"testing"
)

func js(v any) string {
	b, err := json.Marshal(v)
	if err != nil {
		panic(err)
	}
	return string(b)
}

func TestFirst(t *testing.T) {
	p := opened(t, 390, 844)
	p.screen("syrup")
	got := p.ask("stop", fields{"water": "209.6"})
	t.Logf("%+v", got)
	got = p.ask("cup", fields{"cup": "205", "reads": "59.5"})
	t.Logf("%+v", got)
	t.Log(eval[string](p, "document.documentElement.dataset.ready"))
	p.fine()
}
