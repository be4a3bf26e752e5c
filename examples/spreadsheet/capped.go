package main

import (
	"errors"
	"fmt"
	"io"
)

// maxRecord is far more than a line of readings takes, in bytes, with what
// encoding/csv reads ahead.
const maxRecord = 1 << 16

var errLong = errors.New("a line longer than " + fmt.Sprint(maxRecord/1024) + " KiB: this is not a table of readings")

// A capped reader ends a file of which one record does not end: encoding/csv
// would hold all of it. Set read to zero before each record.
type capped struct {
	in   io.Reader
	read int // bytes since
}

func (c *capped) Read(p []byte) (int, error) {
	if c.read >= maxRecord {
		return 0, errLong
	}
	n, err := c.in.Read(p)
	c.read += n
	return n, err
}
