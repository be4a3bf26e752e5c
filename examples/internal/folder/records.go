package folder

// Records are the rows of the folder's files, all years.
type Records struct{}

// readRecords reads the CSV files once the settings are read. Mistakes are
// [records.Error], whose File is [House.shown].
func (h *House) readRecords() []error { return nil }

// Season is the year that is asked for, or that of the last date.
func (h *House) Season() int { return h.season }
