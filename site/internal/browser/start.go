package browser

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
)

// An Engine is a kind of browser.
type Engine string

// The engines, in which the page must work.
const (
	Chromium Engine = "chromium"
	Firefox  Engine = "firefox"
	WebKit   Engine = "webkit"
)

// Engines lists the engines.
func Engines() []Engine { return []Engine{Chromium, Firefox, WebKit} }

// Options says how a browser starts.
type Options struct {
	// Width and Height are the page's size in CSS pixels; 1280 x 800 where one is 0.
	Width, Height int
	// Mobile shows the page as a phone does, with touch and a finer screen; only
	// Chromium can.
	Mobile bool
	// Proxy is a host and a port through which the browser reaches all but this
	// machine; see [NewWatch].
	Proxy string
	// Profile is a folder that keeps what the browser stores from one start to the
	// next; empty is a fresh one. WebKit has no other.
	Profile string
	// Dark, Contrast and Still ask pages for a dark theme, more contrast and less
	// motion; only Firefox and Chromium can.
	Dark, Contrast, Still bool
}

// programs are what an engine needs on the machine, each by its names.
var programs = map[Engine][][]string{
	Chromium: {{"chromedriver"}, {"chromium", "chromium-browser", "google-chrome"}},
	Firefox:  {{"firefox-esr", "firefox"}},
	WebKit:   {{"WebKitWebDriver"}, {"xvfb-run"}, {"MiniBrowser"}},
}

// Missing says which programs an engine lacks on this machine, and how Debian
// calls them; "" where it lacks none.
func Missing(e Engine) string {
	packages := map[Engine]string{Chromium: "chromium chromium-driver", Firefox: "firefox-esr", WebKit: "webkit2gtk-driver xvfb xauth"}
	needed, known := programs[e]
	if !known {
		return fmt.Sprintf("no engine is called %q", e)
	}
	var missing []string
	for _, names := range needed {
		if find(names) == "" {
			missing = append(missing, strings.Join(names, " or "))
		}
	}
	if missing == nil {
		return ""
	}
	return fmt.Sprintf("%s is not on this machine (Debian: apt-get install %s)", strings.Join(missing, ", "), packages[e])
}

// find is the path of the first program that is there.
func find(names []string) string {
	for _, name := range names {
		if path, err := exec.LookPath(name); err == nil {
			return path
		}
		for _, pattern := range []string{"/usr/lib/*/webkit2gtk-4.1/", "/usr/lib/*/webkit2gtk-4.0/", "/usr/libexec/webkit2gtk-4.1/"} {
			if found, _ := filepath.Glob(pattern + name); len(found) > 0 {
				return found[0]
			}
		}
	}
	return ""
}

// Start starts a browser. Whoever starts one closes it.
func Start(e Engine, o Options) (Driver, error) {
	if missing := Missing(e); missing != "" {
		return nil, fmt.Errorf("%s: %s", e, missing)
	}
	if o.Width == 0 || o.Height == 0 {
		o.Width, o.Height = 1280, 800
	}
	if o.Mobile && e != Chromium || (o.Dark || o.Contrast || o.Still || o.Profile != "") && e == WebKit {
		return nil, fmt.Errorf("%s: %+v: %w", e, o, ErrCannot)
	}
	cleanup := func() error { return nil }
	if o.Profile == "" {
		dir, err := os.MkdirTemp("", "fairmiter-"+string(e))
		if err != nil {
			return nil, err
		}
		o.Profile = dir
		cleanup = func() error { return removeAll(dir) }
	}
	starters := map[Engine]func(Options, func() error) (transport, error){Chromium: startChromium, Firefox: startFirefox, WebKit: startWebKit}
	wire, err := starters[e](o, cleanup)
	if err != nil {
		if wire != nil {
			wire.close()
		} else {
			cleanup()
		}
		return nil, fmt.Errorf("%s: %w", e, err)
	}
	s := &session{wire: wire, engine: e, mobile: o.Mobile}
	if _, err := wire.do(setTimeouts, params{"script": 30_000, "pageLoad": 30_000, "implicit": 0}); err != nil {
		s.Close()
		return nil, fmt.Errorf("%s: %w", e, err)
	}
	if err := s.Resize(o.Width, o.Height); err != nil {
		s.Close()
		return nil, fmt.Errorf("%s: %w", e, err)
	}
	return s, nil
}

// removeAll removes a folder that an ending browser may still write to.
func removeAll(dir string) error {
	err := os.RemoveAll(dir)
	for range 20 {
		if err == nil {
			break
		}
		sleep()
		err = os.RemoveAll(dir)
	}
	return err
}

func address(port int) string { return "127.0.0.1:" + strconv.Itoa(port) }
