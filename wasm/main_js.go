//go:build js && wasm

package main

import "syscall/js"

// main gives the page its function and stays to answer. The function that the
// page left in fairmiterReady, if any, is then called: from then on the page may
// ask.
func main() {
	bytes := js.Global().Get("Uint8Array")
	var reply []byte // its room serves again
	js.Global().Set("fairmiter", js.FuncOf(func(_ js.Value, args []js.Value) any {
		reply = appendAnswer(reply[:0], dispatch, take(bytes, args))
		out := bytes.New(len(reply))
		js.CopyBytesToJS(out, reply)
		return out
	}))
	if ready := js.Global().Get("fairmiterReady"); ready.Type() == js.TypeFunction {
		ready.Invoke()
	}
	select {}
}

// take copies the one argument, a Uint8Array; of anything else it takes
// nothing, and of one that is too long no more than shows that.
func take(bytes js.Value, args []js.Value) []byte {
	if len(args) != 1 || !args[0].InstanceOf(bytes) {
		return nil
	}
	data := make([]byte, min(args[0].Length(), maxRequest+1))
	js.CopyBytesToGo(data, args[0])
	return data
}
