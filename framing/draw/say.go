package draw

import (
	"strings"

	"github.com/fairmiter/fairmiter/framing"
)

// say makes the title and the description, to be listened to.
func (s *sheet) say(view string, sentences ...string) {
	name := clean(s.piece.Name)
	if name == "" {
		name = "The piece"
	}
	s.title = name + ", " + view
	s.desc = ""
	for _, sentence := range sentences {
		s.desc += strings.TrimSpace(sentence) + " "
	}
	s.desc = strings.TrimSpace(s.desc)
}

// tell keeps what is written, to be listened to where that makes sense.
func (s *sheet) tell(l label) {
	if l.text != "" {
		s.told += strings.TrimPrefix(l.word+" ", " ") + l.spoken + strings.TrimPrefix(l.after, "°") + "; "
		return
	}
	s.told = s.all()
	if strings.HasSuffix(l.word, ":") {
		s.told += l.word + " "
	} else {
		s.told += strings.TrimSuffix(l.word, ".") + ". "
	}
}

// all is what was told, as sentences.
func (s *sheet) all() string {
	if before, ok := strings.CutSuffix(s.told, "; "); ok {
		return before + ". "
	}
	return s.told
}

func by(a, b string) string { return a + " by " + b }

// sayFront tells what the front shows.
func (s *sheet) sayFront() {
	f, m, art := s.piece.Frame, &s.piece.Mat, s.order.Art
	list := make([]string, 0, 8)
	list = append(list,
		"The frame is "+by(f.Outside.Width.Spoken(), f.Outside.Height.Spoken())+" outside, width by height;",
		by(f.Sight.Width.Spoken(), f.Sight.Height.Spoken())+" of what is in it is seen.")
	if framing.Shapes && s.skewed() {
		a := art.Sides
		list = append(list, "The "+string(art.Kind)+" is out of square: its bottom edge is "+s.given("", a.Bottom).spoken+" long, its right "+
			s.given("", a.Right).spoken+", its top "+s.given("", a.Top).spoken+" and its left "+s.given("", a.Left).spoken+".")
	} else {
		list = append(list, "The "+string(art.Kind)+" is "+by(s.given("", art.Width).spoken, s.given("", art.Height).spoken)+".")
	}
	if framing.Shapes && s.shaped() {
		for i := range s.piece.Shape.Sides {
			if _, slope := s.sloped(i); slope == nil {
				list = append(list, "The "+s.railName(i)+" rail is "+s.molding(i).spoken+" wide.")
			}
		}
		list = append(list, s.all())
	}
	if !m.IsZero() {
		list = append(list,
			"The mat's window is "+by(m.Window.Width.Spoken(), m.Window.Height.Spoken())+";",
			"its borders are seen "+m.Visible.Left.Spoken()+" at the left, "+m.Visible.Right.Spoken()+" at the right, "+
				m.Visible.Top.Spoken()+" at the top and "+m.Visible.Bottom.Spoken()+" at the bottom.")
	}
	for i := range s.piece.Layers {
		if l := &s.piece.Layers[i]; s.bad(l) {
			list = append(list, "The "+partWord(l.Part)+" does not fit.")
		}
	}
	s.say("seen from the front", list...)
}
