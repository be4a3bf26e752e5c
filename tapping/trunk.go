package tapping

import (
	"math"

	"example.org/sapreckoner/internal/base/enum"
	"example.org/sapreckoner/internal/base/limit"
	"example.org/sapreckoner/units"
)

// The range of trunks. The thickest maples on record stand near 2 m.
const (
	maxDiameter = 5 * units.Meter
	maxGirth    = math.Pi * maxDiameter
)

const girthHint = "measure round the trunk at breast height, and mind the unit"

var girthRange = limit.Range{
	Arg: "girth", Low: 0, High: float64(maxGirth), Unit: "in", Per: float64(units.Inch),
	Below: girthHint, Above: girthHint,
}

// DiameterFromGirth returns the diameter of a round trunk of the given girth
// (circumference). Diameter at breast height, DBH, is measured 4.5 ft above
// the ground in the United States and 1.30 m in Quebec, on a slope from its
// uphill side (common practice).
//
// Range: girth 0 to 5 pi m (15.7 m). A trunk that is not round has less wood
// than its girth tells: the diameter is then an upper bound.
//
// Formula: D = girth/pi. Check value: 37.699 in round is 12.000 in through.
func DiameterFromGirth(girth units.Length) (units.Length, error) {
	if err := girthRange.Check("tapping.DiameterFromGirth", float64(girth)); err != nil {
		return nan[units.Length](), err
	}
	return girth / math.Pi, nil
}

// GirthFromDiameter returns the girth of a round trunk of the given diameter,
// the inverse of [DiameterFromGirth].
//
// Range: diameter 0 to 5 m.
//
// Formula: girth = pi D. Check value: 12.000 in through is 37.699 in round.
func GirthFromDiameter(diameter units.Length) (units.Length, error) {
	if err := diameterRange.Check("tapping.GirthFromDiameter", float64(diameter)); err != nil {
		return nan[units.Length](), err
	}
	return diameter * math.Pi, nil
}

// Vigor is how well a trunk grows. The published guidelines assume a healthy,
// vigorous trunk; count the growth, not only the girth (University of Vermont).
type Vigor uint8

// The classes of vigor. The zero value says that nobody looked yet.
const (
	NotJudged Vigor = iota // taken as healthy, and the [Advice] says so
	Healthy
	Slow      // slow growth: at most one tap, and a shallow one
	Unhealthy // dieback, rot, conks, large wounds: no tap
)

var vigorNames = enum.Names[Vigor]{Type: "tapping.Vigor", Zero: true, Of: []string{"not judged", "healthy", "slow", "unhealthy"}}

// String returns the name that [Vigor.UnmarshalText] reads.
func (v Vigor) String() string { return vigorNames.String(v) }

// Vigors lists the classes.
func Vigors() []Vigor { return vigorNames.List() }

// MarshalText returns the name of the class.
func (v Vigor) MarshalText() ([]byte, error) { return vigorNames.Marshal(v) }

// UnmarshalText reads "healthy", "slow", "unhealthy", "not judged" or nothing,
// which is not judged. Another name is an error that tells the nearest.
func (v *Vigor) UnmarshalText(text []byte) error { return vigorNames.Unmarshal(v, text) }

// Species is the kind of tree. Be sure of it before drilling: mark the trees
// while they are in leaf (Ohio State University Extension F-36).
type Species uint8

// The species that are told apart here. The zero value stands for a maple that
// was not told further.
const (
	Maple Species = iota
	SugarMaple
	RedMaple
	SilverMaple
	NorwayMaple
	Boxelder
	BlackWalnut
	Birch
	OtherTree // known, and none of these: see [SpeciesNamed]
)

var speciesNames = enum.Names[Species]{Type: "tapping.Species", Zero: true, Of: []string{
	"maple", "sugar maple", "red maple", "silver maple", "Norway maple",
	"boxelder", "black walnut", "birch", "other tree",
}}

// String returns the name that [Species.UnmarshalText] reads.
func (s Species) String() string { return speciesNames.String(s) }

// AllSpecies lists the species that are told apart here.
func AllSpecies() []Species { return speciesNames.List() }

// MarshalText returns the name of the species.
func (s Species) MarshalText() ([]byte, error) { return speciesNames.Marshal(s) }

// UnmarshalText reads a name as [SpeciesNamed].
func (s *Species) UnmarshalText(text []byte) error {
	named, err := speciesNamed("tapping.Species.UnmarshalText", string(text))
	if err == nil {
		*s = named
	}
	return err
}

// IsMaple reports whether the species is a maple (boxelder is one). The tap
// guidelines speak of maples alone.
func (s Species) IsMaple() bool { return s <= Boxelder }

// Trunk is one stem at breast height. The zero Trunk has no wood and bears no
// tap.
type Trunk struct {
	dbh     units.Length
	species Species
	vigor   Vigor
}

// NewTrunk returns a trunk of the given diameter at breast height.
//
// Range: DBH 0 to 5 m; species and vigor: the constants of this package.
func NewTrunk(dbh units.Length, species Species, vigor Vigor) (Trunk, error) {
	const fn = "tapping.NewTrunk"
	if err := diameterRange.CheckAs(fn, "dbh", float64(dbh)); err != nil {
		return Trunk{}, err
	}
	if err := limit.Count(fn, "species", int(species), 0, int(OtherTree), "choose one that is listed"); err != nil {
		return Trunk{}, err
	}
	if err := limit.Count(fn, "vigor", int(vigor), 0, int(Unhealthy), "choose one that is listed"); err != nil {
		return Trunk{}, err
	}
	return Trunk{dbh, species, vigor}, nil
}

// DBH returns the diameter at breast height.
func (t Trunk) DBH() units.Length { return t.dbh }

// Species returns the species.
func (t Trunk) Species() Species { return t.species }

// Vigor returns the class of vigor.
func (t Trunk) Vigor() Vigor { return t.vigor }

// BasalArea returns the cross section at breast height.
//
// Formula: pi/4 D^2. Check value: a 12 in trunk has 0.7854 ft2.
func (t Trunk) BasalArea() units.Area { return math.Pi / 4 * t.dbh.Times(t.dbh) }

// Tree is a tree of one or more stems. Stems that part below breast height are
// trunks of their own, each with its own girth; a tree that forks higher up is
// one trunk, measured below the swelling of the fork (common practice in
// measuring woods).
type Tree struct {
	Label string
	Stems []Trunk
}

// Taps returns the taps of all stems together by the guideline. It stops at
// the first stem that the guideline does not cover and returns its error.
func (t Tree) Taps(g Guideline) (int, error) {
	sum := 0
	for _, s := range t.Stems {
		n, err := s.Taps(g)
		if err != nil {
			return 0, err
		}
		sum += n
	}
	return sum, nil
}
