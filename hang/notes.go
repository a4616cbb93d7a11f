package hang

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// Codes of the notes of this room.
const (
	NoSpan        explain.Code = "hang.no_span"
	WideSpread    explain.Code = "hang.wide_spread"
	ShortWire     explain.Code = "hang.short_wire"
	OffWood       explain.Code = "hang.off_wood"
	SawtoothOff   explain.Code = "hang.sawtooth_off_wood"
	SawtoothHeavy explain.Code = "hang.sawtooth_heavy"
	SawtoothLarge explain.Code = "hang.sawtooth_large"
	TopHeavy      explain.Code = "hang.top_heavy"
	ThroughFloor  explain.Code = "hang.through_floor"
	WireShows     explain.Code = "hang.wire_shows"
	HookShows     explain.Code = "hang.hook_shows"
	NearTop       explain.Code = "hang.near_top"
	WireBreaks    explain.Code = "hang.wire_breaks"
	HangerGives   explain.Code = "hang.hanger_gives"
	HookGives     explain.Code = "hang.hook_gives"
	WireUnrated   explain.Code = "hang.wire_unrated"
	HangerUnrated explain.Code = "hang.hanger_unrated"
	HookUnrated   explain.Code = "hang.hook_unrated"
	FlatWire      explain.Code = "hang.flat_wire"
	LowWire       explain.Code = "hang.low_wire"
	OnlyFriction  explain.Code = "hang.only_friction"
	UnevenRings   explain.Code = "hang.uneven_rings"
	NailUnknown   explain.Code = "hang.nail_unknown"
	MassUnknown   explain.Code = "hang.mass_unknown"
	CautionHeavy  explain.Code = "caution.heavy_piece"
	CautionSeats  explain.Code = "caution.over_seats"
	CautionWiring explain.Code = "caution.wall_wiring"
	CautionDamp   explain.Code = "caution.wall_damp"
)

// Places are where the fields stand that formulas and notes speak of.
type Places struct {
	Hang     explain.Path // the hanging as decided
	Face     explain.Path // the frame's face
	Lip      explain.Path // its lip
	Ledge    explain.Path // a floater's ledge
	Outside  explain.Path // the frame's outermost size, worked out
	Mass     explain.Path // what the piece weighs
	Heaviest explain.Path // what it can weigh
	Worked   explain.Path // the hanging worked out
}

// Notes says what to know about the layout l of h: what will not hold or not
// hang, with what would, what is not given, and what can hurt. The cautions
// about the wall are always there.
//
// What has to hold is judged by the heaviest that the piece can be.
func (h Hanging) Notes(g Given, l Layout, at Places) []explain.Note {
	m := mender{h: h, g: g, l: l, at: at, f: h.faults(g, l)}
	notes := m.appendLaid(nil)
	if l.Hangs() {
		notes = m.appendWood(notes)
		notes = m.appendTop(notes)
		notes = m.appendHolds(notes)
		notes = m.appendWire(notes)
		notes = m.appendRings(notes)
		notes = m.appendSawtooth(notes)
		notes = m.appendNail(notes)
	}
	return m.appendCautions(notes)
}

// has reports whether the layout has the fault.
func (m *mender) has(f fault) bool { return m.f&f != 0 }

// appendLaid says why a piece cannot hang as decided. A piece that does not hang
// has no figures, so such a note speaks of fields of the order only.
func (m *mender) appendLaid(notes []explain.Note) []explain.Note {
	switch {
	case m.has(noSpan):
		h := m.h
		h.Inset = m.g.middle()
		n := explain.Note{Level: explain.Warning, Code: NoSpan, Path: m.at.Hang + "/inset", Values: []explain.Term{
			explain.NewTerm("inset", m.h.inset(m.g), ""),
			explain.NewTerm("outside", m.g.Outside.Width, m.at.Outside+"/width"),
		}}
		n.Changes = m.add(nil, noSpan, h, explain.Change{Path: n.Path, To: explain.Of(h.Inset)})
		notes = append(notes, n)
	case m.has(wideSpread):
		h := m.h
		h.Spread, _ = m.l.Span.Half()
		n := explain.Note{Level: explain.Warning, Code: WideSpread, Path: m.at.Hang + "/spread", Values: []explain.Term{
			explain.NewTerm("spread", m.l.Spread, ""),
			explain.NewTerm("span", m.l.Span, ""),
		}}
		n.Changes = m.add(nil, wideSpread, h, explain.Change{Path: n.Path, To: explain.Of(h.Spread)})
		n.Changes = m.rings(n.Changes, wideSpread)
		notes = append(notes, n)
	case m.has(shortWire):
		n := explain.Note{Level: explain.Warning, Code: ShortWire, Path: m.at.Hang + "/taut", Values: []explain.Term{
			explain.NewTerm("span", m.l.Span, ""),
			explain.NewTerm("taut", m.l.Taut, ""),
		}}
		n.Changes = m.rise(nil, shortWire, 0, explain.AtLeast)
		n.Changes = m.rings(n.Changes, shortWire)
		notes = append(notes, n)
	}
	if m.has(topHeavy) {
		notes = append(notes, m.topHeavy())
	}
	if m.has(throughFloor) {
		half, rest := m.g.Outside.Height.Half()
		h := m.h
		h.Center = half + rest
		n := explain.Note{Level: explain.Warning, Code: ThroughFloor, Path: m.at.Hang + "/center", Values: []explain.Term{
			explain.NewTerm("center", m.h.Center, m.at.Hang+"/center"),
			explain.NewTerm("outside", m.g.Outside.Height, m.at.Outside+"/height"),
		}}
		n.Changes = m.add(nil, throughFloor, h, explain.Change{Path: n.Path, To: explain.Of(h.Center), Bound: explain.AtLeast})
		notes = append(notes, n)
	}
	return notes
}

// topHeavy proposes hangers a third of the way down, which is more than would
// just do.
func (m *mender) topHeavy() explain.Note {
	n := explain.Note{Level: explain.Warning, Code: TopHeavy, Path: m.at.Hang + "/below", Values: []explain.Term{
		explain.NewTerm("below", max(m.l.Below.Left, m.l.Below.Right), ""),
		explain.NewTerm("outside", m.g.Outside.Height, m.at.Outside+"/height"),
	}}
	h := m.h
	switch {
	case 2*m.l.Below.Left < m.g.Outside.Height: // the right ring alone
		n.Path = m.at.Hang + "/below_right"
		h.BelowRight = m.l.Below.Left
		n.Changes = m.add(nil, topHeavy, h, explain.Change{Path: n.Path, To: explain.Of(h.BelowRight)})
	case h.Below == 0 && h.By != Sawtooth:
		n.Path = m.at.Hang + "/part"
		h.Part = 33 * explain.Percent
		n.Changes = m.add(nil, topHeavy, h, explain.Change{Path: n.Path, To: explain.Of(h.Part)})
	default:
		h.Below = tidy(h.Below, m.g.Outside.Height/3, measure.Down)
		if h.By == Sawtooth {
			h.Below = m.g.middle()
		}
		n.Changes = m.add(nil, topHeavy, h, explain.Change{Path: n.Path, To: explain.Of(h.Below)})
		if n.Changes == nil { // the wire would show there: as low as they can be
			half, _ := (m.g.Outside.Height - 1).Half()
			h.Below = tidy(h.Below, half, measure.Down)
			n.Changes = m.add(nil, topHeavy, h, explain.Change{Path: n.Path, To: explain.Of(h.Below), Bound: explain.AtMost})
		}
	}
	return n
}

// appendCautions adds what no field takes away.
func (m *mender) appendCautions(notes []explain.Note) []explain.Note {
	if !m.g.MassKnown {
		notes = append(notes, explain.Note{Level: explain.Caution, Code: MassUnknown, Path: m.at.Hang})
	}
	if m.g.Heaviest >= Heavy {
		notes = append(notes, explain.Note{Level: explain.Caution, Code: CautionHeavy, Path: m.at.Hang, Values: []explain.Term{
			explain.NewTerm("heaviest", m.g.Heaviest, m.at.Heaviest),
		}})
	}
	for _, code := range []explain.Code{CautionSeats, CautionWiring, CautionDamp} {
		notes = append(notes, explain.Note{Level: explain.Caution, Code: code, Path: m.at.Hang})
	}
	return notes
}
