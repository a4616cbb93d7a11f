package build

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// source is the package that the page runs.
const source = "github.com/fairmiter/fairmiter/wasm"

// Module compiles the library for the page. It goes over the wire and is started
// by everyone who opens the page, so it is made small before it is made fast:
// without inlining it is a tenth smaller and a call takes about a third longer;
// see also [StripLines]. Most orders need no more than the one with the build tag
// rectangles.
func Module(ctx context.Context, tags ...string) ([]byte, error) {
	dir, err := os.MkdirTemp("", "fairmiter")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	name := filepath.Join(dir, ModuleName)
	build := exec.CommandContext(ctx, "go", "build", "-trimpath", "-buildvcs=false", "-tags="+strings.Join(tags, ","),
		"-ldflags=-s -w -buildid=", "-gcflags=all=-l", "-o", name, source)
	// The builder's own settings would make another module.
	build.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm", "GOWASM=", "GOFLAGS=", "GOEXPERIMENT=nogreenteagc")
	if out, err := build.CombinedOutput(); err != nil {
		return nil, fmt.Errorf("go build %s: %w\n%s", source, err, out)
	}
	module, err := os.ReadFile(name)
	if err != nil {
		return nil, err
	}
	return StripLines(module)
}

// Root is where the Go toolchain is.
func Root(ctx context.Context) (string, error) {
	out, err := exec.CommandContext(ctx, "go", "env", "GOROOT").Output()
	if err != nil {
		return "", fmt.Errorf("go env GOROOT: %w", err)
	}
	return strings.TrimSpace(string(out)), nil
}

// Glue reads the script that runs a Go module in a page. It belongs to the
// toolchain in root: one of another version may not fit the module.
func Glue(root string) ([]byte, error) {
	name := filepath.Join(root, "lib", "wasm", GlueName)
	glue, err := os.ReadFile(name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, fmt.Errorf("the Go toolchain lacks %s, which the page needs to run the module; "+
			"some systems pack it apart, and a toolchain from go.dev/dl has it", name)
	case err != nil:
		return nil, err
	case len(bytes.TrimSpace(glue)) == 0:
		return nil, fmt.Errorf("%s is empty", name)
	}
	return glue, nil
}
