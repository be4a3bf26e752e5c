package lookagain_test

import (
	"fmt"
	"math"

	"example.org/sapreckoner/units"
	"example.org/sapreckoner/yield/lookagain"
)

// What a row does not tell is null.
func ExampleRow_MarshalJSON() {
	row := lookagain.Row{File: "sap.csv", Line: 2, Name: "Orchard", Strength: 2.5, Volume: math.NaN(), Price: math.NaN()}
	out, _ := row.MarshalJSON()
	fmt.Println(string(out))
	fmt.Println(row.UnmarshalJSON(out))
	fmt.Println(units.Reason(row.UnmarshalJSON([]byte(`{"Line":2}`)), units.US))
	// Output:
	// {"File":"sap.csv","Line":2,"Whole":"","Day":"0001-01-01T00:00:00Z","Name":"Orchard","Drawn":false,"Packed":false,"Strength":2.5,"Volume":null,"Price":null}
	// <nil>
	// Strength: missing
}

func ExampleList_MarshalJSON() {
	var list lookagain.List
	list.Add(lookagain.Row{Line: 2})
	_, err := list.MarshalJSON()
	fmt.Println(list.String(), "|", units.Reason(err, units.US))
	fmt.Println(list.UnmarshalJSON([]byte("{}")) != nil)
	// Output:
	// 1 row | it has no JSON: encode the rows that it is made of, or its findings
	// true
}

func ExampleKind_UnmarshalText() {
	fmt.Println(lookagain.Kinds())
	var (
		k lookagain.Kind
		l lookagain.Liquid
	)
	fmt.Println(k.UnmarshalText([]byte("far from the usual")), l.UnmarshalText([]byte("syrup")))
	kind, _ := k.MarshalText()
	liquid, _ := l.MarshalText()
	fmt.Println(string(kind), "|", string(liquid), "|", l.String())
	fmt.Println(units.Reason(l.UnmarshalText([]byte("syrop")), units.US))
	// Output:
	// [the same row twice far from the usual out of season a name like another a hidden sign in a name packed before drawn names that were not compared]
	// <nil> <nil>
	// far from the usual | syrup | syrup
	// "syrop": not one of the names: did you mean "syrup"? Use one of: sap, syrup
}
