package molding

import (
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/plane"
)

// A BlankScrew is a screw of the face plate.
type BlankScrew struct {
	Piece int `json:"piece"` // counted from 0
	// At is its place, from the middle of the ring.
	At plane.Point `json:"at"`
	// Room is the least wood beside its thread.
	Room measure.Length `json:"room"`
}
