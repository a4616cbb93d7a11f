package browser

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"net/http"
	"strings"
	"time"
)

// webdriver is the transport over HTTP.
type webdriver struct {
	address string // of the driver, then of the session
	client  *http.Client
	driver  *process
	cleanup func() error
}

// connect makes a session with the driver that was started at address, as soon
// as it answers.
func (d *webdriver) connect(address string, capabilities any) error {
	d.client = &http.Client{Timeout: time.Minute, Transport: &http.Transport{}} // no proxy on the way
	d.address = address
	if err := patiently(func() error {
		r, err := d.client.Get(address + "/status")
		if err == nil {
			r.Body.Close()
		}
		return err
	}, d.driver); err != nil {
		return err
	}
	d.address = address + "/session"
	made, err := value[struct{ SessionID string }](d, newSession,
		params{"capabilities": map[string]any{"alwaysMatch": capabilities}})
	if err != nil {
		return fmt.Errorf("%w\n%s", err, d.driver.output())
	}
	if made.SessionID == "" {
		return errors.New("the driver gave the session no name")
	}
	d.address += "/" + made.SessionID
	return nil
}

func (d *webdriver) do(c command, p params) (json.RawMessage, error) {
	path := c.path
	if id, ok := p["id"].(string); ok && strings.Contains(path, "{id}") {
		path = strings.ReplaceAll(path, "{id}", id)
	}
	var body io.Reader
	if c.method == http.MethodPost {
		data, err := json.Marshal(p)
		if err != nil {
			return nil, err
		}
		body = bytes.NewReader(data)
	}
	request, err := http.NewRequest(c.method, d.address+path, body)
	if err != nil {
		return nil, err
	}
	if body != nil {
		request.Header.Set("Content-Type", "application/json; charset=utf-8")
	}
	response, err := d.client.Do(request)
	if err != nil {
		return nil, err
	}
	defer response.Body.Close()
	var answer struct{ Value json.RawMessage }
	if err := json.NewDecoder(response.Body).Decode(&answer); err != nil {
		return nil, fmt.Errorf("%s: %w", response.Status, err)
	}
	if response.StatusCode != http.StatusOK {
		var fault fault
		if err := json.Unmarshal(answer.Value, &fault); err != nil {
			return nil, errors.New(response.Status)
		}
		return nil, fault
	}
	return answer.Value, nil
}

func (d *webdriver) close() error {
	var err error
	if d.address != "" && d.client != nil {
		_, err = d.do(deleteAll, nil)
	}
	return errors.Join(err, d.driver.stop(), d.cleanup())
}

// A fault is what a driver says went wrong (WebDriver, 6.6).
type fault struct {
	Code    string `json:"error"`
	Message string `json:"message"`
}

func (f fault) Error() string { return f.Code + ": " + f.Message }
