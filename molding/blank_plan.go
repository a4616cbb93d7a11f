package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// A BlankPlan is the ring of boards of an oval frame, worked out.
type BlankPlan struct {
	// Pieces go around to the left, the first from the first joint.
	Pieces []BlankPiece `json:"pieces"`
	// Width is that of the widest board.
	Width measure.Length `json:"width"`
	// Length is all boards one after the other, with a kerf between two.
	Length measure.Length `json:"length"`
	// Closing is the sum of all saw settings: 360 degrees, exactly, for whatever
	// pieces.
	Closing measure.Angle `json:"closing"`
	// Stock is what to take or buy.
	Stock []BlankStock `json:"stock"`
}

// A BlankPiece is one board of a ring, seen with the outside of the ring up.
type BlankPiece struct {
	// Width and Length are of the smallest board that holds the piece: the
	// narrowest of all that are turned by no more than 45 degrees from square to the
	// middle of the piece. They are enough, and at most 8 nm more than that.
	Width  measure.Length `json:"width"`
	Length measure.Length `json:"length"`
	// Turn is the heading that the board's upper edge faces. Its grain runs square to
	// that.
	Turn measure.Angle `json:"turn"`
	// At is where the board's lower left corner lies: X to the right along the board
	// and Y up toward Turn, both from the middle of the ring.
	At plane.Point `json:"at"`
	// Right is the end at the joint before, Left the one at the joint after.
	Right BlankEnd `json:"right"`
	Left  BlankEnd `json:"left"`
	// Stock is from which board of the plan's stock it is cut, counted from 0; -1 is
	// none.
	Stock int `json:"stock"`
}

// A BlankEnd is one end of a piece.
type BlankEnd struct {
	// Heading is the direction of the joint's line, outward.
	Heading measure.Angle `json:"heading"`
	// Saw is the setting from square to the board; above nothing where the piece is
	// longer outside than inside.
	Saw measure.Angle `json:"saw"`
	// Runout is the angle between the grain and the curve along the middle of the
	// ring at the joint: nowhere in the piece is it more than at one of its ends.
	Runout measure.Angle `json:"runout"`
	// Sight and Outside are where the end leaves through the ring's two edges, with
	// what is left on for turning, from the middle of the ring. Of a finger joint it
	// is the end of the fingers.
	Sight   plane.Point `json:"sight"`
	Outside plane.Point `json:"outside"`
	// Low and High are where the end's line crosses the lower and the upper edge of
	// the board, from the board's left end: the trim line. One past the end of the
	// board says that the cut leaves there.
	Low  measure.Length `json:"low"`
	High measure.Length `json:"high"`
}

// Settings are the saw settings of all pieces, for [BlankOpen].
func (p BlankPlan) Settings() []BlankEnds {
	ends := make([]BlankEnds, len(p.Pieces))
	for i, piece := range p.Pieces {
		ends[i] = BlankEnds{Left: piece.Left.Saw, Right: piece.Right.Saw}
	}
	return ends
}

// Codes of what makes no blank.
const (
	BlankTurning explain.Code = "blank.turning" // so much left on within would bend too sharply
	BlankNoRing  explain.Code = "blank.no_ring" // the outside does not lie around the sight edge
	BlankOblique explain.Code = "blank.oblique" // an end that misses the ring, or a piece of half the ring
)

// A blankRing is what the pieces have to hold, and the line along its middle.
type blankRing struct{ inner, outer, middle blankEdge }

func (b Blank) ring(sight, outside plane.Parallel) (blankRing, error) {
	r := blankRing{inner: blankEdgeOf(sight), outer: blankEdgeOf(outside)}
	i, o := r.inner, r.outer
	r.middle = blankEdge{(i.a + o.a) / 2, (i.b + o.b) / 2, (i.by + o.by) / 2}
	const most = fineUnit * explain.MaxLength / 2
	if i.a <= 0 || i.b <= 0 || i.a+i.by <= 0 || i.b+i.by <= 0 || i.a+i.by >= o.a+o.by || i.b+i.by >= o.b+o.by ||
		o.a <= 0 || o.b <= 0 || o.a+o.by > most || o.b+o.by > most {
		return r, explain.Problem{Code: BlankNoRing}
	}
	long, short := max(i.a, i.b), min(i.a, i.b)
	tightest, _ := short.Scale(int64(short), int64(long))
	limit := (tightest+i.by)/fineUnit - 1
	if b.Turning > limit {
		return r, explain.Problem{Code: BlankTurning, Path: "/turning", Given: b.Turning.String(), Accepted: "at most " + max(limit, 0).String()}
	}
	r.inner.by -= fineUnit * b.Turning
	r.outer.by += fineUnit * b.Turning
	return r, nil
}

// Around works out the blank of a ring from its sight edge to its outside, both
// around the origin: two ellipses whose parallels lie at nothing, or two parallels of
// one ellipse. It takes a blank that [Blank.Check] lets pass. What no ring can be
// made of it refuses with an [explain.Problem] whose path begins at the blank; what
// the boards on hand do not hold has a stock of -1.
func (b Blank) Around(sight, outside plane.Parallel) (BlankPlan, error) {
	r, err := b.ring(sight, outside)
	if err != nil {
		return BlankPlan{}, err
	}
	pieces, err := b.pieces(r)
	if err != nil {
		return BlankPlan{}, err
	}
	p := BlankPlan{Pieces: pieces}
	for i, piece := range p.Pieces {
		p.Width = max(p.Width, piece.Width)
		if i > 0 {
			p.Length += b.Kerf
		}
		p.Length += piece.Length
		p.Closing += piece.Right.Saw + piece.Left.Saw
	}
	p.Stock, _ = b.stock(p.Pieces)
	return p, nil
}

// pieces are those of the joints that are given, of the number of pieces that is
// given, or of the least number that the boards allow.
func (b Blank) pieces(r blankRing) ([]BlankPiece, error) {
	switch {
	case len(b.Joints) > 0:
		return b.between(r, b.given(r))
	case b.Pieces != 0:
		return b.between(r, b.equal(r).lines(b.Pieces))
	}
	if pieces, err := b.least(r); len(pieces) > 0 || err != nil {
		return pieces, err
	}
	return b.between(r, b.equal(r).lines(usualPieces))
}

// least are the fewest equal pieces that the boards on hand hold, none if there are
// no boards or no number of pieces that they hold.
func (b Blank) least(r blankRing) ([]BlankPiece, error) {
	if len(b.Boards) == 0 {
		return nil, nil
	}
	e := b.equal(r)
	for n := LeastBlankPieces; n <= MostBlankPieces; n++ {
		pieces, err := b.fitting(r, e, n)
		if err != nil {
			return nil, err
		}
		if len(pieces) > 0 {
			if _, ok := b.stock(pieces); ok {
				return pieces, nil
			}
		}
	}
	return nil, nil
}

// fitting are n equal pieces, none where one of them is too large for all boards.
func (b Blank) fitting(r blankRing, e blankEqual, n int) ([]BlankPiece, error) {
	last, right := b.cuts(r, e.joint(0, n))
	last = last.around()
	pieces := make([]BlankPiece, 0, n)
	for i := range n {
		left, next := last, right
		if i+1 < n {
			left, next = b.cuts(r, e.joint(i+1, n))
		}
		piece, err := b.piece(r, right, left)
		if err != nil {
			return nil, err
		}
		if !b.fits(piece) {
			return nil, nil
		}
		pieces, right = append(pieces, piece), next
	}
	return pieces, nil
}

// between are the pieces between joints, of which the last is the first.
func (b Blank) between(r blankRing, joints []blankLine) ([]BlankPiece, error) {
	pieces := make([]BlankPiece, len(joints))
	last, right := b.cuts(r, joints[0])
	last = last.around()
	for i := range pieces {
		left, next := last, right
		if i+1 < len(joints) {
			left, next = b.cuts(r, joints[i+1])
		}
		var err error
		if pieces[i], err = b.piece(r, right, left); err != nil {
			return nil, err
		}
		right = next
	}
	return pieces, nil
}
