package book

import (
	"fmt"
	"maps"
)

// Files returns every generated file by its path from the root, which is where
// the tree stands.
func Files(root string) (map[string]string, error) {
	files := map[string]string{}
	for _, part := range []func(root string) (map[string]string, error){validation, bibliography, seasonPage, uncertainty} {
		made, err := part(root)
		if err != nil {
			return nil, fmt.Errorf("book: %w", err)
		}
		maps.Copy(files, made)
	}
	return files, nil
}

// made heads every generated page.
const made = "<!-- Made by go test -update . and held to it by the tests: change internal/proving/book. -->\n\n"
