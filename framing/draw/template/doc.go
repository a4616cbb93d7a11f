// Package template writes shapes at true size: to print, glue to the work and cut along,
// to lay against a wall and drill through, or to give to a machine.
//
// A [Template] holds paths, places to drill and words, in the lengths of the work
// itself; nothing is scaled. It is made by hand, or from what framers need most:
//
//	t, err := template.OfPolygon(outside, 2*in)     // a frame of straight rails, with its miters
//	t, err := template.CornerBlock(4*in, 4*in, 90*measure.Degree)
//	t, err := template.HangerStrip(16*in, 1*in, template.Place{At: 3 * in, Word: "ring"})
//	t.Title = "Hangers of the large oak frame"
//
// Edges of curved frames are paths of their own: [Oval] and [Arch] lie around an ellipse or
// an arch, or beside one at the width of a rail.
//
// A template is written as
//
//	t.SVG()                                    // for a browser, a drawing program, a laser
//	t.DXF(0)                                   // for a router or a drafting program
//	t.PDF(template.Letter, template.Overlap)   // for a printer, over as many sheets as it takes
//
// # Layers
//
// Each path says what it is for by its [Layer]: [Cut], [Mark], [Center], [Hidden], [Text]
// and [Proof]. A laser is told to cut the first and to engrave the second. No kerf is
// added anywhere: a line is the true edge, and whoever cuts stays beside it.
//
// # What proves the size
//
// Printers fit pages to paper and programs guess at units, so every file can be checked
// with a ruler. Below the shape SVG and DXF have a line of 100 mm on the layer [Proof].
// PDF begins with a sheet that has a square of 100 mm and rulers of 150 mm and 6 in, and
// each sheet after it has a ruler of 50 mm. PDF asks the viewer not to scale.
//
// # Sheets
//
// Rows of sheets have letters, A at the top, columns have numbers, 1 at the left. Sheets
// beside each other show the same strip; in its middle runs the dashed line to cut along,
// between two marks in the margin, with the name of the neighbor past it. Cut at the
// lines, the sheets butt together. Or cut only one of two, and lay its edge along
// the line of the other. The dashed lines are half an overlap inside what is printed, so
// the printer's own margin, up to [Margin], takes nothing away.
//
// # Names in any script
//
// SVG has text as it is, in UTF-8, in the reader's font. DXF of Release 12 knows ASCII
// alone: other characters stand as \U+XXXX, their code in Unicode, which drafting programs
// show as the character; so do the percent sign of a second in a row, the circumflex and
// the backslash, which have a meaning of their own there. Sheets of PDF are lettered in
// Helvetica, which every viewer has, and which knows the letters of western Europe
// (WinAnsiEncoding); on them, too, other characters stand as \U+XXXX. A character past
// U+FFFF stands as the two units of its UTF-16. The title of a PDF document is the title
// in full, as the viewer shows it, in any script. On a sheet a title ends after three
// lines, and at the ruler in the foot. Control characters are dropped everywhere, but for
// tabs and ends of lines, which are spaces.
//
// # How exact
//
// SVG and PDF are written to 0.0001 mm, DXF to the nanometer. An oval is arcs of circles,
// 0.001 mm or less from the true curve in SVG and PDF, and as near as is asked for in DXF,
// which says it. Arcs of circles are arcs in
// SVG and DXF; in PDF they are Bezier curves of 30 degrees or less, which differ from
// them by less than 4e-7 of the radius. The same template gives the same bytes
// everywhere: there is no date in a file.
package template
