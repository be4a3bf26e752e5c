package main

import (
	"strings"
	"time"

	"example.org/sapreckoner/examples/internal/cli"
	"example.org/sapreckoner/examples/internal/folder"
	"example.org/sapreckoner/units"
)

// summer tells of a day from June to October, or in the south half a year on: no tree
// is bare then.
func summer(date time.Time, south bool) bool {
	month := int(date.Month())
	if south {
		month = (month+5)%12 + 1
	}
	return month >= 6 && month <= 10
}

// day shows how a day that was typed as one line is understood, and adds it.
func day(e *cli.Env, f *cli.Flags, metric bool, words []string) error {
	row, err := f.House().DayLine(strings.Join(words, " "), time.Now())
	if err != nil {
		return err
	}
	add := folder.Rows{File: folder.DaysFile, Rows: []folder.Row{row}}
	if _, err := f.House().Append(add); err != nil {
		return err // here the line is all that the page is about
	}
	s := &cli.Sheet{Title: "A day", Metric: metric}
	date, err := time.Parse(time.DateOnly, row[0].Text)
	if err != nil {
		return err
	}
	s.Brief.Verdict = "Is it as you mean it? Then add it with -write."
	if f.Writes() {
		s.Brief.Verdict = "The day is written down."
	}
	s.Brief.Answer("day", "Day", cli.Words(date.Format("Monday, January 2, 2006")))
	if f.Dir() == "" {
		s.Brief.House = "Nothing is written into the invented sugarhouse: give your own with -dir."
	}
	var rows [][]cli.Value
	tank := ""
	for _, c := range row[1:] {
		if c.Column == "tank" {
			tank = c.Text
		}
	}
	for _, c := range row[1:] {
		text := c.Text
		if t, ok := f.House().Settings.Tank(tank); ok && c.Column == "dip" {
			if dip, err := units.ParseLength(c.Text); err == nil { // the line was taken before
				text += ": " + s.In(cli.Gallons(t.At(dip), cli.Nearest))
			}
		}
		rows = append(rows, []cli.Value{cli.Words(strings.ReplaceAll(c.Column, "_", " ")), cli.Words(text)})
	}
	if len(rows) > 0 {
		cols := []cli.Column{{Key: "column", Head: "column"}, {Key: "told", Head: "told"}}
		s.Brief.List(cols, rows)
		s.Part("day", "The day").Table("told", cols, rows)
	}
	s.Brief.Cautions = []string{"No program takes a line back: mend it in " + folder.DaysFile + ". The file as it was before the first lines of a day is " + folder.DaysFile + cli.Before + "."}
	if summer(date, f.House().Settings.South) {
		s.Brief.Cautions = append([]string{"Sap hardly runs in " + date.Month().String() + ": is the day meant? A date as 2034-03-10 leaves no doubt."}, s.Brief.Cautions...)
	}
	if err := s.Add(e, add); err != nil {
		return err
	}
	return s.Show(e)
}
