// Ticket works an order out and prints its work ticket.
//
//	go run ./examples/ticket [-json] [-working] [-units UNITS] [-fineness STEP] [ORDER.json]
//
// Without a file it works the sample order; with "-" it reads an order from
// standard input. Problems of the order stand on the ticket and go to standard
// error, all of them, and the exit status is 1; a piece without problems is on
// the ticket all the same.
package main

import (
	"encoding/json"
	"flag"
	"fmt"
	"io"
	"os"
	"strings"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/measure"
	"github.com/fairmiter/fairmiter/framing/ticket"
)

func main() {
	if err := run(os.Args[1:], os.Stdin, os.Stdout); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}

// run is the program on given arguments and streams.
func run(args []string, in io.Reader, out io.Writer) error {
	flags := flag.NewFlagSet("ticket", flag.ContinueOnError)
	asJSON := flags.Bool("json", false, "print the plan as JSON")
	working := flags.Bool("working", false, "print how each figure came to be")
	units := flags.String("units", "", "show lengths in in, ft or mm, or as "+strings.Join(framing.As("").Choices(), ", "))
	fineness := flags.String("fineness", "", `show lengths to this step, such as "1/32 in" or "0.5 mm"`)
	if err := flags.Parse(args); err != nil {
		return err
	}
	if flags.NArg() > 1 {
		return fmt.Errorf("one order at a time: given %d files %q", flags.NArg(), flags.Args())
	}
	reading, err := read(flags.Arg(0), in)
	if err != nil {
		return err
	}
	if reading.Order.Version == 0 && len(reading.Problems) > 0 { // nothing to print
		return reading.Problems
	}
	if err := show(&reading.Order, *units, *fineness); err != nil {
		return err
	}
	plan, problems := reading.Work()
	if err := write(out, plan, *asJSON, *working); err != nil {
		return err
	}
	return problems
}

// read reads the order in the named file, "-" for standard input, "" for the
// sample.
func read(name string, in io.Reader) (framing.Reading, error) {
	var data []byte
	var err error
	switch name {
	case "":
		return framing.Reading{Order: framing.Sample()}, nil
	case "-":
		data, err = io.ReadAll(io.LimitReader(in, framing.MaxOrderBytes+1))
	default:
		data, err = os.ReadFile(name)
	}
	if err != nil {
		return framing.Reading{}, err
	}
	return framing.NewReading(data), nil
}

// manners are the short names of -units.
var manners = map[string]framing.As{"in": framing.AsFraction, "ft": framing.AsFeet, "mm": framing.AsMetric, "cm": framing.AsMetric}

// show changes how the order shows its lengths.
func show(o *framing.Order, units, fineness string) error {
	if units == "" && fineness == "" {
		return nil
	}
	if units != "" {
		as, short := manners[units]
		if !short {
			as = framing.As(units)
		}
		if as.Style() == measure.Exact {
			return fmt.Errorf("-units: given %q; accepted: in, ft, mm, %s", units, strings.Join(as.Choices(), ", "))
		}
		o.Show = framing.ShowAs(as)
	}
	if fineness != "" {
		bare := measure.Format{Style: o.Show.As.Style(), Step: o.Show.Fineness}.Unit()
		step, err := measure.Parse(fineness, bare)
		if err != nil {
			return fmt.Errorf("-fineness: %w", err)
		}
		o.Show.Fineness = step
	}
	if _, err := o.Show.Format(); err != nil {
		var steps []string
		for _, step := range measure.Steps(o.Show.As.Style()) {
			steps = append(steps, string(measure.Format{Style: o.Show.As.Style(), Step: step}.AppendExact(nil, step)))
		}
		return fmt.Errorf("-fineness: given %q; accepted: %s", fineness, strings.Join(steps, ", "))
	}
	return nil
}

// write prints the plan.
func write(out io.Writer, p framing.Plan, asJSON, working bool) error {
	if asJSON {
		text, err := json.MarshalIndent(p, "", "  ")
		if err != nil {
			return err
		}
		_, err = fmt.Fprintf(out, "%s\n", text)
		return err
	}
	_, err := io.WriteString(out, ticket.Text(p, ticket.Options{Working: working}))
	return err
}
