// Pocket builds one HTML file for a phone: the answers of the sugarhouse, with
// the library itself inside as WebAssembly. It is opened from the phone's own
// storage and needs no network, no account and no install.
//
//	go -C examples/pocket run . -out "$PWD/pocket.html"
//	go -C examples/pocket run . -serve :8443 -cert cert.pem -key key.pem
package main

import (
	"bytes"
	"errors"
	"io"

	"example.org/sapreckoner/examples/internal/cli"
)

func main() { program().Exit() }

func program() cli.Program {
	return cli.Program{
		Name: "pocket",
		Does: "Builds one HTML file for a phone, with the library inside: is it syrup, tonight's boil, writing it down, mending and jars, tomorrow, a tree, the wall card's numbers. Copy it to the phone and open it there. It needs no network. Or serve it: over https that the phone trusts it is kept there and opens without network.",
		Calls: []string{
			`go -C examples/pocket run . -out "$PWD/pocket.html"`,
			`go -C examples/pocket run . -serve :8443 -cert "$PWD/cert.pem" -key "$PWD/key.pem"`,
			`go -C examples/pocket run . -serve :8080`,
		},
		Reads: `-C moves to the folder of the program: paths are then whole, as with $PWD, or counted from there.
-cert, -key: the certificate of this computer's name and its key, as PEM. A phone keeps the page only if it trusts the certificate.`,
		Apart:   true,
		Caution: "The page counts and watches nothing: stay with a pan or a pot that is over a fire. Its alarm is silent while the phone's screen is off.",
		Setup: func(f *cli.Flags) func(*cli.Env) error {
			var out, address, cert, key string
			f.String(&out, "out", "", "file to write the page to, such as pocket.html")
			f.String(&address, "serve", "", "serve the page at this address until stopped, such as :8080")
			f.String(&cert, "cert", "", "certificate for https; give -key too")
			f.String(&key, "key", "", "key of the certificate")
			return func(e *cli.Env) error {
				switch {
				case (cert == "") != (key == ""):
					return cli.For("cert", errors.New("give -cert and -key together"))
				case cert != "" && address == "":
					return cli.For("cert", errors.New("give -serve too"))
				case (out == "") == (address == ""):
					return cli.For("out", errors.New("give -out FILE to build the page, or -serve ADDRESS to serve it"))
				}
				page, err := build()
				if err != nil {
					return err
				}
				if address != "" {
					return serve(e, page, address, cert, key)
				}
				return e.Save("out", out, ours, func(w io.Writer) error {
					_, err := w.Write(page)
					return err
				})
			}
		},
	}
}

// mark is near the beginning of each page, by which an older one is known.
const mark = `<meta name="generator" content="sapreckoner pocket">`

// ours tells that a file is a page of this program, which may be replaced.
func ours(old io.ReaderAt, _ int64) bool {
	head := make([]byte, 400)
	n, _ := old.ReadAt(head, 0)
	return bytes.Contains(head[:n], []byte(mark))
}
