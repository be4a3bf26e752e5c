package folder

import (
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"example.org/sapreckoner/internal/base/clip"
	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/units"
	"example.org/sapreckoner/units/records"
)

// Limits on a hostile settings file.
const (
	mostBytes = 256 << 10
	longest   = 1000 // bytes of a line
)

// readSettings reads the settings file and what overrules it.
func (h *House) readSettings(set []string) (mistakes []error) {
	overruled, mistakes := settingLines(onCommandLine, strings.Join(set, "\n"))
	said := map[string]bool{}
	for i := range overruled {
		overruled[i].Number = 0
		said[overruled[i].subject()] = true
	}
	lines, more, err := h.settingsFile()
	if err != nil {
		more = append(more, err)
	}
	lines = slices.DeleteFunc(lines, func(l Line) bool { return said[l.subject()] })
	mistakes = append(append(mistakes, more...), h.apply(append(overruled, lines...))...)
	slices.SortStableFunc(mistakes, func(a, b error) int { return cmp.Compare(lineOf(a), lineOf(b)) })
	return mistakes
}

// onCommandLine stands in the place of the file's name for what was set there.
const onCommandLine = "-set"

// placeOf tells where a mistake of the settings stands.
func placeOf(err error) *records.Error {
	var e *records.Error
	errors.As(err, &e)
	return e
}

func lineOf(err error) int { return placeOf(err).Line }

// settingsFile reads the lines of the file.
func (h *House) settingsFile() (lines []Line, mistakes []error, err error) {
	if h.files == nil {
		return nil, nil, nil
	}
	f, err := h.files.Open(SettingsFile)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil, h.misnamed()
	}
	if err != nil {
		return nil, nil, h.unreadable(err)
	}
	defer f.Close()
	text, err := io.ReadAll(io.LimitReader(f, mostBytes+1))
	if err != nil {
		return nil, nil, h.unreadable(err)
	}
	refuse := func(why string) ([]Line, []error, error) {
		return nil, nil, &records.Error{File: h.Shown(SettingsFile), Err: errors.New(why)}
	}
	switch {
	case len(text) > mostBytes:
		return refuse("longer than 256 KiB: it holds a few dozen lines, so this is another file")
	case bytes.HasPrefix(text, []byte("\xff\xfe")), bytes.HasPrefix(text, []byte("\xfe\xff")):
		return refuse("saved as UTF-16: save it as UTF-8")
	case bytes.IndexByte(text, 0) >= 0:
		return refuse("not a text: it holds zero bytes")
	}
	lines, mistakes = settingLines(h.Shown(SettingsFile), string(bytes.TrimPrefix(text, []byte("\ufeff"))))
	return lines, mistakes, nil
}

// unreadable tells why a file cannot be read, without the folder twice.
func (h *House) unreadable(err error) error {
	var pe *fs.PathError
	if errors.As(err, &pe) {
		err = pe.Err
	}
	return &records.Error{File: h.Shown(SettingsFile), Err: err}
}

// misnamed finds a settings file whose name is nearly right, and refuses a folder
// that has nothing to do with all this.
func (h *House) misnamed() error {
	entries, err := fs.ReadDir(h.files, ".")
	if err != nil {
		return h.unreadable(err)
	}
	record := false
	for _, e := range entries {
		record = record || strings.HasSuffix(strings.ToLower(e.Name()), ".csv")
		plain := strings.NewReplacer(" ", "", "_", "", "-", "").Replace(strings.ToLower(e.Name()))
		if strings.TrimSuffix(strings.TrimSuffix(plain, ".txt"), ".txt") == "sugarhouse" && !e.IsDir() {
			return &records.Error{File: h.Shown(e.Name()), Err: errors.New("not read: name it " + SettingsFile)}
		}
	}
	if !record {
		return &records.Error{File: cmp.Or(h.path, "."), Err: errors.New("no sugarhouse: the folder holds neither " + SettingsFile + " nor a CSV file")}
	}
	return nil
}

// settingLines parts a text into settings.
func settingLines(file, text string) (lines []Line, mistakes []error) {
	for i, one := range strings.Split(text, "\n") {
		l, err := settingLine(one)
		switch {
		case err != nil:
			mistakes = append(mistakes, at(file, i+1, err))
		case l.Name != "":
			l.Number = i + 1
			lines = append(lines, l)
		}
		if len(mistakes) >= mostMistakes {
			break
		}
	}
	return lines, mistakes
}

// at tells file and line; what was set on the command line has no line.
func at(file string, line int, err error) error {
	if file == onCommandLine {
		line = 0
	}
	return &records.Error{File: file, Line: line, Err: err}
}

// settingLine reads one line; that of a remark has no name.
func settingLine(text string) (Line, error) {
	const form = `write it as "elevation: 1150 ft", and begin a remark with #`
	if len(text) > longest {
		return Line{}, fmt.Errorf("a line of %d characters: %s", len(text), form)
	}
	if !utf8.ValidString(text) {
		return Line{}, errors.New("not UTF-8: save the file as UTF-8")
	}
	text = strings.TrimSpace(withoutRemark(text))
	if text == "" {
		return Line{}, nil
	}
	for _, c := range text {
		if !unicode.IsPrint(c) && !unicode.IsSpace(c) {
			return Line{}, fmt.Errorf("holds the character %U, which cannot be seen: type the line anew", c)
		}
	}
	name, value, ok := strings.Cut(text, ":")
	name, value = alike(name), strings.TrimSpace(value)
	if !ok || name == "" {
		return Line{}, fmt.Errorf("%q is no setting: %s", clip.Text(text), form)
	}
	if value == "" {
		return Line{}, fmt.Errorf("%s: nothing is set: write the value behind the colon, or begin the line with #", clip.Text(name))
	}
	return Line{Name: name, Value: value}, nil
}

// withoutRemark cuts off a remark: a # at the start or behind a space.
func withoutRemark(text string) string {
	for i := range text {
		if text[i] == '#' && (i == 0 || text[i-1] == ' ' || text[i-1] == '\t') {
			return text[:i]
		}
	}
	return text
}

// alike is a name as it is compared: in small letters, with single spaces.
func alike(name string) string {
	return strings.Join(strings.Fields(strings.NewReplacer("-", " ", "_", " ").Replace(strings.ToLower(name))), " ")
}

// key is the name of a line in the table: any word of one's own is the measure of
// wood.
func (l Line) key() string {
	if known(l.Name) == nil && wood(l.Value) {
		return measure
	}
	return l.Name
}

// subject is what may be said once. Each tank is one.
func (l Line) subject() string {
	r := known(l.key())
	if r != nil && r.repeats {
		name, _, _ := strings.Cut(l.Value, ",")
		return r.name + " " + alike(name)
	}
	if r != nil {
		return r.subject()
	}
	return l.Name
}

// wood tells whether a value is a measure of wood.
func wood(value string) bool {
	v, err := units.ParseVolume(value)
	value = strings.ToLower(value)
	return err == nil && v > 0 && (strings.Contains(value, "cord") || strings.HasSuffix(value, "m3"))
}

// apply reads the values, that of the gallon first.
func (h *House) apply(lines []Line) (mistakes []error) {
	said := map[string]Line{}
	refuse := func(l Line, err error) {
		file := h.Shown(SettingsFile)
		if l.Number == 0 {
			file = onCommandLine
		}
		mistakes = append(mistakes, at(file, l.Number, fmt.Errorf("%s: %w", clip.Text(l.Name), err)))
	}
	for _, first := range []bool{true, false} {
		for _, l := range lines {
			if (l.Name == gallons) != first {
				continue
			}
			row := known(l.key())
			if row == nil {
				refuse(l, unknown(l.Name))
				continue
			}
			before, twice := said[row.subject()]
			switch {
			case twice && row.repeats:
			case twice && before.Name == l.Name:
				refuse(l, fmt.Errorf("set twice, %s and here: keep one", before.where()))
				continue
			case twice:
				refuse(l, fmt.Errorf("says the same as %q %s: keep one", before.Name, before.where()))
				continue
			}
			said[row.subject()] = l
			if err := row.into(&h.Settings, l); err != nil {
				refuse(l, err)
			}
		}
	}
	return mistakes
}

// where tells where a line stands.
func (l Line) where() string {
	if l.Number == 0 {
		return "by -set"
	}
	return fmt.Sprintf("in line %d", l.Number)
}

// unknown words the refusal of a name that is not in the table.
func unknown(name string) error {
	var names []string
	for i := range table {
		names = append(names, table[i].name)
	}
	if near, ok := enum.Nearest(name, slices.Values(names)); ok {
		return fmt.Errorf("no setting is called so: is it %q?", near)
	}
	return errors.New("no setting is called so; a new folder, which the program folder begins, lists them all in " + SettingsFile)
}
