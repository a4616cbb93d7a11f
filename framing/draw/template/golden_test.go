package template_test

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/draw/template"
)

var update = flag.Bool("update", false, "renew the golden templates; look at them")

// TestGolden holds templates against files that were looked at. A changed file is saved
// beside as NAME-changed, for the eye; -update takes it over.
func TestGolden(t *testing.T) {
	const folder = "../../../testdata/templates"
	wanted := make(map[string]bool)
	for name, s := range set(t) {
		for file, got := range map[string][]byte{
			name + ".svg":        must[[]byte](t)(s.SVG()),
			name + ".dxf":        must[[]byte](t)(s.DXF(0)),
			name + "-letter.pdf": must[[]byte](t)(s.PDF(template.Letter, template.Overlap)),
			name + "-a4.pdf":     must[[]byte](t)(s.PDF(template.A4, template.Overlap)),
		} {
			wanted[file] = true
			golden(t, filepath.Join(folder, file), got)
		}
	}
	files, err := filepath.Glob(folder + "/*")
	if err != nil {
		t.Fatal(err)
	}
	for _, file := range files {
		if name := filepath.Base(file); !wanted[name] && !strings.Contains(name, "-changed.") {
			t.Errorf("%s is no template of the set", file)
		}
	}
}

func golden(t *testing.T, name string, got []byte) {
	t.Helper()
	ext := filepath.Ext(name)
	changed := strings.TrimSuffix(name, ext) + "-changed" + ext
	if *update {
		if err := os.WriteFile(name, got, 0o644); err != nil {
			t.Fatal(err)
		}
		os.Remove(changed)
		return
	}
	want, err := os.ReadFile(name)
	if err != nil {
		t.Fatalf("%v; write it with: go test ./framing/draw/template -update", err)
	}
	if !bytes.Equal(got, want) {
		if err := os.WriteFile(changed, got, 0o644); err != nil {
			t.Error(err)
		}
		t.Errorf("the template changed; look at %s", changed)
	}
}
