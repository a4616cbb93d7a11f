// Command testjson reads what go test -json prints and says in short what came
// of it: a line for each package, the whole output of what failed, and every
// line that begins "published checks:". It exits 1 if a test failed, if a
// test was skipped, and if none ran: what did not run proves nothing.
package main

import (
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"
	"strings"
)

// An event is one line of go test -json; see "go doc test2json".
type event struct {
	Action, Package, ImportPath, Test, Output string
	Elapsed                                   float64
}

// A key names a test, or a package where the test is empty.
type key struct{ pkg, test string }

// A report is what has been read so far.
type report struct {
	out                     io.Writer
	output                  map[key]string
	passed, failed, skipped int
	bad                     bool
}

func main() {
	r := report{out: os.Stdout, output: make(map[key]string)}
	for d := json.NewDecoder(os.Stdin); ; {
		var e event
		if err := d.Decode(&e); errors.Is(err, io.EOF) {
			break
		} else if err != nil {
			fmt.Println("red: not the output of go test -json:", err)
			os.Exit(1)
		}
		r.read(e)
	}
	if !r.close() {
		os.Exit(1)
	}
}

func (r *report) read(e event) {
	k := key{e.Package, e.Test}
	switch e.Action {
	case "output":
		r.output[k] += e.Output
		if strings.HasPrefix(e.Output, "published checks:") {
			fmt.Fprint(r.out, e.Output)
		}
	case "build-output":
		fmt.Fprint(r.out, e.Output)
	case "build-fail":
		r.bad = true
	case "pass", "fail", "skip":
		r.end(k, e)
		delete(r.output, k)
	}
}

// end takes the outcome of a test or of a package.
func (r *report) end(k key, e event) {
	fail := e.Action == "fail"
	if k.test == "" {
		r.bad = r.bad || fail
		switch {
		case fail:
			fmt.Fprintf(r.out, "FAIL\t%s\t%.3fs\n%s", k.pkg, e.Elapsed, r.output[k])
		case e.Action == "skip":
			fmt.Fprintf(r.out, "?   \t%s\t[no test files]\n", k.pkg)
		default:
			fmt.Fprintf(r.out, "ok  \t%s\t%.3fs\n", k.pkg, e.Elapsed)
		}
		return
	}
	switch {
	case fail:
		r.failed++
		fmt.Fprintf(r.out, "failed: %s %s\n%s", k.pkg, k.test, r.output[k])
	case e.Action == "skip":
		r.skipped++
		fmt.Fprintf(r.out, "skipped: %s %s\n%s", k.pkg, k.test, r.output[k])
	default:
		r.passed++
	}
}

// close prints the counts and reports whether all is well.
func (r *report) close() bool {
	fmt.Fprintf(r.out, "tests: %d passed, %d failed, %d skipped\n", r.passed, r.failed, r.skipped)
	switch {
	case r.failed > 0 || r.bad:
		fmt.Fprintln(r.out, "red: not every test passed")
	case r.skipped > 0:
		fmt.Fprintln(r.out, "red: a test was skipped; here each must run")
	case r.passed == 0:
		fmt.Fprintln(r.out, "red: no test ran")
	default:
		return true
	}
	return false
}
