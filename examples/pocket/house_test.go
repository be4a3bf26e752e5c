package main

import (
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// caught keeps what the page would save, since a browser without a window saves
// where it likes.
const caught = `
window.savedFiles = {};
const click = HTMLAnchorElement.prototype.click;
const blobs = {};
const create = URL.createObjectURL;
URL.createObjectURL = (b) => { const url = create.call(URL, b); blobs[url] = b; return url; };
HTMLAnchorElement.prototype.click = function () {
  if (!this.download) return click.call(this);
  const name = this.download;
  blobs[this.href].text().then((text) => { window.savedFiles[name] = text; });
};`

// house goes to the settings.
func (p *phone) house() {
	p.t.Helper()
	eval[bool](p, "(location.hash = 'house', true)")
	p.until("open && open.key === 'house'")
}

// file is what was saved under a name.
func (p *phone) file(name string) string {
	p.t.Helper()
	p.until("window.savedFiles[" + js(name) + "] !== undefined")
	return eval[string](p, "window.savedFiles["+js(name)+"]")
}

// The settings file of the folder is picked, used on the screens, changed, and
// saved with all that the phone does not use.
func TestSettingsFile(t *testing.T) {
	p := opened(t, 390, 844, caught)
	demo, err := filepath.Abs("../sugarhouse/sugarhouse.txt")
	if err != nil {
		t.Fatal(err)
	}
	text, err := os.ReadFile(demo)
	if err != nil {
		t.Fatal(err)
	}
	p.house()
	p.do(chromedp.SetUploadFiles("#file", []string{demo}))
	p.until("document.getElementById('read').textContent.includes('settings were read')")
	if title := eval[string](p, "house.title"); title != "Fifth Gate" {
		t.Errorf("it is called %q", title)
	}
	// The tank of the file, and its stick: 16 in of 2.5 US gal are 40.
	p.screen("tonight")
	got := p.ask("sap", fields{"how": "dip", "tank": "big", "dip": "16", "reads": "2", "cold": "40"})
	if got.Rows["volume"] != "40 US gal" {
		t.Errorf("the stick tells %v %v", got.Rows, got.Errors)
	}
	if got = p.ask("sap", fields{"dip": "60"}); !strings.Contains(got.Errors["dip"], "the tank big holds 120 US gal") {
		t.Errorf("a stick beyond the brim: %+v", got.Errors)
	}
	p.screen("syrup")
	if got = p.ask("stop", fields{"by": "height"}); !strings.Contains(got.Text, "From my sugarhouse: elevation 1150 ft") {
		t.Errorf("%s", got.Text)
	}
	p.house()
	fill := func(key, value string) string {
		return eval[string](p, helpers+"; tFill("+js(fields{key: value})+"); document.querySelector('[data-field=\""+key+"\"] .error').textContent")
	}
	if told := fill("elevation", "1150"); !strings.Contains(told, "no unit") {
		t.Errorf("a height without a unit is told %q", told)
	}
	if told := fill("elevation", "1200 ft"); told != "" {
		t.Errorf("1200 ft is told %q", told)
	}
	eval[bool](p, "(document.getElementById('save-house').click(), true)")
	if got, want := p.file("sugarhouse.txt"), strings.Replace(string(text), "elevation: 1150 ft", "elevation: 1200 ft", 1); got != want {
		t.Errorf("saved\n%s\nwant\n%s", got, want)
	}
	p.reload()
	if v := eval[string](p, "house.values.elevation"); v != "1200 ft" {
		t.Errorf("after a reload the elevation is %q", v)
	}
	p.fine()
}

// What was written down goes home as lines of days.csv, whose columns the folder
// knows.
func TestDaysFile(t *testing.T) {
	p := opened(t, 390, 844, caught, fakeClock)
	p.screen("book")
	write := func(f fields) {
		p.ask("line", f)
		eval[bool](p, "(document.getElementById('write').click(), true)")
	}
	write(fields{})
	if told := eval[string](p, `document.querySelector('[data-field="sap"] .error').textContent`); told != "Type at least one of them." {
		t.Errorf("nothing is told %q", told)
	}
	write(fields{"sap": "40", "reads": "2.1", "cold": "41"})
	write(fields{"syrup": "3 US qt", "wood": "6", "note": `dark, "late" sap`})
	write(fields{"wood": "0.25 cord"})
	eval[bool](p, "(document.getElementById('save-days').click(), true)")
	day, clock := eval[string](p, "clock().now.slice(0, 10)"), eval[string](p, "clock().now.slice(11, 16)")
	want := "date,sap_us_gal,sugar_brix,read_at_f,syrup_us_gal,wood,note\n" +
		day + ",40,2.1,41,,," + clock + "\n" +
		day + `,,,,0.75,6,"` + clock + ` dark, ""late"" sap"` + "\n" +
		day + ",,,,,0.25 cord," + clock + "\n"
	if got := p.file("days.csv"); got != want {
		t.Errorf("saved\n%s\nwant\n%s", got, want)
	}
	p.reload()
	p.screen("book")
	if n := eval[int](p, "document.querySelectorAll('#entries li').length"); n != 3 {
		t.Errorf("%d lines after a reload", n)
	}
	p.fine()
}

// Over https that is trusted the page is kept: it opens when the server is gone.
// Plain http says that it is not kept.
func TestServe(t *testing.T) {
	page, err := built()
	if err != nil {
		t.Fatal(err)
	}
	h, err := handler(page)
	if err != nil {
		t.Fatal(err)
	}
	plain := httptest.NewServer(h)
	defer plain.Close()
	p := begin(t, 390, 844)
	p.open(plain.URL + "/")
	if told := eval[string](p, "document.getElementById('notice').textContent"); !strings.HasPrefix(told, "Plain http shows this page and does not keep it.") {
		t.Errorf("plain http says %q", told)
	}
	p.fine()

	secure := httptest.NewTLSServer(h)
	defer secure.Close()
	p = begin(t, 390, 844)
	p.open(secure.URL + "/")
	p.until("navigator.serviceWorker.controller !== null")
	secure.Close()
	p.reload()
	p.screen("syrup")
	if got := p.ask("stop", fields{"water": "209.6"}); got.Rows["water"] != "209.6 F" {
		t.Errorf("%+v", got)
	}
}
