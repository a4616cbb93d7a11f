// Site builds the page and serves it to this machine, or writes it down for any
// host that serves files.
//
//	go run ./site                  serves it and prints its address
//	go run ./site -out DIR         writes its files into DIR
//
// The page keeps the orders in the browser, apart for each address; so it is
// always served at the same port, unless -port says another.
package main

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"io"
	"io/fs"
	"net"
	"net/http"
	"os"
	"os/signal"
	"path/filepath"
	"strconv"
	"strings"
	"time"

	"github.com/fairmiter/fairmiter/site/internal/build"
	"github.com/fairmiter/fairmiter/site/internal/serve"
)

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	from, err := page()
	if err == nil {
		err = run(ctx, from, os.Args[1:], os.Stdout)
	}
	if err != nil && !errors.Is(err, flag.ErrHelp) {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}

// run is the program on a given page and arguments, until ctx ends.
func run(ctx context.Context, from fs.FS, args []string, out io.Writer) error {
	flags := flag.NewFlagSet("site", flag.ContinueOnError)
	dir := flags.String("out", "", "write the files into this folder and end")
	port := flags.Int("port", 8080, "serve at this port of 127.0.0.1; 0 takes a free one")
	frames := flags.String("frames", serve.AnySite, "the sites that may show the page in a frame, as in frame-ancestors of a Content Security Policy")
	if err := flags.Parse(args); err != nil {
		return err
	}
	if flags.NArg() > 0 {
		return fmt.Errorf("nothing is expected behind the flags; given %q", flags.Args())
	}
	if strings.ContainsAny(*frames, ";,\r\n") || strings.TrimSpace(*frames) == "" {
		return fmt.Errorf("-frames: given %q; accepted: *, 'none', 'self', or addresses with spaces between them", *frames)
	}
	if *dir != "" {
		files, err := build.Site(ctx, from)
		if err != nil {
			return err
		}
		return write(*dir, files, out)
	}

	// The port first: one that is taken should not cost a build.
	listener, err := (&net.ListenConfig{}).Listen(ctx, "tcp", net.JoinHostPort("127.0.0.1", strconv.Itoa(*port)))
	if err != nil {
		return fmt.Errorf("%w; -port 0 takes a free one", err)
	}
	defer listener.Close()
	files, err := build.Site(ctx, from)
	if err != nil {
		return err
	}
	fmt.Fprintf(out, "Fairmiter is at http://%s/\nCtrl-C ends it.\n", listener.Addr())
	server := &http.Server{Handler: serve.Handler(files, *frames), ReadHeaderTimeout: 10 * time.Second}
	end := context.AfterFunc(ctx, func() { server.Close() })
	defer end()
	if err := server.Serve(listener); !errors.Is(err, http.ErrServerClosed) {
		return err
	}
	return nil
}

// write puts the files into dir, each that gets smaller also as NAME.gz for hosts
// that send such. It does not write into a folder that holds anything else than a
// page written before, whose files go.
func write(dir string, files build.Files, out io.Writer) error {
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return err
	}
	if err := clearPage(dir); err != nil {
		return err
	}
	total := 0
	for _, name := range files.Names() {
		data := files[name]
		if err := writeFile(dir, name, data); err != nil {
			return err
		}
		total += len(data)
		if small := serve.Compress(data); build.Compresses(name) && len(small) < len(data) {
			if err := writeFile(dir, name+".gz", small); err != nil {
				return err
			}
		}
	}
	_, err := fmt.Fprintf(out, "%d files, %d kB, in %s\n", len(files), total/1000, dir)
	return err
}

func writeFile(dir, name string, data []byte) error {
	name = filepath.Join(dir, filepath.FromSlash(name))
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		return err
	}
	return os.WriteFile(name, data, 0o644)
}

// clearPage removes the page that its list says was written to dir. It is an
// error where there is no list and yet a file.
func clearPage(dir string) error {
	entries, err := os.ReadDir(dir)
	if err != nil || len(entries) == 0 {
		return err
	}
	data, err := os.ReadFile(filepath.Join(dir, build.ListName))
	if errors.Is(err, fs.ErrNotExist) {
		return fmt.Errorf("%s holds other files; give an empty folder", dir)
	} else if err != nil {
		return err
	}
	var list build.List
	d := json.NewDecoder(bytes.NewReader(data))
	if err := d.Decode(&list); err != nil || list.Version == "" {
		return fmt.Errorf("%s in %s is not one of ours; give an empty folder", build.ListName, dir)
	}
	for _, name := range append(list.Files, build.ListName, build.WorkerName) {
		if !filepath.IsLocal(filepath.FromSlash(name)) {
			return fmt.Errorf("%s in %s names a file elsewhere: %q", build.ListName, dir, name)
		}
		for _, n := range []string{name, name + ".gz"} {
			if err := os.Remove(filepath.Join(dir, filepath.FromSlash(n))); err != nil && !errors.Is(err, fs.ErrNotExist) {
				return err
			}
		}
	}
	return nil
}
