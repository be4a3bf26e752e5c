package folder

import (
	"io/fs"
	"path"
	"slices"
	"strings"

	"example.org/sapreckoner/internal/base/enum"
)

// Unread tells of files whose name is nearly that of one that is read, each with
// the way out: Days.csv, batches_2026.csv, days.xlsx.
func (h *House) Unread() (all []string) {
	if h.files == nil {
		return nil
	}
	entries, err := fs.ReadDir(h.files, ".")
	if err != nil {
		return nil // opening the files tells
	}
	for _, e := range entries {
		if e.IsDir() {
			continue
		}
		meant := meantFile(e.Name())
		if meant == "" || h.isOne(entries, e.Name(), meant) {
			continue
		}
		way := "name it " + meant
		if slices.ContainsFunc(entries, func(o fs.DirEntry) bool { return o.Name() == meant }) {
			way = "put its rows into " + meant + ", which keeps all years"
		}
		if ext := strings.ToLower(path.Ext(e.Name())); ext != ".csv" && ext != ".txt" && ext != "" {
			way = "save it as CSV under the name " + meant
		}
		all = append(all, h.Shown(e.Name())+" is not read: "+way)
	}
	return all
}

// isOne reports whether a file is opened under the name that it is meant to have:
// some disks do not tell capitals.
func (h *House) isOne(entries []fs.DirEntry, name, meant string) bool {
	if !strings.EqualFold(name, meant) || slices.ContainsFunc(entries, func(o fs.DirEntry) bool { return o.Name() == meant }) {
		return false
	}
	_, err := fs.Stat(h.files, meant)
	return err == nil
}

// meantFile returns the file that a name is nearly, but not quite.
func meantFile(name string) string {
	stem := strings.ToLower(name)
	switch ext := path.Ext(stem); ext {
	case ".csv", ".txt", ".tsv", ".xls", ".xlsx", ".ods", "":
		stem = strings.TrimSuffix(stem, ext)
	default:
		return "" // yesterday's copies, pictures, whatever
	}
	stem = strings.TrimSuffix(strings.TrimSuffix(stem, ".csv"), ".txt") // days.csv.txt
	stem = strings.Trim(stem, "0123456789 _-()")
	var known []string
	for _, s := range specs {
		if name == s.name {
			return ""
		}
		known = append(known, strings.TrimSuffix(s.name, ".csv"))
	}
	near, _ := enum.Nearest(stem, slices.Values(known))
	for _, k := range known { // of one: batch.csv
		if near == "" && strings.HasPrefix(k, stem) && len(k)-len(stem) <= 2 {
			near = k
		}
	}
	if len(stem) < 3 || near == "" {
		return ""
	}
	return near + ".csv"
}
