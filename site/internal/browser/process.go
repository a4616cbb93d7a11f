package browser

import (
	"bytes"
	"fmt"
	"net"
	"os"
	"os/exec"
	"sync"
	"time"
)

// A process is a program that was started.
type process struct {
	cmd  *exec.Cmd
	out  tail
	done chan struct{} // closed when it has ended
	once sync.Once
}

func start(env []string, name string, args ...string) (*process, error) {
	p := &process{cmd: exec.Command(name, args...), done: make(chan struct{})}
	p.cmd.Env = append(os.Environ(), env...)
	p.cmd.Stdout, p.cmd.Stderr = &p.out, &p.out
	p.cmd.WaitDelay = time.Second
	together(p.cmd)
	if err := p.cmd.Start(); err != nil {
		return nil, err
	}
	go func() {
		p.cmd.Wait() // how it ended, its output says
		close(p.done)
	}()
	return p, nil
}

// stop ends the program and all that it started. One that has ended by itself may
// have left others.
func (p *process) stop() error {
	if p == nil {
		return nil
	}
	p.once.Do(func() {
		select {
		case <-p.done:
		case <-time.After(500 * time.Millisecond): // of its own will
		}
		end(p.cmd)
		select {
		case <-p.done:
		case <-time.After(5 * time.Second):
		}
	})
	select {
	case <-p.done:
		return nil
	default:
		return fmt.Errorf("%s does not end", p.cmd.Path)
	}
}

func (p *process) output() string { return p.out.String() }

// patiently tries until it works or the program has ended.
func patiently(try func() error, p *process) error {
	for deadline := time.Now().Add(30 * time.Second); ; time.Sleep(20 * time.Millisecond) {
		err := try()
		if err == nil {
			return nil
		}
		select {
		case <-p.done:
			return fmt.Errorf("%s ended:\n%s", p.cmd.Path, p.output())
		default:
		}
		if time.Now().After(deadline) {
			return fmt.Errorf("%s does not answer: %w\n%s", p.cmd.Path, err, p.output())
		}
	}
}

// A tail keeps the end of what a program prints.
type tail struct {
	mu sync.Mutex
	b  bytes.Buffer
}

func (t *tail) Write(data []byte) (int, error) {
	t.mu.Lock()
	defer t.mu.Unlock()
	t.b.Write(data)
	if over := t.b.Len() - 8000; over > 0 {
		t.b.Next(over)
	}
	return len(data), nil
}

func (t *tail) String() string {
	t.mu.Lock()
	defer t.mu.Unlock()
	return t.b.String()
}

// freePort is a port that nothing listens at. Another program may take it before
// it is used, but hardly does.
func freePort() (int, error) {
	l, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		return 0, err
	}
	defer l.Close()
	return l.Addr().(*net.TCPAddr).Port, nil
}
