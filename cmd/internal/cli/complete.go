package cli

import (
	"math"
	"slices"

	"github.com/spf13/cobra"

	"preflash/cmd/internal/plaintext"
	"preflash/rules"
)

func newCompletion() *cobra.Command {
	shells := []string{"bash", "zsh", "fish", "powershell"}
	return &cobra.Command{
		Use:   "completion SHELL",
		Short: "Print what a shell needs to complete commands, options and rules",
		Long: `Completion prints a script for bash, zsh, fish or powershell. Where the shell
has read it, it completes commands, options, rules and curves by the tabulator.`,
		Example: `  preflash completion bash > ~/.local/share/bash-completion/completions/preflash
  preflash completion zsh > ~/.zsh/completions/_preflash`,
		Args:              arguments(1, 1, "the shell: "+plaintext.Join(shells, "or")),
		ValidArgsFunction: completeArgs(1, words(shells...)),
		RunE: func(cmd *cobra.Command, args []string) error {
			out := cmd.OutOrStdout()
			switch root := cmd.Root(); args[0] {
			case "bash":
				return root.GenBashCompletionV2(out, true)
			case "zsh":
				return root.GenZshCompletion(out)
			case "fish":
				return root.GenFishCompletion(out, true)
			case "powershell":
				return root.GenPowerShellCompletionWithDesc(out)
			}
			return oneOf("shell", args[0], shells...)
		},
	}
}

// completeFlag lets a shell complete a flag's value by one of these words.
func completeFlag(cmd *cobra.Command, flag string, words func() []string) {
	// It fails only for a flag that the command lacks, which a test would show.
	_ = cmd.RegisterFlagCompletionFunc(flag, completeArgs(math.MaxInt, words))
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
