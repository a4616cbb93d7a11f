// Package build makes the files of the page: what stands in site/page as it is,
// the library as a WebAssembly module, the toolchain's glue for it, and a list of
// all of them for the service worker. The same sources and the same toolchain give
// the same bytes.
package build

import (
	"bytes"
	"context"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"path"
	"slices"
)

// What the build adds to the page's own files.
const (
	ModuleName = "fairmiter.wasm" // the library, but for frames that are no plain rectangle
	ShapesName = "shapes.wasm"    // all of it
	GlueName   = "wasm_exec.js"   // what a Go module needs of its host
	ListName   = "files.json"     // what a service worker keeps
	WorkerName = "sw.js"          // the service worker, if the page has one
	IndexName  = "index.html"     // what the page begins with
)

// Files are the files of the page by their names, slashes between folders.
type Files map[string][]byte

// Names are the names of the files, sorted.
func (f Files) Names() []string { return slices.Sorted(maps.Keys(f)) }

// Site builds the module and puts it with the files of page and what belongs to
// them.
func Site(ctx context.Context, page fs.FS) (Files, error) {
	module, err := Module(ctx, "rectangles")
	if err != nil {
		return nil, err
	}
	shapes, err := Module(ctx)
	if err != nil {
		return nil, err
	}
	root, err := Root(ctx)
	if err != nil {
		return nil, err
	}
	glue, err := Glue(root)
	if err != nil {
		return nil, err
	}
	schema, err := Schema(ctx)
	if err != nil {
		return nil, err
	}
	return assemble(page, Files{ModuleName: module, ShapesName: shapes, GlueName: glue, SchemaName: schema})
}

// Assemble puts together what Site does of a module and a glue that are there.
// It is an error where the page lacks its index.html, has a file of an unknown
// type, or one that the build adds.
func Assemble(page fs.FS, module, glue []byte) (Files, error) {
	return assemble(page, Files{ModuleName: module, GlueName: glue})
}

// assemble puts the files of page to those that are there.
func assemble(page fs.FS, files Files) (Files, error) {
	err := fs.WalkDir(page, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		if _, there := files[name]; there || name == ListName {
			return fmt.Errorf("the page has a file %s, which the build adds", name)
		}
		if Type(name) == "" {
			return fmt.Errorf("%s: nothing says of which type a file %q is; add it to the types of site/internal/build", name, path.Ext(name))
		}
		files[name], err = fs.ReadFile(page, name)
		return err
	})
	if err != nil {
		return nil, err
	}
	index, ok := files[IndexName]
	if !ok {
		return nil, errors.New("the page has no " + IndexName)
	}
	if index, err = withSample(index, files[SampleName]); err != nil {
		return nil, err
	}
	if files[IndexName], err = withPolicy(index); err != nil {
		return nil, err
	}
	list, version, err := list(files)
	if err != nil {
		return nil, err
	}
	files[ListName] = list
	if worker, ok := files[WorkerName]; ok {
		if files[WorkerName], err = withVersion(worker, version); err != nil {
			return nil, err
		}
	}
	return files, nil
}

// A List is what files.json holds: the names that a page needs to work without
// a network, relative to the page, and a version that changes with any of them.
type List struct {
	Version string   `json:"version"`
	Files   []string `json:"files"`
}

// list lists the files. The service worker is not among them, as a browser keeps
// it by itself, but counts into the version, as it is before that is written there.
func list(files Files) (text []byte, version string, err error) {
	h := sha256.New()
	var l List
	for _, name := range files.Names() {
		sum := sha256.Sum256(files[name])
		fmt.Fprintf(h, "%x %s\n", sum, name)
		if name != WorkerName {
			l.Files = append(l.Files, name)
		}
	}
	l.Version = hex.EncodeToString(h.Sum(nil))[:16]
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetIndent("", "  ")
	err = e.Encode(l)
	return b.Bytes(), l.Version, err
}

// VersionMark is where the service worker takes the version. A browser installs a
// worker anew only where its bytes are others.
const VersionMark = "@version@"

// withVersion writes the version into the service worker.
func withVersion(worker []byte, version string) ([]byte, error) {
	if n := bytes.Count(worker, []byte(VersionMark)); n != 1 {
		return nil, fmt.Errorf("%s has %d places for the version, %s; it needs one", WorkerName, n, VersionMark)
	}
	return bytes.Replace(worker, []byte(VersionMark), []byte(version), 1), nil
}
