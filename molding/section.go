package molding

import (
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/material"
)

// Codes of the notes on metal sections.
const (
	MetalSection   explain.Code = "metal.section"
	ChannelUnknown explain.Code = "metal.depth_unknown"
	ChannelShallow explain.Code = "metal.does_not_go_in"
	ChannelFull    explain.Code = "metal.no_room"
	ChannelTight   explain.Code = "metal.little_room"
)

// Section reports whether the frame is of metal sections, whose channel holds the
// package with spring clips where a wooden frame has points. A floater is none:
// screws hold what is in it.
func (f Frame) Section() bool { return f.Wood == material.Aluminum && f.Kind != Floater }

// inChannel is the code of a note on a rabbet's depth where a metal section's
// channel takes its place.
func inChannel(code explain.Code) explain.Code {
	switch code {
	case DepthUnknown:
		return ChannelUnknown
	case Proud:
		return ChannelShallow
	case NoRoom:
		return ChannelFull
	}
	return ChannelTight
}
