// Package speed times code against a loop of known work on the same machine in
// the same moment, and holds the outcome against what was recorded. It serves
// the tests that are built with the tag speed.
//
// A ratio is the time of one operation by that loop. On the machine of
// reference, when nothing else runs there, the loop takes 250 microseconds; so a
// ratio is the nanoseconds that the operation takes on that machine. Unlike
// nanoseconds it stays when a machine is slower or busy.
package speed

import (
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"testing"
	"time"
)

// Slower is how many times its recorded ratio a case may take. Below two, the
// noise of a shared machine would be red too.
const Slower = 2

// A Case is one operation to time.
type Case struct {
	Name string
	Do   func()
	// Allocs is how many allocations one operation may make; a negative number
	// allows any.
	Allocs int
	// Limit is how long one operation may take on the machine of reference,
	// whatever is recorded; 0 sets none.
	Limit time.Duration
}

// A Result is what timing a case gave.
type Result struct {
	Nanoseconds float64 // for one operation
	Allocs      float64
	Ratio       float64
}

// loop is the known work: it writes numbers in digits and reads them back, with
// the branches, tables and small integers of the code that is timed, so that a
// busy neighbor on the same core slows both alike.
func loop() {
	var buf [20]byte
	var sum uint64
	for i := range uint64(11_250) {
		at := len(buf)
		for n := i * 0x9E3779B9 >> 12; n > 0; n /= 10 {
			at--
			buf[at] = digits[n%10]
		}
		var n uint64
		for _, c := range buf[at:] {
			switch {
			case c == '7':
				n += n << 1
			case c >= '0' && c <= '9':
				n = n*10 + uint64(c-'0')
			}
		}
		sum += n
	}
	runtime.KeepAlive(sum) // or the compiler may leave the loop out
}

const digits = "0123456789"

// Measure times f: the median of seven samples, each set against the loop just
// before it, so that a slow moment slows both.
func Measure(f func()) Result {
	const samples, reference = 7, 250_000
	// Until the garbage collector has run, what allocates is slow: each page of
	// the heap is touched for the first time.
	for start := time.Now(); time.Since(start) < 25*time.Millisecond; {
		f()
	}
	n := 1
	for fastest(f, n) < reference && n < 1<<20 {
		n *= 2
	}
	var ns, ratios []float64
	for range samples {
		base := fastest(loop, 1)
		each := fastest(f, n) / float64(n)
		ns = append(ns, each)
		ratios = append(ratios, each/base*reference)
	}
	slices.Sort(ns)
	slices.Sort(ratios)
	return Result{ns[samples/2], testing.AllocsPerRun(100, f), ratios[samples/2]}
}

// fastest returns the nanoseconds of n calls of f: the least of four tries, as
// another program may take the processor away in the middle of one.
func fastest(f func(), n int) float64 {
	best := time.Duration(1<<63 - 1)
	for range 4 {
		start := time.Now()
		for range n {
			f()
		}
		best = min(best, time.Since(start))
	}
	return float64(best.Nanoseconds())
}

// Run times the cases of a package, logs a line "speed: ..." for each and is
// red at a case that is over a limit, that takes more than Slower times its
// recorded ratio or that is not recorded, and at one that is recorded but not
// among the cases. With FAIRMITER_SPEED_RECORD=1 it records instead; the limits
// hold all the same.
func Run(t *testing.T, pkg string, cases []Case) {
	t.Helper()
	file := recordFile(t)
	recorded := read(t, file)
	measured := make(map[string]float64)
	for _, c := range cases {
		key := pkg + " " + c.Name
		limit, isRecorded := recorded[key]
		if os.Getenv("FAIRMITER_SPEED_RECORD") == "1" {
			limit, isRecorded = 0, true
		}
		r, fault := Judge(c, limit)
		measured[key] = r.Ratio
		t.Logf("speed: %-52s %9.1f ns/op %5.0f allocs/op  ratio %9.1f  recorded %9.1f",
			key, r.Nanoseconds, r.Allocs, r.Ratio, recorded[key])
		if !isRecorded {
			fault = "is not recorded in testdata/speed/ratios.txt"
		}
		if fault != "" {
			t.Errorf("%s %s", key, fault)
		}
	}
	if os.Getenv("FAIRMITER_SPEED_RECORD") == "1" {
		write(t, file, pkg, recorded, measured)
		return
	}
	for key := range recorded {
		if _, ok := measured[key]; !ok && strings.HasPrefix(key, pkg+" ") {
			t.Errorf("%s is recorded, but no test measures it", key)
		}
	}
}

// Judge measures a case and says what is wrong with the outcome, in words, or
// nothing. A recorded ratio of 0 allows any. It tries up to five times and takes
// the best: noise only ever slows, and what has become slow stays slow.
func Judge(c Case, recorded float64) (best Result, fault string) {
	for range 5 {
		r := Measure(c.Do)
		if best == (Result{}) || r.Ratio < best.Ratio {
			best = r
		}
		if fault = over(c, best, recorded); fault == "" {
			break
		}
	}
	return best, fault
}

func over(c Case, r Result, recorded float64) string {
	switch {
	case c.Allocs >= 0 && r.Allocs > float64(c.Allocs):
		return fmt.Sprintf("makes %.0f allocations, but may make %d", r.Allocs, c.Allocs)
	case c.Limit > 0 && r.Ratio > float64(c.Limit.Nanoseconds()):
		return fmt.Sprintf("takes %.0f ns by the loop, but may take %v", r.Ratio, c.Limit)
	case recorded > 0 && r.Ratio > Slower*recorded:
		return fmt.Sprintf("takes %.1f times its recorded ratio, but may take %d", r.Ratio/recorded, Slower)
	}
	return ""
}

// recordFile finds the record from the folder of the package under test.
func recordFile(t *testing.T) string {
	t.Helper()
	dir, err := os.Getwd()
	if err != nil {
		t.Fatal(err)
	}
	for {
		if _, err := os.Stat(filepath.Join(dir, "go.mod")); err == nil {
			return filepath.Join(dir, "testdata", "speed", "ratios.txt")
		}
		up := filepath.Dir(dir)
		if up == dir {
			t.Fatal("found no go.mod above the package")
		}
		dir = up
	}
}

// read reads the record: lines of package, name and ratio. No record is an
// empty one.
func read(t *testing.T, file string) map[string]float64 {
	t.Helper()
	data, err := os.ReadFile(file)
	if err != nil && !os.IsNotExist(err) {
		t.Fatal(err)
	}
	recorded := make(map[string]float64)
	for line := range strings.Lines(string(data)) {
		if line = strings.TrimSpace(line); line == "" || line[0] == '#' {
			continue
		}
		var pkg, name string
		var ratio float64
		if n, err := fmt.Sscan(line, &pkg, &name, &ratio); n != 3 || ratio <= 0 {
			t.Fatalf("%s: %q is not a package, a name and a ratio: %v", file, line, err)
		}
		recorded[pkg+" "+name] = ratio
	}
	return recorded
}

// write records the cases of pkg anew and leaves those of others.
func write(t *testing.T, file, pkg string, recorded, measured map[string]float64) {
	t.Helper()
	var lines []string
	for key, ratio := range recorded {
		if !strings.HasPrefix(key, pkg+" ") {
			lines = append(lines, fmt.Sprintf("%s %.1f\n", key, ratio))
		}
	}
	for key, ratio := range measured {
		lines = append(lines, fmt.Sprintf("%s %.1f\n", key, ratio))
	}
	slices.Sort(lines)
	text := "# Package, case and ratio; see framing/internal/speed. Renewed by\n" +
		"# FAIRMITER_SPEED_RECORD=1 .ci/gates/speed\n" + strings.Join(lines, "")
	if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}
