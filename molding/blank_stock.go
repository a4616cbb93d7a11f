package molding

import "github.com/fairmiter/fairmiter/framing/measure"

// A BlankStock is one kind of board to take or buy.
type BlankStock struct {
	Width measure.Length `json:"width"`
	// Length is that of one board; of boards as long as it takes, what it takes.
	Length measure.Length `json:"length"`
	// Count is how many boards it takes.
	Count int `json:"count"`
}

// fits reports whether some board on hand is large enough for a piece.
func (b Blank) fits(p BlankPiece) bool {
	for _, board := range b.Boards {
		if board.holds(p) {
			return true
		}
	}
	return false
}

func (board BlankBoard) holds(p BlankPiece) bool {
	return p.Width <= board.Width && (board.Length == 0 || p.Length <= board.Length)
}

// stock cuts the pieces out of the boards on hand, one after the other along each
// board, and says whether all went in. Longest first, each goes into the narrowest
// board that was begun and has room, or begins the narrowest one that has: which is
// not always the least of boards, but nearly. Without boards on hand it is one of the
// widest piece's width.
func (b Blank) stock(pieces []BlankPiece) (stock []BlankStock, all bool) {
	if len(b.Boards) == 0 {
		var one BlankStock
		for i := range pieces {
			one.Width = max(one.Width, pieces[i].Width)
			one.Length += pieces[i].Length
			pieces[i].Stock = 0
		}
		one.Count = 1
		one.Length += b.Kerf * measure.Length(len(pieces)-1)
		return []BlankStock{one}, true
	}
	var begun []blankBegun
	all = true
	for _, i := range longestFirst(pieces) {
		p := &pieces[i]
		j := b.room(begun, *p)
		if j < 0 {
			kind := b.begin(begun, *p)
			if kind < 0 {
				p.Stock, all = -1, false
				continue
			}
			begun, j = append(begun, blankBegun{kind: kind, used: -b.Kerf}), len(begun)
		}
		begun[j].used += b.Kerf + p.Length
		p.Stock = begun[j].kind
	}
	// What stood for the kind on hand becomes its place in the stock.
	place := make([]int, len(b.Boards))
	for kind, board := range b.Boards {
		place[kind] = -1
		s := BlankStock{Width: board.Width, Length: board.Length}
		for _, g := range begun {
			if g.kind != kind {
				continue
			}
			s.Count++
			if board.Length == 0 {
				s.Length = g.used
			}
		}
		if s.Count > 0 {
			place[kind] = len(stock)
			stock = append(stock, s)
		}
	}
	for i := range pieces {
		if kind := pieces[i].Stock; kind >= 0 {
			pieces[i].Stock = place[kind]
		}
	}
	return stock, all
}

// A blankBegun is a board that pieces are cut out of.
type blankBegun struct {
	kind int
	used measure.Length // with the kerfs between
}

// room is the narrowest board begun that a piece still goes into, -1 for none.
func (b Blank) room(begun []blankBegun, p BlankPiece) int {
	best := -1
	for j, g := range begun {
		board := b.Boards[g.kind]
		if !board.holds(p) || board.Length != 0 && g.used+b.Kerf+p.Length > board.Length {
			continue
		}
		if best < 0 || board.Width < b.Boards[begun[best].kind].Width {
			best = j
		}
	}
	return best
}

// begin is the narrowest kind of board on hand of which there is one more that holds
// a piece, -1 for none. A board as long as it takes is begun once.
func (b Blank) begin(begun []blankBegun, p BlankPiece) int {
	best := -1
	for kind, board := range b.Boards {
		if !board.holds(p) || best >= 0 && board.Width >= b.Boards[best].Width {
			continue
		}
		left := board.Count
		for _, g := range begun {
			if g.kind == kind {
				left--
			}
		}
		if board.Count == 0 || left > 0 {
			best = kind
		}
	}
	return best
}

// longestFirst are the indexes of pieces, the longest one first, of equal ones in
// their order.
func longestFirst(pieces []BlankPiece) []int {
	order := make([]int, 0, len(pieces))
	for i, p := range pieces {
		j := len(order)
		for j > 0 && pieces[order[j-1]].Length < p.Length {
			j--
		}
		order = append(order, i)
		copy(order[j+1:], order[j:])
		order[j] = i
	}
	return order
}
