package folder

import (
	"math"
	"testing"
	"testing/fstest"
	"time"
)

// By hand: 40 and 30 gal less 25 leave 15 and 30; 20 more less 63 of 65 is all of it,
// since 2 are less than a twentieth.
func TestWaiting(t *testing.T) {
	const days = "date,sap_gal,boiled_gal,sugar_brix,lit,out,note\n" +
		"2033-03-01,99,,2,,,another year\n" +
		"2034-03-01,40,,2.1,,,\n2034-03-02,30,25,2.0,,,\n2034-03-04,20,,1.9,,,\n2034-03-05,,63,,,,\n2034-03-06,10,,1.8,,,\n"
	h, err := Open(fstest.MapFS{"sugarhouse.txt": {Data: []byte("gallons: US\n")}, "days.csv": {Data: []byte(days)}}, "", 0)
	if err != nil {
		t.Fatal(err)
	}
	on := func(day int) time.Time { return time.Date(2034, 3, day, 0, 0, 0, 0, time.UTC) }
	for _, c := range []struct {
		day  time.Time
		want []float64
	}{
		{on(1), []float64{40}}, {on(2), []float64{40, 30}}, {on(3), []float64{15, 30}}, {on(5), []float64{15, 30, 20}},
		{on(6), []float64{10}}, {time.Time{}, []float64{10}}, {time.Date(2034, 2, 1, 0, 0, 0, 0, time.UTC), nil},
	} {
		got := h.Waiting(c.day)
		if len(got) != len(c.want) {
			t.Errorf("%v: %v", c.day, got)
			continue
		}
		for i, g := range got {
			if math.Abs(g.Left.USGallons()-c.want[i]) > 1e-9 {
				t.Errorf("%v: %v gal, want %v", c.day, g.Left.USGallons(), c.want[i])
			}
		}
	}
	if day, boiled := h.LastDay(); !day.Equal(on(6)) || boiled {
		t.Errorf("last day %v, %v", day, boiled)
	}
}

// By hand: of 20 in the big tank and 10 in the barrel, 12 thrown out of the big one
// leave 8 and 10 on the same day for its fire, which takes 6 of the older; 11 more
// thrown out of any leave 1 of 12, which is more than a twentieth.
func TestThrownOut(t *testing.T) {
	const days = "date,tank,sap_gal,boiled_gal,thrown_gal\n2034-03-01,barrel,10,,\n2034-03-02,big,20,6,12\n2034-03-03,,,,11\n2034-03-04,big,,,4\n"
	h, err := Open(fstest.MapFS{"sugarhouse.txt": {Data: []byte("gallons: US\n")}, "days.csv": {Data: []byte(days)}}, "", 0)
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		day  int
		want []float64
	}{{1, []float64{10}}, {2, []float64{10, 8}}, {3, []float64{1}}, {4, nil}} {
		got := h.Waiting(time.Date(2034, 3, c.day, 0, 0, 0, 0, time.UTC))
		if len(got) != len(c.want) {
			t.Errorf("%d: %v", c.day, got)
			continue
		}
		for i, g := range got {
			if math.Abs(g.Left.USGallons()-c.want[i]) > 1e-9 {
				t.Errorf("%d: %v gal, want %v", c.day, g.Left.USGallons(), c.want[i])
			}
		}
	}
}

// Sap that is over a week old goes into no fire before the rest did. By hand: on March 9
// the 20 of the 1st are 8 days old and the 30 of the 2nd are 7: a fire of 30 takes the
// latter and leaves the 20; one of 45 on the 10th takes 40 of the 10th first and then 5 of
// the 20, which leaves 15, more than a twentieth.
func TestOldSapGoesLast(t *testing.T) {
	const days = "date,sap_gal,boiled_gal\n2034-03-01,20,\n2034-03-02,30,\n2034-03-09,,30\n2034-03-10,40,45\n"
	h, err := Open(fstest.MapFS{"sugarhouse.txt": {Data: []byte("gallons: US\n")}, "days.csv": {Data: []byte(days)}}, "", 0)
	if err != nil {
		t.Fatal(err)
	}
	on := func(day int) time.Time { return time.Date(2034, 3, day, 0, 0, 0, 0, time.UTC) }
	for day, want := range map[int]float64{9: 50, 10: 60, 11: 15} {
		all, first := 0.0, h.Waiting(on(day))[0]
		for _, g := range h.Waiting(on(day)) {
			all += g.Left.USGallons()
		}
		if math.Abs(all-want) > 1e-9 || !first.Date.Equal(on(1)) || !first.Old(on(day)) || first.Old(on(8)) {
			t.Errorf("on the %d.: %v gal, want %v; %v", day, all, want, first)
		}
	}
}

// What stands in the pan stands there until the next fire.
func TestLeft(t *testing.T) {
	const days = "date,boiled_gal\n2034-03-04,40\n2034-03-06,40\n"
	const pan = "date,compartment,depth_in,brix\n2033-03-03,1,1,9\n2034-03-02,1,1,3\n2034-03-04,1,1.25,5.1\n2034-03-04,2,1,20\n"
	h, err := Open(fstest.MapFS{"sugarhouse.txt": {Data: []byte("gallons: US\n")}, "days.csv": {Data: []byte(days)}, "pan.csv": {Data: []byte(pan)}}, "", 0)
	if err != nil {
		t.Fatal(err)
	}
	for day, want := range map[int]int{1: 0, 3: 1, 4: 1, 5: 2, 6: 2, 7: 0, 0: 0} {
		on := time.Date(2034, 3, day, 0, 0, 0, 0, time.UTC)
		if day == 0 {
			on = time.Time{}
		}
		if got := h.Left(on); len(got) != want {
			t.Errorf("day %d: %v, want %d", day, got, want)
		}
	}
}
