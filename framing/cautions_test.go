package framing_test

import (
	"maps"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// gone says which cautions a change of a field may take away, because what they
// warn of is then not there: a pane of another material, a smaller pane, a
// lighter piece. Nothing else may.
func gone(field explain.Path, code explain.Code) bool {
	name := field.Last()
	switch code {
	case "caution.saw": // nothing of a frame that is there is cut
		return name == "made"
	case "caution.glass_edges", "caution.static":
		return name == "material" || name == "kind"
	case "caution.safety_glazing":
		return name != "name" && name != "molding" && !strings.Contains(string(field), "/hang")
	case "caution.heavy_piece": // every size and material weighs
		return !strings.Contains(string(field), "/hang") && name != "name" && name != "molding"
	case "caution.short_rail": // every size makes rails longer
		return strings.Contains(string(field), "/art") || strings.Contains(string(field), "/mat") || strings.Contains(string(field), "/frame/") || strings.HasPrefix(string(field), "/shop/")
	case "caution.trapped_offcut": // the corners and the pitches make the tilt
		return strings.Contains(string(field), "/art/outline") || strings.Contains(string(field), "/slope")
	}
	return false
}

// others lists other values of a field, as JSON.
func (s spot) others() []string {
	if _, ok := reflect.Zero(s.kind).Interface().(interface{ Choices() []string }); ok {
		var all []string
		for _, word := range choices(s.kind) {
			all = append(all, strconv.Quote(word))
		}
		return all
	}
	switch s.kind {
	case reflect.TypeFor[measure.Length]():
		return []string{`"0"`, `"1 nm"`, `"1/8"`, `"2"`, `"30"`, `"300"`}
	case reflect.TypeFor[measure.Force]():
		return []string{`"0 N"`, `"1 N"`, `"100 kN"`}
	case reflect.TypeFor[measure.Mass]():
		return []string{`"0 g"`, `"1 g"`, `"10000 kg"`}
	case reflect.TypeFor[measure.Angle]():
		return []string{`"15 deg"`, `"45 deg"`, `"80 deg"`}
	case reflect.TypeFor[explain.Ratio]():
		return []string{`"0 %"`, `"1 %"`, `"50 %"`, `"99 %"`}
	case reflect.TypeFor[int]():
		return []string{"1", "2", "100"}
	case reflect.TypeFor[string]():
		return []string{`""`, `"no caution"`}
	}
	return nil
}

// cautionCodes lists what a plan warns of: not what is at fault with the piece,
// which can be mended, but what can hurt.
func cautionCodes(plan framing.Plan) []explain.Code {
	var codes []explain.Code
	for _, p := range plan.Pieces {
		for _, n := range p.Notes {
			if strings.HasPrefix(string(n.Code), "caution.") && !slices.Contains(codes, n.Code) {
				codes = append(codes, n.Code)
			}
		}
	}
	return codes
}

// TestNoFieldRemovesACaution changes every field of orders to other values, one
// at a time: no caution goes but where what it warns of is not there any more.
func TestNoFieldRemovesACaution(t *testing.T) {
	texts := [][]byte{marshal(t, framing.Sample())}
	for _, name := range slices.Sorted(maps.Keys(fullOrders)) {
		texts = append(texts, []byte(fullOrders[name]))
	}
	d, drawn := newDice(11), 6
	if slow {
		drawn = 1
	}
	for range drawn {
		texts = append(texts, marshal(t, d.order(1)))
	}
	tried := make(map[explain.Code]int)
	plain := parseDoc(t, []byte(fullOrder))
	for _, text := range texts {
		order, err := framing.Read(text)
		if err != nil {
			t.Fatal(err)
		}
		before := cautionCodes(work(t, order))
		full := parseDoc(t, marshal(t, order))
		for _, s := range spots(full) {
			if string(text) == fullSides && holds(plain, s.path) {
				continue // art out of square takes long
			}
			for _, value := range s.others() {
				changed, err := framing.Read(full.with(s.path, value).text())
				if err != nil {
					continue
				}
				after := cautionCodes(work(t, changed))
				for _, code := range before {
					tried[code]++
					if !slices.Contains(after, code) && !gone(s.path, code) {
						t.Errorf("%s = %s takes %s away", s.path, value, code)
					}
				}
			}
		}
	}
	for _, code := range []explain.Code{"caution.saw", "caution.mat_blade", "caution.glass_edges", "caution.static", "caution.wall_wiring", "caution.over_seats"} {
		if tried[code] < 100 {
			t.Errorf("%s was put to the test %d times only", code, tried[code])
		}
	}
}

// reach is at for a path that may lead nowhere.
func (n *doc) reach(path explain.Path) (holder *doc, index int) {
	for _, s := range path.Parent().Segments() {
		i := -1
		if n.kind == '[' {
			i, _ = strconv.Atoi(s)
		}
		for k, key := range n.keys {
			if key == s {
				i = k
			}
		}
		if i < 0 || i >= len(n.below) {
			return nil, -1
		}
		n = n.below[i]
	}
	if n.kind == '[' {
		if i, err := strconv.Atoi(path.Last()); err == nil && i < len(n.below) {
			return n, i
		}
		return n, -1
	}
	return n, slices.Index(n.keys, path.Last())
}
