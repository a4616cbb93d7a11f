//go:build race || js

package framing_test

// Under the race detector and in WebAssembly fewer orders are drawn.
func init() { slow = true }
