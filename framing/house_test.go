package framing_test

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"maps"
	"os"
	"path"
	"slices"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"
)

// rooms are the module's packages from the roof to the ground. A package may
// import those in the rows below its own, and none beside it; a test those
// beside it too. A folder that ends in a slash stands for all the folders in it.
var rooms = [][]string{
	{"wasm", "site", "site/", "examples/"},
	{"framing/draw", "framing/ticket"},
	{"framing"},
	{"mat", "molding", "glazing", "hang"},
	{"framing/cutting", "framing/quote", "framing/material"},
	{"framing/draw/template"},
	{"framing/plane"},
	{"framing/explain"},
	{"framing/measure"},
	{"framing/jsontext", "framing/natural"},
}

// others are the modules that an embedder is asked to take. Only tests compare
// with go-cmp.
var others = []string{"github.com/shopspring/decimal", "golang.org/x/exp"}

const compare = "github.com/google/go-cmp"

// heavy packages would each cost the page up to half its size, or reach for a
// machine that a page does not have; uses are the same for single functions,
// and those whose last bits differ between platforms.
var (
	heavy = []string{"encoding/json", "fmt", "html/template", "log/slog", "math/big", "net", "os", "regexp", "text/template", "time"}
	uses  = []string{"time.Now", "time.Since", "time.Until", "math.Pow", "math.Exp", "math.Sin", "math.Cos", "math.Tan", "math.Atan", "math.Atan2", "math.Asin", "math.Acos", "math.Sincos", "math.Log"}
)

// topLevel is all that the repository shows at first sight, dot-files aside.
var topLevel = []string{
	"framing", "mat", "molding", "glazing", "hang", "wasm", "site", "testdata", "examples",
	"go.mod", "go.sum", "README.md", "DEVELOPERS.md", "LICENSE",
}

const mostLines = 600

func TestHouse(t *testing.T) {
	h := inspect(t, os.DirFS(".."))
	if len(h.packages) < 7 {
		t.Fatalf("found only %d packages", len(h.packages))
	}
	for _, fault := range h.faults {
		t.Error(fault)
	}
}

// Each rule of the house is seen to be broken where it is, and not where it is
// kept.
func TestHouseIsHeld(t *testing.T) {
	const head = "// Package p is one.\npackage p\n"
	importing := func(paths ...string) string {
		return head + "import (\n\t_ \"" + strings.Join(paths, "\"\n\t_ \"") + "\"\n)\n"
	}
	ours := func(dir string) string { return importing("m/" + dir) }
	for _, row := range []struct {
		name, file, text string
		want             string // part of the fault; none where empty
	}{
		{"down", "mat/a.go", ours("framing/measure"), ""},
		{"up", "framing/measure/a.go", ours("framing/explain"), "framing/measure may not import framing/explain"},
		{"beside", "mat/a.go", ours("glazing"), "mat may not import glazing"},
		{"beside in a test", "mat/a_test.go", ours("glazing"), ""},
		{"up in a test", "mat/a_test.go", ours("framing"), "mat may not import framing"},
		{"up for one system only", "mat/a_js.go", "//go:build js\n\n" + ours("framing"), "mat may not import framing"},
		{"from a ticket", "framing/ticket/a.go", ours("framing/draw"), "framing/ticket may not import framing/draw"},
		{"from an example", "examples/x/a.go", ours("framing/ticket"), ""},
		{"a room of its own", "framing/a.go", ours("framing/internal/x"), ""},
		{"another's room", "mat/a.go", ours("framing/internal/x"), "mat may not import framing/internal/x"},
		{"a maker's tool", "framing/internal/x/a.go", ours("mat"), ""},
		{"a maker's tool in a test", "framing/measure/a_test.go", ours("framing/internal/speed"), ""},
		{"no room", "framing/extra/a.go", head, "framing/extra is in no room"},
		{"import of no room", "mat/a.go", ours("extra"), "mat may not import extra"},
		{"another module", "mat/a.go", importing("example.org/x"), "mat may not import example.org/x"},
		{"an allowed module", "framing/quote/a.go", importing("github.com/shopspring/decimal"), ""},
		{"a name that only begins so", "framing/quote/a.go", importing("github.com/shopspring/decimals"), "may not import"},
		{"go-cmp", "mat/a.go", importing(compare + "/cmp"), "mat may not import"},
		{"go-cmp in a test", "mat/a_test.go", importing(compare + "/cmp"), ""},
		{"cgo", "mat/a.go", importing("C"), "mat may not import C"},
		{"a heavy import", "mat/a.go", importing("regexp"), "may not import regexp"},
		{"below a heavy import", "mat/a.go", importing("net/http"), "may not import net/http"},
		{"another's JSON", "mat/a.go", importing("encoding/json"), "may not import encoding/json"},
		{"a number of any size", "wasm/a.go", importing("math/big"), "wasm may not import math/big"},
		{"ours instead", "mat/a.go", ours("framing/jsontext"), ""},
		{"words for a maker", "framing/internal/x/a.go", importing("fmt"), ""},
		{"a heavy import in a test", "mat/a_test.go", importing("regexp"), ""},
		{"a heavy import in an example", "examples/x/a.go", importing("os"), ""},
		{"a clock", "mat/a.go", head + "import \"time\"\nvar _ = time.Now()\n", "uses time.Now"},
		{"a clock by another name", "mat/a.go", head + "import c \"time\"\nvar _ = c.Now()\n", "uses time.Now"},
		{"another Now", "mat/a.go", head + "var time struct{ Now int }\nvar _ = time.Now\n", ""},
		{"a long file", "mat/a.go", head + strings.Repeat("\n", 600), "602 lines"},
		{"a long sheet", "site/a.css", strings.Repeat("\n", 601), "601 lines"},
		{"a full file", "site/a.css", strings.Repeat("\n", 600), ""},
		{"a stranger at the top", "notes.md", "", "notes.md does not belong at the top"},
		{"something ignored", "mat.wasm", "", ""},
		{"something hidden", ".editorconfig", "", ""},
		{"no package comment", "hang/a.go", "package hang\n", "hang has no package comment"},
		{"no example", "hang/a.go", head, "hang has no Example"},
		{"no Go", "hang/a.go", "func\n", "hang/a.go"},
	} {
		t.Run(row.name, func(t *testing.T) {
			tree := fstest.MapFS{"go.mod": {Data: []byte("module m\n")}, ".gitignore": {Data: []byte("# Builds.\n*.wasm\n")}}
			// The room that is tried is in order but for the row's own file.
			dir := path.Dir(row.file)
			if strings.HasSuffix(row.file, ".go") && dir != "hang" {
				tree[dir+"/doc.go"] = &fstest.MapFile{Data: []byte(head)}
				tree[dir+"/z_test.go"] = &fstest.MapFile{Data: []byte("package p\nfunc Example() {}\n")}
			}
			tree[row.file] = &fstest.MapFile{Data: []byte(row.text)}
			all := strings.Join(inspect(t, tree).faults, "\n")
			if !strings.Contains(all, row.want) || (all == "") != (row.want == "") {
				t.Errorf("found %q, want %q", all, row.want)
			}
		})
	}
}

// A house is what inspect saw of the module.
type house struct {
	module   string
	packages map[string]*pkg // by folder
	faults   []string
}

type pkg struct {
	comment, example, main bool
	code                   bool // has more than tests
}

func (h *house) fault(format string, args ...any) {
	h.faults = append(h.faults, fmt.Sprintf(format, args...))
}

// inspect walks the module and lists what breaks a rule of the house. Build tags
// are not looked at: every file must keep the rules.
func inspect(t *testing.T, tree fs.FS) *house {
	t.Helper()
	h := &house{packages: make(map[string]*pkg)}
	gomod := textOf(t, tree, "go.mod")
	first, _, _ := strings.Cut(gomod, "\n")
	h.module = strings.TrimPrefix(first, "module ")
	ignored := textOf(t, tree, ".gitignore")

	err := fs.WalkDir(tree, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || name == "." {
			return err
		}
		base := path.Base(name)
		if base == ".git" || isIgnored(ignored, base) {
			if d.IsDir() {
				return fs.SkipDir
			}
			return nil
		}
		if !strings.Contains(name, "/") && base[0] != '.' && !slices.Contains(topLevel, base) {
			h.fault("%s does not belong at the top of the repository", name)
		}
		if d.IsDir() {
			return nil
		}
		switch path.Ext(name) {
		case ".go", ".js", ".mjs", ".cjs", ".css":
			text := textOf(t, tree, name)
			if n := strings.Count(text, "\n"); n > mostLines {
				h.fault("%s has %d lines, more than %d", name, n, mostLines)
			}
			if path.Ext(name) == ".go" && !strings.Contains("/"+name, "/testdata/") {
				h.file(name, text)
			}
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	for dir, p := range maps.All(h.packages) {
		if !p.code {
			continue
		}
		if !p.comment {
			h.fault("%s has no package comment", dir)
		}
		if !p.example && !p.main && !isInternal(dir) {
			h.fault("%s has no Example in its tests", dir)
		}
	}
	slices.Sort(h.faults)
	return h
}

func textOf(t *testing.T, tree fs.FS, name string) string {
	t.Helper()
	data, err := fs.ReadFile(tree, name)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// isIgnored reports whether a line of .gitignore names base. The lines there are
// simple patterns.
func isIgnored(lines, base string) bool {
	for line := range strings.Lines(lines) {
		pattern := strings.Trim(strings.TrimSpace(line), "/")
		if ok, err := path.Match(pattern, base); ok && err == nil {
			return true
		}
	}
	return false
}

// file looks at one Go file.
func (h *house) file(name, text string) {
	dir, isTest := path.Dir(name), strings.HasSuffix(name, "_test.go")
	f, err := parser.ParseFile(token.NewFileSet(), name, text, parser.ParseComments|parser.SkipObjectResolution)
	if err != nil {
		h.fault("%s: %v", name, err)
		return
	}
	p := h.packages[dir]
	if p == nil {
		p = &pkg{}
		h.packages[dir] = p
		if room(dir) < 0 {
			h.fault("%s is in no room of the house", dir)
		}
	}
	if isTest {
		for _, d := range f.Decls {
			fn, ok := d.(*ast.FuncDecl)
			p.example = p.example || ok && strings.HasPrefix(fn.Name.Name, "Example")
		}
	} else {
		p.code = true
		p.main = f.Name.Name == "main"
		p.comment = p.comment || f.Doc != nil
	}

	names := make(map[string]string) // what an import is called here
	for _, spec := range f.Imports {
		target, _ := strconv.Unquote(spec.Path.Value)
		if spec.Name != nil {
			names[spec.Name.Name] = target
		} else {
			names[path.Base(target)] = target
		}
		if !h.mayImport(dir, target, isTest) {
			h.fault("%s: %s may not import %s", name, dir, strings.TrimPrefix(target, h.module+"/"))
		}
	}
	if isTest || !isPure(dir) {
		return
	}
	ast.Inspect(f, func(n ast.Node) bool {
		if sel, ok := n.(*ast.SelectorExpr); ok {
			if x, ok := sel.X.(*ast.Ident); ok {
				if use := names[x.Name] + "." + sel.Sel.Name; slices.Contains(uses, use) {
					h.fault("%s: uses %s", name, use)
				}
			}
		}
		return true
	})
}

// mayImport reports whether a file of the package in dir may import target.
func (h *house) mayImport(dir, target string, isTest bool) bool {
	within := func(parent string) bool { return target == parent || strings.HasPrefix(target, parent+"/") }
	if to, ok := strings.CutPrefix(target, h.module+"/"); ok {
		from, at := room(dir), room(to)
		switch {
		case at < 0 || from < 0:
			return false
		case isInternal(to):
			// The compiler keeps an internal folder to what lies beside and below
			// it. Only that room itself uses it, and what tests need of it.
			return isTest || owner(dir) == owner(to)
		case isTest || isInternal(dir):
			return from <= at
		}
		return from < at
	}
	if first, _, _ := strings.Cut(target, "/"); strings.Contains(first, ".") {
		return isTest && within(compare) || slices.ContainsFunc(others, within)
	}
	return target != "C" && (isTest || !isPure(dir) || !slices.ContainsFunc(heavy, within))
}

// room returns the row of a folder in the table, -1 where it is in none.
func room(dir string) int {
	dir = owner(dir)
	return slices.IndexFunc(rooms, func(row []string) bool {
		return slices.ContainsFunc(row, func(r string) bool {
			return dir == r || strings.HasSuffix(r, "/") && strings.HasPrefix(dir, r)
		})
	})
}

// owner returns the room that a folder belongs to: the one above its internal/.
func owner(dir string) string {
	above, _, _ := strings.Cut(dir, "/internal")
	return above
}

func isInternal(dir string) bool { return owner(dir) != dir }

// isPure reports whether the page links the package in dir.
func isPure(dir string) bool {
	first, _, _ := strings.Cut(dir, "/")
	return first != "site" && first != "examples" && !isInternal(dir)
}
