package framing

import "github.com/fairmiter/fairmiter/framing/explain"

// Figures lists the paths of all figures of the piece i, in the order of work:
// the mat, the frame, the parts in the rabbet, the depth. Each of them has a
// working; see [Plan.Explain]. A piece that was not worked has none.
func (p Plan) Figures(i int) []explain.Path {
	if i < 0 || i >= len(p.Pieces) || !p.Pieces[i].Worked {
		return nil
	}
	piece := &p.Pieces[i]
	at := placesOf(i).worked
	var paths []explain.Path
	add := func(group explain.Path, names ...explain.Path) {
		for _, name := range names {
			paths = append(paths, group+"/"+name)
		}
	}
	size := []explain.Path{"width", "height"}
	sides := []explain.Path{"left", "right", "top", "bottom"}
	if piece.Mat != (MatPlan{}) {
		mat := at + "/mat"
		add(mat+"/window", size...)
		add(mat+"/covered", size...)
		add(mat+"/cover", sides...)
		add(mat+"/cut", sides...)
		add(mat+"/visible", sides...)
		add(mat+"/seated", sides...)
		add(mat+"/blank", size...)
		add(mat+"/back", "left", "top")
	}
	frame := at + "/frame"
	add(frame+"/package", size...)
	add(frame+"/opening", size...)
	add(frame+"/sight", size...)
	add(frame+"/outside", size...)
	add(frame+"/horizontal", "long_point", "short_point", "saw", "edge")
	add(frame+"/vertical", "long_point", "short_point", "saw", "edge")
	add(frame, "footage")
	for k := range piece.Layers {
		layer := (at + "/layers").Index(k)
		add(layer+"/size", size...)
		add(layer+"/play", size...)
		add(layer+"/bite", size...)
	}
	add(at+"/depth", "package", "clear", "wanted")
	return paths
}
