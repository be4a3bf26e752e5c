package main

import (
	"bytes"
	"compress/gzip"
	"embed"
	"encoding/base64"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// The parts of the page. The scripts follow each other in this order.
//
//go:embed page
var parts embed.FS

var scripts = []string{"state.js", "form.js", "pad.js", "answer.js", "watch.js", "book.js", "tree.js", "house.js", "start.js"}

// build makes the page.
func build() ([]byte, error) {
	wasm, err := compile()
	if err != nil {
		return nil, err
	}
	glue, err := glue()
	if err != nil {
		return nil, err
	}
	html, err := parts.ReadFile("page/page.html")
	if err != nil {
		return nil, err
	}
	style, err := parts.ReadFile("page/page.css")
	if err != nil {
		return nil, err
	}
	var script bytes.Buffer
	for _, name := range scripts {
		part, err := parts.ReadFile("page/" + name)
		if err != nil {
			return nil, err
		}
		script.Write(part)
	}
	packed, err := pack(wasm)
	if err != nil {
		return nil, err
	}
	return []byte(strings.NewReplacer("{{mark}}", mark, "{{style}}", string(style), "{{glue}}", string(glue),
		"{{script}}", script.String(), "{{wasm}}", packed).Replace(string(html))), nil
}

// compile builds the library for the browser.
func compile() ([]byte, error) {
	dir, err := os.MkdirTemp("", "pocket")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	file := filepath.Join(dir, "reckon.wasm")
	cmd := exec.Command("go", "build", "-trimpath", "-ldflags=-s -w", "-o", file, "example.org/sapreckoner/examples/pocket/wasm")
	cmd.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm", "GOFLAGS=", "CGO_ENABLED=0")
	if out, err := cmd.CombinedOutput(); err != nil {
		return nil, fmt.Errorf("the library does not build for the browser: %w: %s", err, bytes.TrimSpace(out))
	}
	return os.ReadFile(file)
}

// glue is the script of the Go release that starts its WebAssembly.
func glue() ([]byte, error) {
	root, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		return nil, fmt.Errorf("the go command does not answer: %w", err)
	}
	return os.ReadFile(filepath.Join(strings.TrimSpace(string(root)), "lib", "wasm", "wasm_exec.js"))
}

// pack is a file as text for the page.
func pack(file []byte) (string, error) {
	var b bytes.Buffer
	z, err := gzip.NewWriterLevel(&b, gzip.BestCompression)
	if err != nil {
		return "", err
	}
	if _, err := z.Write(file); err != nil {
		return "", err
	}
	if err := z.Close(); err != nil {
		return "", err
	}
	return base64.StdEncoding.EncodeToString(b.Bytes()), nil
}
