package main

import (
	"strconv"

	"github.com/fairmiter/fairmiter/framing/explain"
	"github.com/fairmiter/fairmiter/framing/jsontext"
)

// programFailed is the code of a fault of ours: later calls work.
const programFailed explain.Code = "program_failed"

// answer replies to a request. It never panics: a request that cannot be
// understood, and a fault within, are problems of the reply.
func answer(data []byte) []byte { return appendAnswer(make([]byte, 0, 64<<10), dispatch, data) }

// appendAnswer appends the reply to a request, by a given way to do calls.
func appendAnswer(dst []byte, do func(request) (any, explain.Problems), data []byte) (reply []byte) {
	var id int64
	defer func() {
		if fault := recover(); fault != nil {
			reply = appendProblems(dst, id, one(explain.Problem{Code: programFailed, Given: short(said(fault))}))
		}
	}()
	r, problems := read(data)
	id = r.ID
	if problems != nil {
		return appendProblems(dst, id, problems)
	}
	result, problems := do(r)
	if problems != nil {
		return appendProblems(dst, id, problems)
	}
	return appendReply(dst, id, "data", result)
}

func appendProblems(dst []byte, id int64, problems explain.Problems) []byte {
	return appendReply(dst, id, "problems", problems)
}

// appendReply writes a reply. Nothing in it becomes HTML by itself, so < and > of
// a drawing stay as they are.
func appendReply(dst []byte, id int64, key string, value any) []byte {
	reply := strconv.AppendInt(append(dst, `{"id":`...), id, 10)
	reply = append(append(append(reply, `,"`...), key...), `":`...)
	reply, err := jsontext.AppendValue(reply, value)
	if err != nil {
		return appendProblems(dst, id, one(explain.Problem{Code: programFailed, Given: short(err.Error())}))
	}
	return append(reply, '}')
}

// said is what a panic says.
func said(fault any) string {
	switch f := fault.(type) {
	case error:
		return f.Error()
	case string:
		return f
	}
	return "a fault of another kind"
}
