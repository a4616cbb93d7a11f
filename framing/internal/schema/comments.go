package main

import (
	"go/ast"
	"go/parser"
	"go/token"
	"path/filepath"
	"strings"
)

const module = "github.com/fairmiter/fairmiter/"

// readComments reads the comments of all struct fields in the packages that an
// order is made of: by import path, type and field. Root is the module's
// folder.
func readComments(root string) (map[string]string, error) {
	comments := make(map[string]string)
	for _, dir := range []string{"framing", "framing/measure", "framing/plane", "mat", "molding", "glazing", "hang"} {
		files, err := filepath.Glob(filepath.Join(root, filepath.FromSlash(dir), "*.go"))
		if err != nil {
			return nil, err
		}
		for _, name := range files {
			if strings.HasSuffix(name, "_test.go") {
				continue
			}
			file, err := parser.ParseFile(token.NewFileSet(), name, nil, parser.ParseComments)
			if err != nil {
				return nil, err
			}
			ast.Inspect(file, func(n ast.Node) bool {
				if spec, ok := n.(*ast.TypeSpec); ok {
					addFields(comments, module+dir+"."+spec.Name.Name, spec)
				}
				return true
			})
		}
	}
	return comments, nil
}

func addFields(comments map[string]string, owner string, spec *ast.TypeSpec) {
	fields, ok := spec.Type.(*ast.StructType)
	if !ok {
		return
	}
	for _, f := range fields.Fields.List {
		text := strings.Join(strings.Fields(f.Doc.Text()), " ")
		for _, name := range f.Names {
			if text != "" {
				comments[owner+"."+name.Name] = plain(text)
			}
		}
	}
}

// plain drops the brackets of links in a comment.
func plain(text string) string {
	return strings.NewReplacer("[", "", "]", "").Replace(text)
}
