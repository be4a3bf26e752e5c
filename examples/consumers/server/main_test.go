package main

import (
	"encoding/json"
	"math"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"example.org/sapreckoner/units"
)

// post sends a body and checks what every answer must be: an object of JSON.
func post(t *testing.T, body string) (int, string) {
	t.Helper()
	w := httptest.NewRecorder()
	routes().ServeHTTP(w, httptest.NewRequest("POST", "/syrup-point", strings.NewReader(body)))
	var object map[string]any
	if err := json.Unmarshal(w.Body.Bytes(), &object); err != nil || w.Header().Get("Content-Type") != "application/json" {
		t.Errorf("%.80q: %d %s %s: %v", body, w.Code, w.Header(), w.Body, err)
	}
	return w.Code, w.Body.String()
}

// Under 1 atm water boils at 99.974 C and syrup of 66.9 Brix 4.199 K above it:
// the tables syrup-point-worked and boiling-rise-exact.
func TestSyrupPoint(t *testing.T) {
	code, body := post(t, `{"pressure":"1 atm","brix":"66.9 Brix"}`)
	var got struct {
		Water, Syrup units.Temperature
		Rise         units.TempDiff
	}
	if err := json.Unmarshal([]byte(body), &got); err != nil || code != http.StatusOK {
		t.Fatalf("%d %s: %v", code, body, err)
	}
	near := func(what string, got, want float64) {
		if !(math.Abs(got-want) <= 0.0005) {
			t.Errorf("%s %v, want %v", what, got, want)
		}
	}
	near("water", got.Water.Celsius(), 99.974)
	near("rise", got.Rise.CelsiusDegrees(), 4.199)
	near("syrup", got.Syrup.Celsius(), got.Water.Celsius()+got.Rise.CelsiusDegrees())
}

// What is missing or null is not taken for zero: the answer is the range that
// would do, whole enough for a client to read it back.
func TestRangeIsTheBody(t *testing.T) {
	for _, tt := range []struct {
		body, unit string
		value      float64
	}{
		{`{}`, "Brix", math.NaN()},
		{`{"pressure":"1 atm"}`, "Brix", math.NaN()},
		{`{"pressure":"1 atm","brix":null}`, "Brix", math.NaN()},
		{`{"pressure":"1 atm","brix":"100 Brix"}`, "Brix", 100},
		{`{"brix":"66.9 Brix"}`, "kPa", math.NaN()},
		{`{"pressure":null,"brix":"66.9 Brix"}`, "kPa", math.NaN()},
		{`{"pressure":"2 atm","brix":"66.9 Brix"}`, "kPa", 202.65},
	} {
		code, body := post(t, tt.body)
		var e units.RangeError
		if err := json.Unmarshal([]byte(body), &e); err != nil || code != http.StatusBadRequest {
			t.Fatalf("%s: %d %s: %v", tt.body, code, body, err)
		}
		// SyrupPoint takes 0 to 92 Brix and 20 to 120 kPa.
		low, high := 0.0, 92.0
		if tt.unit == "kPa" {
			low, high = 20, 120
		}
		same := math.IsNaN(tt.value) && math.IsNaN(e.Value) || math.Abs(tt.value-e.Value) < 1e-9
		if !same || e.Unit != tt.unit || math.Abs(e.Low-low)+math.Abs(e.High-high) > 1e-9 || e.Arg == "" || !strings.Contains(body, `"text":"`) {
			t.Errorf("%s: %s", tt.body, body)
		}
	}
}

var hostile = []string{
	``, ` `, `x`, `null x`, `[]`, `[{}]`, `"1 atm"`, `7`, `{`, `{"pressure"`, `{"pressure":}`,
	`{"pressure":"1 atm","brix":"66.9 Brix"} {}`, `{"pressure":"1 atm","brix":"66.9 Brix","more":1}`,
	`{"pressure":1,"brix":66.9}`, `{"pressure":"1","brix":"66.9 Brix"}`, `{"pressure":"1 gal","brix":"66.9 Brix"}`,
	`{"pressure":"NaN atm","brix":"66.9 Brix"}`, `{"pressure":"Inf atm","brix":"66.9 Brix"}`, `{"pressure":"1e999 atm","brix":"66.9 Brix"}`,
	`{"pressure":{"a":[1]},"brix":"66.9 Brix"}`, `{"pressure":"\ud800 atm","brix":"66.9 Brix"}`, "{\"pressure\":\"1 atm\xff\"}",
	`{"pressure":"` + strings.Repeat("1", 5000) + ` atm"}`, strings.Repeat(`{"pressure":`, 300), strings.Repeat(" ", 5000) + `{}`,
}

// What cannot be read is a 400 whose text says what to send, and names nothing of
// the inside.
func TestHostileBodies(t *testing.T) {
	for _, body := range hostile {
		code, answer := post(t, body)
		if code != http.StatusBadRequest || !strings.HasPrefix(answer, `{"text":"`) {
			t.Errorf("%.80q: %d %s", body, code, answer)
		}
		for _, inside := range []string{"json:", "struct", "units.", "goroutine"} {
			if strings.Contains(answer, inside) {
				t.Errorf("%.80q: the answer has %q: %s", body, inside, answer)
			}
		}
		if len(answer) > 500 {
			t.Errorf("%.80q: %d bytes of answer", body, len(answer))
		}
	}
}

func TestOtherRequests(t *testing.T) {
	for method, want := range map[string]int{"GET": http.StatusMethodNotAllowed, "PUT": http.StatusMethodNotAllowed} {
		w := httptest.NewRecorder()
		routes().ServeHTTP(w, httptest.NewRequest(method, "/syrup-point", nil))
		if w.Code != want {
			t.Errorf("%s: %d", method, w.Code)
		}
	}
}

// Whatever is sent, the answer is 200 with three quantities or 400 with a text.
func FuzzSyrupPoint(f *testing.F) {
	for _, body := range hostile {
		f.Add(body)
	}
	f.Add(`{"pressure":"1 atm","brix":"66.9 Brix"}`)
	f.Add(`{"brix":"0 Brix","pressure":"20 kPa"}`)
	f.Fuzz(func(t *testing.T, body string) {
		code, answer := post(t, body)
		switch code {
		case http.StatusOK:
			if strings.Contains(answer, "null") {
				t.Errorf("%q: half an answer: %s", body, answer)
			}
		case http.StatusBadRequest:
			if !strings.Contains(answer, `"text":"`) {
				t.Errorf("%q: no text: %s", body, answer)
			}
		default:
			t.Errorf("%q: %d", body, code)
		}
	})
}
