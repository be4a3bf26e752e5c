package cli

import (
	"cmp"
	"math"
	"slices"
	"strconv"
	"strings"
)

// Total shows a total to n digits, and never coarser than a whole one, so that
// its parts can be shown beside it: see [AddUp].
func Total(n int, v Value) Value {
	return Value{v.us.fixed(n), v.metric.fixed(n)}
}

// AddUp shows the parts of a total to the last digit of [Total], and so that what
// is printed adds up, in both systems of units: each part is rounded down, and
// those that lose most get one of the last digit more (the method of the largest
// remainders; at a tie the first ones). No part is then off by a whole one of its
// last digit. What nobody knows stays so. Parts of a total that is nothing or that
// nobody knows stay as they are; those that do not make the total are rounded each
// by itself.
func AddUp(n int, total Value, parts ...Value) []Value {
	return inBoth(total, parts, func(total view, parts []view) { addUp(total, parts, total.decimals(n)) })
}

// inBoth has the parts of a total shown in both systems of units.
func inBoth(total Value, parts []Value, show func(total view, parts []view)) []Value {
	us, metric := make([]view, len(parts)), make([]view, len(parts))
	for i, p := range parts {
		us[i], metric[i] = p.us, p.metric
	}
	show(total.us, us)
	show(total.metric, metric)
	shown := make([]Value, len(parts))
	for i := range parts {
		shown[i] = Value{us[i], metric[i]}
	}
	return shown
}

// addUp shows parts to so many decimals.
func addUp(total view, parts []view, decimals int) {
	const whole = 1e15 // beyond it the last digit of a float64 is no fraction
	step := math.Pow10(decimals)
	var order []int
	sum, ok := total.json.(float64)
	if !ok || sum == 0 || math.Abs(sum)*step >= whole {
		return
	}
	down, missing := make([]float64, len(parts)), math.Round(sum*step)
	for i, p := range parts {
		if x, ok := p.json.(float64); ok {
			down[i] = math.Floor(x*step + hair)
			missing -= down[i]
			order = append(order, i)
		}
	}
	left := func(i int) float64 { return math.Round((parts[i].json.(float64)*step - down[i]) / hair) }
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(left(b), left(a)) })
	for k, i := range order {
		x := parts[i].json.(float64)
		if missing >= 0 && missing <= float64(len(order)) {
			x = down[i] / step
			if float64(k) < missing {
				x = (down[i] + 1) / step
			}
		}
		parts[i].text = parts[i].written(x, decimals)
	}
}

// decimals is how many decimals n digits of the number have.
func (v view) decimals(n int) int {
	const most = 6
	x, ok := v.json.(float64)
	if !ok || x == 0 {
		return 0
	}
	return min(max(n-1-magnitude(x), 0), most)
}

// fixed shows the number to n digits, and nothing as it is.
func (v view) fixed(n int) view {
	if x, ok := v.json.(float64); ok && x != 0 {
		v.text = v.written(x, v.decimals(n))
	}
	return v
}

// written is a number with the unit of the view.
func (v view) written(x float64, decimals int) string {
	text := decimal(x, decimals)
	if _, unit, ok := strings.Cut(v.text, " "); ok {
		text += " " + unit
	}
	return text
}

// Split shows the parts of a value that is printed already, a part of a total itself, to
// its last digit and so that they add up to it: see [AddUp].
func Split(printed Value, parts ...Value) []Value {
	return inBoth(printed, parts, view.split)
}

func (v view) split(parts []view) {
	x, decimals, ok := v.printed()
	switch {
	case ok && x != 0:
		addUp(view{json: x}, parts, decimals)
	case ok: // of nothing each is nothing, but for what makes no part of it
		for i, p := range parts {
			if y, known := p.json.(float64); known {
				parts[i].text = p.written(y, decimals)
			}
		}
	}
}

// printed is the number that the view prints, and its decimals.
func (v view) printed() (x float64, decimals int, ok bool) {
	text, _, _ := strings.Cut(v.text, " ")
	_, fraction, _ := strings.Cut(text, ".")
	x, err := strconv.ParseFloat(text, 64)
	return x, len(fraction), err == nil
}

// Sum adds values of one kind as they are printed. What is not known stays so.
func Sum(first Value, more ...Value) Value {
	for _, v := range more {
		first = Value{first.us.plus(v.us), first.metric.plus(v.metric)}
	}
	return first
}

func (v view) plus(w view) view {
	x, decimals, known := v.printed()
	y, more, too := w.printed()
	if !known || !too {
		v.text, v.json = "-", nil
		return v
	}
	v.json, v.text = x+y, v.written(x+y, max(decimals, more))
	return v
}
