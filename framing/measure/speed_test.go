//go:build speed

package measure_test

import (
	"testing"
	"time"

	"github.com/fairmiter/fairmiter/framing/internal/speed"
	"github.com/fairmiter/fairmiter/framing/measure"
)

func TestSpeed(t *testing.T) {
	const limit = 100 * time.Nanosecond
	var cases []speed.Case
	for name, text := range map[string]string{
		"Parse/fraction": "20 13/16",
		"Parse/metric":   "528.64 mm",
		"Parse/feet":     `1' 8 13/16"`,
		"Parse/vulgar":   "20 ½",
	} {
		if _, err := measure.Parse(text, measure.Inches); err != nil {
			t.Fatal(err) // a refusal would be timed in its place
		}
		cases = append(cases, speed.Case{Name: name, Limit: limit, Do: func() {
			measure.Parse(text, measure.Inches)
		}})
	}
	buf := make([]byte, 0, 64)
	for name, f := range map[string]measure.Format{
		"Append/exact":    {},
		"Append/fraction": {Style: measure.Fraction, Step: measure.Inch / 16},
		"Append/feet":     {Style: measure.FeetInches, Step: measure.Inch / 16},
		"Append/decimal":  {Style: measure.DecimalInch, Step: measure.Inch / 1000},
		"Append/metric":   {Style: measure.Metric, Step: measure.Millimeter / 10},
	} {
		const length = 20*measure.Inch + 13*measure.Inch/16
		cases = append(cases, speed.Case{Name: name, Limit: limit, Do: func() {
			f.Append(buf, length, measure.Nearest)
		}})
	}
	speed.Run(t, "framing/measure", cases)
}
