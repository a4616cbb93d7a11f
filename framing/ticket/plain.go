package ticket

import (
	"strconv"
	"strings"
)

// A plain sheet is text of a fixed width.
type plain struct{ b strings.Builder }

// How wide the columns of names and of shown values are.
const (
	labelWidth = 20
	valueWidth = 22
)

// lineWidth is how long a line may be, in characters.
const lineWidth = 80

func (p *plain) line(words ...string) {
	for _, w := range words {
		p.b.WriteString(w)
	}
	p.b.WriteByte('\n')
}

func (p *plain) title(text string)       { p.line(strings.ToUpper(text)) }
func (p *plain) fact(label, text string) { p.line(pad(label, 7), text) }
func (p *plain) gap()                    { p.line() }
func (p *plain) end() string             { return p.b.String() }
func (p *plain) heading(text string)     { p.line(); p.line(text) }
func (p *plain) item(text string)        { p.line("   ", text) }
func (p *plain) under(text string)       { p.line(); p.line("   ", text) }

func (p *plain) piece(_ int, text string) { p.line(); p.line("PIECE ", text) }

func (p *plain) section(number int, text string) {
	p.line()
	p.line(strconv.Itoa(number), "  ", text)
}

// row writes a name and what stands beside it, indented. Text that is too long
// goes on below, at the same indent.
func (p *plain) row(label, joined string) {
	const indent = 3
	text := []rune(joined)
	room := lineWidth - indent - labelWidth
	for len(text) > room {
		cut := room
		for cut > 0 && text[cut] != ' ' {
			cut--
		}
		if cut == 0 {
			break // one long word
		}
		p.line("   ", pad(label, labelWidth), strings.TrimRight(string(text[:cut]), " "))
		label, text = "", text[cut+1:]
	}
	p.line("   ", pad(label, labelWidth), string(text))
}

// paragraph writes text in lines of at most 80 characters behind a mark.
func (p *plain) paragraph(mark, text string) {
	indent := "   " + strings.Repeat(" ", len(mark))
	line := "   " + mark
	empty := true
	for _, word := range strings.Fields(text) {
		if !empty && len([]rune(line))+1+len([]rune(word)) > lineWidth {
			p.line(line)
			line, empty = indent, true
		}
		if !empty {
			line += " "
		}
		line += word
		empty = false
	}
	p.line(line)
}

func pad(s string, width int) string {
	if n := width - len([]rune(s)); n > 0 {
		return s + strings.Repeat(" ", n)
	}
	return s + " "
}
