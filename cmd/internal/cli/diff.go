package cli

import (
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/report"
	"preflash/cmd/internal/worklist"
	"preflash/patch"
)

func newDiff() *cobra.Command {
	var c common
	var plain bool
	cmd := &cobra.Command{
		Use:   "diff [PATH…]",
		Short: "Print the changes as one unified diff, tried in memory first",
		Long: `Diff prints one unified diff that git apply -p1 and patch -p1 take at the
working directory. Nothing is written: you read it, and apply what you agree
with. Before it is shown, the diff is applied in memory and the result is read
and checked again, for every printer under the root that reads a file of it. A
change that fails there is left out by itself, and said. Where that does not
help, the printer has no diff; the others' is shown all the same.

Apply it in the folder in which you ran this: its paths count from there, and
name the files themselves where links led to them. A path that git could take
for another one is refused, with the folder to run in. Two tools of one printer
have a sheet each. Where they, or printers that share a file, want one setting
differently, the lower limit and the tighter protection win; where neither value
protects more, such as of two sensors, that setting is left out. Any option that
changes with the edits is named above the diff, and so is a protection that has
to be widened or a max temp that has to rise. Wiring, gains, nozzle height and
filament lengths are not in it: they are measured.

What the diff shows are the files' own bytes: in a log that others can write to,
give --output. It writes a new file beside the target and renames it, follows no
link, and replaces nothing that is no plain file or that a sheet under the root
reads.

It exits with 0 where there is nothing to change, 1 with a diff, 2 where
something could not be read or the diff failed when it was tried.`,
		Example: `  preflash diff egret-03 > egret-03.diff
  git apply -p1 egret-03.diff`,
		RunE: func(cmd *cobra.Command, args []string) error {
			o, err := c.options()
			if err != nil {
				return err
			}
			f := fleet.Load(pathsOr(args), o, nil)
			defer f.Close()
			d := f.Prove()
			sayMissing(cmd.ErrOrStderr(), d)
			var lead []string
			if !plain {
				lead = report.Lead(d.Plan)
			}
			err = c.output.write(cmd, d.Inputs, func(w io.Writer) error {
				_, isTerminal := terminal(w)
				return d.Plan.Print(w, patch.Options{Lead: lead, Terminal: isTerminal})
			})
			switch {
			case err != nil:
				return err
			case len(d.Plan.Files) > 0:
				fmt.Fprintln(cmd.ErrOrStderr(), strings.TrimSpace(worklist.Cautions))
			}
			switch {
			case len(d.Problems) > 0, len(d.Refusals) > 0, len(d.Plan.Files) == 0 && len(d.Plan.Left) > 0:
				return exit(exitFailure)
			case len(d.Plan.Files) > 0:
				return exit(exitFound)
			}
			return nil
		},
	}
	c.add(cmd)
	c.addRules(cmd)
	cmd.Flags().BoolVar(&plain, "plain", false, "leave out the text above the diff that says why")
	return cmd
}

// sayMissing says what the diff lacks, and why.
func sayMissing(stderr io.Writer, d *fleet.Diff) {
	for _, p := range d.Problems {
		for _, one := range p.Each() {
			say(stderr, one)
		}
	}
	for _, r := range d.Refusals {
		for text := range strings.Lines(r.Err.Error()) {
			fmt.Fprintln(stderr, "preflash:", patch.Visible(strings.TrimSuffix(text, "\n")))
		}
	}
	if d.Elsewhere > 0 {
		fmt.Fprintf(stderr, "preflash: sheets elsewhere under the root that cannot be read: %d; "+
			"what their printers share with these is not known\n", d.Elsewhere)
	}
	for _, left := range d.Plan.Left {
		fmt.Fprintln(stderr, patch.Harmless(patch.Visible(report.LeftText(left))))
	}
}
