package cli

import (
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"preflash/cmd/internal/report"
	"preflash/rules"
)

func newRules() *cobra.Command {
	var output outputFlag
	cmd := &cobra.Command{
		Use:   "rules [ID]",
		Short: "List the rules, or show one with its formula, limits and sources",
		Example: `  preflash rules
  preflash rules sensor-curve`,
		Args:              cobra.MaximumNArgs(1),
		ValidArgsFunction: completeArgs(1, ruleIDs),
		RunE: func(cmd *cobra.Command, args []string) error {
			return output.write(cmd, nil, func(w io.Writer) error {
				if len(args) == 0 {
					return report.RuleList(w, rules.All(), textWidth(w))
				}
				r := rules.Find(args[0])
				if r == nil {
					return fmt.Errorf("there is no rule %q; `preflash rules` lists them", args[0])
				}
				return report.RulePage(w, r, textWidth(w))
			})
		},
	}
	output.add(cmd)
	return cmd
}
