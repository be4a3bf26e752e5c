package check

import (
	_ "embed"
	"encoding/json"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"sync"
)

//go:embed bibliography.json
var bibliography []byte

// noKey stands in a header where geometry or a definition is all that a table
// rests on.
const noKey = "none"

// A Reference is a source in the form of CSL JSON, in which citation programs
// read it. Note tells how the project obtained it.
type Reference struct {
	ID     string `json:"id"`
	Type   string `json:"type"`
	Title  string `json:"title"`
	Author []struct {
		Family  string `json:"family"`
		Given   string `json:"given"`
		Literal string `json:"literal"`
	} `json:"author"`
	Container string `json:"container-title"`
	Volume    string `json:"volume"`
	Page      string `json:"page"`
	Publisher string `json:"publisher"`
	Issued    struct {
		Parts [][]int `json:"date-parts"`
	} `json:"issued"`
	Note string `json:"note"`
}

// References lists the bibliography by key.
var References = sync.OnceValues(func() ([]Reference, error) {
	var list []Reference
	if err := json.Unmarshal(bibliography, &list); err != nil {
		return nil, fmt.Errorf("check: bibliography.json: %w", err)
	}
	for i, r := range list {
		switch {
		case r.ID == "" || r.Type == "" || r.Title == "" || r.Note == "":
			return nil, fmt.Errorf("check: bibliography.json: entry %d, %q: id, type, title and note are needed", i+1, r.ID)
		case i > 0 && r.ID <= list[i-1].ID:
			return nil, fmt.Errorf("check: bibliography.json: %q stands after %q", r.ID, list[i-1].ID)
		}
	}
	return list, nil
})

// String writes the reference as a line of a list.
func (r Reference) String() string {
	var names []string
	for _, a := range r.Author {
		switch {
		case a.Literal != "":
			names = append(names, a.Literal)
		case a.Given != "":
			names = append(names, a.Family+", "+a.Given)
		default:
			names = append(names, a.Family)
		}
	}
	var parts []string
	add := func(s string) {
		if s != "" {
			parts = append(parts, s)
		}
	}
	add(strings.Join(names, "; "))
	add(r.Title)
	add(strings.TrimSpace(r.Container + " " + r.Volume))
	add(r.Page)
	add(r.Publisher)
	if p := r.Issued.Parts; len(p) > 0 && len(p[0]) > 0 {
		add(strconv.Itoa(p[0][0]))
	}
	return strings.ReplaceAll(strings.Join(parts, ". ")+".", "..", ".")
}

// parseKeys reads the keys of a header line, each of them in the bibliography.
func parseKeys(value string) ([]string, error) {
	if value == noKey {
		return nil, nil
	}
	list, err := References()
	if err != nil {
		return nil, err
	}
	var keys []string
	for key := range strings.SplitSeq(value, ",") {
		key = strings.TrimSpace(key)
		if !slices.ContainsFunc(list, func(r Reference) bool { return r.ID == key }) {
			return nil, fmt.Errorf("key %q is not in bibliography.json", key)
		}
		if slices.Contains(keys, key) {
			return nil, fmt.Errorf("key %q is given twice", key)
		}
		keys = append(keys, key)
	}
	return keys, nil
}
