package explain

// The operations on curves. A build of plain rectangles does not work them out.
const (
	OpArc  Op = "arc"  // the arc of a radius a through an angle b
	OpOval Op = "oval" // the way around an ellipse whose whole axes are a and b
)

// Arc is the length of the arc that a radius sweeps through an angle, as
// [measure.Length.Arc]: of half a turn, pi times the radius.
func Arc(radius, sweep Expr) Expr { return Apply(OpArc, radius, sweep) }

// Around is the perimeter of an ellipse by its whole axes, rounded to the nearest;
// nothing where an axis is not more than that.
func Around(width, height Expr) Expr { return Apply(OpOval, width, height) }
