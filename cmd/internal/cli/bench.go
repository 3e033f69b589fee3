package cli

import (
	"io"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/report"
	"preflash/cmd/internal/worklist"
	"preflash/parser"
	"preflash/rules"
)

func newBench() *cobra.Command {
	var c common
	var format formatFlag
	cmd := &cobra.Command{
		Use:   "bench [PATH]",
		Short: "Print the list to work through with the printer",
		Long: `Bench prints what there is to do at the printer, in order, with this printer's
own figures and console steps: before power, after flashing, the first heat, the
test of the runaway protection, the tune, nozzle height and flow. Its figures
are those of the files as they stand: apply the diff first.`,
		Example: `  preflash bench egret-03/swap.toml
  preflash bench --format markdown egret-03 > bench.md`,
		Args: arguments(0, 1, "one sheet or folder"),
		RunE: func(cmd *cobra.Command, args []string) error {
			if err := format.check(); err != nil {
				return err
			}
			o, err := c.options()
			if err != nil {
				return err
			}
			keepAll(&o)
			f := fleet.Load(pathsOr(args), o, nil)
			defer f.Close()
			result, inputs := f.Check(), f.Inputs()
			list := make([]report.Bench, len(result.Printers))
			for i := range result.Printers {
				list[i].Printer = &result.Printers[i]
				switch {
				case inputs[i] != nil:
					list[i].List = worklist.New(inputs[i], worklist.Open{Errors: errorsOf(&result.Printers[i]), Changes: changesOf(inputs[i])})
				case lacksSensor(&result.Printers[i]):
					list[i].List = worklist.Unknown()
				}
			}
			err = c.output.write(cmd, filesOf(result), func(w io.Writer) error {
				if format.value == "markdown" {
					return report.BenchMarkdown(w, list)
				}
				opts, err := textOptions(w, "auto")
				if err != nil {
					return err
				}
				return report.BenchText(w, list, opts)
			})
			switch {
			case err != nil:
				return err
			case result.Summary().Unreadable > 0:
				return exit(exitFailure)
			}
			return nil
		},
	}
	c.add(cmd)
	format.add(cmd, "text", "markdown")
	cmd.Flags().StringVar(&c.today, "today", "", "the day that waivers are judged on, as 2006-01-02 (default: today)")
	return cmd
}

// errorsOf lists the rules of the errors that count.
func errorsOf(p *fleet.Printer) []string {
	var list []string
	every := p.Every()
	for i := range every {
		if f := &every[i]; f.Level == rules.Error && f.Waived == "" {
			list = append(list, f.Rule)
		}
	}
	return list
}

// changesOf lists what a diff would change at first, each setting once.
func changesOf(in *rules.Input) []parser.Change {
	var list []parser.Change
	found := rules.Check(in)
	for i := range found {
		if found[i].Waived != "" {
			continue
		}
		for _, c := range found[i].Changes {
			list = slices.DeleteFunc(list, func(o parser.Change) bool { return o.Key == c.Key })
			list = append(list, c)
		}
	}
	return list
}

// lacksSensor reports whether the sheet does not say which sensor goes in.
func lacksSensor(p *fleet.Printer) bool {
	if p.Problem == nil {
		return false
	}
	for _, problem := range p.Problem.Each() {
		if strings.Contains(problem.String(), "new.sensor") {
			return true
		}
	}
	return false
}
