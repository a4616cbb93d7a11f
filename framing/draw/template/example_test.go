package template_test

import (
	"fmt"
	"strings"

	"github.com/fairmiter/fairmiter/framing/draw/template"
	"github.com/fairmiter/fairmiter/framing/measure"
)

// A strip to mark two rings and the hook between them through.
func Example() {
	const in = measure.Inch
	t, err := template.HangerStrip(16*in, 1*in,
		template.Place{At: 3 * in, Word: "ring"}, template.Place{At: 8 * in, Word: "hook"}, template.Place{At: 13 * in, Word: "ring"})
	if err != nil {
		fmt.Println(err)
		return
	}
	t.Title = "Hangers of the large oak frame"
	svg, err := t.SVG()
	if err != nil {
		fmt.Println(err)
		return
	}
	first, _, _ := strings.Cut(string(svg), "\n")
	fmt.Println(first)
	// Output:
	// <svg xmlns="http://www.w3.org/2000/svg" width="416.4mm" height="66.0667mm" viewBox="-5 -30.4 416.4 66.0667">
}
