package ticket_test

import (
	"encoding/xml"
	"errors"
	"io"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/ticket"
)

// element is one element of a page, with the text in it.
type element struct {
	name, class, text string
}

// elements reads a page as XML, which an inert one is.
func elements(t *testing.T, page string) []element {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(page))
	d.Strict = true
	var open []int
	var all []element
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			t.Fatalf("%v in\n%s", err, page)
		}
		switch token := token.(type) {
		case xml.StartElement:
			e := element{name: token.Name.Local}
			for _, a := range token.Attr {
				if a.Name.Local == "class" {
					e.class = a.Value
				} else if a.Name.Local != "scope" {
					t.Errorf("attribute %s on %s", a.Name.Local, e.name)
				}
			}
			open = append(open, len(all))
			all = append(all, e)
		case xml.EndElement:
			open = open[:len(open)-1]
		case xml.CharData:
			if len(open) > 0 {
				all[open[len(open)-1]].text += string(token)
			}
		}
	}
	if len(open) != 0 {
		t.Errorf("%d elements are not closed", len(open))
	}
	return all
}

// TestHTMLSaysTheSame: what stands on the text ticket stands on the page, in the
// same order.
func TestHTMLSaysTheSame(t *testing.T) {
	for name, order := range orders(t) {
		t.Run(name, func(t *testing.T) {
			plan, err := order.Work()
			if err != nil {
				t.Fatal(err)
			}
			var said strings.Builder
			for _, e := range elements(t, ticket.HTML(plan, ticket.Options{Working: true}, nil)) {
				said.WriteString(e.text + " ")
			}
			page := strings.ToLower(strings.Join(strings.Fields(said.String()), ""))
			for _, word := range strings.Fields(strings.ToLower(ticket.Text(plan, ticket.Options{Working: true}))) {
				at := strings.Index(page, word)
				if at < 0 {
					t.Fatalf("the page lacks %q, or has it too early", word)
				}
				page = page[at+len(word):]
			}
		})
	}
}

// TestHTMLPictures: drawings stand in the piece that they are of.
func TestHTMLPictures(t *testing.T) {
	order := framing.Sample()
	order.Pieces = append(order.Pieces, order.Pieces[0])
	plan, err := framing.Work(order)
	if err != nil {
		t.Fatal(err)
	}
	page := ticket.HTML(plan, ticket.Options{}, func(i int) []ticket.Picture {
		return []ticket.Picture{{Caption: "front <" + string(rune('0'+i)) + ">", SVG: "<svg></svg>"}}
	})
	pieces := strings.Split(page, `<section class="ticket-piece">`)
	if len(pieces) != 3 {
		t.Fatalf("%d pieces in\n%s", len(pieces)-1, page)
	}
	for i, piece := range pieces[1:] {
		want := "<figure><svg></svg><figcaption>front &lt;" + string(rune('0'+i)) + "&gt;</figcaption></figure>"
		if strings.Count(piece, want) != 1 || strings.Count(piece, "<figure>") != 1 {
			t.Errorf("piece %d lacks its picture", i)
		}
	}
}

// TestHTMLHostile: nothing that an order says becomes an element or an attribute.
func TestHTMLHostile(t *testing.T) {
	for _, name := range []string{
		`<script>alert(1)</script>`, `"><img src=x onerror=alert(1)>`, `' onclick='x`, `&lt;b&gt;`, `</section></article><h1>`, `<!--`, `]]>`,
	} {
		order := framing.Sample()
		p := &order.Pieces[0]
		order.Job, p.Name, p.Mat.Name, p.Frame.Molding, p.Backing.Name = name, name, name, name, name
		plan, err := framing.Work(order)
		if err != nil {
			t.Fatal(err)
		}
		found := 0
		for _, e := range elements(t, ticket.HTML(plan, ticket.Options{Working: true}, nil)) {
			switch e.name {
			case "article", "section", "h1", "h2", "h3", "h4", "table", "tr", "th", "td", "p":
			default:
				t.Errorf("%s makes an element %s", name, e.name)
			}
			if strings.Contains(e.text, name) {
				found++
			}
		}
		if found < 4 {
			t.Errorf("%s is written %d times", name, found)
		}
	}
}
