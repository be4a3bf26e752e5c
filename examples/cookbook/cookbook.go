// Package cookbook holds the questions of a season, from the first hole to the
// sharing: each with the command that answers it, the words of the page that do,
// and a runnable example of at most eight lines of Go that gives the same figure.
//
// The tests run every command on the invented sugarhouse beside this folder and
// compare. docs/cookbook.md is made of them.
package cookbook

import (
	"embed"
	"encoding/csv"
)

//go:embed questions.csv
var files embed.FS

// A Question is a line of questions.csv, whose remarks tell what each field is.
type Question struct {
	Season, Question, Words, Command, Line, Figure, Example string
}

// Questions returns all of them, in the order of the season.
func Questions() ([]Question, error) {
	f, err := files.Open("questions.csv")
	if err != nil {
		return nil, err
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment, r.FieldsPerRecord = '#', 7
	rows, err := r.ReadAll()
	if err != nil {
		return nil, err
	}
	var all []Question
	for _, c := range rows[1:] {
		all = append(all, Question{c[0], c[1], c[2], c[3], c[4], c[5], c[6]})
	}
	return all, nil
}
