package main

import (
	"encoding/json"
	"io/fs"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/draw"
	"github.com/fairmiter/fairmiter/site/internal/build"
)

// TestSampleOrder: the order that a first visit finds is the library's sample,
// with what is usual left out.
func TestSampleOrder(t *testing.T) {
	from, err := page()
	if err != nil {
		t.Fatal(err)
	}
	text, err := fs.ReadFile(from, "sample.json")
	if err != nil {
		t.Fatal(err)
	}
	order, err := framing.Read(text)
	if err != nil {
		t.Fatal(err)
	}
	got, _ := json.MarshalIndent(order, "", " ")
	want, _ := json.MarshalIndent(framing.Sample(), "", " ")
	if string(got) != string(want) {
		t.Errorf("the page's sample is\n%s\nthe library's is\n%s", got, want)
	}
}

// TestSampleDrawn: the page shows the sample's drawing before the module is there,
// and it is the drawing that Go makes of the library's sample.
func TestSampleDrawn(t *testing.T) {
	from, err := page()
	if err != nil {
		t.Fatal(err)
	}
	files, err := build.Assemble(from, []byte("module"), []byte("glue"))
	if err != nil {
		t.Fatal(err)
	}
	plan, err := framing.Work(framing.Sample())
	if err != nil {
		t.Fatal(err)
	}
	drawing := draw.SVG(plan, 0, draw.Front, draw.Options{Interactive: true})
	if index := string(files[build.IndexName]); strings.Count(index, drawing) != 1 || !strings.HasPrefix(drawing, "<svg") {
		t.Errorf("the sample's drawing stands %d times in the page", strings.Count(index, drawing))
	}
}
