package cli

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
)

// Save writes a file named by a flag, or leaves the old one as it was. An old
// file keeps its permissions, a link stays a link, and what is no file of a disk,
// such as a pipe or a device, is written to and not replaced.
func Save(flagName, path string, content []byte) error {
	if err := save(path, content); err != nil {
		return For(flagName, fmt.Errorf("%s: %w", path, cause(err)))
	}
	return nil
}

func save(path string, content []byte) error {
	mode := fs.FileMode(0o644)
	if to, err := filepath.EvalSymlinks(path); err == nil {
		path = to
	}
	switch old, err := os.Stat(path); {
	case err != nil:
	case old.IsDir():
		return errors.New("is a directory")
	case !old.Mode().IsRegular():
		return through(path, content)
	default:
		mode = old.Mode().Perm()
	}
	tmp, err := os.CreateTemp(filepath.Dir(path), ".unfinished-*")
	if err != nil {
		return err
	}
	_, err = tmp.Write(content)
	err = errors.Join(err, tmp.Chmod(mode), tmp.Close())
	if err == nil {
		err = os.Rename(tmp.Name(), path)
	}
	if err != nil {
		return errors.Join(err, os.Remove(tmp.Name()))
	}
	return nil
}

// through writes to a pipe or a device.
func through(path string, content []byte) error {
	f, err := os.OpenFile(path, os.O_WRONLY, 0)
	if err != nil {
		return err
	}
	_, err = f.Write(content)
	return errors.Join(err, f.Close())
}

// cause is an error without the name of a file that the user does not know.
func cause(err error) error {
	var p *fs.PathError
	if errors.As(err, &p) {
		return p.Err
	}
	var l *os.LinkError
	if errors.As(err, &l) {
		return l.Err
	}
	return err
}
