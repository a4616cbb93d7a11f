package explain

import (
	"errors"
	"strconv"
	"strings"
)

// A Ratio is a proportion in parts per million: 200,000 is a fifth.
type Ratio int64

// Common ratios.
const (
	PartPerMillion Ratio = 1
	Percent              = 10_000 * PartPerMillion
	Whole                = 100 * Percent
)

// ErrRatio is what [ParseRatio] returns for text that is no ratio.
var ErrRatio = errors.New("not a ratio: a number in percent, such as 20 % or 12.5 %")

// maxRatioDigits keeps a ratio well inside its type.
const maxRatioDigits = 9

// ParseRatio reads a ratio in percent: "20 %", "12.5%", "12,5 %". The sign must
// be there, since 20 alone may be a fifth or twenty times, and a comma may not
// stand before exactly three digits. At most four decimals are read, which is one
// part per million; nothing is rounded.
func ParseRatio(s string) (Ratio, error) {
	const spaces = " \t\u00a0\u202f"
	number, ok := strings.CutSuffix(strings.Trim(s, spaces), "%")
	number = strings.Trim(number, spaces)
	_, thousandths, comma := strings.Cut(number, ",")
	whole, decimals, pointed := strings.Cut(strings.Replace(number, ",", ".", 1), ".")
	digits := whole + decimals + "0000"[min(len(decimals), 4):]
	switch {
	case !ok, whole == "", pointed && decimals == "", len(decimals) > 4, len(whole) > maxRatioDigits:
		return 0, ErrRatio
	case comma && len(thousandths) == 3: // 1,250 may be one and a quarter or more than a thousand
		return 0, ErrRatio
	case strings.Trim(digits, "0123456789") != "":
		return 0, ErrRatio
	}
	n, err := strconv.ParseInt(digits, 10, 64)
	if err != nil {
		return 0, ErrRatio
	}
	return Ratio(n), nil
}

// String writes the ratio in percent, exactly: "15.3846 %".
func (r Ratio) String() string { return string(append(appendFixed(nil, int64(r), 4), " %"...)) }

// MarshalText writes the ratio as String does.
func (r Ratio) MarshalText() ([]byte, error) { return r.AppendText(nil) }

// AppendText appends what MarshalText returns.
func (r Ratio) AppendText(dst []byte) ([]byte, error) { return append(dst, r.String()...), nil }

// UnmarshalText reads the ratio as [ParseRatio] does.
func (r *Ratio) UnmarshalText(text []byte) error {
	v, err := ParseRatio(string(text))
	if err == nil {
		*r = v
	}
	return err
}
