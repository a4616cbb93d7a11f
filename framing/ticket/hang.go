package ticket

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/hang"
)

// hang writes how a piece hangs: the hangers, the wire, what each has to hold,
// and the marks on the wall.
func (t *writer) hang(p *framing.PiecePlan, order *framing.Piece, at explain.Path) {
	h, by := &p.Hang, order.Hang.By
	if h.Below.Left.Shown == h.Below.Right.Shown {
		t.row("hangers", h.Below.Left.Text(), " below the top", t.hangersUsual(order, at))
	} else {
		t.row("hangers", h.Below.Left.Text(), " below the top at the left, ", h.Below.Right.Text(), " at the right")
	}
	if by != hang.Sawtooth {
		t.row("", h.Span.Text(), " apart")
	}
	if by == hang.Wire {
		t.row("wire to cut", h.Wire.Text(), ", tails of ", t.given(order.Hang.Tails), t.usual(at+"/tails"))
		t.row("taut", "rises ", h.Rise.Text(), ", ", h.Angle.Text(), " degrees; top ", aside(h.WireTop, " below", " above"), " the frame's")
		t.row("load in the wire", load(h.Tension))
		t.row("draws the rails in", load(h.Pull))
	}
	t.row("load on a hanger", load(h.Hanger))
	t.row("load on a hook", load(h.Hook))
	t.row("middle", t.given(order.Hang.Center), " above the floor", t.usual(at+"/center"))
	for i, m := range h.Marks {
		name := "hook"
		if len(h.Marks) > 1 {
			name = "hook " + strconv.Itoa(i+1)
		}
		where := "in the middle"
		if across := m.Across.Shown; across != 0 {
			where = t.given(max(across, -across))
			if across < 0 {
				where += " left of the middle"
			} else {
				where += " right of the middle"
			}
		}
		t.row(name, where, "; bears ", aside(m.Bearing, " above the floor", " below the floor"), nail(m))
	}
	if order.Hang.NailAbove == 0 && by != hang.Sawtooth {
		t.row("", "the nail is higher by what the hook adds")
	}
}

// hangersUsual marks a height of the hangers that is neither given nor follows from a
// part that is.
func (t *writer) hangersUsual(order *framing.Piece, at explain.Path) string {
	if order.Hang.Below != 0 {
		return ""
	}
	return t.usual(at + "/part")
}

// nail is the hole of the nail, where it is not where the hook bears.
func nail(m framing.MarkPlan) string {
	if m.Nail.Shown == m.Bearing.Shown {
		return ""
	}
	return ", its nail hole " + aside(m.Nail, "", " below the floor")
}

// aside is a figure that is measured to one side or the other.
func aside(f framing.Figure, word, other string) string {
	f, word = f.Aside(word, other)
	return f.Text() + word
}

// load says what the piece pulls with, and what it can at most.
func load(l framing.LoadFigure) string {
	if l.Nominal.Text() == l.Heaviest.Text() {
		return l.Nominal.Text()
	}
	return l.Nominal.Text() + "; at most " + l.Heaviest.Text()
}
