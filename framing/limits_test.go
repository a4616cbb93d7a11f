package framing_test

import (
	"bytes"
	"runtime"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
)

// smallPiece is the least that a piece can be.
const smallPiece = `{"art": {"width": "8", "height": "10"}, "frame": {"face": "1", "lip": "1/4"}}`

// orderOf is an order of these pieces.
func orderOf(pieces string) string {
	return `{"version": 1, "units": "in", "pieces": [` + pieces + `]}`
}

// refusedOrders are whole documents that are no order, each with its problems.
var refusedOrders = map[string]struct {
	text string
	code explain.Code
	want []explain.Path
}{
	"empty":                 {"", explain.NotJSON, []explain.Path{""}},
	"blank":                 {" \n\t", explain.NotJSON, []explain.Path{""}},
	"not JSON":              {"width 8, height 10", explain.NotJSON, []explain.Path{""}},
	"cut short":             {orderOf(smallPiece)[:60], explain.NotJSON, []explain.Path{""}},
	"comment":               {"// an order\n" + orderOf(smallPiece), explain.NotJSON, []explain.Path{""}},
	"trailing comma":        {`{"version": 1,}`, explain.NotJSON, []explain.Path{""}},
	"byte order mark":       {"\ufeff" + orderOf(smallPiece), explain.NotJSON, []explain.Path{""}},
	"control in a string":   {"{\"job\": \"a\nb\"}", explain.NotJSON, []explain.Path{""}},
	"invalid UTF-8":         {strings.Replace(orderOf(smallPiece), "units", "un\xffts", 1), explain.NotUTF8, []explain.Path{""}},
	"overlong UTF-8":        {"{\"job\": \"\xc0\xaf\"}", explain.NotUTF8, []explain.Path{""}},
	"surrogate as bytes":    {"{\"job\": \"\xed\xa0\x80\"}", explain.NotUTF8, []explain.Path{""}},
	"UTF-16":                {"{\x00\"\x00}\x00", explain.NotJSON, []explain.Path{""}},
	"text behind":           {orderOf(smallPiece) + " 8 x 10", explain.Trailing, []explain.Path{""}},
	"second order":          {orderOf(smallPiece) + orderOf(smallPiece), explain.Trailing, []explain.Path{""}},
	"zero byte behind":      {orderOf(smallPiece) + "\x00", explain.Trailing, []explain.Path{""}},
	"array":                 {"[" + orderOf(smallPiece) + "]", explain.WrongType, []explain.Path{""}},
	"null":                  {"null", explain.WrongType, []explain.Path{""}},
	"word":                  {`"8 x 10"`, explain.WrongType, []explain.Path{""}},
	"number":                {"1e400", explain.WrongType, []explain.Path{""}},
	"nothing in it":         {"{}", explain.Missing, []explain.Path{"/pieces", "/units", "/version"}},
	"no pieces":             {orderOf(""), explain.TooFew, []explain.Path{"/pieces"}},
	"piece is null":         {orderOf("null"), explain.WrongType, []explain.Path{"/pieces/0"}},
	"piece is empty":        {orderOf("{}"), explain.Missing, []explain.Path{"/pieces/0/art", "/pieces/0/frame"}},
	"too many pieces":       {orderOf(strings.Repeat(smallPiece+",", framing.MaxPieces) + smallPiece), explain.TooMany, []explain.Path{"/pieces"}},
	"too large":             {orderOf(smallPiece) + strings.Repeat(" ", framing.MaxOrderBytes), explain.TooLarge, []explain.Path{""}},
	"lone high surrogate":   {strings.Replace(orderOf(smallPiece), `"version"`, `"job": "\ud800", "version"`, 1), explain.NotUTF8, []explain.Path{"/job"}},
	"lone low surrogate":    {strings.Replace(orderOf(smallPiece), `"version"`, `"job": "a\udc00\"b", "version"`, 1), explain.NotUTF8, []explain.Path{"/job"}},
	"two high surrogates":   {strings.Replace(orderOf(smallPiece), `"version"`, `"job": "\ud83d\ud83d\ude00 \ufffd", "version"`, 1), explain.NotUTF8, []explain.Path{"/job"}},
	"surrogate in a key":    {strings.Replace(orderOf(smallPiece), `"version"`, `"\ud800": 1, "version"`, 1), explain.UnknownField, []explain.Path{"/\ufffd"}},
	"surrogate in a length": {orderOf(strings.Replace(smallPiece, `"8"`, `"8\udfff"`, 1)), explain.NotUTF8, []explain.Path{"/pieces/0/art/width"}},
	"version of later":      {strings.Replace(orderOf(smallPiece), "1", "4", 1), explain.OutOfRange, []explain.Path{"/version"}},
}

// acceptedOrders are odd to look at and sound.
var acceptedOrders = map[string]string{
	"least":                   orderOf(smallPiece),
	"white space":             " \r\n\t" + orderOf(smallPiece) + " \n",
	"replacement character":   strings.Replace(orderOf(smallPiece), `"version"`, `"job": "\ufffd and \uFFFD and `+"\ufffd"+`\"", "version"`, 1),
	"pair of surrogates":      strings.Replace(orderOf(smallPiece), `"version"`, `"job": "\uD83D\uDe00 \ufffd", "version"`, 1),
	"escaped escape":          strings.Replace(orderOf(smallPiece), `"version"`, `"job": "\ufffd \\ud800", "version"`, 1),
	"escaped key":             strings.Replace(orderOf(smallPiece), `"version"`, `"\u0076ersion"`, 1),
	"as many pieces as go in": orderOf(strings.Repeat(smallPiece+",", framing.MaxPieces-1) + smallPiece),
}

func TestWholeDocuments(t *testing.T) {
	for name, c := range refusedOrders {
		t.Run(name, func(t *testing.T) {
			_, err := framing.Read([]byte(c.text))
			ps := problems(t, err)
			sortedPaths(t, ps)
			if got := paths(ps); !slices.Equal(got, c.want) || ps[0].Code != c.code {
				t.Errorf("problems %v, want %s at %q", ps, c.code, c.want)
			}
		})
	}
	for name, text := range acceptedOrders {
		t.Run(name, func(t *testing.T) {
			if order, err := framing.Read([]byte(text)); err != nil || len(work(t, order).Pieces) == 0 {
				t.Error(err)
			}
		})
	}
	for name, text := range sampleFilesIn(t, "refused") {
		if _, err := framing.Read(text); len(problems(t, err)) != 1 {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// TestHostile reads documents made to cost much. Each must cost little.
func TestHostile(t *testing.T) {
	long := strings.Repeat("k", framing.MaxOrderBytes/2)
	fill := func(unit string) string { return strings.Repeat(unit, framing.MaxOrderBytes/len(unit)/2) }
	for name, text := range map[string]string{
		"nested arrays":              fill("["),
		"nested arrays, closed":      fill("[") + fill("]"),
		"nested arrays in a name":    `{"job": ` + strings.Repeat("[", 5000) + strings.Repeat("]", 5000) + "}",
		"nested objects":             fill(`{"a":`),
		"many deep ones":             `{"a": [[[[[[[[[[[` + strings.TrimSuffix(fill("[],"), ",") + `]]]]]]]]]]]}`,
		"unknown keys":               "{" + strings.TrimSuffix(fill(`"a":1,`), ",") + "}",
		"wrong types":                orderOf(strings.TrimSuffix(strings.Repeat(`{"art":1},`, framing.MaxPieces), ",")),
		"spoiled pieces":             orderOf(strings.TrimSuffix(strings.Repeat(strings.Replace(smallPiece, "8", "-8", 1)+",", framing.MaxPieces), ",")),
		"long key":                   `{"` + long + `": 1}`,
		"spoiled below a long key":   `{"` + long + `": [` + strings.TrimSuffix(strings.Repeat(`"\ud800",`, 40_000), ",") + `]}`,
		"too deep below a long key":  `{"` + long + `": [[[[[[[[[[[` + strings.TrimSuffix(strings.Repeat(`[],`, 100_000), ",") + `]]]]]]]]]]]}`,
		"key of slashes and tildes":  `{"` + strings.Repeat("~/", len(long)/2) + `": 1}`,
		"long name":                  `{"job": "` + long + `"}`,
		"long length":                orderOf(strings.Replace(smallPiece, `"8"`, `"`+long+`"`, 1)),
		"length of digits":           orderOf(strings.Replace(smallPiece, `"8"`, `"`+strings.Repeat("9", len(long))+`"`, 1)),
		"length of a long sum":       orderOf(strings.Replace(smallPiece, `"8"`, `"1`+strings.Repeat("+1", len(long)/2)+`"`, 1)),
		"length of odd denominators": orderOf(strings.Replace(smallPiece, `"8"`, `"1/3`+strings.Repeat("+1/7+1/11+1/999999999999999989", len(long)/40)+`"`, 1)),
		"long number":                `{"version": ` + strings.Repeat("9", len(long)) + "}",
		"long exponent":              `{"version": 1e` + strings.Repeat("9", len(long)) + "}",
		"date":                       `{"date": "` + long + `"}`,
		"quotes":                     `{"job": "` + fill(`\"`) + `"}`,
		"surrogates and quotes":      `{"job": "` + fill(`\ud800\"`) + `"}`,
	} {
		t.Run(name, func(t *testing.T) {
			if len(text) > framing.MaxOrderBytes {
				t.Fatalf("%d bytes are refused for their number alone", len(text))
			}
			var before, after runtime.MemStats
			runtime.ReadMemStats(&before)
			start := time.Now()
			_, err := framing.Read([]byte(text))
			took := time.Since(start)
			runtime.ReadMemStats(&after)
			ps := problems(t, err)
			sortedPaths(t, ps)
			if len(ps) > explain.MaxProblems+1 {
				t.Errorf("%d problems are kept", len(ps))
			}
			bytes := 0
			for _, p := range ps {
				bytes += len(p.Path) + len(p.Given) + len(p.Accepted)
			}
			if bytes > 2*framing.MaxOrderBytes {
				t.Errorf("the problems hold %d bytes", bytes)
			}
			if allocated := after.TotalAlloc - before.TotalAlloc; allocated > 128<<20 {
				t.Errorf("allocates %d MB", allocated>>20)
			}
			if took > 20*time.Second {
				t.Errorf("takes %v", took)
			}
			t.Logf("%7.1f ms, %4d MB, %4d problems of %d bytes", float64(took)/1e6, (after.TotalAlloc-before.TotalAlloc)>>20, len(ps), bytes)
		})
	}
}

// TestProblemCount: an order with more problems than are kept says so.
func TestProblemCount(t *testing.T) {
	bad := strings.TrimSuffix(strings.Repeat(`{"art": {"width": "-1", "height": "0"}, "frame": {"face": "0"}},`, framing.MaxPieces), ",")
	_, err := framing.Read([]byte(orderOf(bad)))
	ps := problems(t, err)
	if len(ps) != explain.MaxProblems+1 {
		t.Fatalf("%d problems", len(ps))
	}
	if !slices.ContainsFunc(ps, func(p explain.Problem) bool { return p.Code == explain.MoreProblems }) {
		t.Error("nothing says that there were more")
	}
}

// TestNothingWorkedUnjudged: where there were more problems than are kept, no
// piece is known to be sound, and none is worked.
func TestNothingWorkedUnjudged(t *testing.T) {
	order := framing.NewOrder(framing.Inches)
	order.Pieces = make([]framing.Piece, framing.MaxPieces) // zero pieces: all wrong
	last := len(order.Pieces) - 1
	order.Pieces[last] = framing.Sample().Pieces[0]
	plan, err := framing.Work(order)
	if n := len(problems(t, err)); n != explain.MaxProblems+1 {
		t.Fatalf("%d problems", n)
	}
	for i, p := range plan.Pieces {
		if p.Worked {
			t.Errorf("piece %d is worked", i)
		}
	}
}

// TestReadKeepsData: the text that is read is not changed and not kept.
func TestReadKeepsData(t *testing.T) {
	for name, full := range fullOrders {
		text := []byte(full)
		order, err := framing.Read(text)
		if err != nil || string(text) != full {
			t.Fatal("Read changes its data", name, err)
		}
		before := marshal(t, order)
		clear(text)
		if !bytes.Equal(before, marshal(t, order)) {
			t.Error("the order changes with the text it was read from", name)
		}
	}
}

// TestDepth nests as deep as an order may, and one level deeper.
func TestDepth(t *testing.T) {
	for _, c := range []struct {
		levels int
		want   []explain.Path
	}{
		{framing.MaxDepth, []explain.Path{""}},
		{framing.MaxDepth + 1, []explain.Path{"", explain.Path(strings.Repeat("/0", framing.MaxDepth))}},
		{framing.MaxDepth + 50, []explain.Path{"", explain.Path(strings.Repeat("/0", framing.MaxDepth))}},
	} {
		_, err := framing.Read([]byte(strings.Repeat("[", c.levels) + strings.Repeat("]", c.levels)))
		ps := problems(t, err)
		if got := paths(ps); !slices.Equal(got, c.want) || ps[0].Code != explain.WrongType || ps[len(ps)-1].Code == explain.TooDeep != (len(ps) == 2) {
			t.Errorf("%d levels: %v", c.levels, ps)
		}
	}
}

// TestCommonProblems: where the units or the shop are not understood no piece is
// worked; how lengths are shown concerns no piece, whose figures are exact then.
func TestCommonProblems(t *testing.T) {
	for _, c := range []struct {
		spoil  func(*framing.Order)
		worked bool
	}{
		{func(o *framing.Order) { o.Units = "cubits" }, false},
		{func(o *framing.Order) { o.Version = 0 }, false},
		{func(o *framing.Order) { o.Shop.Allowance = -1 }, false},
		{func(o *framing.Order) { o.Show.Fineness = 7 }, true},
		{func(o *framing.Order) { o.Date = "yesterday" }, true},
		{func(o *framing.Order) { o.Job = "\n" }, true},
	} {
		order := framing.Sample()
		c.spoil(&order)
		plan, err := framing.Work(order)
		if ps := problems(t, err); len(ps) != 1 || len(plan.Problems) != 1 || plan.Problems[0].Path != "/order"+ps[0].Path {
			t.Errorf("problems %v, and in the plan %v", ps, plan.Problems)
		}
		if plan.Pieces[0].Worked != c.worked {
			t.Errorf("%v: worked %v, want %v", err, plan.Pieces[0].Worked, c.worked)
		}
	}
}
