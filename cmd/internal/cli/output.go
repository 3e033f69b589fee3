package cli

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"
	"golang.org/x/term"
)

// outputFlag is --output: the only place that the program writes to.
type outputFlag struct{ file string }

func (o *outputFlag) add(cmd *cobra.Command) {
	cmd.Flags().StringVar(&o.file, "output", "", "write to this file instead of standard output")
}

// write lets render write to the file or to standard output. The file is not
// touched when render fails, nor when it is one of those that were read, nor
// when it is there and has the name of a configuration or a sheet: one that
// could not be read, a shared hotend file, another printer's.
func (o *outputFlag) write(cmd *cobra.Command, read []string, render func(io.Writer) error) error {
	if o.file == "" {
		return render(cmd.OutOrStdout())
	}
	if info, err := os.Stat(o.file); err == nil {
		for _, name := range read {
			other, err := os.Stat(filepath.FromSlash(name))
			if err == nil && os.SameFile(info, other) {
				return fmt.Errorf("--output %s is a file that was read; Preflash never writes to a configuration or a sheet", o.file)
			}
		}
		if namedAsInput(o.file) {
			return fmt.Errorf("--output %s is there already and may be one, by its name: Preflash never writes to a configuration or a sheet; name another file", o.file)
		}
	}
	var text bytes.Buffer
	if err := render(&text); err != nil {
		return err
	}
	return os.WriteFile(o.file, text.Bytes(), 0o666)
}

// namedAsInput reports whether a file, or what a link of that name leads to,
// is called as configurations and sheets are.
func namedAsInput(name string) bool {
	if target, err := filepath.EvalSymlinks(name); err == nil {
		name = target
	}
	switch strings.ToLower(filepath.Ext(name)) {
	case ".h", ".hpp", ".hh", ".cfg", ".conf", ".ini", ".inc", ".toml":
		return true
	}
	return false
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

func (f *formatFlag) check() error {
	for _, k := range f.known {
		if f.value == k {
			return nil
		}
	}
	return fmt.Errorf("--format %q is not known here; choose %s", f.value, join(f.known))
}

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
