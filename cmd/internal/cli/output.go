package cli

import (
	"fmt"
	"io"
	"os"
	"strconv"

	"preflash/cmd/internal/output"
	"preflash/cmd/internal/plaintext"

	"github.com/spf13/cobra"
	"golang.org/x/term"
)

// outputFlag is --output, or another option that names a file to write.
type outputFlag struct{ output.File }

func (o *outputFlag) add(cmd *cobra.Command) {
	o.Option = "--output"
	cmd.Flags().StringVar(&o.Name, "output", "", "write to this file instead of standard output")
}

// write lets render write to the file or to standard output.
func (o *outputFlag) write(cmd *cobra.Command, read []string, render func(io.Writer) error) error {
	if o.Name == "" {
		return render(cmd.OutOrStdout())
	}
	root := ""
	if f := cmd.Flags().Lookup("root"); f != nil {
		root = f.Value.String()
	}
	return o.Write(read, root, render)
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

// formatFlag is --format.
type formatFlag string

// add gives a command the formats that it knows.
func (f *formatFlag) add(cmd *cobra.Command, known ...string) {
	cmd.Flags().StringVar((*string)(f), "format", known[0],
		fmt.Sprintf("how to print: %s", plaintext.Join(known, "or")))
	completeFlag(cmd, "format", words(known...))
	cmd.PreRunE = func(*cobra.Command, []string) error { return oneOf("--format", string(*f), known...) }
}

// textOrJSON are the flags of a command that prints either.
type textOrJSON struct {
	output outputFlag
	format formatFlag
}

func (o *textOrJSON) add(cmd *cobra.Command) {
	o.format.add(cmd, "text", "json")
	o.output.add(cmd)
}

// writeEither writes a result as JSON or as text, whichever was asked for.
func writeEither[T any](cmd *cobra.Command, o *textOrJSON, read []string, result T,
	asJSON, asText func(io.Writer, T) error) error {
	render := asText
	if o.format == "json" {
		render = asJSON
	}
	return o.output.write(cmd, read, func(w io.Writer) error { return render(w, result) })
}
