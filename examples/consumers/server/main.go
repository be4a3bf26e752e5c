// Server tells over HTTP where syrup is done: JSON comes in, JSON goes out.
//
//	go -C examples/consumers run ./server
//	curl -d '{"pressure":"28.6 inHg","brix":"66.9 Brix"}' localhost:8080/syrup-point
package main

import (
	"encoding/json"
	"errors"
	"io"
	"log"
	"math"
	"net/http"
	"time"

	"example.org/sapreckoner/boil"
	"example.org/sapreckoner/units"
)

func main() {
	s := &http.Server{Addr: "localhost:8080", Handler: routes(), ReadTimeout: 5 * time.Second}
	log.Fatal(s.ListenAndServe())
}

func routes() http.Handler {
	mux := http.NewServeMux()
	mux.HandleFunc("POST /syrup-point", syrupPoint)
	return mux
}

func syrupPoint(w http.ResponseWriter, r *http.Request) {
	// What is not sent is not known, and neither is null: both are refused.
	ask := struct {
		Pressure units.Pressure `json:"pressure"`
		Brix     units.Brix     `json:"brix"`
	}{units.Pressure(math.NaN()), units.Brix(math.NaN())}
	if err := read(w, r, &ask); err != nil {
		refuse(w, err)
		return
	}
	syrup, err := boil.SyrupPoint(ask.Brix, ask.Pressure)
	if err != nil {
		refuse(w, err)
		return
	}
	water, err := boil.Water(ask.Pressure)
	if err != nil {
		refuse(w, err)
		return
	}
	answer(w, http.StatusOK, map[string]any{"water": water, "syrup": syrup, "rise": syrup.Sub(water)})
}

var errBody = errors.New(`send one object with a pressure and a brix and nothing else, such as {"pressure":"28.6 inHg","brix":"66.9 Brix"}`)

// read takes one object of at most 4 KiB, and no fields that it does not know.
func read(w http.ResponseWriter, r *http.Request, into any) error {
	body := json.NewDecoder(http.MaxBytesReader(w, r.Body, 4<<10))
	body.DisallowUnknownFields()
	err := body.Decode(into)
	var unread *units.ParseError
	if errors.As(err, &unread) {
		return unread
	}
	if _, end := body.Token(); err != nil || end != io.EOF {
		return errBody
	}
	return nil
}

// refuse answers with the error's own JSON: which argument, its value, its range
// and a text for a person. Any other error has the text alone.
func refuse(w http.ResponseWriter, err error) {
	var out *units.RangeError
	if errors.As(err, &out) {
		answer(w, http.StatusBadRequest, out)
		return
	}
	answer(w, http.StatusBadRequest, map[string]string{"text": units.Reason(err, units.Both)})
}

func answer(w http.ResponseWriter, status int, body any) {
	b, err := json.Marshal(body)
	if err != nil {
		http.Error(w, "the answer cannot be written", http.StatusInternalServerError)
		return
	}
	w.Header().Set("Content-Type", "application/json")
	w.WriteHeader(status)
	w.Write(b) // the caller may have gone: there is nobody to tell
}
