package ticket

import (
	"strings"
	"unicode"
)

// A sheet is what a ticket is written on. The writer says what there is, in the
// order of work; the sheet how it looks. It gets printable characters only.
type sheet interface {
	// title begins the ticket, fact is a line about the whole of it.
	title(text string)
	fact(label, text string)
	// heading begins a part of its own: problems, what to mind, workings.
	heading(text string)
	// piece begins a piece, section a step of its work, under a part of a step.
	piece(i int, text string)
	section(number int, text string)
	under(text string)
	// row is a name and what stands beside it, paragraph a text behind a mark,
	// item a line of a list.
	row(label, text string)
	paragraph(mark, text string)
	item(text string)
	// gap separates what follows.
	gap()
	// end finishes the sheet and returns it.
	end() string
}

func printable(r rune) rune {
	if unicode.IsPrint(r) {
		return r
	}
	return -1
}

// clean joins words. What could break the line or drive a terminal is left out:
// an order with problems can hold anything.
func clean(words ...string) string { return strings.Map(printable, strings.Join(words, "")) }
