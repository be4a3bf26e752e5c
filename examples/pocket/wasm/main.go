//go:build js && wasm

// Wasm is package ask behind one JavaScript function, which takes and gives
// plain objects.
package main

import (
	"fmt"
	"syscall/js"

	"example.org/sapreckoner/examples/pocket/internal/ask"
)

func main() {
	js.Global().Set("reckon", js.FuncOf(func(_ js.Value, args []js.Value) (reply any) {
		// A panic would end the library, and with it every other answer of the page.
		defer func() {
			if r := recover(); r != nil {
				reply = toJS(ask.Reply{Error: fmt.Sprint("this cannot be answered: ", r)})
			}
		}()
		var q ask.Request
		fromJS(args[0], &q)
		return toJS(q.Answer())
	}))
	js.Global().Call("reckonerReady")
	select {} // the function lives as long as the page
}
