// Package serve answers a browser with the files of the page, under the strictest
// policy that lets the page work.
package serve

import (
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	"encoding/hex"
	"net/http"
	"strconv"
	"strings"

	"github.com/fairmiter/fairmiter/site/internal/build"
)

// AnySite lets every site show the page in a frame. A shop's own site must be
// able to, whatever its address. Nothing is lost by it: the page has no account
// and sends nothing, so a click that another site tricks someone into gives
// nothing away, and browsers keep what it stores apart for each site around it.
const AnySite = "*"

// Handler serves files. In frames of which sites the page may be shown is a list
// as Content Security Policy writes it: [AnySite], 'self', https://shop.example.
func Handler(files build.Files, frames string) http.Handler {
	h := handler{policy: build.Policy + "; frame-ancestors " + frames, files: make(map[string]file)}
	for name, data := range files {
		h.files["/"+name] = newFile(name, data)
	}
	h.files["/"] = h.files["/"+build.IndexName]
	return h
}

type handler struct {
	policy string
	files  map[string]file
}

// A file is ready to send.
type file struct {
	mime         string
	plain, small body
}

// A body is one way to send a file; it is empty where there is none. Its tag
// changes with its bytes.
type body struct {
	data []byte
	tag  string
}

func newFile(name string, data []byte) file {
	sum := sha256.Sum256(data)
	tag := hex.EncodeToString(sum[:12])
	f := file{mime: build.Type(name), plain: body{data, `"` + tag + `"`}}
	if small := Compress(data); build.Compresses(name) && len(small) < len(data) {
		f.small = body{small, `"` + tag + `-gzip"`}
	}
	return f
}

// Compress is data in gzip, with nothing in it that tells when or where.
func Compress(data []byte) []byte {
	var b bytes.Buffer
	w, _ := gzip.NewWriterLevel(&b, gzip.BestCompression) // the level is a good one
	w.Write(data)                                         // a buffer takes everything
	w.Close()
	return b.Bytes()
}

// ServeHTTP answers GET and HEAD. A browser may keep what it got, but asks each
// time whether it is still the same, which costs a few bytes.
func (h handler) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	head := w.Header()
	head.Set("Content-Security-Policy", h.policy)
	head.Set("X-Content-Type-Options", "nosniff")
	head.Set("Referrer-Policy", "no-referrer")
	head.Set("Cache-Control", "no-cache")
	f, found := h.files[r.URL.Path]
	switch {
	case r.Method != http.MethodGet && r.Method != http.MethodHead:
		head.Set("Allow", "GET, HEAD")
		http.Error(w, "this page is only read", http.StatusMethodNotAllowed)
		return
	case !found:
		http.Error(w, "there is no such file here", http.StatusNotFound)
		return
	}
	b := f.plain
	head.Set("Content-Type", f.mime)
	if f.small.data != nil {
		head.Set("Vary", "Accept-Encoding")
		if takesGzip(r.Header.Values("Accept-Encoding")) {
			b = f.small
			head.Set("Content-Encoding", "gzip")
		}
	}
	head.Set("ETag", b.tag)
	if hasTag(r.Header.Values("If-None-Match"), b.tag) {
		head.Del("Content-Encoding")
		w.WriteHeader(http.StatusNotModified)
		return
	}
	head.Set("Content-Length", strconv.Itoa(len(b.data)))
	if r.Method == http.MethodGet {
		w.Write(b.data) // one who went away misses nothing
	}
}

// items are the items of a header's lists.
func items(values []string, each func(string) bool) bool {
	for _, v := range values {
		for item := range strings.SplitSeq(v, ",") {
			if each(strings.TrimSpace(item)) {
				return true
			}
		}
	}
	return false
}

// takesGzip reports whether a browser accepts gzip (RFC 9110, 12.5.3).
func takesGzip(values []string) bool {
	return items(values, func(item string) bool {
		name, weight, _ := strings.Cut(item, ";")
		weight = strings.ReplaceAll(weight, " ", "")
		q, hasWeight := strings.CutPrefix(weight, "q=")
		none := hasWeight && strings.Trim(q, "0.") == ""
		return strings.EqualFold(strings.TrimSpace(name), "gzip") && !none
	})
}

// hasTag reports whether one of the tags that a browser holds is tag (RFC 9110,
// 13.1.2); a weak one counts.
func hasTag(values []string, tag string) bool {
	return items(values, func(item string) bool { return item == "*" || strings.TrimPrefix(item, "W/") == tag })
}
