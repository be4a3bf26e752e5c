package cli

import (
	"errors"
	"os"
	"path/filepath"
)

// Save writes a file named by a flag, or leaves the old one as it was.
func Save(flagName, path string, content []byte) error {
	tmp, err := os.CreateTemp(filepath.Dir(path), ".unfinished-*")
	if err != nil {
		return For(flagName, err)
	}
	_, err = tmp.Write(content)
	err = errors.Join(err, tmp.Chmod(0o644), tmp.Close())
	if err == nil {
		err = os.Rename(tmp.Name(), path)
	}
	if err != nil {
		return For(flagName, errors.Join(err, os.Remove(tmp.Name())))
	}
	return nil
}
