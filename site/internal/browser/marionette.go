package browser

import (
	"bufio"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"net"
	"strconv"
	"sync"
	"time"
)

// marionette is Firefox's transport: messages over TCP, each a JSON list behind
// its length and a colon.
type marionette struct {
	mu      sync.Mutex
	conn    net.Conn
	in      *bufio.Reader
	last    int // the number of the last command
	firefox *process
	cleanup func() error
}

// connect makes a session with the Firefox that listens at address, as soon as
// it does.
func (m *marionette) connect(address string, capabilities any) error {
	err := patiently(func() error {
		conn, err := net.DialTimeout("tcp", address, time.Second)
		if err != nil {
			return err
		}
		m.conn, m.in = conn, bufio.NewReader(conn)
		conn.SetDeadline(time.Now().Add(5 * time.Second))
		_, err = m.receive() // it says who it is
		return err
	}, m.firefox)
	if err != nil {
		return err
	}
	_, err = value[any](m, newSession, params{"capabilities": map[string]any{"alwaysMatch": capabilities}})
	return err
}

func (m *marionette) receive() ([]byte, error) {
	text, err := m.in.ReadString(':')
	if err != nil {
		return nil, err
	}
	n, err := strconv.Atoi(text[:len(text)-1])
	if err != nil || n < 0 || n > 1<<28 {
		return nil, fmt.Errorf("a message of length %q", text)
	}
	data := make([]byte, n)
	_, err = io.ReadFull(m.in, data)
	return data, err
}

func (m *marionette) do(c command, p params) (json.RawMessage, error) {
	m.mu.Lock()
	defer m.mu.Unlock()
	if c.marionette == "" {
		return nil, ErrCannot
	}
	if m.conn == nil {
		return nil, net.ErrClosed
	}
	if p == nil {
		p = params{}
	}
	m.last++
	data, err := json.Marshal([]any{0, m.last, c.marionette, p})
	if err != nil {
		return nil, err
	}
	m.conn.SetDeadline(time.Now().Add(time.Minute))
	if _, err := fmt.Fprintf(m.conn, "%d:%s", len(data), data); err != nil {
		return nil, err
	}
	for {
		data, err := m.receive()
		if err != nil {
			return nil, err
		}
		var answer [4]json.RawMessage
		var id int
		if err := json.Unmarshal(data, &answer); err != nil {
			return nil, err
		}
		if err := json.Unmarshal(answer[1], &id); err != nil || id != m.last {
			continue // of a command that was given up
		}
		if string(answer[2]) != "null" {
			var fault fault
			if err := json.Unmarshal(answer[2], &fault); err != nil {
				return nil, err
			}
			return nil, fault
		}
		if !c.wrapped {
			return answer[3], nil
		}
		var wrapped struct{ Value json.RawMessage }
		err = json.Unmarshal(answer[3], &wrapped)
		return wrapped.Value, err
	}
}

func (m *marionette) close() error {
	var err error
	if m.conn != nil {
		_, err = m.do(deleteAll, params{"flags": []string{"eForceQuit"}})
		err = errors.Join(err, m.conn.Close())
	}
	return errors.Join(err, m.firefox.stop(), m.cleanup())
}
