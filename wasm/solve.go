package main

import (
	"errors"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/explain"
)

// Where a request holds what it asks about.
const (
	orderAt    explain.Path = "/order"
	questionAt explain.Path = "/question"
)

// solve works backwards. What was not understood of the piece asked about cannot
// be: there it would count from what the order does not say.
func solve(r request) (any, explain.Problems) {
	reading, problems := r.reading()
	if problems != nil {
		return nil, problems
	}
	if r.Question == nil {
		return nil, one(explain.Problem{Code: explain.Missing, Path: questionAt})
	}
	question, err := framing.ReadQuestion(r.Question)
	if err != nil {
		return nil, problemsOf(err)
	}
	for _, p := range reading.Problems {
		if !p.Path.Under("/pieces") || samePiece(p.Path, question.Free) || samePiece(p.Path, question.Want) {
			p.Path = orderAt.Join(p.Path)
			problems = append(problems, p)
		}
	}
	if problems != nil {
		return nil, problems
	}
	solution, err := framing.Solve(reading.Order, question)
	if err != nil {
		return nil, problemsOf(err)
	}
	return solution, nil
}

// samePiece reports whether two paths of an order or a plan lie in one piece; a
// path in none lies in all.
func samePiece(p, q explain.Path) bool {
	a, b := p.Segments(), q.Segments()
	return len(a) < 2 || len(b) < 2 || a[0] != "pieces" || b[0] != "pieces" || a[1] == b[1]
}

// problemsOf are the problems that the library found, their paths as seen from
// the request.
func problemsOf(err error) explain.Problems {
	var found explain.Problems
	if !errors.As(err, &found) {
		return one(explain.Problem{Code: programFailed, Given: short(err.Error())})
	}
	problems := make(explain.Problems, 0, len(found))
	for _, p := range found {
		if !p.Path.Under(questionAt) && !p.Path.Under(orderAt) {
			p.Path = orderAt.Join(p.Path)
		}
		problems = append(problems, p)
	}
	return problems
}
