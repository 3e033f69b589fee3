//go:build unix

package fleet

import (
	"os"
	"slices"
	"strings"
	"syscall"
	"testing"
)

func fifo(t *testing.T, name string) {
	t.Helper()
	_ = os.Remove(name)
	if err := syscall.Mkfifo(name, 0o666); err != nil {
		t.Fatal(err)
	}
}

// Git would wait without end for somebody to write into what it reads.
func TestChangedSinceWaitsForNothing(t *testing.T) {
	for _, tt := range []struct {
		name   string
		attack func(t *testing.T)
	}{
		{"a configuration that includes a FIFO", func(t *testing.T) {
			fifo(t, ".git/wait")
			put(t, ".git/config", "[core]\n\trepositoryformatversion = 0\n[include]\n\tpath = wait\n")
		}},
		{"a configuration that is a FIFO", func(t *testing.T) { fifo(t, ".git/config") }},
		{"an index that is a FIFO", func(t *testing.T) { fifo(t, ".git/index") }},
		{"attributes that are a FIFO", func(t *testing.T) { fifo(t, ".git/info/attributes") }},
		{"packed refs that are a FIFO", func(t *testing.T) { fifo(t, ".git/packed-refs") }},
		{"shallow commits in a FIFO", func(t *testing.T) { fifo(t, ".git/shallow") }},
	} {
		t.Run(tt.name, func(t *testing.T) {
			onePrinter(t, "sha1")
			tt.attack(t)
			put(t, "a/printer.cfg", healthySections+"# more\n")
			if got := checked(t, "HEAD"); !slices.Equal(got, []string{"a"}) {
				t.Errorf("checks %q", got)
			}
		})
	}
}

// What git must read may be a FIFO all the same: then the time limit ends it.
func TestChangedSinceEndsWaiting(t *testing.T) {
	onePrinter(t, "sha1")
	slow(t)
	fifo(t, ".git/objects/info/alternates")
	got := problems(t, "HEAD")
	if len(got) != 1 || !strings.Contains(got[0], "did not answer within 300ms") {
		t.Errorf("problems %q", got)
	}
	remove(t, ".git/objects/info/alternates")
	fifo(t, ".git/HEAD")
	demandProblem(t, "HEAD", "HEAD")
}

func TestChangedSinceOfAnotherOwner(t *testing.T) {
	if os.Geteuid() != 0 {
		t.Skip("only root can give a folder away")
	}
	onePrinter(t, "sha1")
	if err := os.Lchown(".git", 12345, -1); err != nil {
		t.Skip(err)
	}
	demandProblem(t, "HEAD", "belongs to another user")
	t.Setenv("SUDO_UID", "12345")
	if got := checked(t, "HEAD"); got != nil {
		t.Errorf("checks %q", got)
	}
}
