package main

import (
	"bytes"
	"compress/gzip"
	"embed"
	"encoding/binary"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
)

// The parts of the page. The scripts follow each other in this order.
//
//go:embed page
var parts embed.FS

var scripts = []string{"unpack.js", "state.js", "form.js", "pad.js", "answer.js", "watch.js", "book.js", "tree.js", "house.js", "start.js"}

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
	packed, size, err := pack(wasm)
	if err != nil {
		return nil, err
	}
	return []byte(strings.NewReplacer("{{mark}}", mark, "{{style}}", string(style), "{{glue}}", string(glue),
		"{{script}}", script.String(), "{{wasm}}", packed, "{{size}}", strconv.Itoa(size)).Replace(string(html))), nil
}

// compile builds the library for the browser. What only words answers is not
// inlined: that takes 4 percent off the page.
func compile() ([]byte, error) {
	dir, err := os.MkdirTemp("", "pocket")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	file := filepath.Join(dir, "reckon.wasm")
	cmd := exec.Command("go", "build", "-trimpath", "-ldflags=-s -w", "-gcflags=example.org/sapreckoner/examples/...=-l", "-o", file, "example.org/sapreckoner/examples/pocket/wasm")
	cmd.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm", "GOFLAGS=", "CGO_ENABLED=0")
	if out, err := cmd.CombinedOutput(); err != nil {
		return nil, fmt.Errorf("the library does not build for the browser: run this from its module, as with go -C examples/pocket run . (%w: %s)", err, bytes.TrimSpace(out))
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
func pack(file []byte) (text string, size int, err error) {
	var b bytes.Buffer
	z, err := gzip.NewWriterLevel(&b, gzip.BestCompression)
	if err != nil {
		return "", 0, err
	}
	if _, err := z.Write(file); err != nil {
		return "", 0, err
	}
	if err := z.Close(); err != nil {
		return "", 0, err
	}
	return base85(b.Bytes()), b.Len(), nil
}

// base85 writes four bytes as five signs, of which none means anything in HTML.
// It is a sixteenth shorter than base64. The script unpack.js reads it.
func base85(b []byte) string {
	var signs []byte
	for c := byte('!'); len(signs) < 85; c++ {
		if !strings.ContainsRune("\"&'<>\\`", rune(c)) {
			signs = append(signs, c)
		}
	}
	var out strings.Builder
	out.Grow(len(b)/4*5 + 5)
	for len(b) > 0 {
		var four [4]byte
		n := copy(four[:], b)
		b = b[n:]
		x := binary.BigEndian.Uint32(four[:])
		var five [5]byte
		for i := 4; i >= 0; i-- {
			five[i] = signs[x%85]
			x /= 85
		}
		out.Write(five[:])
	}
	return out.String()
}
