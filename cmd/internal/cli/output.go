package cli

import (
	"bytes"
	"cmp"
	"crypto/rand"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strconv"
	"strings"

	"github.com/spf13/cobra"
	"golang.org/x/term"

	"preflash/cmd/internal/fleet"
	"preflash/parser"
)

// outputFlag is --output, or another option that names a file to write: the only
// places that the program writes to.
type outputFlag struct {
	file string
	name string // "" for --output
}

func (o *outputFlag) String() string { return cmp.Or(o.name, "--output") + " " + o.file }

func (o *outputFlag) add(cmd *cobra.Command) {
	cmd.Flags().StringVar(&o.file, "output", "", "write to this file instead of standard output")
}

// write lets render write to the file or to standard output. The file is
// not touched when render fails. What is there already is replaced as a whole,
// by a rename, and only where it is a regular file, no link, reached through no
// link, and none that this run read or that a sheet under the root names.
func (o *outputFlag) write(cmd *cobra.Command, read []string, render func(io.Writer) error) error {
	if o.file == "" {
		return render(cmd.OutOrStdout())
	}
	root := ""
	if f := cmd.Flags().Lookup("root"); f != nil {
		root = f.Value.String()
	}
	mode, err := o.check(read, root)
	if err != nil {
		return err
	}
	var text bytes.Buffer
	if err := render(&text); err != nil {
		return err
	}
	if err := replace(o.file, text.Bytes(), mode); err != nil {
		return fmt.Errorf("%s: %w", o, err)
	}
	return nil
}

// check refuses a file that must not be written, and returns the mode of the
// one that is there; 0 where there is none.
func (o *outputFlag) check(read []string, root string) (fs.FileMode, error) {
	refuse := func(format string, args ...any) (fs.FileMode, error) {
		return 0, fmt.Errorf("%s %s", o, fmt.Sprintf(format, args...))
	}
	if link := linkOnTheWay(o.file); link != "" {
		return refuse("leads through the link %s; name the place itself", link)
	}
	abs, err := filepath.Abs(o.file)
	if err != nil {
		return 0, err
	}
	for part := range strings.SplitSeq(filepath.ToSlash(abs), "/") {
		if strings.EqualFold(part, ".git") {
			return refuse("lies in a folder of git's own; name another place")
		}
	}
	info, err := os.Lstat(o.file)
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
	if !there && !namedAsInput(o.file) {
		return 0, nil
	}
	switch sheet, err := fleet.NamedBy(o.file, root); {
	case err != nil:
		return 0, fmt.Errorf("%s: %w", o, err)
	case sheet != "":
		return refuse("is a file that %s reads; Preflash never writes to a configuration or a sheet", sheet)
	case there && namedAsInput(o.file):
		return refuse("is there already and may be one, by its name: Preflash never writes to a configuration or a sheet; name another file")
	}
	return mode, nil
}

// mayReplace refuses a sheet that is not to be gone on with, and returns the mode of
// one that may: a regular file of the user's own, reached through no link.
func (o *outputFlag) mayReplace() (fs.FileMode, error) {
	refuse := func(text string) (fs.FileMode, error) { return 0, fmt.Errorf("%s %s", o.file, text) }
	if link := linkOnTheWay(o.file); link != "" {
		return refuse("leads through the link " + link + "; name the place itself")
	}
	info, err := os.Lstat(o.file)
	switch {
	case err != nil:
		return 0, err
	case !info.Mode().IsRegular() || !strings.EqualFold(filepath.Ext(o.file), ".toml"):
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

// terminal reports whether w is a terminal, and its width.
func terminal(w io.Writer) (width int, ok bool) {
	f, isFile := w.(*os.File)
	if !isFile || !term.IsTerminal(int(f.Fd())) {
		return 0, false
	}
	width, _, err := term.GetSize(int(f.Fd()))
	return width, err == nil
}

// textWidth is how many columns text gets: what COLUMNS says, else those of the
// terminal, within reason; 80 elsewhere.
func textWidth(w io.Writer) int {
	width, known := terminal(w)
	if said, err := strconv.Atoi(os.Getenv("COLUMNS")); err == nil && said > 0 {
		width, known = said, true
	}
	if !known {
		return 80
	}
	return min(max(width, 40), 100)
}

// formatFlag is --format, with the formats that a command knows.
type formatFlag struct {
	value string
	known []string
}

func (f *formatFlag) add(cmd *cobra.Command, known ...string) {
	f.known = known
	cmd.Flags().StringVar(&f.value, "format", known[0], fmt.Sprintf("how to print: %s", join(known)))
	completeFlag(cmd, "format", words(known...))
}

func (f *formatFlag) check() error { return oneOf("--format", f.value, f.known...) }

func join(words []string) string {
	switch n := len(words); n {
	case 1:
		return words[0]
	default:
		s := words[0]
		for _, w := range words[1 : n-1] {
			s += ", " + w
		}
		return s + " or " + words[n-1]
	}
}

// writeFormat writes a result as JSON or as text, whichever was asked for.
func writeFormat[T any](cmd *cobra.Command, output *outputFlag, format *formatFlag, read []string, result T,
	asJSON, asText func(io.Writer, T) error) error {
	return output.write(cmd, read, func(w io.Writer) error {
		if format.value == "json" {
			return asJSON(w, result)
		}
		return asText(w, result)
	})
}
