package framing_test

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
)

var update = flag.Bool("update", false, "write the plans that are made as the ones that are wanted")

// TestPlans holds the plan of every sample order against the one that stands in
// testdata, byte for byte. A plan that differs is saved beside it as
// NAME-changed.json, for the eye; -update takes it over. Look at the diff.
func TestPlans(t *testing.T) {
	texts := sampleFiles(t)
	if len(texts) == 0 {
		t.Error("no sample orders")
	}
	folder := filepath.Join(testdata, "plans")
	for name, text := range texts {
		t.Run(name, func(t *testing.T) {
			got, err := json.MarshalIndent(worked(t, string(text)), "", "\t")
			if err != nil {
				t.Fatal(err)
			}
			got = append(got, '\n')
			file := filepath.Join(folder, name+".json")
			changed := filepath.Join(folder, name+"-changed.json")
			if *update {
				if err := os.WriteFile(file, got, 0o644); err != nil {
					t.Fatal(err)
				}
				os.Remove(changed)
				return
			}
			want, err := os.ReadFile(file)
			if err != nil {
				t.Fatalf("%v; write it with: go test ./framing -run TestPlans -update", err)
			}
			if !bytes.Equal(got, want) {
				if err := os.WriteFile(changed, got, 0o644); err != nil {
					t.Error(err)
				}
				t.Errorf("the plan differs from %s: compare with %s", file, changed)
			}
		})
	}
	plans, err := filepath.Glob(filepath.Join(folder, "*.json"))
	if err != nil {
		t.Fatal(err)
	}
	for _, file := range plans {
		name := strings.TrimSuffix(filepath.Base(file), ".json")
		if _, ok := texts[name]; !ok && !strings.HasSuffix(name, "-changed") {
			t.Errorf("%s is the plan of no sample order", file)
		}
	}
}

// sameBytes is the hash of a thousand plans, the same on every platform. Where
// plans change on purpose, take the new one from the failure's text.
const sameBytes = "58832f4331188be95b78aa889df5ed3be862b6c0c8cd3f25fa97cb012faf93b2"

// TestSameBytes works the same drawn orders as on every platform.
func TestSameBytes(t *testing.T) {
	d := newDice(11)
	ways := shows()
	hash := sha256.New()
	for range 1000 {
		order := d.order(1)
		for range 3 {
			order.Show = draw(d, ways...)
			hash.Write(marshal(t, work(t, order)))
			hash.Write([]byte{'\n'})
		}
	}
	hash.Write(marshal(t, work(t, framing.Sample())))
	if got := hex.EncodeToString(hash.Sum(nil)); got != sameBytes {
		t.Errorf("the plans have changed. If that is meant:\n\nconst sameBytes = %q\n", got)
	}
}
