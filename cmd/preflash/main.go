// Preflash says, before a firmware goes on a 3D printer, what in its
// configuration no longer fits the hotend that goes in.
package main

import (
	"os"

	"preflash/cmd/internal/cli"
)

func main() { os.Exit(cli.Run(os.Args[1:], os.Stdout, os.Stderr)) }
