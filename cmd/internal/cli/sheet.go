package cli

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path"
	"path/filepath"

	"github.com/spf13/cobra"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/starter"
	"preflash/parser"
	"preflash/parser/sheet"
)

func newSheet() *cobra.Command {
	var root string
	var tool int
	var ask bool
	var output outputFlag
	cmd := &cobra.Command{
		Use:   "sheet [CONFIG…]",
		Short: "Print a commented sheet to start from, filled from a configuration",
		Long: `Sheet prints a swap sheet: what the configuration tells about the hotend now on
the printer, and a blank for each thing that you measure or read from a label,
with how. "preflash check" names the blanks that are left.

CONFIG are the files of the configuration, in the order in which they are read;
without them, the ones in the working directory. The sheet belongs in the folder
of the first one, or where --output says: its paths are relative to that.`,
		Example: `  preflash sheet Configuration.h Configuration_adv.h > swap.toml
  preflash sheet --ask --output egret-03/swap.toml egret-03/printer.cfg`,
		RunE: func(cmd *cobra.Command, args []string) error {
			if tool < 0 || tool > 15 {
				return fmt.Errorf("--tool %d is no hotend; they count from 0 to 15", tool)
			}
			if _, err := os.Lstat(output.file); output.file != "" && !errors.Is(err, fs.ErrNotExist) {
				return fmt.Errorf("--output %s is there already; name a new file, so that no sheet is lost", output.file)
			}
			c, err := fleet.ReadConfiguration(args, root, tool)
			if err != nil {
				return err
			}
			place, err := placeFor(c, output.file)
			if err != nil {
				return err
			}
			s, err := starterOf(c, place)
			if err != nil {
				return err
			}
			if ask {
				err := starter.Ask(s, cmd.InOrStdin(), cmd.ErrOrStderr(), func(text string) error {
					_, err := sheet.Read(c.Tree.With(map[string][]byte{c.Tree.Shown(place): []byte(text)}), place)
					return err
				})
				if err != nil {
					return err
				}
			}
			var read []string
			for _, f := range c.Printer().Files {
				read = append(read, f.Name)
			}
			return output.write(cmd, read, func(w io.Writer) error {
				_, err := io.WriteString(w, s.Text())
				return err
			})
		},
	}
	f := cmd.Flags()
	f.IntVar(&tool, "tool", 0, "which hotend, counted from 0")
	f.BoolVar(&ask, "ask", false, "ask for the blanks one by one")
	f.StringVar(&root, "root", "", "read nothing outside this folder (default: the repository, else the working directory)")
	output.add(cmd)
	return cmd
}

// placeFor is where a sheet will stand, inside the tree.
func placeFor(c *fleet.Configuration, output string) (string, error) {
	if output == "" {
		return path.Join(path.Dir(c.Files[0]), "swap.toml"), nil
	}
	return c.Inside(output)
}

func starterOf(c *fleet.Configuration, place string) (*starter.Sheet, error) {
	f := starter.Facts{Name: c.NameFor(place), Place: c.Tree.Shown(place), Guess: c.Guess, Printer: c.Printer()}
	for _, list := range []struct {
		from []string
		to   *[]string
	}{{c.Files, &f.Config}, {c.Absent, &f.Absent}} {
		for _, name := range list.from {
			rel, err := filepath.Rel(path.Dir(place), name)
			if err != nil {
				return nil, &parser.Error{File: c.Tree.Shown(name), Message: "cannot be named from " + c.Tree.Shown(place)}
			}
			*list.to = append(*list.to, filepath.ToSlash(rel))
		}
	}
	return starter.New(f), nil
}
