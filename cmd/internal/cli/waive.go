package cli

import (
	"bufio"
	"fmt"
	"io"
	"os"
	"strings"
	"time"

	"github.com/spf13/cobra"
	"golang.org/x/term"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/report"
	"preflash/rules"
)

// maxPaths is no limit that anybody meets.
const maxPaths = 1 << 20

func newWaive() *cobra.Command {
	var c common
	var reason, until string
	cmd := &cobra.Command{
		Use:   "waive RULE [PATH…]",
		Short: "Print a waiver of a finding to paste into the sheet",
		Long: `Waive prints a [[waiver]] for each finding of a rule that counts, with the
figure that it has now. Paste it at the end of the sheet. It covers the finding
until it gets worse, or its day is over, which is a year from today at most. On
a terminal it asks for what --reason and --until do not say.`,
		Example: `  preflash waive supply-budget printers/egret-03
  preflash waive supply-budget --reason "bed and hotend never heat together" --until 2027-03-31`,
		Args:              arguments(1, maxPaths, "the rule to waive"),
		ValidArgsFunction: completeArgs(1, ruleIDs),
		RunE: func(cmd *cobra.Command, args []string) error {
			rule, err := ruleNamed(args[0])
			if err != nil {
				return err
			}
			if rule.Unwaived {
				return fmt.Errorf("%s cannot be waived: fix what it finds", rule.ID)
			}
			o, err := c.options()
			if err != nil {
				return err
			}
			o.Only = []string{rule.ID}
			if until != "" {
				if err := untilDay(until, o.Today); err != nil {
					return err
				}
			}
			f := fleet.Load(pathsOr(args[1:]), o, nil)
			defer f.Close()
			result := f.Check()
			waivers := report.Waivers(result)
			if len(waivers) == 0 && result.Summary().Unreadable == 0 {
				return fmt.Errorf("there is nothing to waive: %s finds nothing here that counts", rule.ID)
			}
			if len(waivers) > 0 {
				ask := questions(cmd)
				if reason, err = ask(reason, "Why is it all right here? ", "--reason"); err != nil {
					return err
				}
				longest := rules.LongestWaiver(o.Today).Format(time.DateOnly)
				untilWhen := "Until which day, " + longest + " at the latest? "
				if until, err = ask(until, untilWhen, "--until"); err != nil {
					return err
				}
				if err := untilDay(until, o.Today); err != nil {
					return err
				}
			}
			err = c.output.write(cmd, filesOf(result), func(w io.Writer) error {
				return report.PrintWaivers(w, result, waivers, reason, until)
			})
			return orFailure(err, result.Summary().Unreadable > 0)
		},
	}
	c.add(cmd)
	cmd.Flags().StringVar(&reason, "reason", "", "why the finding is all right here")
	cmd.Flags().StringVar(&until, "until", "", "the last day that the waiver holds, as 2027-03-31")
	cmd.Flags().StringVar(&c.today, "today", "",
		"the day to count the year from, as 2026-03-31 (default: today)")
	return cmd
}

// questions asks on a terminal for what no option said; elsewhere that is an
// error.
func questions(cmd *cobra.Command) func(have, question, flag string) (string, error) {
	in, isFile := cmd.InOrStdin().(*os.File)
	terminal := isFile && term.IsTerminal(int(in.Fd()))
	lines := bufio.NewScanner(cmd.InOrStdin())
	return func(have, question, flag string) (string, error) {
		if have = strings.TrimSpace(have); have != "" {
			return have, nil
		}
		if terminal {
			fmt.Fprint(cmd.ErrOrStderr(), question)
			if lines.Scan() && strings.TrimSpace(lines.Text()) != "" {
				return strings.TrimSpace(lines.Text()), nil
			}
		}
		return "", fmt.Errorf("a waiver needs %s", flag)
	}
}

func untilDay(text string, today time.Time) error {
	day, err := time.Parse(time.DateOnly, text)
	switch longest := rules.LongestWaiver(today); {
	case err != nil:
		return fmt.Errorf("--until %q is no day; write it as 2027-03-31", text)
	case day.Before(today):
		return fmt.Errorf("--until %s is over already", text)
	case day.After(longest):
		return fmt.Errorf("--until %s is too far off: a waiver holds for a year, to %s at most", text,
			longest.Format(time.DateOnly))
	}
	return nil
}
