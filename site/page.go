package main

import (
	"embed"
	"io/fs"
)

//go:embed all:page
var embedded embed.FS

// page is the page's own files. Only the program that embeds nothing has none.
func page() (fs.FS, error) { return fs.Sub(embedded, "page") }
