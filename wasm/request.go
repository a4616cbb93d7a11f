package main

import (
	"bytes"
	"strconv"
	"strings"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/draw"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/jsontext"
)

// maxRequest is the longest request: an order of the greatest length, each
// character of it escaped, and room for what stands around it.
const maxRequest = 2*framing.MaxOrderBytes + 4096

// A request is what the page asks. Each call takes the fields it has a use for.
type request struct {
	// ID is what the reply repeats, so that a page can tell replies apart.
	ID   int64
	Call string
	// Protocol is the version of the seam that the page was written for.
	Protocol int
	// Order is the order, Text the order as a file holds it.
	Order []byte
	Text  *string
	// Views are the drawings wanted of the piece, counted from 0. Paper is how
	// large they are, Interactive whether one can tap their numbers and parts.
	Views       []draw.View
	Piece       int
	Paper       paper
	Interactive bool
	// Bare leaves the plan out, so that a drawing that follows a key comes sooner.
	Bare bool
	// Path is a figure of the plan.
	Path explain.Path
	// Question is what Solve is asked.
	Question []byte
	// Working asks for a ticket with workings, Form says as what.
	Working bool
	Form    string
}

// paper is how large a drawing is, in CSS pixels.
type paper struct {
	Width  int
	Height int
}

// read reads a request. What could be read of one with problems is returned
// too, the ID above all.
func read(data []byte) (request, explain.Problems) {
	var r request
	if len(data) > maxRequest {
		return r, tooLarge(len(data))
	}
	start, end, fault := jsontext.Check(data)
	if fault != nil {
		if fault.Offset == len(data) {
			return r, one(explain.Problem{Code: explain.NotJSON, Given: "unexpected end of JSON input"})
		}
		return r, one(explain.Problem{Code: explain.NotJSON, Given: short(fault.Reason)})
	}
	f := fields{tokens: jsontext.NewReader(data[start:end])}
	f.request(&r)
	if f.problems != nil {
		return r, f.problems
	}
	if rest := bytes.TrimLeft(data[end:], " \t\r\n"); len(rest) > 0 {
		return r, one(explain.Problem{Code: explain.Trailing, Given: short(string(rest))})
	}
	return r, nil
}

// tooLarge is the problem of a request of so many bytes.
func tooLarge(n int) explain.Problems {
	return one(explain.Problem{Code: explain.TooLarge, Given: strconv.Itoa(n), Accepted: "0 to " + strconv.Itoa(maxRequest)})
}

// reading reads the order of a request.
func (r request) reading() (framing.Reading, explain.Problems) {
	data := []byte(r.Order)
	switch {
	case r.Text != nil && data != nil:
		return framing.Reading{}, one(explain.Problem{Code: explain.Duplicate, Path: "/text", Accepted: "order or text"})
	case r.Text != nil:
		data = []byte(*r.Text)
	case data == nil:
		return framing.Reading{}, one(explain.Problem{Code: explain.Missing, Path: "/order"})
	}
	reading := framing.NewReading(data)
	if !framing.Shapes {
		for i := range reading.Order.Pieces {
			if reading.Order.Pieces[i].Shaped() {
				return framing.Reading{}, one(explain.Problem{Code: needsShapes, Path: explain.Path("/order/pieces").Index(i)})
			}
		}
	}
	return reading, nil
}

// plan works the order of a request out. What is wrong with the order stands in
// the plan.
func (r request) plan() (framing.Plan, explain.Problems) {
	reading, problems := r.reading()
	if problems != nil {
		return framing.Plan{}, problems
	}
	plan, _ := reading.Work()
	return plan, nil
}

func one(p explain.Problem) explain.Problems { return explain.Problems{p} }

// short cuts what a problem repeats of a request.
func short(s string) string {
	const most = 120
	if len(s) <= most {
		return s
	}
	return strings.ToValidUTF8(s[:most], "") + "..."
}
