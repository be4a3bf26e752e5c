package ask

import (
	"time"

	"example.org/sapreckoner/units"
)

// A Request is what the page sends: what to do, and all that it holds.
type Request struct {
	Do     string               `json:"do"` // table, ask, set, house, new house, days, readings
	Screen string               `json:"screen"`
	Metric bool                 `json:"metric"` // the units that a person reads
	Fields map[string][2]string `json:"fields"` // what was typed, and the unit of the button beside it
	House  string               `json:"house"`  // the settings file of the folder
	Now    string               `json:"now"`    // the phone's own clock, as 2034-03-10T14:05:09
	Zone   int64                `json:"zone"`   // minutes that it is ahead of universal time

	Stamps  []Stamp `json:"stamps"`
	Entries []Entry `json:"entries"`
	Holes   []Scar  `json:"holes"`
	Finger  *Finger `json:"finger"`

	Name  string `json:"name"` // of a setting to set
	Value string `json:"value"`
}

// A Reply is what goes back.
type Reply struct {
	Error    string            `json:"error,omitempty"`
	Screens  []Screen          `json:"screens,omitempty"`
	Settings []Input           `json:"settings,omitempty"`
	Kinds    map[string]Kind   `json:"kinds,omitempty"`
	Tanks    []Choice          `json:"tanks,omitempty"`
	Answers  []Answer          `json:"answers,omitempty"`
	Errors   map[string]string `json:"errors,omitempty"`
	House    string            `json:"house,omitempty"`
	Values   map[string]string `json:"values,omitempty"` // of the settings
	Taken    map[string]string `json:"taken,omitempty"`  // the same as fields take them
	Title    string            `json:"title,omitempty"`
	Metric   *bool             `json:"metric,omitempty"` // as the settings say
	File     string            `json:"file,omitempty"`
}

// Answer answers a request.
func (q *Request) Answer() (r Reply) {
	now, err := time.Parse("2006-01-02T15:04:05", q.Now)
	if err != nil && q.Do != "table" {
		r.Error = "no clock: " + err.Error()
		return r
	}
	h := houseOf(q.House)
	switch q.Do {
	case "table":
		r.Screens, r.Settings, r.Kinds = table(q.system()), settings, kinds
	case "ask":
		q.ask(&r, h, now)
	case "house":
		h.tell(&r)
	case "set":
		h.set(&r, q)
	case "days":
		r.File, err = daysFile(q)
	case "readings":
		r.File, err = readingsFile(q, now)
	default:
		r.Error = "no such thing: " + q.Do
	}
	if err != nil {
		r.Error = reason(err, q.system())
	}
	return r
}

// ask answers all questions of a screen. A question with a refused or missing
// field has no figures.
func (q *Request) ask(r *Reply, h *house, now time.Time) {
	r.Errors = map[string]string{}
	for i := range screens {
		s := &screens[i]
		if s.Key != q.Screen {
			continue
		}
		inputs := map[string]*Input{}
		for i := range s.Questions {
			for j := range s.Questions[i].Inputs {
				in := &s.Questions[i].Inputs[j]
				inputs[in.Key] = in
			}
		}
		form := func() *Form {
			return &Form{System: q.system(), request: q, house: h, inputs: inputs, errs: r.Errors, now: now}
		}
		// Whatever was typed is looked at, even where an answer does not come as far.
		for key := range q.Fields {
			read(form(), key, func(text string) (string, error) { return text, nil })
		}
		for i := range s.Questions {
			f := form()
			f.answer.Key = s.Questions[i].Key
			for _, in := range s.Questions[i].Inputs {
				f.failed = f.failed || r.Errors[in.Key] != ""
			}
			if a := s.Questions[i].answer; a != nil && !f.failed {
				a(f)
			}
			if f.failed {
				f.answer = Answer{Key: f.answer.Key, Wants: f.answer.Wants}
			} else if len(f.assumed) > 0 && len(f.answer.Rows) > 0 {
				f.note(&f.answer.Known, "taken as usual: "+list(f.assumed))
			}
			r.Answers = append(r.Answers, f.answer)
		}
		return
	}
	r.Error = "no such screen: " + q.Screen
}

func list(words []string) (text string) {
	for i, w := range words {
		if i > 0 {
			text += ", "
		}
		text += w
	}
	return text
}

func (q *Request) system() units.System {
	if q.Metric {
		return units.Metric
	}
	return units.US
}
