package framing

import (
	"reflect"
	"strconv"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Codes of the problems that only a question can have.
const (
	NoFigure   explain.Code = "solve.no_figure"   // the plan of the order has no such figure
	OtherPiece explain.Code = "solve.other_piece" // a field of another piece than the figure's
	NoRatio    explain.Code = "solve.no_ratio"    // a field that is nothing has no ratio to keep
	TwoWants   explain.Code = "solve.two_wants"   // a value, and a figure to be equal to
)

// quantities are what a free field can be, in a problem.
const quantities = "a length, an angle, a ratio, a mass or a force"

// asked is a question that was understood: an order of the one piece that it is
// about, and the places in it that are written and read.
type asked struct {
	piece   int // of so many pieces
	pieces  int
	order   *Order
	free    explain.Path // in the order as it was given
	kind    explain.Kind // of the free field
	most    int64
	present int64 // its value
	field   reflect.Value
	with    []mover
	move    Move

	figure exactRoute
	equal  exactRoute
	wanted int64 // where there is no equal
	given  bool  // wanted counts

	rounded []explain.Path
}

// A mover is a field that moves with the free one.
type mover struct {
	field   reflect.Value
	present int64
}

// An exactRoute leads to the exact value of a figure.
type exactRoute struct {
	route
	exact []int
	kind  explain.Kind
}

// MaxWith is how many fields can move with a free one.
const MaxWith = 64

// ask understands a question, or says what cannot be understood of it.
func ask(o Order, q Question) (*asked, explain.Problems) {
	var c explain.Checker
	a := &asked{free: q.Free, move: q.Move, pieces: len(o.Pieces)}
	if a.piece = pieceOf(q.Want, len(o.Pieces)); a.piece < 0 {
		c.Add(explain.Problem{Code: NoFigure, Path: questionRoot + "/want", Given: string(q.Want)})
		return nil, c.Problems()
	}
	cut := o
	cut.Pieces = []Piece{o.Pieces[a.piece]}
	a.order = &cut

	a.figure = a.figureAt(&c, questionRoot+"/want", q.Want)
	switch {
	case q.Value != "" && q.Equal != "":
		c.Add(explain.Problem{Code: TwoWants, Path: questionRoot + "/equal", Given: string(q.Equal)})
	case q.Equal != "":
		if a.equal = a.figureAt(&c, questionRoot+"/equal", q.Equal); c.Clean(questionRoot) && a.equal.kind != a.figure.kind {
			c.Add(explain.Problem{Code: explain.WrongType, Path: questionRoot + "/equal", Given: string(q.Equal),
				Accepted: "a figure of the same kind as " + string(q.Want)})
		}
	case q.Value == "":
		c.Add(explain.Problem{Code: explain.Missing, Path: questionRoot + "/value"})
	case c.Clean(questionRoot + "/want"):
		a.readWanted(&c, q.Value)
	}
	a.locate(&c, q)
	return a, c.Problems()
}

// pieceOf is the piece that a path leads into, -1 where it is in none.
func pieceOf(p explain.Path, pieces int) int {
	segments := p.Segments()
	if len(segments) < 2 || !p.Under("/pieces") {
		return -1
	}
	i, err := strconv.Atoi(segments[1])
	if err != nil || i < 0 || i >= pieces || segments[1] != strconv.Itoa(i) {
		return -1
	}
	return i
}

// within is a path as it stands in the order, or the plan, of the one piece.
func (a *asked) within(p explain.Path) explain.Path {
	if rest, ok := p.After(explain.Path("/pieces").Index(a.piece)); ok {
		return "/pieces/0" + rest
	}
	return p
}

func (a *asked) figureAt(c *explain.Checker, at, path explain.Path) exactRoute {
	bad := func(code explain.Code) exactRoute {
		c.Add(explain.Problem{Code: code, Path: at, Given: string(path)})
		return exactRoute{}
	}
	switch piece := pieceOf(path, a.pieces); {
	case piece < 0:
		return bad(NoFigure)
	case piece != a.piece:
		return bad(OtherPiece)
	}
	r, ok := routeTo(reflect.TypeFor[Plan](), a.within(path))
	if !ok {
		return bad(NoFigure)
	}
	exact, kind, ok := exactOf(r.end)
	if !ok {
		return bad(NoFigure)
	}
	return exactRoute{r, exact, kind}
}

// readWanted reads the value as the order would be read.
func (a *asked) readWanted(c *explain.Checker, text string) {
	d := decoder{units: a.order.Units, texts: make(map[explain.Path]string)}
	value := reflect.New(a.figure.end.FieldByIndex(a.figure.exact).Type).Elem()
	d.value(&node{kind: jsonString, text: text}, value, questionRoot+"/value")
	for _, p := range d.c.Problems() {
		c.Add(p)
	}
	a.wanted, a.given, a.rounded = value.Int(), true, d.rounded
}

// locate finds the fields in the order of the one piece.
func (a *asked) locate(c *explain.Checker, q Question) {
	if len(q.With) > MaxWith {
		c.Add(explain.Problem{Code: explain.TooMany, Path: questionRoot + "/with", Given: strconv.Itoa(len(q.With)), Accepted: count(0, MaxWith)})
		return
	}
	withs := make([]reflect.Value, len(q.With))
	own(a.order, a.within(q.Free))
	for _, p := range q.With {
		own(a.order, a.within(p))
	}
	free := a.fieldAt(c, questionRoot+"/free", q.Free)
	for i, p := range q.With {
		at := (questionRoot + "/with").Index(i)
		withs[i] = a.fieldAt(c, at, p)
		if withs[i].IsValid() && free.IsValid() && withs[i].Type() != free.Type() {
			c.Add(explain.Problem{Code: explain.WrongType, Path: at, Given: string(p), Accepted: "a field of the same kind as " + string(q.Free)})
		}
	}
	if q.Move != "" || len(q.With) > 0 {
		c.Choice(questionRoot+"/move", string(q.Move), q.Move.Choices())
	}
	if !c.Clean(questionRoot) {
		return
	}
	a.field, a.present = free, free.Int()
	a.kind, _ = kindOf(free.Type())
	a.most = mostOf(a.kind)
	for i, v := range withs {
		a.with = append(a.with, mover{v, v.Int()})
		if a.move != Alike && (v.Int() < 0 || v.Int() > a.most) {
			c.Add(explain.Problem{Code: explain.OutOfRange, Path: q.With[i], Given: explain.Value{Kind: a.kind, N: v.Int()}.String(),
				Accepted: a.tried()})
		}
	}
	switch {
	case len(a.with) == 0 || a.move == Alike:
	case a.present < 0 || a.present > a.most:
		c.Add(explain.Problem{Code: explain.OutOfRange, Path: q.Free, Given: explain.Value{Kind: a.kind, N: a.present}.String(), Accepted: a.tried()})
	case a.move == AsPart && a.present == 0:
		c.Add(explain.Problem{Code: NoRatio, Path: questionRoot + "/free", Given: string(q.Free)})
	}
}

// tried says which values are tried.
func (a *asked) tried() string {
	return explain.Value{Kind: a.kind}.String() + " to " + explain.Value{Kind: a.kind, N: a.most}.String()
}

// fieldAt finds one field that can be written to.
func (a *asked) fieldAt(c *explain.Checker, at, path explain.Path) reflect.Value {
	if piece := pieceOf(path, a.pieces); piece >= 0 && piece != a.piece {
		c.Add(explain.Problem{Code: OtherPiece, Path: at, Given: string(path)})
		return reflect.Value{}
	}
	v, ok := fieldOf(a.order, a.within(path))
	if !ok || path.Under("/pieces") && pieceOf(path, a.pieces) < 0 {
		c.Add(explain.Problem{Code: explain.UnknownField, Path: at, Given: string(path)})
		return reflect.Value{}
	}
	if k, ok := kindOf(v.Type()); !ok || mostOf(k) == 0 {
		c.Add(explain.Problem{Code: explain.WrongType, Path: at, Given: string(path), Accepted: quantities})
		return reflect.Value{}
	}
	return v
}

// fieldOf is the place of a field in an order that may be written to.
func fieldOf(o *Order, path explain.Path) (reflect.Value, bool) {
	r, ok := routeTo(reflect.TypeFor[Order](), path)
	if !ok {
		return reflect.Value{}, false
	}
	return r.field(reflect.ValueOf(o).Elem(), false)
}

// own copies the lists that lead to fields of an order, so that writing to them
// leaves the order that it was copied from alone.
func own(o *Order, paths ...explain.Path) {
	for _, p := range paths {
		if r, ok := routeTo(reflect.TypeFor[Order](), p); ok {
			r.field(reflect.ValueOf(o).Elem(), true)
		}
	}
}

// set writes a value of the free field, and what moves with it.
func (a *asked) set(x int64) {
	a.field.SetInt(x)
	for _, m := range a.with {
		moved, _ := a.moved(m.present, x)
		m.field.SetInt(moved)
	}
}

// moved is a field that moves with the free one, and whether it did so exactly.
func (a *asked) moved(present, x int64) (to int64, exact bool) {
	switch a.move {
	case InStep:
		return present + x - a.present, true
	case AsPart:
		return measure.MulDiv(present, x, a.present)
	}
	return x, true
}

// work works the piece with a value of the free field and reads its figures;
// false where the order has problems then, or no such figure.
func (a *asked) work(x int64) (figure, wanted int64, ok bool) {
	a.set(x)
	if a.order.Check() != nil {
		return 0, 0, false
	}
	format, _ := a.order.Show.Format() // checked just now
	w := newWorker(&a.order.Pieces[0], a.order.Shop, format, placesOf(0))
	exact := w.exactly()
	// The notes are left out: they cost the most, and are no figures.
	plan := Plan{Pieces: []PiecePlan{w.assemble(exact, w.show(exact, format))}}
	v := reflect.ValueOf(&plan).Elem()
	if figure, ok = a.figure.read(v); !ok || a.given {
		return figure, a.wanted, ok
	}
	wanted, ok = a.equal.read(v)
	return figure, wanted, ok
}

func (r exactRoute) read(plan reflect.Value) (int64, bool) {
	v, ok := r.route.figure(plan)
	if !ok {
		return 0, false
	}
	return v.FieldByIndex(r.exact).Int(), true
}

// problemsAt is what is wrong with a value of the free field, as problems of the
// order as it was given, or that there is no such figure.
func (a *asked) problemsAt(x int64) explain.Problems {
	a.set(x)
	problems := a.order.Check()
	for i, p := range problems {
		if rest, ok := p.Path.After("/pieces/0"); ok {
			problems[i].Path = explain.Path("/pieces").Index(a.piece).Join(rest)
		}
	}
	if len(problems) == 0 {
		problems = explain.Problems{{Code: NoFigure, Path: questionRoot + "/want"}}
	}
	return problems
}

// written is the order as it was given, with a value of the free field.
func (a *asked) written(o Order, q Question, x int64) Order {
	own(&o, q.Free)
	own(&o, q.With...)
	if v, ok := fieldOf(&o, q.Free); ok {
		v.SetInt(x)
	}
	for i, p := range q.With {
		if v, ok := fieldOf(&o, p); ok {
			moved, _ := a.moved(a.with[i].present, x)
			v.SetInt(moved)
		}
	}
	return o
}

// roundedAt are the fields that could not move exactly.
func (a *asked) roundedAt(q Question, x int64) []explain.Path {
	var rounded []explain.Path
	for i, m := range a.with {
		if _, exact := a.moved(m.present, x); !exact {
			rounded = append(rounded, q.With[i])
		}
	}
	return rounded
}
