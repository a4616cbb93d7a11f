package build

import (
	"bytes"
	"encoding/binary"
	"errors"
	"fmt"
)

// StripLines takes from a Go module the tables of source files and line numbers,
// which no linker flag does. They are only read to print where a crash was, and
// are a tenth of the compressed module, and the names of the files are more of it. They become zeros, so that the module is
// as long as before but compresses better; what the garbage collector needs to
// read the stack stays. Names of functions stay too.
//
// A module that is not laid out as Go 1.20 to 1.26 do (runtime/symtab.go and
// internal/abi/symtab.go) is an error: no guess is made.
func StripLines(module []byte) ([]byte, error) {
	segments, err := dataSegments(module)
	if err != nil {
		return nil, err
	}
	var size int
	for _, s := range segments {
		size = max(size, s.address+len(s.data))
	}
	memory := make([]byte, size)
	for _, s := range segments {
		copy(memory[s.address:], s.data)
	}
	if err := stripTable(memory); err != nil {
		return nil, err
	}
	stripped := bytes.Clone(module)
	for _, s := range segments {
		copy(stripped[s.offset:s.offset+len(s.data)], memory[s.address:])
	}
	return stripped, nil
}

// A segment is data that a module puts into memory at an address; offset is where
// it stands in the module.
type segment struct {
	address, offset int
	data            []byte
}

var errNotWasm = errors.New("strip lines: not a WebAssembly module as Go writes it")

// dataSegments reads the data section: WebAssembly Core Specification 2.0, 5.5.14.
func dataSegments(module []byte) ([]segment, error) {
	if !bytes.HasPrefix(module, []byte("\x00asm\x01\x00\x00\x00")) {
		return nil, errNotWasm
	}
	const dataSection, constant, end = 11, 0x41, 0x0b
	r := wasmReader{data: module, at: 8}
	for r.at < len(module) && !r.bad {
		id, n := r.byte(), r.unsigned()
		if id != dataSection {
			r.skip(n)
			continue
		}
		var segments []segment
		for range r.unsigned() {
			if r.bad || r.byte() != 0 || r.byte() != constant {
				return nil, errNotWasm
			}
			address := r.unsigned() // signed in the format; Go's lie below 2 GiB
			if r.byte() != end {
				return nil, errNotWasm
			}
			length := r.unsigned()
			offset := r.at
			if r.skip(length); r.bad || address > 1<<28 {
				return nil, errNotWasm
			}
			segments = append(segments, segment{address, offset, module[offset:r.at]})
		}
		return segments, nil
	}
	return nil, errNotWasm
}

// A wasmReader reads a module; bad is set where it ends too early.
type wasmReader struct {
	data []byte
	at   int
	bad  bool
}

func (r *wasmReader) byte() byte {
	if r.at >= len(r.data) {
		r.bad = true
		return 0
	}
	r.at++
	return r.data[r.at-1]
}

// unsigned reads a LEB128 number of at most 32 bits.
func (r *wasmReader) unsigned() int {
	var n uint64
	for shift := 0; shift < 35; shift += 7 {
		b := r.byte()
		n |= uint64(b&0x7f) << shift
		if b < 0x80 {
			return int(n & (1<<32 - 1))
		}
	}
	r.bad = true
	return 0
}

func (r *wasmReader) skip(n int) {
	if r.bad = r.bad || n > len(r.data)-r.at; !r.bad {
		r.at += n
	}
}

// Where the fields of a function's record stand, in bytes from its beginning.
const (
	fieldStack    = 16 // of the table that the stack is read by
	fieldFile     = 20
	fieldLine     = 24
	fieldTables   = 28 // how many tables follow
	fieldStart    = 36 // the first line
	recordLength  = 44
	mostTables    = 8
	mostFunctions = 1 << 20
)

// stripTable takes files and lines out of the one function table in memory.
func stripTable(memory []byte) error {
	t, err := findTable(memory)
	if err != nil {
		return err
	}
	kept := make([]bool, len(t.tables))
	for i := range t.functions {
		record, err := t.record(i)
		if err != nil {
			return err
		}
		n := int(word(record[fieldTables:]))
		if n > mostTables || recordLength+4*n > len(record) {
			return fmt.Errorf("strip lines: function %d has %d tables", i, n)
		}
		clear(record[fieldFile : fieldLine+4])
		clear(record[fieldStart : fieldStart+4])
		if err := t.keep(kept, int(word(record[fieldStack:]))); err != nil {
			return err
		}
		for j := range n {
			if err := t.keep(kept, int(word(record[recordLength+4*j:]))); err != nil {
				return err
			}
		}
	}
	for i, keep := range kept {
		if !keep {
			t.tables[i] = 0
		}
	}
	clear(t.files)
	return nil
}

// A functionTable is Go's pclntab.
type functionTable struct {
	functions int
	files     []byte // units of compiling, and the names of their files
	tables    []byte // values by place in the code
	records   []byte // an index, then a record for each function
}

// findTable looks for the one table, by the head that it begins with.
func findTable(memory []byte) (functionTable, error) {
	head := []byte{0xf1, 0xff, 0xff, 0xff, 0, 0, 1, 8} // the magic, then units of 1 byte, words of 8
	at := bytes.Index(memory, head)
	if at < 0 || bytes.Contains(memory[at+1:], head) {
		return functionTable{}, errors.New("strip lines: found not one function table as Go 1.20 to 1.26 write it")
	}
	rest := memory[at:]
	const headLength = 8 + 8*8
	if len(rest) < headLength {
		return functionTable{}, errNotWasm
	}
	field := func(i int) int { return int(binary.LittleEndian.Uint64(rest[8+8*i:]) & (1<<40 - 1)) }
	functions, files, tables, records := field(0), field(4), field(6), field(7)
	if functions < 1 || functions > mostFunctions || files < headLength || tables < files || records < tables || records+8*functions > len(rest) {
		return functionTable{}, errors.New("strip lines: the head of the function table makes no sense")
	}
	return functionTable{functions, rest[files:tables], rest[tables:records], rest[records:]}, nil
}

func word(b []byte) uint32 { return binary.LittleEndian.Uint32(b) }

// record is the record of a function, and what follows it.
func (t functionTable) record(i int) ([]byte, error) {
	at := int(word(t.records[8*i+4:]))
	if at < 8*t.functions || at+recordLength > len(t.records) {
		return nil, fmt.Errorf("strip lines: function %d lies outside the table", i)
	}
	return t.records[at:], nil
}

// keep marks the table that begins at offset. It is pairs of numbers, each as
// long as its bytes say, to a first number of nothing.
func (t functionTable) keep(kept []bool, offset int) error {
	if offset == 0 || offset < len(kept) && kept[offset] {
		return nil
	}
	for at := offset; at < len(t.tables); {
		if at > offset && t.tables[at] == 0 {
			kept[at] = true
			return nil
		}
		for range 2 {
			for more := true; more && at < len(t.tables); at++ {
				kept[at] = true
				more = t.tables[at] >= 0x80
			}
		}
	}
	return fmt.Errorf("strip lines: a table at %d does not end", offset)
}
