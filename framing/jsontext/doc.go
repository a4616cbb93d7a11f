// Package jsontext reads and writes JSON (RFC 8259) as the library needs it: it
// reads a document token by token without losing what a decoder into Go values
// would drop, and it writes Go values by their struct tags in the very bytes of
// encoding/json, or says that it cannot. That package would make the page an eighth
// larger, and is slower.
//
// Reading is in two steps. [Check] finds where a value ends, or where it breaks
// the grammar and how; a [Reader] then reads the tokens of what is known to be
// sound. What is read is to be valid UTF-8.
package jsontext
