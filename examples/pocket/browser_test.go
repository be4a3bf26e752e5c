package main

import (
	"context"
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
)

// The browser is Debian's chromium. Without it the tests that show the page are
// skipped, unless SAPRECKONER_BROWSER is "required"; and where they are to be short.
func needBrowser(t testing.TB) {
	t.Helper()
	if testing.Short() {
		t.Skip("a browser takes long, and the race detector does not see into it")
	}
	if _, err := exec.LookPath("chromium"); err != nil {
		if os.Getenv("SAPRECKONER_BROWSER") == "required" {
			t.Fatal(err)
		}
		t.Skip(err)
	}
}

// built is the page, built once.
var built = sync.OnceValues(build)

// saved is the page as a file, as a phone has it.
func saved(t testing.TB) string {
	t.Helper()
	page, err := built()
	if err != nil {
		t.Fatal(err)
	}
	file := filepath.Join(t.TempDir(), "pocket.html")
	if err := os.WriteFile(file, page, 0o600); err != nil {
		t.Fatal(err)
	}
	return "file://" + file
}

// A phone is a browser of its own with the page open.
type phone struct {
	t   testing.TB
	ctx context.Context
	url string

	mu    sync.Mutex
	wrong []string // what the console and the network told
}

// begin starts the browser without network. Each script runs before the page's
// own.
func begin(t testing.TB, wide, high int64, scripts ...string) *phone {
	t.Helper()
	needBrowser(t)
	options := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath("chromium"), chromedp.NoSandbox, chromedp.DisableGPU,
		chromedp.IgnoreCertErrors, // the test's own certificate is trusted
		chromedp.Flag("disable-quic", true), chromedp.Flag("autoplay-policy", "no-user-gesture-required"),
		chromedp.Flag("host-resolver-rules", "MAP * ~NOTFOUND, EXCLUDE 127.0.0.1"), // no network
		chromedp.UserDataDir(filepath.Join(t.TempDir(), "profile")))
	ctx, stop := chromedp.NewExecAllocator(context.Background(), options...)
	t.Cleanup(stop)
	ctx, stop = chromedp.NewContext(ctx)
	t.Cleanup(stop)
	t.Cleanup(func() { _ = chromedp.Cancel(ctx) }) // waits until the browser has left its profile
	p := &phone{t: t, ctx: ctx}
	if err := chromedp.Listen(ctx, p.listen); err != nil {
		t.Fatal(err)
	}
	p.do(chromedp.EmulateViewport(wide, high))
	command(p, network.Enable, network.EnableParams{})
	command(p, emulation.SetFocusEmulationEnabled, emulation.SetFocusEmulationEnabledParams{Enabled: true})
	for _, s := range scripts {
		command(p, page.AddScriptToEvaluateOnNewDocument, page.AddScriptToEvaluateOnNewDocumentParams{Source: s})
	}
	return p
}

// command sends a command of the protocol.
func command[P, R any](p *phone, c cdp.Command[P, R], params P) R {
	p.t.Helper()
	r, err := chromedp.Call(p.ctx, c, params)
	if err != nil {
		p.t.Fatal(err)
	}
	return r
}

// opened is a phone with the page from its own storage, the network off.
func opened(t testing.TB, wide, high int64, scripts ...string) *phone {
	t.Helper()
	p := begin(t, wide, high, scripts...)
	p.open(saved(t))
	return p
}

func (p *phone) listen(event any) {
	p.mu.Lock()
	defer p.mu.Unlock()
	switch e := event.(type) {
	case *runtime.EventExceptionThrown:
		p.wrong = append(p.wrong, e.ExceptionDetails.Text+fmt.Sprint(e.ExceptionDetails.Exception))
	case *runtime.EventConsoleAPICalled:
		if e.Type == "error" {
			p.wrong = append(p.wrong, fmt.Sprint(e.Args))
		}
	case *network.EventRequestWillBeSent:
		if u := e.Request.URL; u != p.url && !strings.HasPrefix(u, "blob:") {
			p.wrong = append(p.wrong, "fetched "+u)
		}
	}
}

// fine fails the test if the page told of an error or fetched anything.
func (p *phone) fine() {
	p.t.Helper()
	p.mu.Lock()
	defer p.mu.Unlock()
	if len(p.wrong) > 0 {
		p.t.Errorf("the page told: %s", strings.Join(p.wrong, "\n"))
	}
}

func (p *phone) do(actions ...chromedp.Action[chromedp.Void]) {
	p.t.Helper()
	ctx, stop := context.WithTimeout(p.ctx, time.Minute)
	defer stop()
	if err := chromedp.Do(ctx, actions...); err != nil {
		p.t.Fatal(err)
	}
}

// open opens the page and waits until it can answer.
func (p *phone) open(url string) {
	p.t.Helper()
	p.mu.Lock()
	p.url = url
	p.mu.Unlock()
	p.do(chromedp.Navigate(url), chromedp.WaitReady("html[data-ready]"))
}

func (p *phone) reload() {
	p.t.Helper()
	p.do(chromedp.Reload(), chromedp.WaitReady("html[data-ready]"))
}

// screen goes to a screen as a press on its tile does.
func (p *phone) screen(key string) {
	p.t.Helper()
	eval[bool](p, fmt.Sprintf("(location.hash === %q ? route() : (location.hash = %q), true)", "#"+key, key))
	p.until(fmt.Sprintf("open && open.key === %q", key))
}

func eval[T any](p *phone, script string) (v T) {
	p.t.Helper()
	v, err := chromedp.Run(p.ctx, chromedp.Evaluate[T](script))
	if err != nil {
		p.t.Fatalf("%v, of %.200s", err, script)
	}
	return v
}

// until waits until a script says true.
func (p *phone) until(script string) {
	p.t.Helper()
	ctx, stop := context.WithTimeout(p.ctx, 20*time.Second)
	defer stop()
	if _, err := chromedp.Run(ctx, chromedp.Poll[bool](script+" || false")); err != nil {
		p.t.Fatalf("never: %s: %v", script, err)
	}
}

// A shown is an answer as it stands on the page.
type shown struct {
	Verdict string
	Level   string
	Rows    map[string]string // by key: the figure, and what it is good to behind a bar
	Errors  map[string]string // beside the fields
	Text    string
}

// helpers fill fields as typing does and read what the page shows.
const helpers = `
function tFill(fields) {
  const all = Object.entries(fields);
  const answering = answer;
  all.forEach(([key, value], i) => {
    answer = i === all.length - 1 ? answering : () => {}; // answers come as fast as keys: wait for the last
    const field = document.querySelector('[data-field="' + key + '"]');
    const radio = [...field.querySelectorAll("input[type=radio]")].find((r) => r.value === value);
    const select = field.querySelector("select");
    const box = field.querySelector("input[type=text]");
    if (radio) radio.checked = true;
    else (select || box).value = value;
    (radio || select || box).dispatchEvent(new Event(box ? "input" : "change", { bubbles: true }));
  });
}
function tRead(question) {
  const out = document.querySelector('[data-question="' + question + '"] output');
  const r = { Verdict: "", Level: out.className.replace("answer", "").trim(), Rows: {}, Errors: {}, Text: out.innerText };
  const v = out.querySelector(".verdict");
  if (v) r.Verdict = v.textContent;
  for (const row of out.querySelectorAll("[data-row]")) {
    const give = row.querySelector(".give");
    r.Rows[row.dataset.row] = row.querySelector(".value").textContent + (give ? "|" + give.textContent.replace("give or take ", "") : "");
  }
  for (const f of document.querySelectorAll("[data-field]")) {
    const e = f.querySelector(".error").textContent;
    if (e) r.Errors[f.dataset.field] = e;
  }
  return r;
}`

// press clicks where an element stands, which may hide by it: the driver's own
// click would wait for it to come back.
func (p *phone) press(selector string) {
	p.t.Helper()
	at := eval[[2]float64](p, fmt.Sprintf(`(() => { const e = document.querySelector(%q); e.scrollIntoView({ block: "center" }); const r = e.getBoundingClientRect(); return [r.x + r.width / 2, r.y + r.height / 2]; })()`, selector))
	p.do(chromedp.MouseClickXY(at[0], at[1]))
}

// fields are what is typed, by the keys of the fields.
type fields map[string]string

// ask fills fields and reads a question's answer.
func (p *phone) ask(question string, typed fields) shown {
	p.t.Helper()
	if typed == nil {
		typed = fields{}
	}
	return eval[shown](p, fmt.Sprintf("%s; tFill(%s); tRead(%q)", helpers, js(typed), question))
}

// askAll fills the fields of each time in turn, and reads the questions.
func (p *phone) askAll(all []fields, questions ...string) []map[string]shown {
	p.t.Helper()
	return eval[[]map[string]shown](p, fmt.Sprintf("%s; %s.map((typed) => { tFill(typed); return Object.fromEntries(%s.map((q) => [q, tRead(q)])); })", helpers, js(all), js(questions)))
}

// metric changes the units as a press on the button does.
func (p *phone) metric(on bool) {
	p.t.Helper()
	value := "us"
	if on {
		value = "metric"
	}
	eval[bool](p, fmt.Sprintf("(document.querySelector('[name=units][value=%s]').click(), true)", value))
}

// empty empties all fields.
func (p *phone) empty() {
	p.t.Helper()
	eval[bool](p, "(state.fields = {}, save(), route(), true)")
}

func js(v any) string {
	b, err := json.Marshal(v)
	if err != nil {
		panic(err)
	}
	return string(b)
}

// dark shows the page as at night.
func (p *phone) dark() {
	command(p, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: "dark"}}})
}
