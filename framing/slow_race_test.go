//go:build race

package framing_test

func init() { slow = true }
