package main

import (
	"cmp"
	"slices"
	"strings"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/draw"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/jsontext"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/ticket"
	"github.com/fairmiter/fairmiter/molding"
)

// protocol is the version of the seam. It rises with every change that a page
// written before would not understand.
const protocol = 1

// Codes of problems that only the seam has.
const (
	otherVersion explain.Code = "other_version"  // page and program do not belong together
	noSuchFigure explain.Code = "no_such_figure" // a path that the plan has no figure at
	needsShapes  explain.Code = "needs_shapes"   // for the module that has them
)

// dispatch does one call.
func dispatch(r request) (any, explain.Problems) {
	switch r.Call {
	case "hello":
		return hello(r)
	case "work":
		return work(r)
	case "explain":
		return explainFigure(r)
	case "solve":
		return solve(r)
	case "ticket":
		return writeTicket(r)
	case "":
		return nil, one(explain.Problem{Code: explain.Missing, Path: "/call"})
	}
	return nil, notAChoice("/call", r.Call, "hello", "work", "explain", "solve", "ticket")
}

func notAChoice(at explain.Path, given string, choices ...string) explain.Problems {
	return one(explain.Problem{Code: explain.NotAChoice, Path: at, Given: short(given), Accepted: strings.Join(choices, ", ")})
}

type helloData struct {
	Protocol     int             `json:"protocol"`
	OrderVersion int             `json:"order_version"`
	PlanVersion  int             `json:"plan_version"`
	English      []explain.Entry `json:"english"`
	Sample       framing.Order   `json:"sample"`
}

// hello tells a page who answers. A page for another version is refused before
// it misunderstands anything.
func hello(r request) (any, explain.Problems) {
	if r.Protocol != protocol {
		return nil, one(explain.Problem{
			Code: otherVersion, Path: "/protocol",
			Given: explain.Of(r.Protocol).String(), Accepted: explain.Of(protocol).String(),
		})
	}
	return helloData{protocol, framing.OrderVersion, framing.PlanVersion, explain.Table(), framing.Sample()}, nil
}

type workData struct {
	Plan framing.Plan `json:"plan"`
	// Fields are the quantities of the order as they are read, by their paths.
	Fields givenTexts `json:"fields"`
	// Views are those of the piece that there are drawings of.
	Views    []draw.View `json:"views"`
	Drawings drawings    `json:"drawings,omitempty"`
}

// bareData is workData without what takes longest to write and to read.
type bareData struct {
	Worked   bool     `json:"worked"` // the piece
	Drawings drawings `json:"drawings,omitempty"`
}

type drawings map[draw.View]string // SVG

type givenTexts []framing.GivenText

// AppendJSON appends an object: the text of each quantity, and what is spoken
// where that is another.
func (g givenTexts) AppendJSON(dst []byte) []byte {
	dst = append(dst, '{')
	for i, q := range g {
		if i > 0 {
			dst = append(dst, ',')
		}
		dst = append(jsontext.AppendString(dst, string(q.Path)), `:{"text":`...)
		dst = jsontext.AppendString(dst, q.Text)
		if q.Spoken != q.Text {
			dst = jsontext.AppendString(append(dst, `,"spoken":`...), q.Spoken)
		}
		dst = append(dst, '}')
	}
	return append(dst, '}')
}

func work(r request) (any, explain.Problems) {
	plan, problems := r.plan()
	if problems != nil {
		return nil, problems
	}
	drawn, problems := r.draw(plan)
	switch {
	case problems != nil:
		return nil, problems
	case r.Bare:
		return bareData{r.Piece >= 0 && r.Piece < len(plan.Pieces) && plan.Pieces[r.Piece].Worked, drawn}, nil
	}
	return workData{plan, plan.Givens(r.Piece), views(plan, r.Piece), drawn}, nil
}

// setup is how boards lie at the saw; a piece that takes no more than a plain miter
// has nothing of that to draw.
const setup draw.View = "setup"

// views are those of a piece that there are drawings of: how its rails are cut is
// drawn only of a frame that is no plain rectangle.
func views(plan framing.Plan, piece int) []draw.View {
	list := []draw.View{draw.Front, draw.Section, draw.Back}
	if !framing.Shapes || piece < 0 || piece >= len(plan.Pieces) || plan.Pieces[piece].Shape.IsZero() {
		return list
	}
	for _, name := range draw.Front.Choices() {
		if view := draw.View(name); !slices.Contains(list, view) && (view != setup || propped(plan.Pieces[piece])) {
			list = append(list, view)
		}
	}
	return list
}

// propped reports whether something of a piece is not cut lying flat with the blade
// upright: a side that slopes, or a rail past the saw's reach.
func propped(p framing.PiecePlan) bool {
	for _, n := range p.Notes {
		if n.Code == molding.PastReach || n.Code == molding.NoReach {
			return true
		}
	}
	return p.Shape.Slope != nil
}

func (r request) draw(plan framing.Plan) (drawings, explain.Problems) {
	if len(r.Views) == 0 {
		return nil, nil
	}
	drawn := make(drawings, len(r.Views))
	for i, view := range r.Views {
		if !slices.Contains(view.Choices(), string(view)) {
			return nil, notAChoice(explain.Path("/views").Index(i), string(view), view.Choices()...)
		}
		if drawn[view] == "" {
			drawn[view] = draw.SVG(plan, r.Piece, view, draw.Options{Width: r.Paper.Width, Height: r.Paper.Height, Interactive: r.Interactive})
		}
	}
	return drawn, nil
}

type explainData struct {
	Working explain.Working `json:"working"`
	// Text is the working in one line, Rounding how the shown value follows,
	// Source where the formula comes from.
	Text     string `json:"text"`
	Rounding string `json:"rounding"`
	Source   string `json:"source"`
}

func explainFigure(r request) (any, explain.Problems) {
	plan, problems := r.plan()
	if problems != nil {
		return nil, problems
	}
	working, ok := plan.Explain(r.Path)
	if !ok {
		return nil, one(explain.Problem{Code: noSuchFigure, Path: "/path", Given: short(string(r.Path))})
	}
	format := formatOf(plan)
	return explainData{working, working.Text(format), string(working.AppendRounding(nil, format)), working.Source.String()}, nil
}

// formatOf is how the plan writes lengths. Where its order does not say so in
// words we know, it writes them exactly.
func formatOf(plan framing.Plan) measure.Format {
	format, err := plan.Order.Show.Format()
	if err != nil {
		return measure.Format{}
	}
	return format
}

type ticketData struct {
	Text string `json:"text"`
}

func writeTicket(r request) (any, explain.Problems) {
	form := cmp.Or(r.Form, "text")
	if form != "text" && form != "html" {
		return nil, notAChoice("/form", r.Form, "text", "html")
	}
	plan, problems := r.plan()
	if problems != nil {
		return nil, problems
	}
	options := ticket.Options{Working: r.Working}
	if form == "html" {
		return ticketData{ticket.HTML(plan, options, pictures(plan))}, nil
	}
	return ticketData{ticket.Text(plan, options)}, nil
}

// pictures draws the pieces of a plan for its ticket.
func pictures(plan framing.Plan) func(int) []ticket.Picture {
	return func(piece int) []ticket.Picture {
		var pictures []ticket.Picture
		for _, view := range []draw.View{draw.Front, draw.Section} {
			pictures = append(pictures, ticket.Picture{SVG: draw.SVG(plan, piece, view, draw.Options{})})
		}
		return pictures
	}
}
