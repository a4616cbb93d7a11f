// Package browser drives the browsers of this machine for the tests of the page:
// Chromium through chromedriver, Firefox through Marionette and WebKitGTK through
// WebKitWebDriver, without a window on a screen. All three speak the commands of
// W3C WebDriver; only how a command travels differs.
package browser

import (
	"encoding/base64"
	"encoding/json"
	"errors"
	"fmt"
	"time"
)

// A Driver is one running browser with one page.
type Driver interface {
	// Navigate opens a page and waits until it is loaded.
	Navigate(url string) error
	// Eval runs the body of a function in the page and returns what it returns:
	// numbers as float64, lists as []any, objects as map[string]any. In it
	// arguments[0] is the first of args. What the page's scripts declare with let
	// and const is not seen in every engine; functions and globalThis are.
	Eval(script string, args ...any) (any, error)
	// EvalAsync is Eval for a script that calls its last argument with the result,
	// sooner or later.
	EvalAsync(script string, args ...any) (any, error)
	// Wait asks the page every 20 ms until the expression is true, or it is an
	// error after some time.
	Wait(expression string, atMost time.Duration) error
	// Click clicks in the middle of the first element that a CSS selector finds.
	Click(css string) error
	// Type types text as keys into the first element that css finds; see the Key
	// constants.
	Type(css, text string) error
	// Back goes back in the history.
	Back() error
	// Resize makes the page so large, in CSS pixels.
	Resize(width, height int) error
	// Screenshot is what one sees of the page, as PNG.
	Screenshot() ([]byte, error)
	// Slow slows the processor down so many times; only Chromium can.
	Slow(times float64) error
	// Close ends the browser and all that was started with it; once is enough.
	Close() error
}

// Keys that are no character, for [Driver.Type] (WebDriver, 17.4.2).
const (
	KeyBackspace = "\ue003"
	KeyTab       = "\ue004"
	KeyEnter     = "\ue007"
	KeyShift     = "\ue008"
	KeyEscape    = "\ue00c"
	KeyEnd       = "\ue010"
	KeyHome      = "\ue011"
	KeyLeft      = "\ue012"
	KeyUp        = "\ue013"
	KeyRight     = "\ue014"
	KeyDown      = "\ue015"
	KeyDelete    = "\ue017"
)

// ErrCannot is what an engine says of something that only another can.
var ErrCannot = errors.New("this engine cannot do that")

// session is a Driver over any transport.
type session struct {
	wire   transport
	engine Engine
	mobile bool
	closed bool
}

// A transport takes commands to a browser.
type transport interface {
	// do sends a command and returns the value of its answer.
	do(c command, params params) (json.RawMessage, error)
	close() error
}

type params map[string]any

// value sends a command and reads the value of its answer as a T.
func value[T any](t transport, c command, p params) (T, error) {
	var v T
	data, err := t.do(c, p)
	if err == nil && len(data) > 0 {
		err = json.Unmarshal(data, &v)
	}
	if err != nil {
		err = fmt.Errorf("%s: %w", c.name, err)
	}
	return v, err
}

func (s *session) Navigate(url string) error {
	_, err := value[any](s.wire, navigate, params{"url": url})
	return err
}

func (s *session) Eval(script string, args ...any) (any, error) {
	return value[any](s.wire, execute, params{"script": script, "args": list(args)})
}

func (s *session) EvalAsync(script string, args ...any) (any, error) {
	return value[any](s.wire, executeAsync, params{"script": script, "args": list(args)})
}

// list is args, and never null.
func list(args []any) []any { return append([]any{}, args...) }

func (s *session) Wait(expression string, atMost time.Duration) error {
	end := time.Now().Add(atMost)
	for {
		is, err := s.Eval("return !!(" + expression + ")")
		if is == true {
			return nil
		}
		if time.Now().After(end) {
			return fmt.Errorf("%s did not come true in %v (%v)", expression, atMost, err)
		}
		time.Sleep(20 * time.Millisecond)
	}
}

// element finds the first element of a selector.
func (s *session) element(css string) (string, error) {
	found, err := value[map[string]string](s.wire, findElement, params{"using": "css selector", "value": css})
	if err != nil {
		return "", fmt.Errorf("%s: %w", css, err)
	}
	for _, id := range found { // one, under a name that the standard fixes
		return id, nil
	}
	return "", fmt.Errorf("%s: no element", css)
}

func (s *session) Click(css string) error {
	id, err := s.element(css)
	if err != nil {
		return err
	}
	_, err = value[any](s.wire, clickElement, params{"id": id})
	return err
}

func (s *session) Type(css, text string) error {
	id, err := s.element(css)
	if err != nil {
		return err
	}
	_, err = value[any](s.wire, typeKeys, params{"id": id, "text": text})
	return err
}

func (s *session) Back() error {
	_, err := value[any](s.wire, back, params{})
	return err
}

func (s *session) Resize(width, height int) error {
	if s.mobile {
		return s.emulate(width, height)
	}
	// The window first, then by what its page lacks.
	set := func(w, h int) error {
		_, err := value[any](s.wire, windowRect, params{"width": w, "height": h})
		return err
	}
	if err := set(width, height); err != nil {
		return err
	}
	for range 10 {
		inner, err := s.Eval("return [innerWidth, innerHeight, outerWidth, outerHeight]")
		if err != nil {
			return err
		}
		n, ok := inner.([]any)
		if !ok || len(n) != 4 {
			return fmt.Errorf("the page's size is %v", inner)
		}
		w, h := int(n[0].(float64)), int(n[1].(float64))
		if w == width && h == height {
			return nil
		}
		if err := set(int(n[2].(float64))+width-w, int(n[3].(float64))+height-h); err != nil {
			return err
		}
		time.Sleep(50 * time.Millisecond)
	}
	return fmt.Errorf("the page cannot be made %d x %d", width, height)
}

// emulate makes Chromium show the page as a phone does.
func (s *session) emulate(width, height int) error {
	return s.devtools("Emulation.setDeviceMetricsOverride",
		params{"width": width, "height": height, "deviceScaleFactor": 2, "mobile": true})
}

func (s *session) Slow(times float64) error {
	return s.devtools("Emulation.setCPUThrottlingRate", params{"rate": times})
}

// devtools sends a command of Chromium's own.
func (s *session) devtools(name string, p params) error {
	if s.engine != Chromium {
		return fmt.Errorf("%s: %w", name, ErrCannot)
	}
	_, err := value[any](s.wire, chromium, params{"cmd": name, "params": p})
	return err
}

func (s *session) Screenshot() ([]byte, error) {
	text, err := value[string](s.wire, screenshot, params{})
	if err != nil {
		return nil, err
	}
	return base64.StdEncoding.DecodeString(text)
}

func (s *session) Close() error {
	if s.closed {
		return nil
	}
	s.closed = true
	return s.wire.close()
}
