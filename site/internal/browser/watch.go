package browser

import (
	"bytes"
	"fmt"
	"io"
	"net"
	"net/http"
	"net/http/httptest"
	"slices"
	"strings"
	"sync"
	"time"
)

// A Watch sees what a page does that it must not: break its policy, fail in a
// script, ask for a file that is not there, reach for another machine. It stands
// around the server of the page and is the browser's proxy.
type Watch struct {
	proxy  *httptest.Server
	mu     sync.Mutex
	faults []string
}

// NewWatch starts one. Whoever starts one closes it.
func NewWatch() *Watch {
	w := &Watch{}
	w.proxy = httptest.NewServer(http.HandlerFunc(func(rw http.ResponseWriter, r *http.Request) {
		if !ofTheBrowser(r.Host) {
			w.fault("a request to %s", r.Host)
		}
		http.Error(rw, "no way out", http.StatusForbidden)
	}))
	return w
}

// makers are whom browsers call by themselves when they start, whatever they are
// told. A page that did would be caught by its policy.
var makers = [...]string{"google.com", "googleapis.com", "gvt1.com", "gstatic.com", "mozilla.com", "mozilla.org", "mozilla.net", "duckduckgo.com", "debian.org"}

// ofTheBrowser reports whether a browser and not its page asks for a host.
func ofTheBrowser(host string) bool {
	if name, _, err := net.SplitHostPort(host); err == nil {
		host = name
	}
	return slices.ContainsFunc(makers[:], func(m string) bool { return host == m || strings.HasSuffix(host, "."+m) })
}

// Proxy is what to start the browser with; see [Options].
func (w *Watch) Proxy() string { return w.proxy.Listener.Addr().String() }

// Close stops watching.
func (w *Watch) Close() { w.proxy.Close() }

func (w *Watch) fault(format string, args ...any) {
	w.mu.Lock()
	defer w.mu.Unlock()
	w.faults = append(w.faults, fmt.Sprintf(format, args...))
}

// Faults are what was seen so far, and in a moment more: a browser reports a
// little later.
func (w *Watch) Faults() []string {
	time.Sleep(250 * time.Millisecond)
	w.mu.Lock()
	defer w.mu.Unlock()
	return slices.Clone(w.faults)
}

// Where the page reports to, and the script that does.
const (
	reportPath = "/watch/report"
	scriptPath = "/watch/report.js"
	faultPath  = "/watch/fault"
)

const script = `"use strict";
{
	const report = (...what) => fetch("` + faultPath + `", {method: "POST", body: what.join(" ")});
	addEventListener("error", e => report("script error:", e.message || "a file did not load:", e.filename || e.target?.src || e.target?.href || "", e.lineno || ""), true);
	addEventListener("unhandledrejection", e => report("unhandled rejection:", e.reason?.stack || e.reason));
	const told = console.error;
	console.error = (...what) => { report("console.error:", ...what); told.apply(console, what); };
}
`

// Around is the server of the page with the watch around it. It has the browser
// report what breaks the policy, also in a worker but for WebKit, which says nothing
// of one, and puts a script before those of an HTML file.
func (w *Watch) Around(page http.Handler) http.Handler {
	return http.HandlerFunc(func(rw http.ResponseWriter, r *http.Request) {
		switch r.URL.Path {
		case reportPath, faultPath:
			text, _ := io.ReadAll(io.LimitReader(r.Body, 1<<16)) // what came of it will do
			w.fault("%s %s", strings.TrimPrefix(r.URL.Path, "/watch/"), text)
			rw.WriteHeader(http.StatusNoContent)
			return
		case scriptPath:
			rw.Header().Set("Content-Type", "text/javascript; charset=utf-8")
			io.WriteString(rw, script)
			return
		}
		r = r.Clone(r.Context())
		r.Header.Del("Accept-Encoding")
		isPage := strings.HasSuffix(r.URL.Path, "/") || strings.HasSuffix(r.URL.Path, ".html")
		if isPage {
			r.Header.Del("If-None-Match")
		}
		answer := httptest.NewRecorder()
		page.ServeHTTP(answer, r)
		if answer.Code >= 400 && r.URL.Path != "/favicon.ico" {
			w.fault("%s of %s gave %d", r.Method, r.URL.Path, answer.Code)
		}
		body := answer.Body.Bytes()
		for name, values := range answer.Header() {
			rw.Header()[name] = values
		}
		if policy := rw.Header().Get("Content-Security-Policy"); policy != "" {
			rw.Header().Set("Content-Security-Policy", policy+"; report-uri "+reportPath)
		}
		if isPage {
			head := []byte(`<meta charset="utf-8">`)
			body = bytes.Replace(body, head, append(head, `<script src="`+scriptPath+`"></script>`...), 1)
			rw.Header().Del("Content-Length")
			rw.Header().Del("ETag")
		}
		rw.WriteHeader(answer.Code)
		rw.Write(body) // one who went away misses nothing
	})
}

// A Server serves a page at a port of this machine until it is stopped, and at
// the same address when it is started again: as for a page that must work
// offline.
type Server struct {
	handler http.Handler
	address string
	server  *http.Server
}

// Serve starts one at a free port.
func Serve(h http.Handler) (*Server, error) {
	s := &Server{handler: h, address: "127.0.0.1:0"}
	return s, s.Start()
}

// Start starts it again after [Server.Stop].
func (s *Server) Start() error {
	l, err := net.Listen("tcp", s.address)
	if err != nil {
		return err
	}
	s.address = l.Addr().String()
	s.server = &http.Server{Handler: s.handler, ReadHeaderTimeout: 10 * time.Second}
	go s.server.Serve(l) // it returns when it is closed
	return nil
}

// Stop ends it and every connection to it.
func (s *Server) Stop() error { return s.server.Close() }

// URL is the address of the page.
func (s *Server) URL() string { return "http://" + s.address + "/" }
