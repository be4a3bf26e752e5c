package records

// Cells returns the record read last as the file has it, every column of it: to
// pass on what nobody asked for. Before the first Next it is the header. It is
// good until the next Next, and not to be changed.
func (r *Reader) Cells() []string { return r.row }
