package units

// A Span is a quantity that is known within limits: Low and High hold it two
// times of three where they were learned, and are the ends of a published range
// otherwise. Middle lies between them and is the best guess where there is one.
type Span[Q ~float64] struct {
	Low, Middle, High Q
}

// Left returns what is left of a stock when the span is used up; below zero,
// what is missing.
func (s Span[Q]) Left(stock Q) Span[Q] {
	return Span[Q]{Low: stock - s.High, Middle: stock - s.Middle, High: stock - s.Low}
}
