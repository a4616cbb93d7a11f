//go:build !js

package main

import (
	"bytes"
	"context"
	"fmt"
	"io"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/fairmiter/fairmiter/site/internal/build"
)

// contextOfTests outlasts a single test, as what is built once does.
var contextOfTests = context.Background()

func sample() build.Files {
	return build.Files{
		"index.html": []byte("<!DOCTYPE html>"), "sw.js": []byte(strings.Repeat("// a line\n", 50)), "font/a.woff2": []byte("font"),
		"files.json": []byte(`{"version": "1", "files": ["index.html", "font/a.woff2"]}`),
	}
}

// TestWrite: a folder gets the files, and a page written before gives way.
func TestWrite(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "page")
	var out bytes.Buffer
	if err := write(dir, sample(), &out); err != nil {
		t.Fatal(err)
	}
	for name, want := range sample() {
		if got, err := os.ReadFile(filepath.Join(dir, name)); err != nil || !bytes.Equal(got, want) {
			t.Errorf("%s: %q, %v", name, got, err)
		}
	}
	if _, err := os.Stat(filepath.Join(dir, "sw.js.gz")); err != nil {
		t.Error(err)
	}
	next := build.Files{"index.html": []byte("new"), "files.json": []byte(`{"version": "2", "files": ["index.html"]}`)}
	if err := write(dir, next, &out); err != nil {
		t.Fatal(err)
	}
	for _, gone := range []string{"font/a.woff2", "sw.js", "sw.js.gz"} {
		if _, err := os.Stat(filepath.Join(dir, gone)); !os.IsNotExist(err) {
			t.Errorf("%s is left: %v", gone, err)
		}
	}
	if !strings.HasPrefix(out.String(), "4 files, ") {
		t.Errorf("said %q", out.String())
	}
}

// TestWriteRefuses: nothing of another is overwritten.
func TestWriteRefuses(t *testing.T) {
	for _, row := range []struct{ name, file, text, want string }{
		{"another's folder", "letter.txt", "dear", "holds other files"},
		{"another's list", "files.json", `{"files": []}`, "not one of ours"},
		{"no list", "files.json", `[`, "not one of ours"},
		{"a list that reaches out", "files.json", `{"version": "1", "files": ["../letter.txt"]}`, "names a file elsewhere"},
	} {
		dir := t.TempDir()
		if err := os.WriteFile(filepath.Join(dir, row.file), []byte(row.text), 0o644); err != nil {
			t.Fatal(err)
		}
		if err := write(dir, sample(), io.Discard); err == nil || !strings.Contains(err.Error(), row.want) {
			t.Errorf("%s: %v, want %q", row.name, err, row.want)
		}
		if got, err := os.ReadFile(filepath.Join(dir, row.file)); err != nil || string(got) != row.text {
			t.Errorf("%s: the file is %q (%v)", row.name, got, err)
		}
	}
}

func TestArguments(t *testing.T) {
	for _, row := range []struct{ args, want string }{
		{"here", "nothing is expected"},
		{"-frames a;b", "-frames"},
		{"-port many", "invalid value"},
	} {
		if err := run(t.Context(), os.DirFS("testdata/seam"), strings.Fields(row.args), io.Discard); err == nil || !strings.Contains(err.Error(), row.want) {
			t.Errorf("%s: %v, want %q", row.args, err, row.want)
		}
	}
}

// said hands over what the program prints.
type said chan string

func (s said) Write(p []byte) (int, error) { s <- string(p); return len(p), nil }

// TestServe runs the program as one does: it says where it is, answers there, and
// ends when asked to.
func TestServe(t *testing.T) {
	ctx, cancel := context.WithCancel(t.Context())
	defer cancel()
	out, done := make(said, 1), make(chan error, 1)
	go func() { done <- run(ctx, os.DirFS("testdata/seam"), []string{"-port", "0", "-frames", "'self'"}, out) }()
	var url string
	select {
	case text := <-out:
		if _, err := fmt.Sscanf(text, "Fairmiter is at %s", &url); err != nil {
			t.Fatalf("said %q", text)
		}
	case err := <-done:
		t.Fatal(err)
	case <-time.After(3 * time.Minute):
		t.Fatal("it says nothing")
	}
	r, err := http.Get(url + build.ModuleName)
	if err != nil {
		t.Fatal(err)
	}
	r.Body.Close()
	if r.StatusCode != http.StatusOK || r.Header.Get("Content-Type") != "application/wasm" ||
		!strings.HasSuffix(r.Header.Get("Content-Security-Policy"), "frame-ancestors 'self'") {
		t.Errorf("%s, %v", r.Status, r.Header)
	}
	cancel()
	select {
	case err := <-done:
		if err != nil {
			t.Error(err)
		}
	case <-time.After(10 * time.Second):
		t.Error("it does not end")
	}
}
