package template

import "github.com/fairmiter/fairmiter/framing/measure"

// helvetica is how wide the characters from space to tilde are, in thousandths of the
// size of the font, as its public metrics have it.
var helvetica = [...]uint16{
	278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278,
	556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556,
	1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778,
	667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556,
	333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556,
	556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584,
}

// A capital of Helvetica is 718 thousandths of the size of the font high.
const capital = 718

// size is that of the font whose capitals are so high.
func size(height measure.Length) measure.Length { return height * 1000 / capital }

// width is how wide text in WinAnsiEncoding is, with capitals so high. Letters with an
// accent are taken to be as wide as the widest of their kind.
func width(text []byte, height measure.Length) measure.Length {
	var sum measure.Length
	for _, c := range text {
		switch {
		case ' ' <= c && c <= '~':
			sum += measure.Length(helvetica[c-' '])
		case c >= 0xe0:
			sum += 611
		default:
			sum += 1000
		}
	}
	return sum * height / capital
}
