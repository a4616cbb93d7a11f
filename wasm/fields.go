package main

import (
	"strconv"
	"strings"

	"github.com/fairmiter/fairmiter/framing/draw"
	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/jsontext"
)

// fields reads the fields of a request. Of what is wrong it keeps the first; the
// other fields are read all the same. A field of null is as one that is absent,
// but for an order and a question, which are passed on as they are.
type fields struct {
	tokens   *jsontext.Reader
	problems explain.Problems
}

func (f *fields) request(r *request) {
	f.object("", func(key string, at explain.Path) {
		switch key {
		case "id":
			f.number(at, &r.ID)
		case "call":
			f.text(at, &r.Call)
		case "protocol":
			f.count(at, &r.Protocol)
		case "order":
			r.Order = f.tokens.Raw()
		case "text":
			var text string
			if f.text(at, &text) {
				r.Text = &text
			}
		case "views":
			f.views(at, r)
		case "piece":
			f.count(at, &r.Piece)
		case "paper":
			f.paper(at, &r.Paper)
		case "interactive":
			f.truth(at, &r.Interactive)
		case "bare":
			f.truth(at, &r.Bare)
		case "path":
			var path string
			f.text(at, &path)
			r.Path = explain.Path(path)
		case "question":
			r.Question = f.tokens.Raw()
		case "working":
			f.truth(at, &r.Working)
		case "form":
			f.text(at, &r.Form)
		default:
			f.unknown(at)
		}
	})
}

func (f *fields) paper(at explain.Path, p *paper) {
	f.object(at, func(key string, at explain.Path) {
		switch key {
		case "width":
			f.count(at, &p.Width)
		case "height":
			f.count(at, &p.Height)
		default:
			f.unknown(at)
		}
	})
}

func (f *fields) views(at explain.Path, r *request) {
	if _, ok := f.token(at, "["); !ok {
		return
	}
	for r.Views = nil; f.tokens.More(); {
		var view string
		f.text(at.Index(len(r.Views)), &view)
		r.Views = append(r.Views, draw.View(view))
	}
	f.tokens.Next()
}

// object reads an object and calls field before each value, which it must read.
func (f *fields) object(at explain.Path, field func(key string, at explain.Path)) {
	if _, ok := f.token(at, "{"); !ok {
		return
	}
	for f.tokens.More() {
		key := f.tokens.Next().Text
		field(key, at.Child(short(key)))
	}
	f.tokens.Next()
}

// token reads the beginning of a value of one of some kinds. Another value is
// passed over.
func (f *fields) token(at explain.Path, kinds string) (jsontext.Token, bool) {
	t := f.tokens.Next()
	if strings.IndexByte(kinds, byte(t.Kind)) >= 0 {
		return t, true
	}
	f.tokens.Skip(t)
	given := "object"
	switch t.Kind {
	case 'n':
		return t, false
	case '[':
		given = "array"
	case '"':
		given = "string"
	case 't', 'f':
		given = "bool"
	case '0':
		given = "number " + short(t.Text)
	}
	f.wrong(explain.Problem{Code: explain.WrongType, Path: at, Given: given})
	return t, false
}

func (f *fields) wrong(p explain.Problem) {
	if f.problems == nil {
		f.problems = one(p)
	}
}

func (f *fields) unknown(at explain.Path) {
	f.tokens.Skip(f.tokens.Next())
	f.wrong(explain.Problem{Code: explain.UnknownField, Path: at})
}

func (f *fields) text(at explain.Path, into *string) bool {
	t, ok := f.token(at, `"`)
	if ok {
		*into = t.Text
	}
	return ok
}

func (f *fields) truth(at explain.Path, into *bool) {
	if t, ok := f.token(at, "tf"); ok {
		*into = t.Kind == 't'
	}
}

func (f *fields) number(at explain.Path, into *int64) {
	t, ok := f.token(at, "0")
	if !ok {
		return
	}
	n, err := strconv.ParseInt(t.Text, 10, 64)
	if err != nil {
		f.wrong(explain.Problem{Code: explain.WrongType, Path: at, Given: "number " + short(t.Text)})
		return
	}
	*into = n
}

func (f *fields) count(at explain.Path, into *int) {
	n := int64(*into)
	f.number(at, &n)
	*into = int(n)
}
