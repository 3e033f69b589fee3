package output

import (
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// What is written replaces a plain file as a whole, and nothing else.
func TestWrite(t *testing.T) {
	t.Chdir(t.TempDir())
	for _, name := range []string{"here.txt", "input.cfg"} {
		if err := os.WriteFile(name, []byte("as it was"), 0o640); err != nil {
			t.Fatal(err)
		}
	}
	for _, dir := range []string{"folder", ".git", "real"} {
		if err := os.Mkdir(dir, 0o750); err != nil {
			t.Fatal(err)
		}
	}
	links := os.Symlink("real", "link") == nil
	failed := errors.New("no text")
	for _, c := range []struct {
		name string
		err  error  // of the text
		says string // "" where it is written
	}{
		{name: "new.txt"},
		{name: "here.txt"},
		{name: "gone.txt", err: failed, says: "no text"},
		{name: "folder", says: "--output folder is there already and is no regular file"},
		{name: ".git/hook", says: "in a folder of git's own"},
		{name: "link/x.txt", says: "leads through the link link"},
		{name: "input.cfg", says: "is a file that was read"},
		{name: "none/x.txt", says: "its folder takes no new file"},
	} {
		if strings.HasPrefix(c.name, "link") && !links {
			continue // the system makes none
		}
		f := File{Option: "--output", Name: filepath.FromSlash(c.name)}
		err := f.Write([]string{"input.cfg"}, "", func(w io.Writer) error {
			return errors.Join(c.err, func() error { _, err := io.WriteString(w, "new"); return err }())
		})
		text, _ := os.ReadFile(f.Name) // nothing where there is no such file
		switch {
		case c.says == "" && (err != nil || string(text) != "new"):
			t.Errorf("%s: %v, and it holds %q", c.name, err, text)
		case c.says != "" && (err == nil || !strings.Contains(err.Error(), c.says) || string(text) == "new"):
			t.Errorf("%s: %v, want %q; it holds %q", c.name, err, c.says, text)
		}
	}
	if left, _ := filepath.Glob(".preflash-*"); left != nil {
		t.Errorf("left behind: %q", left)
	}
}

// A sheet that is gone on with is a plain file of its own, by name too.
func TestReplaceSheet(t *testing.T) {
	t.Chdir(t.TempDir())
	for name, says := range map[string]string{"swap.toml": "", "notes.txt": "is no sheet",
		"none.toml": "no such file"} {
		if says != "no such file" {
			if err := os.WriteFile(name, nil, 0o640); err != nil {
				t.Fatal(err)
			}
		}
		if err := CheckSheet(name); (err == nil) != (says == "") || err != nil && says != "no such file" &&
			!strings.Contains(err.Error(), says) {
			t.Errorf("%s: %v, want %q", name, err, says)
		}
		if err := ReplaceSheet(name, "text"); (err == nil) != (says == "") {
			t.Errorf("%s: %v", name, err)
		}
	}
	if text, err := os.ReadFile("swap.toml"); string(text) != "text" {
		t.Errorf("the sheet holds %q: %v", text, err)
	}
}
