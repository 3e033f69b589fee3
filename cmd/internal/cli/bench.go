package cli

import (
	"io"

	"github.com/spf13/cobra"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/measure"
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
			o, err := c.options()
			if err != nil {
				return err
			}
			o.Keep = true
			f := fleet.Load(pathsOr(args), o, nil)
			defer f.Close()
			result, inputs := f.Check(), f.Inputs()
			list := measure.Benches(result, inputs)
			err = c.output.write(cmd, filesOf(result), func(w io.Writer) error {
				if format == "markdown" {
					return measure.BenchMarkdown(w, list)
				}
				opts, err := textOptions(w, "auto")
				if err != nil {
					return err
				}
				return measure.BenchText(w, list, opts)
			})
			return orFailure(err, result.Summary().Unreadable > 0)
		},
	}
	c.add(cmd)
	format.add(cmd, "text", "markdown")
	cmd.Flags().StringVar(&c.today, "today", "",
		"the day that waivers are judged on, as 2006-01-02 (default: today)")
	return cmd
}
