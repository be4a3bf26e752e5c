package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"go/types"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// The environment tells a program that holds all changes of a package which one
// to make: the number of the site and the kind.
const choice = "SAPRECKONER_BUMP"

// chooser is added to the package under change.
const chooser = `
func bumpedLiteral[T any](site int, as, last, sign, ten T) T {
	if site == bumpedSite {
		switch bumpedKind {
		case 0:
			return last
		case 1:
			return sign
		case 2:
			return ten
		}
	}
	return as
}

var bumpedSite, bumpedKind = func() (int, int) {
	site, kind, _ := strings.Cut(os.Getenv("` + choice + `"), ":")
	s, err := strconv.Atoi(site)
	k, err2 := strconv.Atoi(kind)
	if err != nil || err2 != nil {
		return -1, -1
	}
	return s, k
}()
`

// An overlay says what go test reads in place of a file; an empty name stands
// for no file.
type overlay struct{ Replace map[string]string }

// write stores the overlay in a file of the folder, with the files that are
// not to be read added.
func (o overlay) write(folder string, dropped []string) (string, error) {
	full := overlay{map[string]string{}}
	for from, to := range o.Replace {
		full.Replace[from] = to
	}
	for _, name := range dropped {
		full.Replace[name] = ""
	}
	data, err := json.Marshal(full)
	if err != nil {
		return "", err
	}
	f, err := os.CreateTemp(folder, "overlay*.json")
	if err != nil {
		return "", err
	}
	_, err = f.Write(data)
	if err2 := f.Close(); err == nil {
		err = err2
	}
	return f.Name(), err
}

// single makes one change.
func (c change) single(folder string) (overlay, error) {
	name := filepath.Join(c.target.dir, filepath.Base(c.file))
	src, err := c.target.source(name)
	if err != nil {
		return overlay{}, err
	}
	to := filepath.Join(folder, filepath.Base(c.file))
	return overlay{map[string]string{name: to}}, os.WriteFile(to, splice(src, []edit{{c.offset, len(c.text), c.to}}), 0o666)
}

// switched makes all changes at the sites that may be variables, each to be
// chosen when the program starts. A site's number is its place in the list.
func switched(t *target, sites []*site, folder string) (overlay, error) {
	o := overlay{map[string]string{}}
	edits := map[string][]edit{}
	names := typeNames{pkg: t.pkg.Types}
	var calls map[whole]string // of one file
	for i, s := range sites {
		if s.whole.typ == nil {
			continue
		}
		list := edits[s.file]
		if len(list) == 0 {
			calls = map[whole]string{}
		}
		as, again := calls[s.whole]
		if !again {
			as = s.whole.text
		}
		call := fmt.Sprintf("bumpedLiteral[%s](%d, %s", names.alias(s.whole.typ), i, as)
		for _, text := range s.variants {
			if text == "" {
				text = s.whole.text
			}
			call += ", " + text
		}
		call += ")"
		calls[s.whole] = call
		if again {
			list = list[:len(list)-1]
		}
		edits[s.file] = append(list, edit{s.whole.offset, len(s.whole.text), call})
	}
	for file, list := range edits {
		name := filepath.Join(t.dir, filepath.Base(file))
		src, err := t.source(name)
		if err != nil {
			return o, err
		}
		to := filepath.Join(folder, filepath.Base(file))
		if err := os.WriteFile(to, splice(src, list), 0o666); err != nil {
			return o, err
		}
		o.Replace[name] = to
	}
	to := filepath.Join(folder, "bumped_chooser.go")
	o.Replace[filepath.Join(t.dir, "bumped_chooser.go")] = to
	return o, os.WriteFile(to, []byte(names.header()+chooser), 0o666)
}

// An edit puts text in place of length bytes.
type edit struct {
	offset, length int
	text           string
}

// splice applies edits in the order of their offsets.
func splice(src []byte, edits []edit) []byte {
	var out bytes.Buffer
	at := 0
	for _, e := range edits {
		out.Write(src[at:e.offset])
		out.WriteString(e.text)
		at = e.offset + e.length
	}
	out.Write(src[at:])
	return out.Bytes()
}

// typeNames gives types names that no declaration in a function can hide.
type typeNames struct {
	pkg     *types.Package
	imports []string // paths
	list    []string // the types as the chooser's file names them
}

func (n *typeNames) alias(t types.Type) string {
	text := types.TypeString(t, func(p *types.Package) string {
		if p == n.pkg {
			return ""
		}
		i := slices.Index(n.imports, p.Path())
		if i < 0 {
			i = len(n.imports)
			n.imports = append(n.imports, p.Path())
		}
		return fmt.Sprintf("bumpedImport%d", i)
	})
	i := slices.Index(n.list, text)
	if i < 0 {
		i = len(n.list)
		n.list = append(n.list, text)
	}
	return fmt.Sprintf("bumpedType%d", i)
}

func (n *typeNames) header() string {
	var b strings.Builder
	fmt.Fprintf(&b, "package %s\n\nimport (\n\t\"os\"\n\t\"strconv\"\n\t\"strings\"\n", n.pkg.Name())
	for i, path := range n.imports {
		fmt.Fprintf(&b, "\tbumpedImport%d %q\n", i, path)
	}
	b.WriteString(")\n\n")
	for i, text := range n.list {
		fmt.Fprintf(&b, "type bumpedType%d = %s\n", i, text)
	}
	return b.String()
}
