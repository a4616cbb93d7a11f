//go:build unix

package browser

import (
	"os/exec"
	"syscall"
)

// together makes a program and all that it starts one group, to be ended as one.
func together(c *exec.Cmd) { c.SysProcAttr = &syscall.SysProcAttr{Setpgid: true} }

// end ends a group.
func end(c *exec.Cmd) error { return syscall.Kill(-c.Process.Pid, syscall.SIGKILL) }
