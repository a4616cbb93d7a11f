//go:build race || js || amd64.v3

package framing_test

// Fewer orders are drawn under the race detector and in WebAssembly, where each takes
// longer, and for newer processors: the whole number is drawn once a run.
func init() { slow = true }
