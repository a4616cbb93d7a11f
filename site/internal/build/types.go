package build

import "path"

// Type is the MIME type of a file by its name, "" for one that is not known. It
// does not ask the machine, whose answer may differ from one to the next.
func Type(name string) string {
	switch path.Ext(name) {
	case ".html":
		return "text/html; charset=utf-8"
	case ".css":
		return "text/css; charset=utf-8"
	case ".js", ".mjs":
		return "text/javascript; charset=utf-8"
	case ".json":
		return "application/json"
	case ".wasm":
		return "application/wasm"
	case ".webmanifest":
		return "application/manifest+json"
	case ".svg":
		return "image/svg+xml"
	case ".png":
		return "image/png"
	case ".ico":
		return "image/x-icon"
	case ".woff2":
		return "font/woff2"
	case ".txt":
		return "text/plain; charset=utf-8"
	}
	return ""
}

// Compresses reports whether a file of that name gets smaller by gzip: text and
// the module do, fonts and pictures of points are compressed already.
func Compresses(name string) bool {
	switch path.Ext(name) {
	case ".png", ".woff2", ".ico":
		return false
	}
	return true
}
