package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"strconv"

	"github.com/fairmiter/fairmiter/framing/explain"
)

// programFailed is the code of a fault of ours: later calls work.
const programFailed explain.Code = "program_failed"

// answer replies to a request. It never panics: a request that cannot be
// understood, and a fault within, are problems of the reply.
func answer(data []byte) []byte { return answerBy(dispatch, data) }

// answerBy is answer by a given way to do calls.
func answerBy(do func(request) (any, explain.Problems), data []byte) (reply []byte) {
	var id int64
	defer func() {
		if fault := recover(); fault != nil {
			reply = problemsReply(id, one(explain.Problem{Code: programFailed, Given: short(fmt.Sprint(fault))}))
		}
	}()
	r, problems := read(data)
	id = r.ID
	if problems != nil {
		return problemsReply(id, problems)
	}
	result, problems := do(r)
	if problems != nil {
		return problemsReply(id, problems)
	}
	return encode(id, "data", result)
}

func problemsReply(id int64, problems explain.Problems) []byte {
	return encode(id, "problems", problems)
}

// encode writes a reply. Nothing in it becomes HTML by itself, so < and > of a
// drawing stay as they are.
func encode(id int64, key string, value any) []byte {
	var b bytes.Buffer
	b.Grow(16 << 10) // a plan of one piece
	b.WriteString(`{"id":` + strconv.FormatInt(id, 10) + `,"` + key + `":`)
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	if err := e.Encode(value); err != nil {
		panic(err) // recovered by answerBy: the reply was of our making
	}
	b.Bytes()[b.Len()-1] = '}' // where the encoder ended its line
	return b.Bytes()
}
