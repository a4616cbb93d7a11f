// Command gallery writes the drawings of all sample orders into a folder, one
// SVG file a view, and a page that shows them.
//
//	go run ./framing/draw/internal/gallery DIR
//
// It is run at the top of the repository.
package main

import (
	"fmt"
	"html"
	"os"
	"path/filepath"
	"strings"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/draw"
)

func main() {
	if len(os.Args) != 2 {
		fmt.Fprintln(os.Stderr, "usage: gallery DIR")
		os.Exit(2)
	}
	if err := write(os.Args[1]); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}

func write(folder string) error {
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return err
	}
	files, err := filepath.Glob("testdata/orders/*.json")
	if err != nil {
		return err
	}
	var page strings.Builder
	page.WriteString("<!DOCTYPE html>\n<html lang=\"en\">\n<meta charset=\"utf-8\">\n<title>Drawings</title>\n")
	show := func(name string, plan framing.Plan) error {
		fmt.Fprintf(&page, "<h1>%s</h1>\n", html.EscapeString(name))
		for i := range plan.Pieces {
			for _, view := range (draw.View("")).Choices() {
				svg := draw.SVG(plan, i, draw.View(view), draw.Options{})
				file := fmt.Sprintf("%s-%d-%s.svg", name, i, view)
				if err := os.WriteFile(filepath.Join(folder, file), []byte(svg), 0o644); err != nil {
					return err
				}
				fmt.Fprintf(&page, "<img src=\"%s\" alt=\"%s\">\n", file, html.EscapeString(file))
			}
		}
		return nil
	}
	plan, _ := framing.Work(framing.Sample())
	if err := show("sample", plan); err != nil {
		return err
	}
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			return err
		}
		plan, _ := framing.NewReading(data).Work() // what has problems is drawn as that
		if err := show(strings.TrimSuffix(filepath.Base(file), ".json"), plan); err != nil {
			return err
		}
	}
	return os.WriteFile(filepath.Join(folder, "index.html"), []byte(page.String()), 0o644)
}
