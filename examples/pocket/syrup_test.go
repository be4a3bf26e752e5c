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
	see := func(q string, f fields) { got := p.ask(q, f); t.Logf("%s: %v %q %v\n%s", q, got.Rows, got.Verdict, got.Errors, got.Text) }
	see("stop", fields{"water": "209.6"})
	see("cup", fields{"cup": "205", "reads": "59.5"})
	p.screen("tonight")
	see("sap", fields{"volume": "40", "reads": "2.1", "cold": "40", "lit": "14:00", "by": "22:00"})
	see("fire", fields{})
	see("fire", fields{"by": "18:00"})
	p.screen("mend")
	see("mend", fields{"amount":"3", "reads":"70", "cup":"66", "jar":"1", "glass": "1", "brim": "34 US fl oz", "amount2": "1", "true2": "64"})
	see("blend", nil)
	see("jars", nil)
	p.screen("tomorrow")
	see("days", fields{"low1":"24","high1":"44", "low2":"28", "high2":"50"})
	see("walk", fields{"waiting":"40","age":"20"})
	p.screen("tree")
	see("taps", fields{"girth":"63"})
	see("hole", nil)
	p.screen("card")
	see("card", fields{"water": "209.6"})
	see("cups", nil)
	see("amounts", nil)
	p.screen("book")
	see("line", fields{"sap":"40", "reads":"2.1", "syrup":"2 US qt", "wood":"3"})
	t.Log(eval[string](p, "document.getElementById('write').click(), document.getElementById('main').innerText"))
	t.Log(eval[string](p, "document.documentElement.dataset.ready"))
	p.fine()
}
