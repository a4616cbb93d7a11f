// Module writes a module of the page to standard output, built with the tags that are
// its arguments: what the size gate weighs.
package main

import (
	"context"
	"fmt"
	"os"

	"github.com/fairmiter/fairmiter/site/internal/build"
)

func main() {
	module, err := build.Module(context.Background(), os.Args[1:]...)
	if err == nil {
		_, err = os.Stdout.Write(module)
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}
