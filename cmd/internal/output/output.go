// Package output writes files: it is the only door by which the program does.
package output

import (
	"bytes"
	"crypto/rand"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"preflash/cmd/internal/fleet"
	"preflash/parser"
)

// File is a file to be written, and the option that names it.
type File struct{ Option, Name string }

func (f *File) String() string { return f.Option + " " + f.Name }

// Write lets render write the file, which is not touched when render fails. What
// is there already is replaced as a whole, by a rename, and only where it is a
// regular file, no link, reached through no link, and none that this run read or
// that a sheet under the root names.
func (f *File) Write(read []string, root string, render func(io.Writer) error) error {
	mode, err := f.check(read, root)
	if err != nil {
		return err
	}
	var text bytes.Buffer
	if err := render(&text); err != nil {
		return err
	}
	if err := replace(f.Name, text.Bytes(), mode); err != nil {
		return fmt.Errorf("%s: %w", f, err)
	}
	return nil
}

// check refuses a file that must not be written, and returns the mode of the
// one that is there; 0 where there is none.
func (f *File) check(read []string, root string) (fs.FileMode, error) {
	refuse := func(format string, args ...any) (fs.FileMode, error) {
		return 0, fmt.Errorf("%s %s", f, fmt.Sprintf(format, args...))
	}
	if link := linkOnTheWay(f.Name); link != "" {
		return refuse("leads through the link %s; name the place itself", link)
	}
	abs, err := filepath.Abs(f.Name)
	if err != nil {
		return 0, err
	}
	for part := range strings.SplitSeq(filepath.ToSlash(abs), "/") {
		if strings.EqualFold(part, ".git") {
			return refuse("lies in a folder of git's own; name another place")
		}
	}
	info, err := os.Lstat(f.Name)
	there := err == nil
	var mode fs.FileMode
	switch {
	case err != nil && !errors.Is(err, fs.ErrNotExist):
		return 0, err
	case there && !info.Mode().IsRegular():
		return refuse("is there already and is no regular file; name another file")
	case there && info.Mode()&0o200 == 0:
		return refuse("is there already and write-protected; name another file")
	case there:
		mode = info.Mode().Perm()
	}
	for _, name := range read {
		other, err := os.Stat(filepath.FromSlash(name))
		if there && err == nil && os.SameFile(info, other) {
			return refuse("is a file that was read; Preflash never writes to a configuration or a sheet")
		}
	}
	if !there && !namedAsInput(f.Name) {
		return 0, nil
	}
	switch sheet, err := fleet.NamedBy(f.Name, root); {
	case err != nil:
		return 0, fmt.Errorf("%s: %w", f, err)
	case sheet != "":
		return refuse("is a file that %s reads; Preflash never writes to a configuration or a sheet", sheet)
	case there && namedAsInput(f.Name):
		return refuse("is there already and may be one, by its name: Preflash never writes to a " +
			"configuration or a sheet; name another file")
	}
	return mode, nil
}

// CheckSheet refuses a sheet that is not to be gone on with. One may that is a
// regular file of the user's own, reached through no link.
func CheckSheet(name string) error {
	_, err := sheetMode(name)
	return err
}

// ReplaceSheet puts a text in place of a sheet that CheckSheet does not refuse.
func ReplaceSheet(name, text string) error {
	mode, err := sheetMode(name)
	if err != nil {
		return err
	}
	return replace(name, []byte(text), mode)
}

func sheetMode(name string) (fs.FileMode, error) {
	refuse := func(text string) (fs.FileMode, error) { return 0, fmt.Errorf("%s %s", name, text) }
	if link := linkOnTheWay(name); link != "" {
		return refuse("leads through the link " + link + "; name the place itself")
	}
	info, err := os.Lstat(name)
	switch {
	case err != nil:
		return 0, err
	case !info.Mode().IsRegular() || !strings.EqualFold(filepath.Ext(name), ".toml"):
		return refuse("is there already and is no sheet; name a new file")
	case info.Mode()&0o200 == 0:
		return refuse("is write-protected")
	}
	return info.Mode().Perm(), nil
}

// linkOnTheWay returns the first link on a relative path, or below the working
// directory on an absolute one: a pull request can bring those.
func linkOnTheWay(name string) string {
	if filepath.IsAbs(name) {
		wd, err := os.Getwd()
		if err != nil {
			return ""
		}
		if name, err = filepath.Rel(wd, name); err != nil || !filepath.IsLocal(name) {
			name = "" // elsewhere: the user's own folders
		}
	}
	way := ""
	for part := range strings.SplitSeq(filepath.ToSlash(name), "/") {
		way = filepath.Join(way, part)
		if info, err := os.Lstat(way); err == nil && info.Mode()&fs.ModeSymlink != 0 {
			return filepath.ToSlash(way)
		}
	}
	return ""
}

// replace puts text in place of a file, or makes it: through a new file beside
// it, so that nobody meets half a text and nothing is written through a link.
func replace(name string, text []byte, mode fs.FileMode) (err error) {
	temp := filepath.Join(filepath.Dir(name), ".preflash-"+rand.Text())
	file, err := os.OpenFile(temp, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
	if err != nil {
		return fmt.Errorf("its folder takes no new file: %w", err)
	}
	defer func() {
		if err != nil {
			_ = os.Remove(temp) // the first error is the one to tell
		}
	}()
	_, err = file.Write(text)
	if mode != 0 {
		err = errors.Join(err, file.Chmod(mode))
	}
	if err = errors.Join(err, file.Close()); err != nil {
		return err
	}
	return os.Rename(temp, name)
}

// namedAsInput reports whether a file is called as configurations and sheets
// are.
func namedAsInput(name string) bool {
	return parser.NamedAsConfiguration(name) || strings.EqualFold(filepath.Ext(name), ".toml")
}
