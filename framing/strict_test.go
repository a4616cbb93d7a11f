package framing_test

import (
	"encoding/json"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// fullOrder uses every field that an order has.
const fullOrder = `{
	"version": 2, "job": "Reading room", "date": "2027-03-31", "units": "in",
	"show": {"as": "fraction", "fineness": "1/32 in"},
	"shop": {"allowance": "1/8", "overlap": "3/16", "border": "2 3/4", "points": "1/8", "bite": "3/32",
		"extra": "5/8", "reveal": "3/16", "trim": "1/16", "spacer": "3/16", "gap": "3/16", "turn": "1 1/4", "bar": "1 3/8", "dust": "3/32",
		"thickness": {"board": "1/16", "glass": "2.1 mm", "acrylic": "2.5 mm", "polycarbonate": "2.4 mm",
			"foam_board": "5 mm", "corrugated": "4 mm", "plywood": "6 mm", "hardboard": "3.1 mm", "metal": "2.9 mm"}},
	"pieces": [{
		"name": "River chart", "quantity": 2,
		"art": {"kind": "canvas", "width": "17", "height": "22 1/2",
			"varies": {"width": "1/16", "height": "1/8"}, "thickness": "0.3 mm", "mass": "2 lb",
			"stretch": {"turn": "1 3/8", "bar": "1 3/4"}},
		"mat": {"name": "rag, 8-ply", "thickness": "1/8", "bevel": "60 deg",
			"window": {"by": "overlap", "each_side": "1/4", "width": "16", "height": "21"},
			"borders": {"by": "visible", "to": "lowest_window", "left": "3", "right": "3", "top": "3", "bottom": "3 1/2",
				"weight": "extra", "extra": "1/2", "ratio": "15 %", "board": {"width": "24", "height": "30"}},
			"under": [{"name": "gray, 4-ply", "thickness": "0.06", "bevel": "50 deg", "by": "seen", "reveal": "1/8", "trim": "3/16"}]},
		"glazing": {"material": "acrylic", "name": "clear", "thickness": "3 mm", "clearance": "3/16",
			"size": {"width": "22 1/2", "height": "28 1/2"}},
		"spacer": {"name": "clear strip", "under": "mat", "width": "1/4", "depth": "3/8"},
		"mount": {"material": "board", "name": "museum board", "thickness": "1/16", "clearance": "1/8",
			"size": {"width": "22 1/2", "height": "28 1/2"}},
		"backing": {"material": "foam_board", "name": "white", "thickness": "3/16", "clearance": "1/8",
			"size": {"width": "22 1/2", "height": "28 1/2"}},
		"liner": {"kind": "rabbet", "molding": "linen", "face": "1", "lip": "3/16", "rabbet": "1/2", "allowance": "3/32",
			"gap": "1/8", "ledge": "1/2", "height": "3/4", "made": "to_space", "wood": "basswood"},
		"frame": {"kind": "rabbet", "molding": "cherry, 1 1/2", "face": "1 1/2", "lip": "3/8", "rabbet": "3/4", "allowance": "1/8",
			"gap": "3/8", "ledge": "1", "height": "1 1/4", "made": "ready_made", "wood": "cherry_black"},
		"hang": {"by": "rings", "hooks": 1, "part": "25 %", "below": "6", "below_right": "6 1/8", "inset": "3/4",
			"taut": {"by": "rise", "angle": "40 deg", "rise": "3", "wire": "30"},
			"spread": "8", "tails": "5", "nail_above": "1/2", "hidden": "1 1/2", "center": "58",
			"ratings": {"wire_breaks": "80 lb", "hanger_holds": "30 lb", "hook_holds": "25 lb", "factor": 5}}
	}]
}`

// A spot is one field of the full order.
type spot struct {
	path     explain.Path
	kind     reflect.Type
	required bool // an order without it has a problem at its very path
	zeroable bool // left out where it is zero, so that its absence is no default
}

// spots lists every field of the full order, holders before what they hold.
func spots(t *testing.T) []spot {
	var list []spot
	spotsOf(reflect.TypeFor[framing.Order](), "", &list)
	full := parseDoc(t, []byte(fullOrder))
	for _, s := range list {
		if holder, i := full.at(s.path); i < 0 || i >= len(holder.below) {
			t.Fatalf("the full order lacks %s", s.path)
		}
	}
	return list
}

func spotsOf(t reflect.Type, at explain.Path, list *[]spot) {
	for _, f := range reflect.VisibleFields(t) {
		name, options, _ := strings.Cut(f.Tag.Get("json"), ",")
		if name == "" || f.Anonymous || !f.IsExported() {
			continue
		}
		path := at.Child(name)
		s := spot{path, f.Type, f.Tag.Get("order") == "required", options == "omitzero"}
		if name == "face" || path.Parent().Last() == "size" {
			s.required = true // zero is what it has then, and zero makes no sense
		}
		*list = append(*list, s)
		switch f.Type.Kind() {
		case reflect.Struct:
			spotsOf(f.Type, path, list)
		case reflect.Slice, reflect.Array:
			spotsOf(f.Type.Elem(), path.Index(0), list)
		}
	}
}

// wrongs lists values that are wrong for a field whatever the others hold.
func (s spot) wrongs() []string {
	wrong := []string{"null", "true", "[]", "[1]", "-0.5e1"}
	switch s.kind.Kind() {
	case reflect.Struct:
		return append(wrong, `"text"`, "7")
	case reflect.Slice:
		return []string{"null", "true", "[]", "{}", `"text"`, "7"}
	case reflect.Array:
		return []string{"null", "true", "{}", `"text"`, "7", "[{}, {}, {}]"}
	case reflect.Int, reflect.Int64:
		switch s.kind {
		case reflect.TypeFor[measure.Angle]():
			return append(wrong, "{}", "45", `""`, `"-1 deg"`, `"3 kg"`, `"3 mm"`, `"181 deg"`, `"steep"`)
		case reflect.TypeFor[measure.Mass]():
			return append(wrong, "{}", "2", `""`, `"2"`, `"-1 kg"`, `"3 mm"`, `"2 N"`, `"10001 kg"`, `"heavy"`)
		case reflect.TypeFor[measure.Force]():
			return append(wrong, "{}", "20", `""`, `"20"`, `"-1 N"`, `"3 mm"`, `"101 kN"`, `"strong"`)
		}
		if s.kind != reflect.TypeFor[measure.Length]() {
			return append(wrong, "{}", `"1"`, "-1", "1.5", "1e3", "99999999", "99999999999999999999999", "-99999999999999999999999")
		}
		wrong = append(wrong, "{}", "12", "0", `""`, `" "`, `"-1 mm"`, `"-1/64"`, `"3 kg"`, `"2 deg"`, `"3 sq in"`, `"1,250"`,
			`"51 m"`, `"2000 in"`, `"99999999999999999999 mm"`, `"twelve"`, `"1/0"`, `"1 \u0000"`, `"\ud800"`)
		if s.positive() {
			wrong = append(wrong, `"0"`, `"0 mm"`)
		}
		return wrong
	}
	wrong = append(wrong, "{}", "7")
	if _, ok := reflect.Zero(s.kind).Interface().(interface{ Choices() []string }); ok {
		for _, word := range choices(s.kind) {
			wrong = append(wrong, strconv.Quote(strings.ToUpper(word)), strconv.Quote(strings.ToUpper(word[:1])+word[1:]))
		}
		return append(wrong, `""`, `"other word"`, `"\ud800"`)
	}
	if s.kind == reflect.TypeFor[framing.Date]() {
		return append(wrong, `"2027-02-29"`, `"2027-3-31"`, `"31.3.2027"`, `"2027-03-31T00:00:00Z"`, `"today"`)
	}
	return append(wrong, strconv.Quote(strings.Repeat("x", explain.MaxText+1)), `"two\nlines"`, `"\u202eturned"`, `"\u0007"`, `"\udc00"`)
}

func choices(kind reflect.Type) []string {
	return reflect.Zero(kind).Interface().(interface{ Choices() []string }).Choices()
}

// positive reports whether a length of nothing makes no sense here.
func (s spot) positive() bool {
	switch s.path.Last() {
	case "face", "fineness":
		return true
	case "thickness":
		return s.path.Parent().Last() != "art"
	case "width", "height":
		return s.path.Parent().Last() == "art" || s.path.Parent().Last() == "size"
	}
	return false
}

// exactly requires that an order has problems at these paths and nowhere else.
func exactly(t *testing.T, text []byte, what string, want ...explain.Path) {
	t.Helper()
	order, err := framing.Read(text)
	ps := problems(t, err)
	sortedPaths(t, ps)
	slices.SortFunc(want, explain.Path.Compare)
	if got := paths(ps); !slices.Equal(got, want) {
		t.Errorf("%s: problems at %q, want %q\n%v", what, got, want, ps)
	}
	// What is found again in the order that could be read is no more than that.
	_, err = framing.Work(order)
	for _, p := range problems(t, err) {
		if !slices.ContainsFunc(want, func(w explain.Path) bool { return p.Path.Under(w) }) {
			t.Errorf("%s: Work finds %v as well", what, p)
		}
	}
	// Worked with what is known of the text, the problems are the same ones, and
	// no piece is worked that was not understood whole.
	plan, err := framing.NewReading(text).Work()
	if again := problems(t, err); !slices.Equal(again, ps) || len(plan.Problems) != len(ps) {
		t.Errorf("%s: worked, the problems are %v and in the plan %v, want %v", what, again, plan.Problems, ps)
	}
	for i, p := range plan.Pieces {
		for _, w := range want {
			if p.Worked && w.Under(explain.Path("/pieces").Index(i)) {
				t.Errorf("%s: piece %d is worked", what, i)
			}
		}
	}
}

// TestStrict changes one field of a good order at a time.
func TestStrict(t *testing.T) {
	full := parseDoc(t, []byte(fullOrder))
	exactly(t, full.text(), "as it is")
	for _, s := range spots(t) {
		for _, raw := range s.wrongs() {
			exactly(t, full.with(s.path, raw).text(), string(s.path)+" = "+raw, s.path)
		}
		key := s.path.Last()
		for _, other := range []string{strings.ToUpper(key), strings.ToUpper(key[:1]) + key[1:]} {
			exactly(t, full.renamed(s.path, other).text(), other, s.path.Parent().Child(other))
			exactly(t, full.beside(s.path, other, "null").text(), other+" as well", s.path.Parent().Child(other))
		}
		exactly(t, full.beside(s.path, key, "null").text(), "twice "+key, s.path)
		for _, unknown := range []string{key + "s", "", "~/", "é", "__proto__"} {
			exactly(t, full.beside(s.path, unknown, `{"a": [1, {"b": "1 in"}]}`).text(), "unknown "+unknown, s.path.Parent().Child(unknown))
		}
		absent(t, full, s)
	}
}

// absent leaves a field out: a problem there, or the default and a word about it.
func absent(t *testing.T, full *doc, s spot) {
	t.Helper()
	text := full.without(s.path).text()
	if s.required {
		exactly(t, text, "without "+string(s.path), s.path)
		return
	}
	plan, err := framing.NewReading(text).Work()
	if err != nil {
		t.Errorf("without %s: %v", s.path, err)
		return
	}
	told := slices.Contains(plan.Defaults, "/order"+s.path)
	if told == s.zeroable || len(plan.Defaults) > 1 {
		t.Errorf("without %s the plan names the defaults %q", s.path, plan.Defaults)
	}
	var document any
	if err := json.Unmarshal(marshal(t, plan), &document); err != nil {
		t.Fatal(err)
	}
	if _, written := resolve(document, "/order"+s.path); written == s.zeroable {
		t.Errorf("without %s the plan's order writes it: %v", s.path, written)
	}
}

// TestStrictSeveral spoils several fields at once.
func TestStrictSeveral(t *testing.T) {
	full := parseDoc(t, []byte(fullOrder))
	var leaves []spot
	for _, s := range spots(t) {
		if k := s.kind.Kind(); k != reflect.Struct && k != reflect.Slice && k != reflect.Array {
			leaves = append(leaves, s)
		}
	}
	d := newDice(3)
	for range 3000 {
		spoiled := full
		var want []explain.Path
		for k := 1 + d.below(5); k > 0; {
			s := draw(d, leaves...)
			if slices.Contains(want, s.path) {
				continue
			}
			raw := draw(d, s.wrongs()...)
			if s.path.Parent().Last() == "size" && strings.HasPrefix(raw, `"0`) {
				continue // a size of nothing both ways is cut to fit, and a spoiled one reads as nothing
			}
			spoiled = spoiled.with(s.path, raw)
			want = append(want, s.path)
			k--
		}
		exactly(t, spoiled.text(), string(spoiled.text()), want...)
		if t.Failed() {
			return
		}
	}
}
