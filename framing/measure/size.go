package measure

// A Size is a width and a height, always in that order.
type Size struct {
	Width  Length `json:"width"`
	Height Length `json:"height"`
}

// Grown returns s with by added to both dimensions, once in all and not once
// each side.
func (s Size) Grown(by Length) Size { return Size{s.Width + by, s.Height + by} }

// Area is the surface of the rectangle, rounded half away from zero to a
// square micrometer. Past the range of [Area] it is the greatest Area.
func (s Size) Area() Area {
	v, _ := mulDiv(int64(s.Width), int64(s.Height), int64(Micrometer*Micrometer))
	return Area(v)
}

// UnitedLength is width plus height: what the trade calls united inches when
// it counts in inches.
func (s Size) UnitedLength() Length { return s.Width + s.Height }

// Along returns one dimension by its name: the width for "width", else the
// height.
func (s Size) Along(dimension string) Length {
	if dimension == "width" {
		return s.Width
	}
	return s.Height
}

// Sides holds one length for each side of an upright rectangle, seen from the
// front.
type Sides struct {
	Left   Length `json:"left"`
	Right  Length `json:"right"`
	Top    Length `json:"top"`
	Bottom Length `json:"bottom"`
}

// AllSides returns four sides of the same length.
func AllSides(l Length) Sides { return Sides{l, l, l, l} }

// Sum returns left plus right and top plus bottom: what the sides add to a
// rectangle.
func (s Sides) Sum() Size { return Size{s.Left + s.Right, s.Top + s.Bottom} }

// Plus returns the four sums of s and t.
func (s Sides) Plus(t Sides) Sides {
	return Sides{s.Left + t.Left, s.Right + t.Right, s.Top + t.Top, s.Bottom + t.Bottom}
}

// Minus returns the four differences of s and t.
func (s Sides) Minus(t Sides) Sides {
	return Sides{s.Left - t.Left, s.Right - t.Right, s.Top - t.Top, s.Bottom - t.Bottom}
}
