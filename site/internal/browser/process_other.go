//go:build !unix

package browser

import "os/exec"

func together(*exec.Cmd) {}

func end(c *exec.Cmd) error { return c.Process.Kill() }
