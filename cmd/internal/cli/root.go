// Package cli is the command line: one file a command; flags and exit codes,
// nothing else.
package cli

import (
	"errors"
	"fmt"
	"io"
	"runtime/debug"
	"slices"
	"time"

	"github.com/spf13/cobra"

	"preflash/cmd/internal/fleet"
	"preflash/parser"
	"preflash/patch"
)

// Exit codes of every command.
const (
	exitClean   = 0
	exitFound   = 1
	exitFailure = 2
)

// exit is the error that carries an exit code and nothing to say.
type exit int

// orFailure is the error, else an exit code where something failed.
func orFailure(err error, failed bool) error {
	if err == nil && failed {
		return exit(exitFailure)
	}
	return err
}

func (e exit) Error() string { return fmt.Sprintf("exit %d", int(e)) }

// gcPercent lets the heap grow to some tens of megabytes between collections.
const gcPercent = 400

// Run runs the program with these arguments and returns its exit code.
func Run(args []string, stdout, stderr io.Writer) int {
	// What is read of a printer is garbage as soon as it was checked, and there
	// is little else: collecting it seldom saves a fifth of the processor time.
	debug.SetGCPercent(gcPercent)
	root := newRoot(args)
	root.SetArgs(args)
	root.SetOut(stdout)
	root.SetErr(stderr)
	err := root.Execute()
	var code exit
	switch {
	case err == nil:
		return exitClean
	case errors.As(err, &code):
		return int(code)
	}
	say(stderr, err)
	return exitFailure
}

// maxSaid is how many bytes of what went wrong are printed.
const maxSaid = 8000

// say prints what went wrong.
func say(stderr io.Writer, what any) {
	fmt.Fprintln(stderr, patch.Harmless("preflash: "+patch.Visible(parser.Clip(fmt.Sprint(what), maxSaid))))
}

// commands make the commands of the program, each by its name.
var commands = [...]struct {
	name string
	make func() *cobra.Command
}{
	{"check", newCheck}, {"diff", newDiff}, {"values", newValues}, {"sensor", newSensor},
	{"sheet", newSheet}, {"bench", newBench}, {"report", newReport}, {"heat", newHeat},
	{"flow", newFlow}, {"waive", newWaive}, {"rules", newRules}, {"completion", newCompletion},
}

// addCommands adds the command that the arguments begin with, and no other, which
// would only make the start longer; all where they begin otherwise.
func addCommands(root *cobra.Command, args []string) {
	if slices.Equal(args, []string{"--version"}) {
		return
	}
	for _, c := range commands {
		if len(args) > 0 && args[0] == c.name {
			root.AddCommand(c.make())
			return
		}
	}
	for _, c := range commands {
		root.AddCommand(c.make())
	}
}

// newRoot is the program, with the commands that these arguments may need.
func newRoot(args []string) *cobra.Command {
	root := &cobra.Command{
		Use:   "preflash",
		Short: "Check a printer's configuration against the hotend that goes in",
		Long: `Preflash reads a 3D printer's firmware configuration and a short sheet that
says which hotend comes out and which goes in. It finds what no longer fits,
computes how wrong it is, and prints a diff that you review and apply by hand.
It never writes to a configuration.`,
		SilenceUsage:  true,
		SilenceErrors: true,
	}
	root.CompletionOptions.DisableDefaultCmd = true
	addCommands(root, args)
	build := root.Flags().BoolP("version", "v", false, "say which build this is")
	ownVoice(group(root))
	root.RunE = func(cmd *cobra.Command, _ []string) error {
		if *build {
			_, err := fmt.Fprintln(cmd.OutOrStdout(), "preflash", version())
			return err
		}
		return cmd.Help()
	}
	return root
}

// common are the flags that several commands share.
type common struct {
	cmd          *cobra.Command
	root, today  string
	jobs         int
	only, except []string
	output       outputFlag
}

func (c *common) add(cmd *cobra.Command) {
	c.cmd = cmd
	f := cmd.Flags()
	f.StringVar(&c.root, "root", "", "read nothing outside this folder (default: the repository, "+
		"else the working directory)")
	f.IntVar(&c.jobs, "jobs", 0, "printers to read at a time (default: one for each core)")
	c.output.add(cmd)
}

func (c *common) addRules(cmd *cobra.Command) {
	f := cmd.Flags()
	f.StringSliceVar(&c.only, "only", nil, "count only these rules (a list with commas)")
	f.StringSliceVar(&c.except, "except", nil, "do not count these rules")
	completeFlag(cmd, "only", ruleIDs)
	completeFlag(cmd, "except", ruleIDs)
	f.StringVar(&c.today, "today", "", "the day that waivers are judged on, as 2006-01-02 (default: today)")
}

func (c *common) options() (fleet.Options, error) {
	o := fleet.Options{Root: c.root, Jobs: c.jobs, Only: c.only, Except: c.except}
	if c.jobs < 1 && c.cmd.Flags().Changed("jobs") {
		return o, fmt.Errorf("--jobs %d reads nothing; give 1 or more", c.jobs)
	}
	now := time.Now()
	o.Today = time.Date(now.Year(), now.Month(), now.Day(), 0, 0, 0, 0, time.UTC)
	if c.today != "" {
		day, err := time.Parse(time.DateOnly, c.today)
		if err != nil {
			return o, fmt.Errorf("--today %q is no day; write it as 2026-03-31", c.today)
		}
		o.Today = day
	}
	for _, id := range append(c.only[:len(c.only):len(c.only)], c.except...) {
		if _, err := ruleNamed(id); err != nil {
			return o, err
		}
	}
	return o, nil
}

// pathsOr returns the arguments, or the working directory.
func pathsOr(args []string) []string {
	if len(args) == 0 {
		return []string{"."}
	}
	return args
}
