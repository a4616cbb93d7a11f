// Package molding works out the frame around a package: the opening, the
// rails, their miters, and what fits into the rabbet.
//
// # Words
//
// The package is everything that goes into the rabbet: glazing, mats, art,
// mount, backing. Without a mat it is as large as the art; with one, as the
// mat's blank.
//
// Seen from the front, a molding's face runs from the sight edge, where one
// sees the picture begin, to the outside. The lip is the part of the face that
// covers the package: the width of the rabbet. The rabbet's depth is how much
// can stack up behind the lip; it has no part in the length of a rail.
//
// The opening is the rabbet's size from back edge to back edge, larger than
// the package by the allowance: the total play per dimension, both sides
// together. A rail is as long at its long points as
//
//	long point = opening + 2 x (face - lip)
//
// and what is seen of the package, the sight size, is
//
//	sight = opening - 2 x lip
//
// # Two fits
//
// Whatever lies in the rabbet must go in, and must not fall out. It goes in
// where opening less size leaves its play. It stays in where, pushed all the
// way to one side, the lip on the other side still covers its edge: the bite,
// lip less play, is more than nothing. In depth, the package must leave room
// behind it for the points that hold it.
//
// # Other corners than square ones
//
// A [PolygonFrame] goes around any outline of straight sides, each with its own
// face, also where sides have no rail; [Frame.AroundRegular] around one of equal
// sides. At a corner where two faces differ, the two rails are cut at different
// angles, and so each [RailEnd] says both what the saw's scale shows, counted from a
// square cut, and what lies between the cut and the rail's edge. They are one number
// only at 45 degrees.
//
//	saw of a regular frame = 180 / n        22.5 for an octagon
//	rail = outside across flats x tan(180 / n)
//
// # Sides that slope
//
// The side of a canted box or a flared frame is cut with the miter and the blade's
// tilt set together. One joint takes other numbers when the board lies flat on the
// table, stands with its rim down against the fence, or is propped up at its pitch,
// and a pitch counted from flat is not one counted from upright: a [Setting] belongs
// to a [Position], and a [Pitch] says from what it is counted.
//
// # What a small error does
//
// A saw that is off by a tenth of a degree is off sixteen times around an octagon.
// [Ring] says what that leaves at the last joint: a wedge, and rails that miss each
// other, which is more; and what each cut has to be corrected by.
package molding
