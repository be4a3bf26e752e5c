package density_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"net/http"
	"net/http/httptest"
	"strings"

	"example.org/sapreckoner/density"
	"example.org/sapreckoner/units"
)

// handleCup answers what a cup of syrup is. Its inputs are NaN until the body
// sets them, so that what is missing and what is null are refused alike. What is
// refused is a 400 whose body tells it.
func handleCup(w http.ResponseWriter, r *http.Request) {
	in := struct {
		Reading     units.Brix        `json:"reading"`
		At          units.Temperature `json:"at"`
		GraduatedAt units.Temperature `json:"graduated_at"`
	}{units.Brix(math.NaN()), units.Celsius(math.NaN()), units.Celsius(math.NaN())}
	w.Header().Set("Content-Type", "application/json")
	answer := func(status int, body any) {
		b, err := json.Marshal(body)
		if err != nil {
			status, b = http.StatusInternalServerError, []byte(`{}`)
		}
		w.WriteHeader(status)
		fmt.Fprintf(w, "%s\n", b)
	}
	d := json.NewDecoder(http.MaxBytesReader(w, r.Body, 1<<16))
	d.DisallowUnknownFields()
	err := d.Decode(&in)
	var brix units.Brix
	if err == nil {
		brix, err = density.Hydrometer{GraduatedAt: in.GraduatedAt}.Brix(in.Reading, in.At)
	}
	var (
		outside *units.RangeError
		words   *units.ParseError
	)
	switch {
	case err == nil:
		answer(http.StatusOK, map[string]units.Brix{"brix": brix})
	case errors.As(err, &outside):
		answer(http.StatusBadRequest, outside)
	case errors.As(err, &words):
		answer(http.StatusBadRequest, words)
	default:
		answer(http.StatusBadRequest, map[string]string{"text": err.Error()})
	}
}

// A stem reads what it stands in at the temperature of its scale. The other
// bodies are refused, each with a body that a form can show.
func Example_handler() {
	server := httptest.NewServer(http.HandlerFunc(handleCup))
	defer server.Close()
	for _, body := range []string{
		`{"reading": "66.9 Brix", "at": "20 C", "graduated_at": "20 C"}`,
		`{"reading": "66.9 Brix", "at": "300 F", "graduated_at": "20 C"}`,
		`{"reading": "66.9 Brix", "graduated_at": "20 C"}`,
		`{"reading": "66.9 Brix", "at": null, "graduated_at": "20 C"}`,
		`{"reading": 66.9, "at": "20 C", "graduated_at": "20 C"}`,
	} {
		got, err := http.Post(server.URL, "application/json", strings.NewReader(body))
		if err != nil {
			fmt.Println(err)
			return
		}
		var said struct {
			Brix *units.Brix
			Arg  string
			Text string
		}
		err = json.NewDecoder(got.Body).Decode(&said)
		got.Body.Close()
		if err != nil {
			fmt.Println(err)
			return
		}
		if said.Brix != nil {
			fmt.Println(got.StatusCode, said.Brix.Text(2))
			continue
		}
		fmt.Println(got.StatusCode, said.Arg, "|", said.Text)
	}
	// Output:
	// 200 66.90 Brix
	// 400 at | temperature 300 F (148.9 C) is outside 32 to 230 F (0 to 110 C): let it cool and measure again
	// 400 at | temperature is not a number; it must lie in 32 to 230 F (0 to 110 C)
	// 400 at | temperature is not a number; it must lie in 32 to 230 F (0 to 110 C)
	// 400  | "66.9": no unit: write a text with its unit, in quotes, or null for what is not known
}
