package folder

import (
	"slices"
	"strings"

	"example.org/sapreckoner/internal/base/enum"
)

// A spec is what the programs know of a file.
type spec struct {
	name    string
	header  string // of a file that is begun anew
	columns map[string]*kind
	ask     map[string]asking // what to ask back of bare numbers
}

// Files of a folder. Those of the first row a person fills; the others are there
// for who wants them.
const (
	DaysFile, BatchesFile, BottledFile, TreesFile, HolesFile, StopsFile  = "days.csv", "batches.csv", "bottled.csv", "trees.csv", "holes.csv", "stops.csv"
	WeatherFile, JarsFile, PeopleFile, CostsFile, BoughtFile, BlendsFile = "weather.csv", "jars.csv", "people.csv", "costs.csv", "bought.csv", "blends.csv"
	SeasonsFile, PanFile, PaidFile                                       = "seasons.csv", "pan.csv", "paid.csv"
)

var specs = []spec{
	{DaysFile, "date,tank,sap_gal,dip_in,sugar_brix,read_at_f,boiled_gal,thrown_gal,lit,out,syrup_gal,wood,note", map[string]*kind{
		"date": dateCell, "sap": volumeCell, "dip": lengthCell, "sugar": brixCell, "read_at": warmthCell, "boiled": volumeCell, "thrown": volumeCell,
		"lit": clockCell, "out": clockCell, "syrup": volumeCell, "wood": woodCell}, map[string]asking{"sugar": sweetSap, "read_at": sapCup}},
	{BatchesFile, "batch,date,volume_gal,weight_lb,reading_brix,cup_f,temp_f,light_pct,note", map[string]*kind{
		"date": dateCell, "volume": volumeCell, "weight": massCell, "gross": massCell, "tare": massCell, "reading": brixCell, "cup": warmthCell, "temp": warmthCell, "light": shareCell}, map[string]asking{"reading": whichScale}},
	{BottledFile, "date,batch,size,count,note", map[string]*kind{"date": dateCell, "size": volumeCell, "count": numberCell}, nil},
	{TreesFile, "tree,girth_in,species,vigor,growth_in,note", map[string]*kind{
		"girth": lengthCell, "dbh": lengthCell, "growth": lengthCell}, map[string]asking{"girth": stout, "dbh": stout}},
	{HolesFile, "tree,year,bearing_deg,along_in,height_in,bit_in,depth_in", map[string]*kind{
		"year": numberCell, "bearing": angleCell, "along": lengthCell, "height": lengthCell, "bit": lengthCell, "depth": lengthCell}, map[string]asking{"year": shortYear, "height": low}},
	{StopsFile, "day,water_boils_f,stop_f,cup_brix", map[string]*kind{
		"day": dateCell, "water_boils": warmthCell, "pressure": pressureCell, "stop": warmthCell, "cup": brixCell}, map[string]asking{"cup": whichScale}},
	{WeatherFile, "date,tmin_f,tmax_f", map[string]*kind{
		"date": dateCell, "time": dateCell, "tmin": warmthCell, "tmax": warmthCell, "temp": warmthCell}, map[string]asking{"tmin": heat, "tmax": heat}},
	{JarsFile, "container,on_hand,label_ml,brim_ml,empty_g,material", map[string]*kind{
		"on_hand": numberCell, "at_least": numberCell, "at_most": numberCell, "label": volumeCell, "brim": volumeCell, "empty": massCell}, nil},
	{PeopleFile, "name,worked_h", map[string]*kind{"worked": hoursCell, "taps": numberCell, "sugar": massCell, "wood": woodCell, "parts": numberCell, "taken": volumeCell}, nil},
	{CostsFile, "date,what,cost,years", map[string]*kind{"date": dateCell, "cost": numberCell, "years": numberCell}, nil},
	{BoughtFile, "date,seller,volume_gal,reading_brix,cup_f,note", map[string]*kind{
		"date": dateCell, "volume": volumeCell, "reading": brixCell, "cup": warmthCell}, map[string]asking{"reading": sweetSap, "cup": frozen}},
	{PaidFile, "date,seller,kind,amount,what", map[string]*kind{"date": dateCell, "amount": numberCell}, nil},
	{BlendsFile, "date,from,into,volume_gal,note", map[string]*kind{"date": dateCell, "volume": volumeCell}, nil},
	{SeasonsFile, "year,taps,syrup_gal", map[string]*kind{"year": numberCell, "taps": numberCell, "syrup": volumeCell}, map[string]asking{"year": shortYear}},
	{PanFile, "date,compartment,depth_in,brix", map[string]*kind{
		"date": dateCell, "compartment": numberCell, "depth": lengthCell, "brix": brixCell}, nil},
}

// specOf finds a file by its name.
func specOf(name string) (spec, bool) {
	i := slices.IndexFunc(specs, func(s spec) bool { return s.name == name })
	if i < 0 {
		return spec{}, false
	}
	return specs[i], true
}

// column finds what a column of the header is.
func (s spec) column(header string) (*column, string) {
	c := &column{name: header, handed: header, kind: asWritten}
	base := ""
	for name := range s.columns {
		if (header == name || strings.HasPrefix(header, name+"_")) && len(name) > len(base) {
			base = name
		}
	}
	if base != "" {
		c.kind, c.asks = s.columns[base], s.ask[base]
	}
	return c, base
}

// misspelled returns the column that a header of the file nearly names, if no
// other one is it.
func (s spec) misspelled(header string, all []string) string {
	near, _ := enum.Nearest(header, slices.Values(strings.Split(s.header, ",")))
	if near == "note" || slices.Contains(all, near) {
		return ""
	}
	return near
}
