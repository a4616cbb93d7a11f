//go:build !js

package serve_test

import (
	"bytes"
	"compress/gzip"
	"io"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/site/internal/build"
	"github.com/fairmiter/fairmiter/site/internal/serve"
)

var text = strings.Repeat("a line of text\n", 100)

func files() build.Files {
	return build.Files{
		"index.html": []byte("<!DOCTYPE html>" + text), "a.js": []byte(text), "fairmiter.wasm": []byte(text),
		"font/a.woff2": []byte(text), "tiny.css": []byte("a{}"),
	}
}

func ask(t *testing.T, method, path string, headers ...string) *http.Response {
	t.Helper()
	r := httptest.NewRequest(method, path, nil)
	for i := 0; i+1 < len(headers); i += 2 {
		r.Header.Set(headers[i], headers[i+1])
	}
	w := httptest.NewRecorder()
	serve.Handler(files(), serve.AnySite).ServeHTTP(w, r)
	return w.Result()
}

func body(t *testing.T, r *http.Response) string {
	t.Helper()
	data, err := io.ReadAll(r.Body)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// TestHeaders: every answer, whatever it says, is under the policy.
func TestHeaders(t *testing.T) {
	for _, row := range []struct {
		method, path string
		status       int
	}{
		{"GET", "/", 200}, {"GET", "/index.html", 200}, {"HEAD", "/a.js", 200}, {"GET", "/font/a.woff2", 200},
		{"GET", "/none", 404}, {"GET", "/font", 404}, {"GET", "/font/", 404}, {"GET", "/../a.js", 404}, {"POST", "/", 405}, {"DELETE", "/a.js", 405},
	} {
		r := ask(t, row.method, row.path)
		if r.StatusCode != row.status {
			t.Errorf("%s %s gives %s", row.method, row.path, r.Status)
		}
		policy := r.Header.Get("Content-Security-Policy")
		for _, want := range []string{"default-src 'none'", "script-src 'self' 'wasm-unsafe-eval'", "style-src 'self'", "connect-src 'self'",
			"base-uri 'none'", "form-action 'none'", "frame-ancestors *"} {
			if !strings.Contains(policy, want) {
				t.Errorf("%s %s: no %q in the policy %q", row.method, row.path, want, policy)
			}
		}
		if strings.Contains(policy, "unsafe-inline") || strings.Contains(policy, "'unsafe-eval'") {
			t.Errorf("the policy is loose: %s", policy)
		}
		if r.Header.Get("X-Content-Type-Options") != "nosniff" || r.Header.Get("Referrer-Policy") != "no-referrer" || r.Header.Get("Content-Type") == "" {
			t.Errorf("%s %s: headers %v", row.method, row.path, r.Header)
		}
	}
}

func TestGzip(t *testing.T) {
	for _, row := range []struct {
		path, accepts string
		gzip          bool
	}{
		{"/a.js", "gzip, deflate, br", true}, {"/fairmiter.wasm", "br;q=1.0, GZIP;q=0.8", true}, {"/a.js", "", false},
		{"/a.js", "gzip;q=0", false}, {"/a.js", "gzip; q=0.000", false}, {"/a.js", "gzipped", false},
		{"/font/a.woff2", "gzip", false}, {"/tiny.css", "gzip", false},
	} {
		r := ask(t, "GET", row.path, "Accept-Encoding", row.accepts)
		got := body(t, r)
		if is := r.Header.Get("Content-Encoding") == "gzip"; is != row.gzip {
			t.Errorf("%s for %q: gzip is %v", row.path, row.accepts, is)
			continue
		}
		if row.gzip {
			z, err := gzip.NewReader(strings.NewReader(got))
			if err != nil {
				t.Fatal(err)
			}
			plain, err := io.ReadAll(z)
			if err != nil || string(plain) != text || r.Header.Get("Vary") != "Accept-Encoding" {
				t.Errorf("%s: %v, %d bytes, headers %v", row.path, err, len(plain), r.Header)
			}
		}
	}
	if !bytes.Equal(serve.Compress([]byte(text)), serve.Compress([]byte(text))) {
		t.Error("compressed twice it differs")
	}
}

// TestTags: who has a file does not get it again; who has another does.
func TestTags(t *testing.T) {
	plain := ask(t, "GET", "/a.js").Header.Get("ETag")
	small := ask(t, "GET", "/a.js", "Accept-Encoding", "gzip").Header.Get("ETag")
	other := ask(t, "GET", "/").Header.Get("ETag")
	if plain == "" || plain == small || plain == other {
		t.Fatalf("tags %s, %s, %s", plain, small, other)
	}
	for _, row := range []struct {
		has, accepts string
		status       int
	}{
		{plain, "", 304}, {"W/" + plain, "", 304}, {other + ", " + plain, "", 304}, {small, "gzip", 304}, {"*", "", 304},
		{other, "", 200}, {small, "", 200}, {plain, "gzip", 200},
	} {
		r := ask(t, "GET", "/a.js", "If-None-Match", row.has, "Accept-Encoding", row.accepts)
		if r.StatusCode != row.status || row.status == 304 && body(t, r) != "" {
			t.Errorf("having %s and accepting %q gives %s", row.has, row.accepts, r.Status)
		}
	}
}

func TestFrames(t *testing.T) {
	w := httptest.NewRecorder()
	serve.Handler(files(), "https://shop.example").ServeHTTP(w, httptest.NewRequest("GET", "/", nil))
	if policy := w.Header().Get("Content-Security-Policy"); !strings.HasSuffix(policy, "; frame-ancestors https://shop.example") {
		t.Error(policy)
	}
}
