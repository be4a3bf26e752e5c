package folder

import (
	"bytes"
	"errors"
	"fmt"
	"strings"
)

// Set plans what setting lines makes of the settings file: the value of a line that is
// there gives way, and its name and its remark stay as they were written; another comes
// at the end. Nothing is written. The whole is read through as [Open] does it, without
// what overrules it: what would be refused there is refused here.
func (h *House) Set(lines ...Line) (a Addition, err error) {
	a.File = SettingsFile
	if a.Old, err = h.content(SettingsFile); err != nil {
		return Addition{}, at(h.Shown(SettingsFile), 0, err)
	}
	t := &csvFile{ends: "\n"}
	if bytes.Contains(a.Old, []byte("\r\n")) {
		t.ends = "\r\n"
	}
	a.New = a.Old
	for _, l := range lines {
		name := alike(l.Name)
		text := strings.SplitAfter(string(a.New), "\n")
		now, i := find(text, name)
		switch {
		case now.Value == l.Value:
			a.There++
			continue
		case i < 0:
			a.New = t.with(a.New, []string{name + ": " + l.Value})
		default:
			a.Instead = append(a.Instead, strings.TrimSpace(strings.TrimPrefix(text[i], "\ufeff")))
			text[i] = revalued(text[i], l.Value)
			a.New = []byte(strings.Join(text, ""))
		}
		a.Lines = append(a.Lines, name+": "+l.Value)
	}
	then := &House{files: &overlay{h.files, map[string][]byte{SettingsFile: a.New}}, path: h.path}
	if err := errors.Join(then.readSettings(nil)...); err != nil {
		return Addition{}, err
	}
	for _, l := range lines {
		if got, _ := then.Settings.Set(alike(l.Name)); got.Value != l.Value {
			return Addition{}, at(h.Shown(SettingsFile), 0, fmt.Errorf("%s: it would not be read as it is meant: look at the lines of the file", l.Name))
		}
	}
	return a, nil
}

// find finds the setting of a name among lines of a file.
func find(text []string, name string) (Line, int) {
	for i, one := range text {
		if l, err := settingLine(strings.TrimPrefix(one, "\ufeff")); err == nil && l.Name == name {
			return l, i
		}
	}
	return Line{}, -1
}

// revalued is a line with another value.
func revalued(line, value string) string {
	colon := strings.IndexByte(line, ':') + 1
	end := len(strings.TrimRight(withoutRemark(line), " \t\r\n"))
	return line[:colon] + " " + value + line[end:]
}
