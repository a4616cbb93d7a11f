package molding_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/molding"
)

// found lists the problems of c as "path code".
func found(c *explain.Checker) []string {
	var list []string
	for _, p := range c.Problems() {
		list = append(list, string(p.Path)+" "+string(p.Code))
	}
	return list
}

func TestFrameCheck(t *testing.T) {
	const most = explain.MaxLength
	rows := []struct {
		name   string
		change func(*molding.Frame)
		want   []string
	}{
		{"as it is", func(*molding.Frame) {}, nil},
		{"name too long", func(f *molding.Frame) { f.Molding = strings.Repeat("x", explain.MaxText+1) }, []string{"/frame/molding text_too_long"}},
		{"name with a control", func(f *molding.Frame) { f.Molding = "\x1b[0m" }, []string{"/frame/molding text_control"}},
		{"no kind", func(f *molding.Frame) { f.Kind = "" }, []string{"/frame/kind not_a_choice"}},
		{"another kind", func(f *molding.Frame) { f.Kind = "float" }, []string{"/frame/kind not_a_choice"}},
		{"case of the kind", func(f *molding.Frame) { f.Kind = "Rabbet" }, []string{"/frame/kind wrong_case"}},
		{"not made", func(f *molding.Frame) { f.Made = "" }, []string{"/frame/made not_a_choice"}},
		{"made otherwise", func(f *molding.Frame) { f.Made = "to_order" }, []string{"/frame/made not_a_choice"}},
		{"case of how it is made", func(f *molding.Frame) { f.Made = "TO_FIT" }, []string{"/frame/made wrong_case"}},
		{"to a space", func(f *molding.Frame) { f.Made = molding.ToSpace }, nil},
		{"ready-made", func(f *molding.Frame) { f.Made = molding.ReadyMade }, nil},
		{"no wood", func(f *molding.Frame) { f.Wood = "" }, []string{"/frame/wood not_a_choice"}},
		{"glass is no wood", func(f *molding.Frame) { f.Wood = "glass" }, []string{"/frame/wood not_a_choice"}},
		{"case of the wood", func(f *molding.Frame) { f.Wood = "Ash_White" }, []string{"/frame/wood wrong_case"}},
		{"a wood", func(f *molding.Frame) { f.Wood = "ash_white" }, nil},
		{"negative gap", func(f *molding.Frame) { f.Gap = -1 }, []string{"/frame/gap out_of_range"}},
		{"widest gap", func(f *molding.Frame) { f.Gap = most }, nil},
		{"gap too wide", func(f *molding.Frame) { f.Gap = most + 1 }, []string{"/frame/gap out_of_range"}},
		{"negative ledge", func(f *molding.Frame) { f.Ledge = -1 }, []string{"/frame/ledge out_of_range"}},
		{"ledge too wide", func(f *molding.Frame) { f.Ledge = most + 1 }, []string{"/frame/ledge out_of_range"}},
		{"negative height", func(f *molding.Frame) { f.Height = -1 }, []string{"/frame/height out_of_range"}},
		{"highest", func(f *molding.Frame) { f.Height = most }, nil},
		{"too high", func(f *molding.Frame) { f.Height = most + 1 }, []string{"/frame/height out_of_range"}},
		{"a floater", func(f *molding.Frame) { f.Kind, f.Lip = molding.Floater, 0 }, nil},
		{"a floater with a nanometer of lip", func(f *molding.Frame) { f.Kind, f.Lip = molding.Floater, 1 }, []string{"/frame/lip out_of_range"}},
		{"a floater with a negative lip", func(f *molding.Frame) { f.Kind, f.Lip = molding.Floater, -1 }, []string{"/frame/lip out_of_range"}},
		{"a floater with a lip as wide as the face", func(f *molding.Frame) { f.Kind, f.Lip = molding.Floater, f.Face }, []string{"/frame/lip out_of_range"}},
		{"no face", func(f *molding.Frame) { f.Face = 0 }, []string{"/frame/face out_of_range"}},
		{"face too wide", func(f *molding.Frame) { f.Face = most + 1 }, []string{"/frame/face out_of_range"}},
		{"no lip", func(f *molding.Frame) { f.Lip = 0 }, nil},
		{"negative lip", func(f *molding.Frame) { f.Lip = -1 }, []string{"/frame/lip out_of_range"}},
		{"lip too wide", func(f *molding.Frame) { f.Lip = most + 1 }, []string{"/frame/lip out_of_range"}},
		{"lip a nanometer narrower than the face", func(f *molding.Frame) { f.Lip = f.Face - 1 }, nil},
		{"lip as wide as the face", func(f *molding.Frame) { f.Lip = f.Face }, []string{"/frame/lip out_of_range"}},
		{"no rabbet", func(f *molding.Frame) { f.Rabbet = 0 }, nil},
		{"negative rabbet", func(f *molding.Frame) { f.Rabbet = -1 }, []string{"/frame/rabbet out_of_range"}},
		{"rabbet too deep", func(f *molding.Frame) { f.Rabbet = most + 1 }, []string{"/frame/rabbet out_of_range"}},
		{"as deep as the molding is high", func(f *molding.Frame) { f.Height = f.Rabbet }, []string{"/frame/rabbet out_of_range"}},
		{"a nanometer of wood", func(f *molding.Frame) { f.Height = f.Rabbet + 1 }, nil},
		{"a floater without a ledge below", func(f *molding.Frame) { f.Kind, f.Lip, f.Height = molding.Floater, 0, f.Rabbet }, []string{"/frame/rabbet out_of_range"}},
		{"no allowance", func(f *molding.Frame) { f.Allowance = 0 }, nil},
		{"negative allowance", func(f *molding.Frame) { f.Allowance = -1 }, []string{"/frame/allowance out_of_range"}},
		{"allowance too much", func(f *molding.Frame) { f.Allowance = most + 1 }, []string{"/frame/allowance out_of_range"}},
		{"face and lip", func(f *molding.Frame) { f.Face = 0; f.Lip = -1 }, []string{"/frame/face out_of_range", "/frame/lip out_of_range"}},
		{"a lip without a face to compare", func(f *molding.Frame) { f.Face = -1 }, []string{"/frame/face out_of_range"}},
	}
	for _, row := range rows {
		f := frame("1 1/2", "1/4", "1/8")
		row.change(&f)
		var c explain.Checker
		f.Check(&c, "/frame")
		if got := found(&c); !slices.Equal(got, row.want) {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
}

// TestFrameCheckAsksForFace: a lip is held against a face only where both
// could be read.
func TestFrameCheckAsksForFace(t *testing.T) {
	var c explain.Checker
	c.Add(explain.Problem{Code: explain.Missing, Path: "/frame/face"})
	molding.Frame{Kind: molding.Rabbeted, Made: molding.ToFit, Wood: "wood", Lip: in("1/4")}.Check(&c, "/frame")
	if got := found(&c); !slices.Equal(got, []string{"/frame/face missing"}) {
		t.Errorf("found %q", got)
	}
}

func TestSheetCheck(t *testing.T) {
	const most = explain.MaxLength
	rows := []struct {
		name   string
		change func(*molding.Sheet)
		want   []string
	}{
		{"as it is", func(*molding.Sheet) {}, nil},
		{"no material", func(s *molding.Sheet) { s.Material = "" }, []string{"/backing/material not_a_choice"}},
		{"case", func(s *molding.Sheet) { s.Material = "Foam_Board" }, []string{"/backing/material wrong_case"}},
		{"name", func(s *molding.Sheet) { s.Name = "a\u202eb" }, []string{"/backing/name text_control"}},
		{"no thickness", func(s *molding.Sheet) { s.Thickness = 0 }, []string{"/backing/thickness missing"}},
		{"too thick", func(s *molding.Sheet) { s.Thickness = most + 1 }, []string{"/backing/thickness out_of_range"}},
		{"negative clearance", func(s *molding.Sheet) { s.Clearance = -1 }, []string{"/backing/clearance out_of_range"}},
		{"clearance too much", func(s *molding.Sheet) { s.Clearance = most + 1 }, []string{"/backing/clearance out_of_range"}},
		{"half a size", func(s *molding.Sheet) { s.Size.Width = 1 }, []string{"/backing/size/height missing"}},
		{"the other half", func(s *molding.Sheet) { s.Size.Height = most }, []string{"/backing/size/width missing"}},
		{"negative size", func(s *molding.Sheet) { s.Size = measure.Size{Width: -1, Height: 1} }, []string{"/backing/size/width out_of_range"}},
		{"too large", func(s *molding.Sheet) { s.Size = measure.Size{Width: most + 1, Height: most} }, []string{"/backing/size/width out_of_range"}},
		{"a size", func(s *molding.Sheet) { s.Size = measure.Size{Width: 1, Height: most} }, nil},
	}
	for _, row := range rows {
		s := molding.Sheet{Material: molding.FoamBoard, Name: "3/16, white", Thickness: in("3/16")}
		row.change(&s)
		var c explain.Checker
		s.Check(&c, "/backing")
		if got := found(&c); !slices.Equal(got, row.want) {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
	for _, material := range molding.Board.Choices() {
		var c explain.Checker
		molding.Sheet{Material: molding.SheetMaterial(material), Thickness: 1}.Check(&c, "")
		if got := found(&c); got != nil {
			t.Errorf("%s is a choice and refused: %q", material, got)
		}
	}
}
