//go:build !js

package build_test

import (
	"bytes"
	"compress/flate"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"github.com/fairmiter/fairmiter/site/internal/build"
)

// program panics, collects garbage from a deep stack and recovers: what the
// tables that stay are for.
const program = `package main

import ("fmt"; "runtime"; "strings")

func deep(n int, keep []string) int {
	defer func() { _ = recover() }()
	keep = append(keep, strings.Repeat("x", n))
	if n == 0 {
		runtime.GC()
		panic("at the bottom")
	}
	deep(n-1, keep)
	return len(keep[0]) + n
}

func main() {
	_, file, line, _ := runtime.Caller(0)
	fmt.Println(deep(500, nil), file, line)
}
`

// TestStripLines: a stripped program is as long, compresses better, and runs as
// before but for not knowing its lines.
func TestStripLines(t *testing.T) {
	dir := t.TempDir()
	source, name := filepath.Join(dir, "main.go"), filepath.Join(dir, "a.wasm")
	if err := os.WriteFile(source, []byte(program), 0o644); err != nil {
		t.Fatal(err)
	}
	c := exec.CommandContext(t.Context(), "go", "build", "-ldflags=-s -w", "-o", name, source)
	c.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm")
	if out, err := c.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	before, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	after, err := build.StripLines(before)
	if err != nil {
		t.Fatal(err)
	}
	if len(after) != len(before) {
		t.Errorf("%d bytes became %d", len(before), len(after))
	}
	if a, b := squeezed(before), squeezed(after); b > a*95/100 {
		t.Errorf("compressed, %d bytes became no less than %d", a, b)
	}
	if again, err := build.StripLines(after); err != nil || !bytes.Equal(again, after) {
		t.Errorf("stripped twice it differs (%v)", err)
	}
	root, err := build.Root(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	if _, err := exec.LookPath("node"); err != nil {
		if os.Getenv("FAIRMITER_CI") == "1" {
			t.Fatal(err)
		}
		return // it is run in browsers too
	}
	stripped := filepath.Join(dir, "b.wasm")
	if err := os.WriteFile(stripped, after, 0o644); err != nil {
		t.Fatal(err)
	}
	out, err := exec.CommandContext(t.Context(), filepath.Join(root, "lib", "wasm", "go_js_wasm_exec"), stripped).CombinedOutput()
	if want := "1000 ? 0\n"; err != nil || string(out) != want {
		t.Errorf("it printed %q (%v), want %q", out, err, want)
	}
}

func squeezed(data []byte) int {
	var b bytes.Buffer
	w, _ := flate.NewWriter(&b, 6)
	w.Write(data)
	w.Close()
	return b.Len()
}

// TestStripLinesRefuses: what is no module, and a module that is cut short or
// without a table, is an error and no panic.
func TestStripLinesRefuses(t *testing.T) {
	const head = "\x00asm\x01\x00\x00\x00"
	table := "\xf1\xff\xff\xff\x00\x00\x01\x08"
	for name, text := range map[string]string{
		"nothing":              "",
		"no module":            "MZ",
		"only a head":          head,
		"a section too long":   head + "\x0a\xff\x01",
		"no data":              head + "\x0b\x01\x00",
		"data elsewhere":       head + "\x0b\x02\x01\x01",
		"data cut short":       head + "\x0b\x08\x01\x00\x41\x00\x0b\x09ab",
		"no table":             head + "\x0b\x08\x01\x00\x41\x00\x0b\x02ab",
		"a table cut short":    head + "\x0b\x0e\x01\x00\x41\x00\x0b\x08" + table,
		"an address too large": head + "\x0b\x0c\x01\x00\x41\xff\xff\xff\xff\x07\x0b\x02ab",
	} {
		if _, err := build.StripLines([]byte(text)); err == nil {
			t.Errorf("%s is taken", name)
		}
	}
}

// FuzzStripLines: no bytes make it panic.
func FuzzStripLines(f *testing.F) {
	f.Add([]byte("\x00asm\x01\x00\x00\x00\x0b\x0e\x01\x00\x41\x00\x0b\x08\xf1\xff\xff\xff\x00\x00\x01\x08"))
	f.Add(small())
	f.Fuzz(func(t *testing.T, data []byte) {
		if after, err := build.StripLines(data); err == nil && len(after) != len(data) {
			t.Errorf("%d bytes became %d", len(data), len(after))
		}
	})
}

// small is a module with a table of one function that has a file, a line and a
// stack table.
func small() []byte {
	le := func(n int, bytes int) []byte {
		out := make([]byte, bytes)
		for i := range out {
			out[i] = byte(n >> (8 * i))
		}
		return out
	}
	tables := "\x00\x02\x01\x00\x04\x01\x00\x06\x01\x00"
	memory := []byte("\xf1\xff\xff\xff\x00\x00\x01\x08")
	for _, n := range []int{1, 1, 0, 72, 72, 72, 72, 72 + len(tables)} {
		memory = append(memory, le(n, 8)...)
	}
	memory = append(memory, tables...)
	memory = append(append(memory, le(0, 4)...), le(8, 4)...)
	for _, n := range []int{0, 0, 0, 0, 1, 4, 7, 0, 0, 9, 0} { // the stack, the file, the line at 1, 4, 7
		memory = append(memory, le(n, 4)...)
	}
	data := append([]byte("\x01\x00\x41\x00\x0b"), byte(len(memory)|0x80), byte(len(memory)>>7))
	data = append(data, memory...)
	module := append([]byte("\x00asm\x01\x00\x00\x00\x0b"), byte(len(data)|0x80), byte(len(data)>>7))
	return append(module, data...)
}

// TestStripLinesSmall takes exactly the file, the line and the first line out of
// a table of one function.
func TestStripLinesSmall(t *testing.T) {
	before := small()
	after, err := build.StripLines(before)
	if err != nil {
		t.Fatal(err)
	}
	at := bytes.Index(before, []byte("\x00\x02\x01\x00\x04\x01\x00\x06\x01\x00"))
	if got, want := string(after[at:at+10]), "\x00\x02\x01\x00\x00\x00\x00\x00\x00\x00"; got != want {
		t.Errorf("tables %q, want %q", got, want)
	}
	record := at + 10 + 8
	if got, want := after[record+16:record+28], "\x01\x00\x00\x00\x00\x00\x00\x00\x00\x00\x00\x00"; string(got) != want {
		t.Errorf("record %q, want %q", got, want)
	}
	if after[record+36] != 0 {
		t.Error("the first line is left")
	}
}
