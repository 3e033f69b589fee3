package cli

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"preflash/cmd/internal/plaintext"
	"preflash/parser"
)

// What is said of a wrong call, and how help looks: in the program's own words,
// not the command library's.

const helpTemplate = `{{with or .Long .Short}}{{. | trimTrailingWhitespaces}}

{{end}}{{.UsageString}}`

const usageTemplate = `Use:
{{- if .Runnable}}
  {{.UseLine}}{{end}}
{{- if .HasAvailableSubCommands}}
  {{.CommandPath}} COMMAND

Commands:
{{- range .Commands}}{{if .IsAvailableCommand}}
  {{rpad .Name .NamePadding}} {{.Short}}{{end}}{{end}}{{end}}
{{- if .HasExample}}

Examples:
{{.Example}}{{end}}
{{- if .HasAvailableLocalFlags}}

Options:
{{options .LocalFlags | trimTrailingWhitespaces}}{{end}}
{{- if .HasAvailableSubCommands}}

{{.CommandPath}} COMMAND --help says more.{{end}}
`

// ownVoice gives a command and all below it the program's own words.
func ownVoice(root *cobra.Command) {
	cobra.AddTemplateFunc("options", optionsText)
	root.SetHelpTemplate(helpTemplate)
	root.SetUsageTemplate(usageTemplate)
	root.SetFlagErrorFunc(flagError)
	root.SetHelpCommand(newHelp(root))
	plainUse(root)
}

// plainUse leaves it to the list of options to say that there are some.
func plainUse(cmd *cobra.Command) {
	cmd.DisableFlagsInUseLine = true
	cmd.Flags().BoolP("help", "h", false, "say what this does, and how to call it")
	for _, c := range cmd.Commands() {
		plainUse(c)
	}
}

// optionsText lists options in 80 columns, with words for the kinds of value
// that are no names of Go's.
func optionsText(flags *pflag.FlagSet) string {
	lines := strings.Split(flags.FlagUsagesWrapped(80), "\n")
	kinds := strings.NewReplacer(" strings ", " LIST    ", " string ", " TEXT   ", " float ", " N     ",
		" int ", " N   ")
	for i, line := range lines {
		if at := strings.Index(line, "--"); at >= 0 && strings.TrimSpace(line[:at]) == "" {
			end := at + strings.Index(line[at:]+"   ", "   ") + 1
			end = min(end, len(line))
			lines[i] = line[:at] + kinds.Replace(line[at:end]) + line[end:]
		}
	}
	return strings.Join(lines, "\n")
}

func newHelp(root *cobra.Command) *cobra.Command {
	return &cobra.Command{
		Use:   "help [COMMAND]",
		Short: "Say what a command does",
		ValidArgsFunction: completeArgs(1, func() []string {
			return commandNames(root)
		}),
		RunE: func(_ *cobra.Command, args []string) error {
			cmd, rest, err := root.Find(args)
			if err != nil || len(rest) > 0 {
				return unknownCommand(root, args[0])
			}
			return cmd.Help()
		},
	}
}

func commandNames(cmd *cobra.Command) []string {
	var names []string
	for _, c := range cmd.Commands() {
		if c.IsAvailableCommand() {
			names = append(names, c.Name())
		}
	}
	return names
}

// group makes a command that only holds others: it shows its help, and refuses
// what is none of them.
func group(cmd *cobra.Command) *cobra.Command {
	cmd.Args = func(cmd *cobra.Command, args []string) error {
		if len(args) > 0 {
			return unknownCommand(cmd, args[0])
		}
		return nil
	}
	cmd.RunE = func(cmd *cobra.Command, _ []string) error { return cmd.Help() }
	return cmd
}

func unknownCommand(cmd *cobra.Command, name string) error {
	if near := parser.Nearest(name, commandNames(cmd)); near != "" {
		return fmt.Errorf("there is no command %q; did you mean %s %s?", name, cmd.CommandPath(), near)
	}
	return fmt.Errorf("there is no command %q; %s --help lists them", name, cmd.CommandPath())
}

// oneOf refuses a value of an option that is none of these.
func oneOf(option, value string, known ...string) error {
	if slices.Contains(known, value) {
		return nil
	}
	if near := parser.Nearest(value, known); near != "" {
		return fmt.Errorf("%s %q is not known; did you mean %s?", option, value, near)
	}
	return fmt.Errorf("%s %q is not known; choose %s", option, value, plaintext.Join(known, "or"))
}

// arguments demands from least to most of them; what says which, and how to
// call the command.
func arguments(least, most int, what string) cobra.PositionalArgs {
	return func(cmd *cobra.Command, args []string) error {
		switch {
		case len(args) < least:
			return fmt.Errorf("name %s: %s", what, cmd.UseLine())
		case len(args) > most && most == 0:
			return fmt.Errorf("%q is too much: %s takes only options", args[0], cmd.CommandPath())
		case len(args) > most:
			return fmt.Errorf("%q is too much: name %s, no more: %s", args[most], what, cmd.UseLine())
		}
		return nil
	}
}

// flagError says what is wrong with an option.
func flagError(cmd *cobra.Command, err error) error {
	var unknown *pflag.NotExistError
	var bare *pflag.ValueRequiredError
	var wrong *pflag.InvalidValueError
	switch {
	case errors.As(err, &unknown):
		name := unknown.GetSpecifiedName()
		if near := parser.Nearest(name, optionNames(cmd)); near != "" && len(name) > 1 {
			return fmt.Errorf("there is no option --%s; did you mean --%s?", name, near)
		}
		return fmt.Errorf("there is no option %s; %s --help lists them", dashes(name), cmd.CommandPath())
	case errors.As(err, &bare):
		return fmt.Errorf("%s needs a value", dashes(bare.GetSpecifiedName()))
	case errors.As(err, &wrong):
		return fmt.Errorf("--%s cannot be %q; it takes %s", wrong.GetFlag().Name, wrong.GetValue(),
			kindOf(wrong.GetFlag()))
	}
	return err
}

func kindOf(f *pflag.Flag) string {
	switch f.Value.Type() {
	case "int":
		return "a whole number"
	case "float64":
		return "a number"
	case "bool":
		return "true or false"
	}
	return "a value of another kind"
}

func dashes(name string) string {
	return strings.Repeat("-", min(len(name), 2)) + name
}

func optionNames(cmd *cobra.Command) []string {
	var names []string
	cmd.Flags().VisitAll(func(f *pflag.Flag) { names = append(names, f.Name) })
	return names
}
