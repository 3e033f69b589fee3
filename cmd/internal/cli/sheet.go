package cli

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/output"
	"preflash/cmd/internal/starter"
	"preflash/patch"
)

func newSheet() *cobra.Command {
	s := &sheetCommand{}
	cmd := &cobra.Command{
		Use:   "sheet [CONFIG… | FOLDER | SHEET]",
		Short: "Print a commented sheet to start from, filled from a configuration",
		Long: `Sheet prints a swap sheet: what the configuration tells about the hotend now on
the printer, and a blank for each thing that you measure or read from a label,
with how. "preflash check" names the blanks that are left.

CONFIG are the files of the configuration, in the order in which they are read.
Of a folder, by default the working directory, it takes the one that lies there,
and says what it passed over. The sheet belongs in the folder of the first file,
or where --output says: its paths are relative to that.

With --ask it asks for the blanks one by one. A SHEET that was begun before,
named or at --output, is gone on with where blanks are left.

The sheet explains its keys. These it does not begin, since few need them:
  printer.defined    names that board or build define, as ["NAME", "NAME=3"]
  printer.undefined  names that nothing defines; a finding says where one of
                     the two is needed (style defines)
  printer.absent     included files that may be missing, or a link that leads
                     nowhere, wherever they would lie
  new.sensor.r25_tolerance, new.sensor.beta_tolerance
                     shares of 1, 0.01 without them
  [[waiver]]         see preflash waive
[old] takes the keys of [new]. A file that [new] names as use holds the keys of
[new] without "new."; the sheet's own win.`,
		Example: `  preflash sheet --ask --output egret-03/swap.toml egret-03
  preflash sheet --ask egret-03/swap.toml
  preflash sheet --tool 1 Configuration.h Configuration_adv.h > tool-1.swap.toml`,
		RunE: s.run,
	}
	f := cmd.Flags()
	f.IntVar(&s.tool, "tool", 0, "which hotend, counted from 0")
	f.BoolVar(&s.ask, "ask", false, "ask for the blanks one by one")
	f.StringVar(&s.root, "root", "", "read nothing outside this folder (default: the repository, "+
		"else the working directory)")
	s.output.add(cmd)
	return cmd
}

type sheetCommand struct {
	root   string
	tool   int
	ask    bool
	output outputFlag
}

func (s *sheetCommand) run(cmd *cobra.Command, args []string) error {
	if s.tool < 0 || s.tool > 15 {
		return fmt.Errorf("--tool %d is no hotend; they count from 0 to 15", s.tool)
	}
	begun, err := s.begun(args)
	switch {
	case err != nil:
		return err
	case begun != "":
		return s.goOn(cmd, begun)
	}
	c, err := fleet.ReadConfiguration(args, s.root, s.tool)
	if err != nil {
		return err
	}
	defer c.Tree.Close()
	for _, passed := range c.Passed {
		say(cmd.ErrOrStderr(), "passed over: "+passed)
	}
	place, err := starter.PlaceFor(c, s.output.Name)
	if err != nil {
		return err
	}
	starting, err := starter.Of(c, c.NameFor(place), place)
	if err != nil {
		return err
	}
	var read []string
	for _, f := range c.Printer().Files {
		read = append(read, f.Name)
	}
	write := func(text string) error {
		return s.output.write(cmd, read, func(w io.Writer) error {
			_, err := io.WriteString(w, text)
			return err
		})
	}
	if !s.ask {
		return write(starting.Text())
	}
	replace := write
	if s.output.Name == "" {
		replace = func(string) error { return nil } // printed once, at the end
	} else if err := write(starting.Text()); err != nil {
		return err
	} else {
		replace = s.replace
	}
	text, err := s.questions(cmd, c, starting, place, starting.Text(), replace)
	if err != nil || s.output.Name != "" {
		return err
	}
	return write(text)
}

// begun is the sheet that is to be gone on with; "" where a new one is begun.
func (s *sheetCommand) begun(args []string) (string, error) {
	if len(args) == 1 && strings.EqualFold(filepath.Ext(args[0]), ".toml") {
		if !s.ask {
			return "", fmt.Errorf("%s is a sheet; to fill its blanks: preflash sheet --ask %s", args[0],
				patch.Typed(args[0]))
		}
		if s.output.Name != "" && filepath.Clean(s.output.Name) != filepath.Clean(args[0]) {
			return "", fmt.Errorf("--output %s is another file than %s; a sheet is gone on with where it is",
				s.output.Name, args[0])
		}
		return args[0], nil
	}
	switch _, err := os.Lstat(s.output.Name); {
	case s.output.Name == "" || errors.Is(err, fs.ErrNotExist):
		return "", nil
	case !s.ask:
		return "", fmt.Errorf("--output %s is there already; to fill its blanks: preflash sheet --ask %s; "+
			"else name a new file, so that no sheet is lost", s.output.Name, patch.Typed(s.output.Name))
	}
	return s.output.Name, nil
}

// goOn asks for the blanks that are left in a sheet, which is replaced after each
// answer.
func (s *sheetCommand) goOn(cmd *cobra.Command, name string) error {
	s.output.Name = name
	if err := output.CheckSheet(name); err != nil {
		return err
	}
	text, c, place, err := fleet.ReadBegun(name, s.root)
	if err != nil {
		return err
	}
	defer c.Tree.Close()
	about, err := starter.Of(c, c.Name(place), place)
	if err != nil {
		return err
	}
	_, err = s.questions(cmd, c, about, place, text, s.replace)
	return err
}

// replace puts a text in place of the sheet.
func (s *sheetCommand) replace(text string) error { return output.ReplaceSheet(s.output.Name, text) }

func (s *sheetCommand) questions(cmd *cobra.Command, c *fleet.Configuration, about *starter.Sheet, place,
	text string, save func(string) error) (string, error) {
	q := starter.Questions{About: about, Save: save, Check: starter.CheckAt(c, place)}
	text, err := q.Ask(text, cmd.InOrStdin(), cmd.ErrOrStderr())
	if err == nil && s.output.Name != "" {
		next := "preflash check " + patch.Typed(s.output.Name)
		if q.Blocked(text) {
			next = "preflash sheet --ask " + patch.Typed(s.output.Name) + " goes on with them"
		}
		fmt.Fprintln(cmd.ErrOrStderr(), patch.Visible("Next: "+next))
	}
	return text, err
}
