package explain_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A module is what the code of the whole module says about codes and keys.
type module struct {
	consts map[string][]string // values of string constants, by the name of their type
	keys   map[string]string   // keys of terms and workings, with a place that uses them
	tags   map[string]bool     // JSON names of struct fields
}

// readModule parses every Go file that is no test.
func readModule(t *testing.T) module {
	t.Helper()
	m := module{make(map[string][]string), make(map[string]string), make(map[string]bool)}
	root := filepath.Join("..", "..")
	if _, err := os.Stat(filepath.Join(root, "go.mod")); err != nil {
		t.Fatal(err)
	}
	files := token.NewFileSet()
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case d.IsDir() && path != root && (strings.HasPrefix(d.Name(), ".") || d.Name() == "testdata" || d.Name() == "node_modules"):
			return filepath.SkipDir
		case d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go"):
			return nil
		}
		file, err := parser.ParseFile(files, path, nil, parser.SkipObjectResolution)
		if err != nil {
			return err
		}
		ast.Inspect(file, func(n ast.Node) bool { m.look(n, files); return true })
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return m
}

// look notes what a node of the code says.
func (m module) look(n ast.Node, files *token.FileSet) {
	note := func(e ast.Expr) {
		if key, ok := text(e); ok && key != "" {
			m.keys[key] = files.Position(e.Pos()).String()
		}
	}
	switch n := n.(type) {
	case *ast.ValueSpec:
		name := last(n.Type)
		for _, v := range n.Values {
			if value, ok := text(v); ok && name != "" {
				m.consts[name] = append(m.consts[name], value)
			}
		}
	case *ast.CallExpr:
		switch last(n.Fun) {
		case "T", "NewTerm", "working", "Key":
			if len(n.Args) > 0 {
				note(n.Args[0])
			}
		}
	case *ast.KeyValueExpr:
		if name, ok := n.Key.(*ast.Ident); ok && name.Name == "Key" {
			note(n.Value)
		}
	case *ast.AssignStmt:
		for i, left := range n.Lhs {
			if s, ok := left.(*ast.SelectorExpr); ok && s.Sel.Name == "Key" && i < len(n.Rhs) {
				note(n.Rhs[i])
			}
		}
	case *ast.Field:
		if n.Tag == nil {
			return
		}
		tag, _ := text(n.Tag)
		if _, rest, ok := strings.Cut(tag, `json:"`); ok {
			name, _, _ := strings.Cut(rest, `"`)
			name, _, _ = strings.Cut(name, ",")
			m.tags[name] = true
		}
	}
}

// text is the value of a string literal.
func text(e ast.Expr) (string, bool) {
	lit, ok := e.(*ast.BasicLit)
	if !ok || lit.Kind != token.STRING {
		return "", false
	}
	s, err := strconv.Unquote(lit.Value)
	return s, err == nil
}

// last is the last name of a qualified one: Code of explain.Code.
func last(e ast.Expr) string {
	switch e := e.(type) {
	case *ast.Ident:
		return e.Name
	case *ast.SelectorExpr:
		return e.Sel.Name
	case *ast.IndexExpr:
		return last(e.X)
	}
	return ""
}

// madeKeys are the keys that code puts together: a group of borders and a
// side, an operation, a bound, a way to hang, a part of the package, a field.
func (m module) madeKeys(t *testing.T) []string {
	t.Helper()
	var made []string
	for _, group := range []string{"cover", "cut", "visible"} {
		for _, side := range []string{"left", "right", "top", "bottom"} {
			made = append(made, group+"."+side)
		}
	}
	made = append(made, "seated.bottom")
	for _, op := range m.consts["Op"] {
		if !slices.Contains([]string{"", "sum", "minus", "times", "over", "mass"}, op) { // these are signs
			made = append(made, "op."+op)
		}
	}
	for _, bound := range m.consts["Bound"] {
		if bound != "" {
			made = append(made, "bound."+bound)
		}
	}
	for _, way := range m.consts["Way"] {
		made = append(made, "change.hang.by."+way)
	}
	made = append(made, m.consts["LayerPart"]...)
	for _, rule := range measure.Rules() {
		made = append(made, string(explain.MeasureCode(rule)))
	}
	for _, e := range explain.Table() {
		if field, ok := strings.CutPrefix(e.Code, "field."); ok {
			if !m.tags[field] {
				t.Errorf("%q speaks of a field that no order has", e.Code)
			}
			made = append(made, e.Code)
		}
	}
	return made
}

// TestTableComplete: every code and key of the module has its English, and
// every entry has a use.
func TestTableComplete(t *testing.T) {
	m := readModule(t)
	entries := make(map[string]bool)
	for _, e := range explain.Table() {
		entries[e.Code] = false
	}
	use := func(code, where string) {
		if _, ok := entries[code]; !ok {
			t.Errorf("%q has no English (%s)", code, where)
		}
		entries[code] = true
	}
	if len(m.consts["Code"]) < 20 || len(m.keys) < 20 || len(m.tags) < 20 {
		t.Fatalf("found only %d codes, %d keys, %d fields", len(m.consts["Code"]), len(m.keys), len(m.tags))
	}
	for _, code := range m.consts["Code"] {
		use(code, "a constant of type Code")
	}
	for key, where := range m.keys {
		use(key, where)
	}
	for _, key := range m.madeKeys(t) {
		use(key, "put together")
	}
	for code, used := range entries {
		if !used {
			t.Errorf("%q has English and no use", code)
		}
	}
}
