package build

import (
	"bytes"
	"errors"
)

// Policy is what the page may do (Content Security Policy level 3): run its own
// scripts and WebAssembly, show its own styles, pictures and fonts, and talk to
// where it came from. No script or style stands in a page's text, nothing comes
// from elsewhere, no form is sent. It stands in index.html too, so that it holds on
// any host.
//
// Who may show the page in a frame is not in it: that only counts as a header.
const Policy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; " +
	"img-src 'self'; font-src 'self'; connect-src 'self'; worker-src 'self'; manifest-src 'self'; " +
	"base-uri 'none'; form-action 'none'"

// withPolicy writes the policy behind the line of index.html that says its
// characters, before anything that the page loads.
func withPolicy(index []byte) ([]byte, error) {
	const characters = `<meta charset="utf-8">`
	if bytes.Contains(bytes.ToLower(index), []byte("content-security-policy")) {
		return nil, errors.New(IndexName + " has a policy of its own; leave it to the build")
	}
	before, after, found := bytes.Cut(index, []byte(characters))
	if !found || bytes.Contains(before, []byte("<script")) || bytes.Contains(before, []byte("<link")) {
		return nil, errors.New(IndexName + " needs " + characters + ", before anything that it loads")
	}
	line := characters + "\n" + `<meta http-equiv="Content-Security-Policy" content="` + Policy + `">`
	return bytes.Join([][]byte{before, []byte(line), after}, nil), nil
}
