package cli

import (
	"errors"
	"flag"
	"os"
	"os/exec"
	"strconv"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){
		"preflash": func() { os.Exit(Run(os.Args[1:], os.Stdout, os.Stderr)) },
	})
}

var updateScripts = flag.Bool("update-scripts", false,
	"write the files that scripts compare output with anew")

// TestScripts runs the command line as a user would: testdata/script/*.txtar,
// each in a new folder with the files that it holds.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir:           "testdata/script",
		UpdateScripts: *updateScripts,
		Cmds: map[string]func(*testscript.TestScript, bool, []string){
			"status": status,
			"link":   hardLink,
			"append": appendFile,
		},
	})
}

// status runs a command and demands its exit code: status PROGRAM CODE ARGS.
func status(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: status PROGRAM CODE [ARG...]")
	}
	err := ts.Exec(args[0], args[2:]...)
	code := 0
	var exited *exec.ExitError
	if errors.As(err, &exited) {
		code = exited.ExitCode()
	}
	if strconv.Itoa(code) != args[1] {
		ts.Fatalf("exit code %d, want %s", code, args[1])
	}
}

// hardLink gives a file a second name: link OLD NEW.
func hardLink(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 2 {
		ts.Fatalf("usage: link OLD NEW")
	}
	ts.Check(os.Link(ts.MkAbs(args[0]), ts.MkAbs(args[1])))
}

// appendFile adds a file to the end of another: append FILE OTHER.
func appendFile(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 2 {
		ts.Fatalf("usage: append FILE OTHER")
	}
	text := ts.ReadFile(args[0]) + ts.ReadFile(args[1])
	ts.Check(os.WriteFile(ts.MkAbs(args[0]), []byte(text), 0o666))
}
