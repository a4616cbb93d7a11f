//go:build !(js && wasm)

package main

// main is for a build that no page can load.
func main() {
	panic("this is the program of a page: build it with GOOS=js GOARCH=wasm, or use go run ./site")
}
