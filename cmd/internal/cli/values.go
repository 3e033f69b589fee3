package cli

import (
	"io"

	"github.com/spf13/cobra"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/report"
)

func newValues() *cobra.Command {
	var c common
	var format formatFlag
	var all bool
	cmd := &cobra.Command{
		Use:   "values [PATH…]",
		Short: "Show each setting: its value, its place, and what it hides",
		Example: `  preflash values egret-03
  preflash values --all --format json egret-03`,
		RunE: func(cmd *cobra.Command, args []string) error {
			o, err := c.options()
			if err != nil {
				return err
			}
			list := fleet.ReadValues(pathsOr(args), o, all)
			var read []string
			failed := false
			for _, v := range list {
				read = append(read, v.Sheet)
				read = append(read, v.Inputs...)
				failed = failed || v.Problem != nil
			}
			err = writeEither(cmd, &textOrJSON{c.output, format}, read, list, report.ValuesJSON,
				func(w io.Writer, list []fleet.Values) error {
					return report.ValuesText(w, list, textWidth(w))
				})
			return orFailure(err, failed)
		},
	}
	c.add(cmd)
	format.add(cmd, "text", "json")
	cmd.Flags().BoolVar(&all, "all", false, "list every macro or option as well")
	return cmd
}
