package cli

// Forms in which a program shows what it found, the same in all programs.
const (
	fullFlag   = "full"
	jsonFlag   = "json"
	metricFlag = "metric"
)

// Page declares the flags that say how a page is shown: with its reasons, as JSON,
// metric first.
func (f *Flags) Page(metric *bool) {
	f.Group("Page")
	f.Bool(&f.full, fullFlag, "behind the answers all reasons, tables and sources; behind -h what every flag is for")
	f.Bool(&f.json, jsonFlag, "JSON instead of a page")
	f.Bool(metric, metricFlag, "metric units first")
}

// JSON reports whether JSON is asked for instead of a page.
func (f *Flags) JSON() bool { return f.json }

// Show writes the sheet as the flags of [Flags.Page] ask: the brief, with -full what
// stands behind it, or all as JSON.
func (s *Sheet) Show(e *Env) error {
	switch {
	case e.flags.json:
		return s.JSON(e)
	case s.Brief.Verdict == "":
		s.Print(e)
		return nil
	}
	s.printBrief(e)
	if e.flags.full {
		e.Out.WriteString("\n")
		s.Print(e)
	}
	return nil
}
