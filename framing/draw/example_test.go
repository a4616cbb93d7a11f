package draw_test

import (
	"fmt"
	"strings"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/draw"
)

// The numbers on a drawing are those of the plan, each with its place in it.
func Example() {
	plan, err := framing.Work(framing.Sample())
	if err != nil {
		fmt.Println(err)
		return
	}
	tags := strings.NewReplacer(`<tspan class="frac">`, "", "</tspan>", "")
	svg := draw.SVG(plan, 0, draw.Front, draw.Options{})
	for at := range strings.SplitSeq(svg, `data-path="`) {
		place, rest, found := strings.Cut(at, `"`)
		if _, rest, ok := strings.Cut(rest, ">"); ok && found && strings.Contains(place, "/frame/") {
			number, _, _ := strings.Cut(rest, "</text>")
			number = tags.Replace(number)
			fmt.Println(number, place)
		}
	}
	// Output:
	// 1 1/8 /order/pieces/0/frame/face
	// 14 /pieces/0/frame/sight/width
	// 16 1/4 /pieces/0/frame/outside/width
	// 18 1/4 /pieces/0/frame/sight/height
	// 20 1/2 /pieces/0/frame/outside/height
}
