package finish

import "errors"

// Ordinary outcomes of a boil, for which there is no number to return. They come
// with a [*example.org/sapreckoner/units.RangeError] that tells the way out: ask for them by errors.Is.
var (
	// ErrCoalsFinish is that of [Batch.LastFiring]: no more wood, for the coals
	// alone take the batch to the target or beyond it.
	ErrCoalsFinish = errors.New("the coals alone finish it")
	// ErrBurns is that of [Batch.After], [Batch.Coast] and [Batch.CoastOn]: the
	// batch would pass 92 Brix, where it is hard candy and then burns.
	ErrBurns = errors.New("it burns")
	// ErrFewReadings is that of [Watch.Outlook]: fewer than two readings since the
	// last setback make no line. Wait for another.
	ErrFewReadings = errors.New("too few readings for a line")
)
