package folder

import (
	"fmt"
	"strings"
)

// A Start is a file of a new folder.
type Start struct{ Name, Text string }

// begun are the files of a new folder, each with what to write into it.
var begun = []struct{ name, remark string }{
	{DaysFile, "A row a day, or one a tank. Only the date must be there. A tank with a stick is\ntold in dip_in instead of sap_gal. Wood counts the measure of " + SettingsFile + ".\nSap that spoiled and was thrown out is told in thrown_gal."},
	{BatchesFile, "A row a batch of syrup, with a name of its own; its volume, or its weight\nwithout the can, or gross_lb and tare_lb, a drum full and empty, in columns\nthat you add. The hydrometer reads reading_brix in a cup at cup_f."},
	{BottledFile, "A row a batch and size of jar. A size is what the label says: 1 pt, 250 mL."},
	{TreesFile, "A row a tree, in the order in which you walk. The girth is measured at 4.5 ft."},
	{HolesFile, "A row a hole. The bearing is clockwise, seen from above, from a mark on the bark;\nor along_in is the distance from the mark round the trunk."},
	{StopsFile, "A row a boil: what one and the same thermometer showed in boiling water that day\nand when the syrup was taken off, and its true strength, cooled."},
}

// Begin returns the files of a new folder: settings, those set written out and the
// others behind a # with an example each, and empty files with their headers. What
// sizes are in follows the settings, which must name the gallon or be metric.
func Begin(s *Settings) ([]Start, error) {
	metric := s.Metric && s.Gallon == 0
	if s.Gallon == 0 && !metric {
		return nil, fmt.Errorf("which gallon is meant in your files? say -set %q or -set %q; or -set %q for liters", "gallons: US", "gallons: imperial", "units: metric")
	}
	all := []Start{{SettingsFile, s.start(metric)}}
	for _, b := range begun {
		remark := b.remark
		if metric {
			remark = inMetric(remark)
		}
		all = append(all, Start{b.name, "# " + strings.ReplaceAll(remark, "\n", "\n# ") + "\n" + s.Header(b.name) + "\n"})
	}
	return all, nil
}

// inMetric names the columns in metric units.
func inMetric(text string) string {
	return strings.NewReplacer("_gal", "_l", "_in", "_cm", "_lb", "_kg", "_f", "_c", "4.5 ft", "1.37 m").Replace(text)
}

// start writes the settings file.
func (s *Settings) start(metric bool) string {
	var b strings.Builder
	b.WriteString("# The settings of this sugarhouse: a name, a colon, a value. What stands behind a\n# is a remark. To set a line, take away the # in front of it and write your own\n# value. What is not set the programs learn from the record, or assume and say so.\n")
	for i := range table {
		r := &table[i]
		if r.part != "" {
			fmt.Fprintf(&b, "\n# %s\n", r.part)
		}
		set := false
		for _, l := range s.lines {
			if l.key() == r.name {
				set = true
				line(&b, l.Name+": "+l.Value, r.remark)
			}
		}
		if !set {
			example := r.example
			if metric && r.metric != "" {
				example = r.metric
			}
			line(&b, "# "+r.name+": "+example, r.remark)
		}
	}
	return b.String()
}

// line writes a setting and its remark, behind it or, if that is long, above it.
func line(b *strings.Builder, setting, remark string) {
	const column, width = 40, 96
	if len(setting) < column && column+len(remark) < width {
		fmt.Fprintf(b, "%-*s# %s\n", column, setting, remark)
		return
	}
	fmt.Fprintf(b, "%s  # %s\n", setting, remark)
}
