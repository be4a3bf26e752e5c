package cli

import (
	"errors"
	"fmt"
)

// Input declares a flag that names a file to read, or standard input, which only one of
// them can take: see [Env.Open].
func (f *Flags) Input(p *string, name, help string) {
	f.String(p, name, "", help)
	f.checks = append(f.checks, func() error {
		switch {
		case *p == "" && f.Given(name):
			return For(name, errors.New("name the file, or leave this out"))
		case *p != "-":
			return nil
		case f.standard != "":
			return For(name, fmt.Errorf("-%s reads standard input already: name a file", f.standard))
		}
		f.standard = name
		return nil
	})
}

// Drawing declares a flag that names the file of a drawing: see [Env.Draw].
func (f *Flags) Drawing(p *string, name, help string) {
	f.String(p, name, "", help+"; - prints it instead of the page. A file that is there is replaced only if this program drew it")
	f.checks = append(f.checks, func() error {
		switch {
		case *p == "" && f.Given(name):
			return For(name, errors.New("name the file to write, or - for standard output"))
		case *p != "-":
			return nil
		case f.json:
			return For(jsonFlag, fmt.Errorf("-%s - takes the place of the page: give one of them", name))
		case f.printed != "":
			return For(name, fmt.Errorf("-%s - is on standard output already: name a file", f.printed))
		}
		f.printed = name
		return nil
	})
}
