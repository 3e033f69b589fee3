package cli

import (
	"fmt"
	"io"
	"time"

	"github.com/spf13/cobra"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/measure"
	"preflash/cmd/internal/report/page"
)

func newReport() *cobra.Command {
	var c common
	var trials string
	cmd := &cobra.Command{
		Use:   "report [PATH…]",
		Short: "Write one HTML page: findings, diff and plots",
		Long: `Report writes one HTML page that needs nothing else and can be printed. It says
first whether the printer may be heated, what is worst, and the cautions; then
every finding, with a plot where one shows it, the diff, tried in memory, and
the bench list. Each plot has its numbers in a table. A folder with several
sheets gets an overview, worst first.

It exits with 0, or with 2 where a printer could not be read or the diff failed
when it was tried in memory; then the page is written all the same.`,
		Example: `  preflash report egret-03 --output egret-03.html
  preflash report egret-03 --trials flow.csv --output egret-03.html
  preflash report printers > fleet.html`,
		RunE: func(cmd *cobra.Command, args []string) error {
			o, err := c.options()
			if err != nil {
				return err
			}
			if _, isTerminal := terminal(cmd.OutOrStdout()); isTerminal && c.output.Name == "" {
				return fmt.Errorf("the page is HTML, which no terminal shows; write it to a file with " +
					"--output report.html")
			}
			p := page.Options{Day: o.Today.Format(time.DateOnly)}
			if trials != "" {
				t, err := measure.JudgeFlow(trials, measure.UsualFlow)
				if err != nil {
					return err
				}
				p.Trials = &t
			}
			o.Keep = true
			f := fleet.Load(pathsOr(args), o, nil)
			defer f.Close()
			s := f.Survey()
			s.Version = version()
			for i := range s.Printers {
				if problem := s.Printers[i].Problem; problem != nil {
					say(cmd.ErrOrStderr(), problem)
				}
			}
			err = c.output.write(cmd, append(filesOf(s.Result), trials), func(w io.Writer) error {
				return page.HTML(w, s, p)
			})
			switch {
			case err != nil:
				return err
			case s.Err() != nil:
				return s.Err()
			case s.Summary().Unreadable > 0:
				return exit(exitFailure)
			}
			return nil
		},
	}
	c.add(cmd)
	c.addRules(cmd)
	cmd.Flags().StringVar(&trials, "trials", "",
		"a CSV of weighed extrusions to plot as well (see preflash flow)")
	return cmd
}
