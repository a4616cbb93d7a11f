// Module writes the module of the page to standard output: what the size gate
// weighs.
package main

import (
	"context"
	"fmt"
	"os"

	"github.com/fairmiter/fairmiter/site/internal/build"
)

func main() {
	module, err := build.Module(context.Background())
	if err == nil {
		_, err = os.Stdout.Write(module)
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}
