// Shapes works frames that are no plain rectangles and prints their work tickets: a
// mirror with eight sides, a canted box, a frame with a wide bottom rail and a case
// with three sides.
//
//	go run ./examples/shapes [-out DIR]
//
// With a folder, every piece is drawn there in all views, as SVG.
package main

import (
	"flag"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/draw"
	"github.com/fairmiter/fairmiter/framing/ticket"
)

func main() {
	if err := run(os.Args[1:], os.Stdout); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}

// run is the program on given arguments.
func run(args []string, out io.Writer) error {
	flags := flag.NewFlagSet("shapes", flag.ContinueOnError)
	folder := flags.String("out", "", "draw the pieces, as SVG files in this folder")
	if err := flags.Parse(args); err != nil {
		return err
	}
	if flags.NArg() > 0 {
		return fmt.Errorf("the pieces are the program's own: given %q", flags.Args())
	}
	plan, err := framing.Work(order())
	if err != nil {
		return err
	}
	if _, err := io.WriteString(out, ticket.Text(plan, ticket.Options{})); err != nil {
		return err
	}
	if *folder == "" {
		return nil
	}
	return drawings(plan, *folder)
}

// drawings writes every view of every piece into a folder, which it makes.
func drawings(plan framing.Plan, folder string) error {
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return err
	}
	for i, piece := range plan.Pieces {
		name := strings.ReplaceAll(piece.Name, " ", "-")
		for _, view := range draw.View("").Choices() {
			svg := draw.SVG(plan, i, draw.View(view), draw.Options{})
			if err := os.WriteFile(filepath.Join(folder, name+"-"+view+".svg"), []byte(svg), 0o644); err != nil {
				return err
			}
		}
	}
	return nil
}
