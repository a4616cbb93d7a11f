package template_test

import (
	"bytes"
	"encoding/xml"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing/draw/template"
)

// arcLength is how long the arc over a chord is that turns through so many degrees.
func arcLength(dx, dy, degrees float64) float64 {
	chord, turn := math.Hypot(dx, dy), math.Abs(degrees)*math.Pi/180
	if turn == 0 {
		return chord
	}
	return chord / 2 / math.Sin(turn/2) * turn
}

// bezierLength is how long a cubic curve is, by chords.
func bezierLength(x, y [4]float64) float64 {
	const n = 1000
	at := func(p [4]float64, t float64) float64 {
		u := 1 - t
		return u*u*u*p[0] + 3*u*u*t*p[1] + 3*u*t*t*p[2] + t*t*t*p[3]
	}
	var sum float64
	for i := range n {
		s, t := float64(i)/n, float64(i+1)/n
		sum += math.Hypot(at(x, t)-at(x, s), at(y, t)-at(y, s))
	}
	return sum
}

// A drawing is what was read of a file.
type drawing struct {
	title  string
	layers map[template.Layer]float64 // how long its paths are, in mm
	texts  []string
	width  float64 // mm
	height float64
	arcs   []piece // of polylines in DXF
}

// A vertex is one of a polyline in DXF, a piece what lies between two of them.
type (
	vertex struct{ x, y, bulge float64 }
	piece  struct{ x0, y0, x1, y1, bulge float64 }
)

// at is the point of the piece after so much of its angle: on the circle around a
// middle that lies beside its chord.
func (p piece) at(part float64) (x, y float64) {
	turn := 4 * math.Atan(p.bulge)
	if turn == 0 {
		return p.x0 + part*(p.x1-p.x0), p.y0 + part*(p.y1-p.y0)
	}
	out := 1 / math.Tan(turn/2) / 2
	middleX := (p.x0+p.x1)/2 - out*(p.y1-p.y0)
	middleY := (p.y0+p.y1)/2 + out*(p.x1-p.x0)
	sin, cos := math.Sincos(part * turn)
	dx, dy := p.x0-middleX, p.y0-middleY
	return middleX + cos*dx - sin*dy, middleY + sin*dx + cos*dy
}

var pathToken = regexp.MustCompile(`[MLACZ]|-?[0-9.]+`)

// readSVG reads SVG by its XML.
func readSVG(t *testing.T, file []byte) drawing {
	t.Helper()
	d := drawing{layers: make(map[template.Layer]float64)}
	x := xml.NewDecoder(bytes.NewReader(file))
	var groups []string
	var chars string
	for {
		token, err := x.Token()
		if token == nil {
			if len(groups) != 0 || err.Error() != "EOF" {
				t.Fatal(err, groups)
			}
			return d
		}
		switch token := token.(type) {
		case xml.CharData:
			chars += string(token)
		case xml.StartElement:
			chars = ""
			attr := make(map[string]string)
			for _, a := range token.Attr {
				attr[a.Name.Local] = a.Value
			}
			switch token.Name.Local {
			case "svg":
				d.width, d.height = inMillimeters(t, attr["width"]), inMillimeters(t, attr["height"])
				box := strings.Fields(attr["viewBox"])
				if len(box) != 4 || number(t, box[2]) != d.width || number(t, box[3]) != d.height {
					t.Errorf("the view box is %v, the size %g x %g", box, d.width, d.height)
				}
			case "g":
				groups = append(groups, attr["id"])
			case "path":
				d.layers[template.Layer(groups[0])] += pathLength(t, attr["d"])
			}
		case xml.EndElement:
			switch token.Name.Local {
			case "g":
				groups = groups[:len(groups)-1]
			case "title":
				d.title = chars
			case "text":
				d.texts = append(d.texts, chars)
			}
		}
	}
}

func inMillimeters(t *testing.T, s string) float64 {
	t.Helper()
	v, ok := strings.CutSuffix(s, "mm")
	if !ok {
		t.Errorf("the size %q is not in mm", s)
	}
	return number(t, v)
}

func number(t *testing.T, s string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

func pathLength(t *testing.T, d string) (sum float64) {
	t.Helper()
	var x, y, startX, startY float64
	tokens := pathToken.FindAllString(d, -1)
	take := func() float64 { v := number(t, tokens[0]); tokens = tokens[1:]; return v }
	for len(tokens) > 0 {
		op := tokens[0]
		tokens = tokens[1:]
		fromX, fromY := x, y
		switch op {
		case "M":
			x, y = take(), take()
			startX, startY = x, y
		case "L":
			x, y = take(), take()
			sum += math.Hypot(x-fromX, y-fromY)
		case "A":
			r, ry := take(), take()
			take()
			if large := take(); large != 0 || r != ry {
				t.Errorf("an arc is large or no circle's: %s", d)
			}
			take()
			x, y = take(), take()
			sum += 2 * r * math.Asin(math.Hypot(x-fromX, y-fromY)/2/r)
		case "C":
			px, py := [4]float64{x}, [4]float64{y}
			for i := 1; i < 4; i++ {
				px[i], py[i] = take(), take()
			}
			x, y = px[3], py[3]
			sum += bezierLength(px, py)
		case "Z":
			sum += math.Hypot(startX-x, startY-y)
		}
	}
	return sum
}

// readDXF reads DXF by its pairs.
func readDXF(t *testing.T, file []byte) drawing {
	t.Helper()
	d := drawing{layers: make(map[template.Layer]float64)}
	lines := strings.Split(strings.TrimSuffix(string(file), "\n"), "\n")
	if len(lines)%2 != 0 {
		t.Fatal("half a pair")
	}
	var vertices []vertex
	var kind string
	var now map[int]string
	var closed bool
	end := func() {
		layer := template.Layer(now[8])
		value := func(code int) float64 {
			if now[code] == "" {
				return 0
			}
			return number(t, now[code])
		}
		switch kind {
		case "POLYLINE":
			vertices, closed = nil, now[70] == "1"
		case "VERTEX":
			vertices = append(vertices, vertex{value(10), value(20), value(42)})
		case "SEQEND":
			for i, v := range vertices {
				if !closed && i+1 == len(vertices) {
					break
				}
				w := vertices[(i+1)%len(vertices)]
				d.arcs = append(d.arcs, piece{v.x, v.y, w.x, w.y, v.bulge})
				d.layers[layer] += arcLength(w.x-v.x, w.y-v.y, 4*math.Atan(v.bulge)*180/math.Pi)
			}
		case "LINE":
			d.layers[layer] += math.Hypot(value(11)-value(10), value(21)-value(20))
		case "TEXT":
			d.texts = append(d.texts, now[1])
		}
	}
	for i := 0; i < len(lines); i += 2 {
		code, err := strconv.Atoi(lines[i])
		if err != nil {
			t.Fatal(err)
		}
		switch {
		case code == 0:
			end()
			kind, now = lines[i+1], make(map[int]string)
		case code != 999:
			now[code] = lines[i+1]
		}
	}
	if kind != "EOF" {
		t.Errorf("the file ends with %s", kind)
	}
	return d
}
