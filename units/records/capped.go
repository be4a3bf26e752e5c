package records

import (
	"bytes"
	"fmt"
	"io"
)

var (
	errTooLong = fmt.Errorf("a record longer than %d KiB: this is not a table of numbers", MaxRecord>>10)
	errRemarks = fmt.Errorf("more than %d MiB of lines that begin with #: this is not a table of numbers", MaxRemarks>>20)
)

// capped fails when one record does not end, which the CSV reader would hold
// whole. Lines that begin with # are passed over and not held: only each of
// them, and all before one record, are bounded. The CSV reader reads ahead by
// its buffer, which makes the caps looser by those few kilobytes.
type capped struct {
	r             io.Reader
	left, remarks int // bytes until the next record

	inside bool // a line: the next byte does not begin one
	quoted bool // a line break here belongs to a cell
	remark int  // bytes of the line that begins with #; 0 in another
}

// next begins a record.
func (c *capped) next() { c.left, c.remarks = MaxRecord, MaxRemarks }

func (c *capped) Read(p []byte) (int, error) {
	switch {
	case c.left <= 0 || c.remark > MaxRecord:
		return 0, errTooLong
	case c.remarks <= 0:
		return 0, errRemarks
	}
	n, err := c.r.Read(p[:min(len(p), MaxRecord)])
	for rest := p[:n]; len(rest) > 0; {
		line, ends := rest, false
		if i := bytes.IndexByte(rest, '\n'); i >= 0 {
			line, ends = rest[:i+1], true
		}
		rest = rest[len(line):]
		c.count(line)
		c.inside = !ends
		if ends {
			c.remark = 0
		}
	}
	return n, err
}

// count counts a line, or a piece of one.
func (c *capped) count(line []byte) {
	if c.remark > 0 || !c.inside && !c.quoted && line[0] == '#' {
		c.remark += len(line)
		c.remarks -= len(line)
		return
	}
	c.left -= len(line)
	if bytes.Count(line, []byte{'"'})%2 != 0 {
		c.quoted = !c.quoted
	}
}
