// Command apinames prints every name that the module offers, one a line and
// sorted: constants with their values, functions and methods with their
// signatures, types, and exported fields with their tags, since the keys of the
// JSON are an interface too. It runs in the module's folder.
//
// Types come from the compiler's export data, so that the list says what a
// constant without a written type is, just as an embedder's compiler sees it.
package main

import (
	"bytes"
	"fmt"
	"go/importer"
	"go/token"
	"go/types"
	"io"
	"os"
	"os/exec"
	"slices"
	"strings"
)

func main() {
	lines, err := names()
	if err != nil {
		fmt.Fprintln(os.Stderr, "apinames:", err)
		os.Exit(1)
	}
	for _, line := range lines {
		fmt.Println(line)
	}
}

// names lists the module's names.
func names() ([]string, error) {
	module, err := run("list", "-m")
	if err != nil {
		return nil, err
	}
	root := strings.TrimSpace(module)
	listing, err := run("list", "-export", "-deps", "-f", "{{.ImportPath}}\t{{.Name}}\t{{.Export}}", "./...")
	if err != nil {
		return nil, err
	}
	exports := make(map[string]string)
	var ours []string
	for row := range strings.Lines(listing) {
		f := strings.Split(strings.TrimSpace(row), "\t")
		if len(f) < 3 {
			continue // package unsafe has no export data
		}
		exports[f[0]] = f[2]
		in := f[0] == root || strings.HasPrefix(f[0], root+"/")
		if in && f[1] != "main" && !strings.Contains(f[0]+"/", "/internal/") {
			ours = append(ours, f[0])
		}
	}
	imp := importer.ForCompiler(token.NewFileSet(), "gc", func(path string) (io.ReadCloser, error) {
		return os.Open(exports[path])
	})
	var lines []string
	for _, path := range ours {
		pkg, err := imp.Import(path)
		if err != nil {
			return nil, err
		}
		short := strings.TrimPrefix(strings.TrimPrefix(path, root), "/")
		for _, line := range inPackage(pkg) {
			lines = append(lines, short+": "+line)
		}
	}
	slices.Sort(lines)
	return slices.Compact(lines), nil
}

// inPackage lists the exported names of one package.
func inPackage(pkg *types.Package) []string {
	// Another package goes by its name, as in the code that uses it.
	qualify := func(p *types.Package) string {
		if p == pkg {
			return ""
		}
		return p.Name()
	}
	var lines []string
	scope := pkg.Scope()
	for _, name := range scope.Names() {
		obj := scope.Lookup(name)
		if !obj.Exported() {
			continue
		}
		switch obj := obj.(type) {
		case *types.Const:
			lines = append(lines, types.ObjectString(obj, qualify)+" = "+obj.Val().ExactString())
		case *types.TypeName:
			lines = append(lines, inType(obj, qualify)...)
		default:
			lines = append(lines, types.ObjectString(obj, qualify))
		}
	}
	return lines
}

// inType lists a type, its exported fields and its exported methods.
func inType(obj *types.TypeName, qualify types.Qualifier) []string {
	named, ok := obj.Type().(*types.Named)
	if !ok || obj.IsAlias() {
		return []string{types.ObjectString(obj, qualify)}
	}
	var lines []string
	if s, ok := named.Underlying().(*types.Struct); ok {
		head := "type " + types.TypeString(named, qualify) + " struct"
		hidden := ""
		for i := range s.NumFields() {
			f := s.Field(i)
			if !f.Exported() {
				hidden = ", with unexported fields"
				continue
			}
			line := "field " + obj.Name() + "." + f.Name() + " " + types.TypeString(f.Type(), qualify)
			if f.Embedded() {
				line += ", embedded"
			}
			if tag := s.Tag(i); tag != "" {
				line += " `" + tag + "`"
			}
			lines = append(lines, line)
		}
		lines = append(lines, head+hidden)
	} else {
		lines = append(lines, types.ObjectString(obj, qualify))
	}
	for m := range named.Methods() {
		if m.Exported() {
			lines = append(lines, strings.Replace(types.ObjectString(m, qualify), "func", "method", 1))
		}
	}
	return lines
}

// run runs the go command and returns what it prints.
func run(args ...string) (string, error) {
	cmd := exec.Command("go", args...)
	var errors bytes.Buffer
	cmd.Stderr = &errors
	out, err := cmd.Output()
	if err != nil {
		return "", fmt.Errorf("go %s: %w\n%s", args[0], err, &errors)
	}
	return string(out), nil
}
