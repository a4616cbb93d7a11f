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
package molding
