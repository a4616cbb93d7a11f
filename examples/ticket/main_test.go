package main

import (
	"encoding/json"
	"strings"
	"testing"
)

const order = `{"version": 1, "units": "in", "pieces": [
	{"art": {"width": "8", "height": "10"}, "frame": {"face": "1", "lip": "1/4"}}]}`

// TestRun runs the program with good arguments and looks for a number that
// only those arguments give. The rails follow by hand: 8 + 1/8 + 2 (1 - 1/4).
func TestRun(t *testing.T) {
	for _, tt := range []struct {
		name, args, in, want string
	}{
		{"sample", "", "", "16 1/4 "},
		{"file", "../../testdata/orders/linocut.json", "", "18 5/8 "},
		{"standard input", "-", order, "9 5/8 "},
		{"working", "-working -", order, "outside 9 5/8 = opening 8 1/8 + 2 x (face 1 - lip 1/4)"},
		{"millimeters", "-units mm -fineness 0.1 -", order, "244.5 "},
		{"feet", "-units ft ../../testdata/orders/linocut.json", "", `1' 6 5/8" `},
		{"fineness", "-fineness 1/8 -", order, "to 1/8 in"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			var out strings.Builder
			if err := run(strings.Fields(tt.args), strings.NewReader(tt.in), &out); err != nil {
				t.Fatal(err)
			}
			if !strings.Contains(out.String(), tt.want) {
				t.Errorf("no %q in\n%s", tt.want, out.String())
			}
		})
	}
}

func TestJSON(t *testing.T) {
	var out strings.Builder
	if err := run([]string{"-json", "-"}, strings.NewReader(order), &out); err != nil {
		t.Fatal(err)
	}
	var plan struct {
		Pieces []struct {
			Frame struct {
				Outside struct {
					Width struct{ Exact, Shown, Text, Spoken string }
				}
			}
		}
	}
	if err := json.Unmarshal([]byte(out.String()), &plan); err != nil {
		t.Fatal(err)
	}
	got := plan.Pieces[0].Frame.Outside.Width
	got.Spoken = ""
	if want := (struct{ Exact, Shown, Text, Spoken string }{"244.475 mm", "244.475 mm", "9 5/8", ""}); got != want {
		t.Errorf("got %+v, want %+v", got, want)
	}
}

// TestRefusals: what is wrong is said, and a piece without problems is still
// printed.
func TestRefusals(t *testing.T) {
	half := strings.Replace(order, `"pieces": [`, `"pieces": [{"art": {"width": "8", "height": "wide"}, "frame": {"face": "1", "lip": "1/4"}},`, 1)
	for _, tt := range []struct {
		name, args, in, wantErr, wantOut string
	}{
		{"no such file", "none.json", "", "none.json", ""},
		{"two files", "a.json b.json", "", "one order at a time", ""},
		{"not JSON", "-", "{", "order: the text is not JSON", ""},
		{"unknown units", "-units cubits -", order, `given "cubits"`, ""},
		{"fineness of another kind", "-fineness 1mm -", order, "1/8 in", ""},
		{"unreadable fineness", "-fineness 1.5/3 -", order, "-fineness", ""},
		{"one bad piece", "-", half, "/pieces/0/art/height", "9 5/8 "},
	} {
		t.Run(tt.name, func(t *testing.T) {
			var out strings.Builder
			err := run(strings.Fields(tt.args), strings.NewReader(tt.in), &out)
			if err == nil || !strings.Contains(err.Error(), tt.wantErr) {
				t.Errorf("error %v, want one with %q", err, tt.wantErr)
			}
			if got := out.String(); tt.wantOut == "" && got != "" || !strings.Contains(got, tt.wantOut) {
				t.Errorf("printed %q, want %q", got, tt.wantOut)
			}
		})
	}
}
