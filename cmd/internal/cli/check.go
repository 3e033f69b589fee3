package cli

import (
	"bytes"
	"errors"
	"io"
	"os"
	"path/filepath"
	"slices"
	"time"

	"github.com/spf13/cobra"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/output"
	"preflash/cmd/internal/plaintext"
	"preflash/cmd/internal/report"
	"preflash/patch"
	"preflash/rules"
)

// checkFlags are the flags of check.
type checkFlags struct {
	common
	format                      formatFlag
	failOn, color, since, known string
	explain, all                bool
	writeKnown                  outputFlag
}

func newCheck() *cobra.Command {
	c := checkFlags{writeKnown: outputFlag{output.File{Option: "--write-known"}}}
	cmd := &cobra.Command{
		Use:   "check [PATH…]",
		Short: "Say what no longer fits",
		Long: `Check reads the sheets that the paths name, or all sheets below a folder
(files called swap.toml, or whose name ends in .swap.toml), and the
configurations that they name, and says what no longer fits.

A path may be a configuration too, or a folder that holds one and no sheet: then
the rules that need no hotend run, and the verdict says how to begin a sheet.

It exits with 0 where no finding reaches the level of --fail-on, 1 where one
does, 2 where a printer could not be read; then the others are shown all the
same.

Of several printers it shows a line each, worst first, then the errors. Where
the files do not tell, the finding says so.

With --changed-since REVISION, a branch, a tag or a commit, it checks only the
printers of which something changed in git since then, uncommitted changes
included: the bytes of a file that they read, a link on the way to it, what a
wildcard matches. What lies in a submodule, or is written otherwise on the disk
than in git, counts as changed. A repository that belongs to another user is
refused.

A fleet with old debts starts with --write-known FILE: what is found now becomes
known. From then on --known FILE lets it pass until it gets worse by more than
the finding shows, or a year is over; what is fixed is named. What cannot be
waived, a waiver that ended, an unreadable printer and a protection that cannot
be told are never known. The file holds a line of JSON for each finding: sheet
(relative to the file), tool, rule, setting, level, figure, unit, since.

Nothing outside the root is read, nor anything in .git, and lines are quoted
only from files that are named as configurations are (.h, .hpp, .hh, .cfg,
.conf, .ini, .inc). Nothing is executed but git, which is asked what two commits
hold, without the repository's configuration.`,
		Example: `  preflash check
  preflash check printers/egret-03/swap.toml
  preflash check --write-known known.jsonl printers
  preflash check --known known.jsonl printers
  preflash check --format json --output findings.json printers`,
		RunE: c.run,
	}
	c.add(cmd)
	c.addRules(cmd)
	c.format.add(cmd, "text", "json", "sarif", "markdown")
	flags := cmd.Flags()
	flags.StringVar(&c.failOn, "fail-on", "error", "exit with 1 from this level on: error, warning or note")
	flags.StringVar(&c.since, "changed-since", "",
		"check only printers whose sheet, hotend file or configuration changed in git since this revision")
	flags.BoolVar(&c.explain, "explain", false,
		"say more of each finding: further figures, and what they rest on")
	flags.BoolVar(&c.all, "all", false, "show every finding of every printer, also what is waived or known")
	flags.StringVar(&c.known, "known", "", "let the findings pass that this file says are known")
	flags.StringVar(&c.writeKnown.Name, "write-known", "",
		"make what is found now known, and write it to this file")
	flags.StringVar(&c.color, "color", "auto", "auto, always or never")
	completeFlag(cmd, "fail-on", words("error", "warning", "note"))
	completeFlag(cmd, "color", words("auto", "always", "never"))
	return cmd
}

func (c *checkFlags) run(cmd *cobra.Command, args []string) error {
	level, err := levelOf(c.failOn)
	if err != nil {
		return err
	}
	o, err := c.options()
	if err != nil {
		return err
	}
	o.Since, o.Bare = c.since, true
	if o.Known, err = knownOf(c.known, c.writeKnown.Name, o.Today); err != nil {
		return err
	}
	step, finish := progress(cmd.ErrOrStderr())
	f := fleet.Load(pathsOr(args), o, step)
	defer f.Close()
	finish()
	result := f.Check()
	if c.format == "sarif" {
		result = f.Proved()
	}
	result.Version = version()
	err = c.output.write(cmd, filesOf(result), func(w io.Writer) error {
		switch c.format {
		case "json":
			return report.JSON(w, result)
		case "sarif":
			return report.SARIF(w, result, rules.All())
		case "markdown":
			return report.Markdown(w, result, foldedDiff(f))
		}
		opts, err := textOptions(w, c.color)
		if err != nil {
			return err
		}
		return report.Text(w, result, report.TextOptions{Options: opts, Explain: c.explain, All: c.all})
	})
	if err == nil && c.writeKnown.Name != "" {
		err = c.writeKnown.write(cmd, filesOf(result), f.WriteKnown)
	}
	switch {
	case err != nil:
		return err
	case result.Summary().Unreadable > 0:
		return exit(exitFailure)
	case result.Worst(level):
		return exit(exitFound)
	}
	return nil
}

// foldedDiff is the diff that goes with a review comment. What failed its proof
// is not in it, which `diff` itself tells.
func foldedDiff(f *fleet.Fleet) []byte {
	var text bytes.Buffer
	if err := f.Prove().Plan.Print(&text, patch.Options{}); err != nil {
		return nil
	}
	return text.Bytes()
}

// knownOf reads the file of known findings; nil where none is named.
func knownOf(read, write string, today time.Time) (*fleet.Known, error) {
	switch {
	case read == "" && write == "":
		return nil, nil
	case read != "" && write != "" && filepath.Clean(read) != filepath.Clean(write):
		return nil, errors.New("--known and --write-known name two files; --write-known alone also reads " +
			"what it replaces")
	case write != "":
		return fleet.ReadKnown(write, true, today)
	}
	return fleet.ReadKnown(read, false, today)
}

func levelOf(word string) (rules.Level, error) {
	levels := []rules.Level{rules.Error, rules.Warning, rules.Note}
	var names []string
	for _, l := range levels {
		names = append(names, l.String())
	}
	if err := oneOf("--fail-on", word, names...); err != nil {
		return 0, err
	}
	return levels[slices.Index(names, word)], nil
}

func textOptions(w io.Writer, color string) (plaintext.Options, error) {
	_, isTerminal := terminal(w)
	o := plaintext.Options{Width: textWidth(w)}
	switch color {
	case "always":
		o.Color = true
	case "auto":
		o.Color = isTerminal && os.Getenv("NO_COLOR") == "" && os.Getenv("TERM") != "dumb"
	}
	return o, oneOf("--color", color, "auto", "always", "never")
}

// filesOf lists every file that a result was read from.
func filesOf(r *fleet.Result) []string {
	var names []string
	for i := range r.Printers {
		names = append(names, r.Printers[i].Sheet)
		names = append(names, r.Printers[i].Inputs...)
	}
	return names
}
