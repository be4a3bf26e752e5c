// Package browser looks at pages of HTML as a person does: in a browser, and printed.
package browser

import (
	"context"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
	"time"
)

// Need skips a test that is to be short, and where the browser and the readers of PDF
// are not installed, unless SAPRECKONER_BROWSER is "required". They come from Debian:
//
//	apt-get install -y --no-install-recommends chromium poppler-utils fonts-dejavu-core
//
// DejaVu is among the widest fonts that a page may meet.
func Need(t *testing.T) {
	t.Helper()
	if testing.Short() {
		t.Skip("a browser takes long to begin")
	}
	for _, name := range []string{"chromium", "pdfinfo", "pdftotext", "pdftoppm"} {
		if _, err := exec.LookPath(name); err != nil {
			if os.Getenv("SAPRECKONER_BROWSER") == "required" {
				t.Fatal(err)
			}
			t.Skip(err)
		}
	}
}

// Output runs a command that must succeed within two minutes.
func Output(t *testing.T, name string, args ...string) string {
	t.Helper()
	ctx, cancel := context.WithTimeout(t.Context(), 2*time.Minute)
	defer cancel()
	out, err := exec.CommandContext(ctx, name, args...).Output()
	if err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	return string(out)
}

// Open opens a page of HTML in the browser and returns what that says.
func Open(t *testing.T, page string, args ...string) string {
	t.Helper()
	dir := t.TempDir()
	file := filepath.Join(dir, "page.html")
	if err := os.WriteFile(file, []byte(page), 0o600); err != nil {
		t.Fatal(err)
	}
	all := append([]string{"--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
		"--disable-background-networking", "--disable-component-update", "--disable-sync",
		"--user-data-dir=" + filepath.Join(dir, "profile"), "--no-pdf-header-footer"}, args...)
	return Output(t, "chromium", append(all, "file://"+file)...)
}

// Print prints a page of HTML to a PDF and returns its name.
func Print(t *testing.T, page string) string {
	t.Helper()
	pdf := filepath.Join(t.TempDir(), "page.pdf")
	Open(t, page, "--print-to-pdf="+pdf)
	return pdf
}
