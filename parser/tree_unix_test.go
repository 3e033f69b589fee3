//go:build unix

package parser

import (
	"path/filepath"
	"strings"
	"syscall"
	"testing"
)

// A FIFO without a writer would block whoever opens it as a file.
func TestOpenRefusesFIFO(t *testing.T) {
	tree, dir := newTree(t, nil)
	if err := syscall.Mkfifo(filepath.Join(dir, "pipe.h"), 0o666); err != nil {
		t.Fatal(err)
	}
	if _, err := tree.Open("pipe.h"); err == nil || !strings.Contains(err.Error(), "not a regular file") {
		t.Errorf("Open of a FIFO = %v, want an error that says so", err)
	}
}
