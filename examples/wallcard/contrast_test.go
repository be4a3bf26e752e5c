package main

import (
	"bytes"
	"image"
	"image/color"
	"image/draw"
	"image/png"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"example.org/sapreckoner/examples/internal/cli/clitest"
	"example.org/sapreckoner/examples/internal/cli/clitest/browser"
)

// The small picture that the README shows; -update draws it.
func TestPrintPicture(t *testing.T) {
	browser.Need(t)
	const most = 120_000 // bytes
	name := filepath.Join("..", "..", "docs", "wallcard")
	if *clitest.Update {
		browser.Output(t, "pdftoppm", "-singlefile", "-png", "-gray", "-r", "90", browser.Print(t, page(t)), name)
		fewGrays(t, name+".png")
	}
	info, err := os.Stat(name + ".png")
	if err != nil {
		t.Fatal(err)
	}
	if info.Size() > most {
		t.Errorf("the picture has %d bytes, want at most %d", info.Size(), most)
	}
}

// fewGrays draws a picture anew in eight grays, which a card of ink on paper
// does not miss and which take half the bytes.
func fewGrays(t *testing.T, name string) {
	t.Helper()
	raw, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	from, err := png.Decode(bytes.NewReader(raw))
	if err != nil {
		t.Fatal(err)
	}
	var grays color.Palette
	for i := range 8 {
		grays = append(grays, color.Gray{Y: uint8(i * 255 / 7)})
	}
	to := image.NewPaletted(from.Bounds(), grays)
	draw.Draw(to, to.Bounds(), from, from.Bounds().Min, draw.Src)
	var b bytes.Buffer
	if err := (&png.Encoder{CompressionLevel: png.BestCompression}).Encode(&b, to); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(name, b.Bytes(), 0o644); err != nil {
		t.Fatal(err)
	}
}

// Every color of the page can be read on its ground: contrast after Web Content
// Accessibility Guidelines 2.1, success criterion 1.4.3 and "contrast ratio".
func TestContrast(t *testing.T) {
	const least = 4.5
	page := page(t)
	ground := regexp.MustCompile(`background: (#[0-9a-f]+)`).FindAllStringSubmatch(page, -1)
	if len(ground) != 1 {
		t.Fatalf("%d grounds, want one", len(ground))
	}
	if bad := regexp.MustCompile(`rgba?\(|hsla?\(|opacity|filter:|color-mix|(color|fill|stroke|background): ?[a-z]+`).FindAllString(
		strings.NewReplacer("color-scheme: light", "", "fill:none", "").Replace(page), -1); bad != nil {
		t.Errorf("colors that this test cannot read: %q", bad)
	}
	colors := regexp.MustCompile(`(?:color|fill|stroke|solid)[: ] ?(#[0-9A-Fa-f]+)`).FindAllStringSubmatch(page, -1)
	if len(colors) < 10 {
		t.Fatalf("only %d colors", len(colors))
	}
	for _, m := range colors {
		if c := contrast(t, m[1], ground[0][1]); !(c >= least) {
			t.Errorf("%s on %s has a contrast of %.2f, want %v", m[1], ground[0][1], c, least)
		}
	}
	// The formula itself: 21 is the most; 4.54 of #767676 on white is commonly
	// cited as the lightest gray that passes.
	if c := contrast(t, "#000", "#ffffff"); math.Abs(c-21) > 1e-9 {
		t.Errorf("black on white has a contrast of %v", c)
	}
	if c := contrast(t, "#767676", "#fff"); math.Abs(c-4.54) > 0.005 {
		t.Errorf("#767676 on white has a contrast of %v", c)
	}
}

func contrast(t *testing.T, a, b string) float64 {
	t.Helper()
	x, y := luminance(t, a), luminance(t, b)
	return (max(x, y) + 0.05) / (min(x, y) + 0.05)
}

// luminance is the relative luminance of an sRGB color.
func luminance(t *testing.T, hex string) float64 {
	t.Helper()
	digits := strings.TrimPrefix(hex, "#")
	if len(digits) == 3 {
		digits = string([]byte{digits[0], digits[0], digits[1], digits[1], digits[2], digits[2]})
	}
	rgb, err := strconv.ParseUint(digits, 16, 24)
	if err != nil || len(digits) != 6 {
		t.Fatalf("%s is not a color", hex)
	}
	linear := func(v uint64) float64 {
		c := float64(v&0xff) / 255
		if c <= 0.04045 {
			return c / 12.92
		}
		return math.Pow((c+0.055)/1.055, 2.4)
	}
	return 0.2126*linear(rgb>>16) + 0.7152*linear(rgb>>8) + 0.0722*linear(rgb)
}
