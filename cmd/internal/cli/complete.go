package cli

import (
	"slices"

	"github.com/spf13/cobra"

	"preflash/rules"
)

// completeFlag lets a shell complete a flag's value by one of these words.
func completeFlag(cmd *cobra.Command, flag string, words func() []string) {
	// It fails only for a flag that the command lacks, which a test would show.
	_ = cmd.RegisterFlagCompletionFunc(flag, func(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
		return words(), cobra.ShellCompDirectiveNoFileComp
	})
}

// completeArgs lets a shell complete up to limit arguments by these words.
func completeArgs(limit int, words func() []string) cobra.CompletionFunc {
	return func(_ *cobra.Command, args []string, _ string) ([]string, cobra.ShellCompDirective) {
		if len(args) >= limit {
			return nil, cobra.ShellCompDirectiveNoFileComp
		}
		return words(), cobra.ShellCompDirectiveNoFileComp
	}
}

// words is a choice that is fixed.
func words(w ...string) func() []string {
	return func() []string { return slices.Clone(w) }
}

func ruleIDs() []string {
	var ids []string
	for _, r := range rules.All() {
		ids = append(ids, r.ID)
	}
	return ids
}
