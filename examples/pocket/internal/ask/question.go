// Package ask is the table of questions behind the pocket page: what each asks
// for, in which units and ranges, and how package sapreckoner answers it. The
// page draws its forms from the table, so that a new question is one entry.
//
// The package reads what a person typed, calls the library and words the answer
// in the person's units. It holds no formula of its own.
package ask

// A Screen is what is filled in and answered together. Its questions share
// their fields: a field of the first is known to the others.
type Screen struct {
	Key       string     `json:"key"`
	Title     string     `json:"title"`
	Lead      string     `json:"lead"`
	Questions []Question `json:"questions"`
}

// A Question is one entry of the table.
type Question struct {
	Key    string  `json:"key"`
	Title  string  `json:"title"`
	Inputs []Input `json:"inputs"`
	// Extra names what the page shows besides the form, such as the stamps.
	Extra string `json:"extra,omitempty"`

	answer func(*Form)
}

// An Input is a field of a form.
type Input struct {
	Key   string `json:"key"`
	Label string `json:"label"`
	Help  string `json:"help,omitempty"`
	Range
	Start   string `json:"start,omitempty"`   // what is taken if nothing is typed
	Setting string `json:"setting,omitempty"` // the line of the settings that is taken before Start
	Need    bool   `json:"need,omitempty"`    // no answer without it
	More    bool   `json:"more,omitempty"`    // seldom changed: folded away
	When    string `json:"when,omitempty"`    // "by=water": shown and read while that is chosen
}

// A Range is what a field takes: its kind, which has units, and its ends.
type Range struct {
	Kind    string   `json:"kind"`
	Choices []Choice `json:"choices,omitempty"`

	check func(text string) error
}

// A Choice is one of a few.
type Choice struct {
	Key   string `json:"key"`
	Label string `json:"label"`
}

// A Kind is the units of a kind of quantity, with the step of the plus and minus
// buttons, those of one system first.
type Kind struct {
	US     []Unit `json:"us"`
	Metric []Unit `json:"metric"`
}

// A Unit is a unit button.
type Unit struct {
	Text string  `json:"text"`
	Step float64 `json:"step"`
}

// An Answer is what comes of a question.
type Answer struct {
	Key      string   `json:"key"`
	Verdict  string   `json:"verdict,omitempty"`
	Level    string   `json:"level,omitempty"` // good, wait or stop
	Rows     []Row    `json:"rows,omitempty"`
	Tables   []Table  `json:"tables,omitempty"`
	Known    []string `json:"known,omitempty"`
	Cautions []string `json:"cautions,omitempty"`
	Wants    []string `json:"wants,omitempty"` // labels of the fields that are still empty

	Alarm *Alarm `json:"alarm,omitempty"`
	Trunk *Trunk `json:"trunk,omitempty"`
}

// A Row is one figure of an answer.
type Row struct {
	Key   string `json:"key"`
	Label string `json:"label"`
	Text  string `json:"text"`
	Give  string `json:"give,omitempty"` // give or take, 19 times of 20
	Note  string `json:"note,omitempty"`
}

// A Table is figures in rows.
type Table struct {
	Key   string     `json:"key"`
	Title string     `json:"title"`
	Head  []string   `json:"head"`
	Rows  [][]string `json:"rows"`
}
