package ask

import "testing"

// No place is called clear on a tree that is not tapped, however far from its old
// holes: the two questions of the screen may not contradict each other.
func TestNoPlaceOnABarredTree(t *testing.T) {
	for name, c := range map[string]struct {
		girth, vigor, level string
		next                bool
	}{
		"healthy":   {"58 in", "healthy", "good", true},
		"slow":      {"58 in", "slow", "wait", false},
		"unhealthy": {"58 in", "unhealthy", "stop", false},
		"small":     {"25 in", "healthy", "stop", false}, // 8.0 in through: the guideline taken as usual begins at 12
	} {
		q := Request{Do: "ask", Screen: "tree", Now: "2034-02-10T14:05:09", Finger: &Finger{X: 0.5, Y: 0.5},
			Holes:  []Scar{{Year: 2033, Along: "1 in", Height: "42 in"}},
			Fields: map[string][2]string{"girth": {c.girth, ""}, "vigor": {c.vigor, ""}}}
		r := q.Answer()
		if r.Error != "" || len(r.Errors) > 0 || len(r.Answers) != 2 {
			t.Fatalf("%s: %s %v", name, r.Error, r.Errors)
		}
		taps, hole := r.Answers[0], r.Answers[1]
		if taps.Level != c.level || hole.Level != c.level {
			t.Errorf("%s: the taps say %q, the place %q, want %q", name, taps.Verdict, hole.Verdict, c.level)
		}
		if len(hole.Trunk.Next) > 0 != c.next || hole.Trunk.Finger.Fine != c.next {
			t.Errorf("%s: a place is shown as clear: %v, %v", name, hole.Trunk.Next, hole.Trunk.Finger)
		}
	}
}
