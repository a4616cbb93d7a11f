package template

import "github.com/fairmiter/fairmiter/framing/measure"

// wrap parts text into lines that are no wider than most, at spaces where there are
// any.
func wrap(text []byte, height, most measure.Length) [][]byte {
	var lines [][]byte
	for len(text) > 0 {
		end, space := 0, -1
		var sum measure.Length
		for end < len(text) {
			if text[end] == ' ' {
				space = end
			}
			sum += width(text[end:end+1], height)
			if sum > most && end > 0 {
				break
			}
			end++
		}
		rest := end
		if end < len(text) && space > 0 {
			end, rest = space, space+1
		}
		lines = append(lines, text[:end])
		text = text[rest:]
	}
	return lines
}

// cut is text, shortened by an ellipsis where it is wider than most.
func cut(text []byte, height, most measure.Length) []byte {
	if width(text, height) <= most {
		return text
	}
	const ellipsis = 0x85
	for len(text) > 0 && width(text, height)+width([]byte{ellipsis}, height) > most {
		text = text[:len(text)-1]
	}
	return append(text[:len(text):len(text)], ellipsis)
}
