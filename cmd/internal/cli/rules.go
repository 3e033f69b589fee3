package cli

import (
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"preflash/cmd/internal/report"
	"preflash/parser"
	"preflash/rules"
)

func newRules() *cobra.Command {
	var output outputFlag
	cmd := &cobra.Command{
		Use:   "rules [RULE]",
		Short: "List the rules, or show one with its formula, limits and sources",
		Example: `  preflash rules
  preflash rules sensor-curve`,
		Args:              arguments(0, 1, "one rule"),
		ValidArgsFunction: completeArgs(1, ruleIDs),
		RunE: func(cmd *cobra.Command, args []string) error {
			return output.write(cmd, nil, func(w io.Writer) error {
				if len(args) == 0 {
					return report.RuleList(w, rules.All(), textWidth(w))
				}
				r, err := ruleNamed(args[0])
				if err != nil {
					return err
				}
				return report.RulePage(w, r, textWidth(w))
			})
		},
	}
	output.add(cmd)
	return cmd
}

// ruleNamed finds a rule, or says which one may be meant.
func ruleNamed(id string) (*rules.Rule, error) {
	if r := rules.Find(id); r != nil {
		return r, nil
	}
	if near := parser.Nearest(id, ruleIDs()); near != "" {
		return nil, fmt.Errorf("there is no rule %q; did you mean %s?", id, near)
	}
	return nil, fmt.Errorf("there is no rule %q; preflash rules lists them", id)
}
