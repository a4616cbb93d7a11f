//go:build !js

package build_test

import (
	"encoding/json"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/fairmiter/fairmiter/site/internal/build"
)

const index = "<!DOCTYPE html>\n<html lang=\"en\"><head>\n<meta charset=\"utf-8\">\n<script src=\"a.js\"></script></head></html>\n"

func pageOf(files map[string]string) fstest.MapFS {
	page := make(fstest.MapFS)
	for name, text := range files {
		page[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return page
}

func assemble(t *testing.T, files map[string]string) (build.Files, build.List) {
	t.Helper()
	made, err := build.Assemble(pageOf(files), []byte("module"), []byte("glue"))
	if err != nil {
		t.Fatal(err)
	}
	var list build.List
	if err := json.Unmarshal(made[build.ListName], &list); err != nil {
		t.Fatal(err)
	}
	return made, list
}

func TestAssemble(t *testing.T) {
	files := map[string]string{"index.html": index, "sw.js": "1 @version@", "font/a.woff2": "f"}
	made, list := assemble(t, files)
	if want := []string{"fairmiter.wasm", "files.json", "font/a.woff2", "index.html", "sw.js", "wasm_exec.js"}; !slices.Equal(made.Names(), want) {
		t.Errorf("files %q, want %q", made.Names(), want)
	}
	if want := []string{"fairmiter.wasm", "font/a.woff2", "index.html", "wasm_exec.js"}; !slices.Equal(list.Files, want) {
		t.Errorf("listed %q, want %q", list.Files, want)
	}
	if got := string(made["sw.js"]); got != "1 "+list.Version {
		t.Errorf("the worker is %q, not of version %s", got, list.Version)
	}
	policy := strings.Index(string(made["index.html"]), `<meta http-equiv="Content-Security-Policy" content="default-src 'none';`)
	if policy < 0 || policy > strings.Index(string(made["index.html"]), "<script") {
		t.Errorf("no policy before the scripts in\n%s", made["index.html"])
	}

	if _, again := assemble(t, files); again.Version != list.Version {
		t.Error("the same files have another version")
	}
	seen := map[string]bool{list.Version: true}
	for _, change := range []struct{ name, text string }{{"sw.js", "2 @version@"}, {"font/a.woff2", "g"}, {"a.txt", ""}} {
		changed := map[string]string{change.name: change.text}
		for name, text := range files {
			if _, there := changed[name]; !there {
				changed[name] = text
			}
		}
		_, list := assemble(t, changed)
		if seen[list.Version] {
			t.Errorf("with another %s the version is an old one", change.name)
		}
		seen[list.Version] = true
	}
}

func TestAssembleRefuses(t *testing.T) {
	for _, row := range []struct {
		name  string
		files map[string]string
		want  string
	}{
		{"no index", map[string]string{"a.txt": ""}, "no index.html"},
		{"unknown type", map[string]string{"index.html": index, "a.exe": ""}, "a.exe"},
		{"no type", map[string]string{"index.html": index, "a": ""}, "a: nothing says"},
		{"a module", map[string]string{"index.html": index, "fairmiter.wasm": ""}, "fairmiter.wasm, which the build adds"},
		{"a list", map[string]string{"index.html": index, "files.json": ""}, "files.json, which the build adds"},
		{"a glue", map[string]string{"index.html": index, "wasm_exec.js": ""}, "wasm_exec.js, which the build adds"},
		{"no place for the version", map[string]string{"index.html": index, "sw.js": "version"}, "sw.js has 0 places"},
		{"two places for it", map[string]string{"index.html": index, "sw.js": "@version@ @version@"}, "sw.js has 2 places"},
		{"a policy", map[string]string{"index.html": strings.Replace(index, "<script", `<meta http-equiv="content-security-policy"><script`, 1)}, "policy of its own"},
		{"no characters", map[string]string{"index.html": "<!DOCTYPE html>"}, `needs <meta charset="utf-8">`},
		{"characters too late", map[string]string{"index.html": `<script src="a.js"></script><meta charset="utf-8">`}, "before anything"},
	} {
		t.Run(row.name, func(t *testing.T) {
			if _, err := build.Assemble(pageOf(row.files), nil, nil); err == nil || !strings.Contains(err.Error(), row.want) {
				t.Errorf("error %v, want one with %q", err, row.want)
			}
		})
	}
}

func TestGlue(t *testing.T) {
	root, err := build.Root(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	if glue, err := build.Glue(root); err != nil || !strings.Contains(string(glue), "globalThis.Go = class") {
		t.Errorf("the toolchain's glue: %v", err)
	}
	empty := t.TempDir()
	want := filepath.Join(empty, "lib", "wasm", "wasm_exec.js")
	if _, err := build.Glue(empty); err == nil || !strings.Contains(err.Error(), "lacks "+want) {
		t.Errorf("without a glue: %v, want one that names %s", err, want)
	}
	if err := os.MkdirAll(filepath.Dir(want), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(want, []byte("\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	if _, err := build.Glue(empty); err == nil || !strings.Contains(err.Error(), want+" is empty") {
		t.Errorf("with an empty glue: %v", err)
	}
}

func TestTypes(t *testing.T) {
	for name, want := range map[string]string{
		"a.wasm": "application/wasm", "b/c.js": "text/javascript; charset=utf-8", "a.webmanifest": "application/manifest+json",
		"a.woff2": "font/woff2", "a.svg": "image/svg+xml", "a.WASM": "", "js": "", "": "",
	} {
		if got := build.Type(name); got != want {
			t.Errorf("%s is %q, want %q", name, got, want)
		}
	}
}
