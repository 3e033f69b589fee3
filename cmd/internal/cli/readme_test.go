package cli

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"

	"preflash/cmd/internal/testfiles"
)

var updateReadme = flag.Bool("update-readme", false, "write what the program prints into README.md")

// TestReadme runs every command that README.md shows with its output, at the
// repository's top, and holds the page to what the program prints. A line "…"
// stands for lines that the page leaves out.
func TestReadme(t *testing.T) {
	t.Chdir("../../..")
	t.Setenv("COLUMNS", "")
	page, err := os.ReadFile("README.md")
	if err != nil {
		t.Fatal(err)
	}
	const open, end = "```console\n$ ", "```\n"
	parts := strings.Split(string(page), open)
	if len(parts) < 2 {
		t.Fatal("README.md shows no command with its output")
	}
	for i, part := range parts[1:] {
		shown, rest, ok := strings.Cut(part, end)
		if !ok {
			t.Fatalf("block %d is not closed", i+1)
		}
		command, want, _ := strings.Cut(shown, "\n")
		args, ok := strings.CutPrefix(command, "preflash ")
		if !ok {
			t.Fatalf("%q is no preflash command", command)
		}
		if strings.HasPrefix(args, "check") { // the demo's waivers end some day
			args += " --today 2026-11-25"
		}
		got, stderr, exit := run(strings.Fields(args)...)
		if exit == exitFailure {
			t.Errorf("%s: %s", command, stderr)
		}
		if *updateReadme {
			parts[i+1] = command + "\n" + shorten(got, want) + end + rest
			continue
		}
		if shorten(got, want) != want {
			t.Errorf("README.md is out of date; go test ./cmd/internal/cli -run TestReadme -update-readme "+
				"writes it anew.\n%s\n%s", command, got)
		}
	}
	if *updateReadme {
		if err := os.WriteFile("README.md", []byte(strings.Join(parts, open)), 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// TestReadmeCommands runs every other command of README.md, in the order in which
// the page has them: those that stand by themselves, in a script, or in the text.
// They run in a copy of the demo that git knows.
func TestReadmeCommands(t *testing.T) {
	for _, program := range []string{"sh", "git"} {
		if _, err := exec.LookPath(program); err != nil {
			t.Skip(err)
		}
	}
	page, err := os.ReadFile("../../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	commands := readmeCommands(string(page))
	var script strings.Builder
	for _, c := range commands {
		switch program, _, _ := strings.Cut(c, " "); program {
		case "preflash", "git", "exec":
			fmt.Fprintf(&script, "shown '%s'\n", strings.ReplaceAll(c, "'", "''"))
		case "go", "CGO_ENABLED=0":
			runGo(t, c)
		default:
			t.Errorf("README.md has %q, which nothing runs", c)
		}
	}
	if n := strings.Count(script.String(), "\n"); n < 20 {
		t.Fatalf("only %d commands: %q", n, commands)
	}
	dir := t.TempDir()
	testfiles.Write(t, dir, map[string]string{"readme.txtar": script.String()})
	demo, err := filepath.Abs("../../../testdata/demo")
	if err != nil {
		t.Fatal(err)
	}
	testscript.Run(t, testscript.Params{
		Dir: dir,
		Setup: func(env *testscript.Env) error {
			if err := os.CopyFS(filepath.Join(env.WorkDir, "testdata", "demo"), os.DirFS(demo)); err != nil {
				return err
			}
			git := exec.Command("sh", "-c", `git init -q . && git add . &&
				git -c user.name=t -c user.email=t@example.invalid commit -qm start &&
				git update-ref refs/remotes/origin/main HEAD`)
			git.Dir = env.WorkDir
			out, err := git.CombinedOutput()
			if err != nil {
				return fmt.Errorf("%w: %s", err, out)
			}
			return nil
		},
		Cmds: map[string]func(*testscript.TestScript, bool, []string){
			"shown": func(ts *testscript.TestScript, _ bool, args []string) {
				shown(ts, args[0], string(page))
			},
		},
	})
}

// shown runs a line of the page: what it prints of a waiver stands below it.
func shown(ts *testscript.TestScript, line, page string) {
	dated := regexp.MustCompile(`preflash (check|diff|report|bench|waive)\b`).ReplaceAllString(line,
		"$0 --today 2026-11-25")
	if strings.Contains(line, "--help") {
		dated = line
	}
	err := ts.Exec("sh", "-c", dated)
	code := 0
	var exited *exec.ExitError
	if errors.As(err, &exited) {
		code = exited.ExitCode()
	} else if err != nil {
		ts.Fatalf("%s: %v", line, err)
	}
	if code > exitFound || code == exitFound && !strings.Contains(line, "preflash") {
		ts.Fatalf("%s: exit code %d", line, code)
	}
	if strings.HasPrefix(line, "preflash waive") {
		_, waiver, _ := strings.Cut(ts.ReadFile("stdout"), "[[waiver]]")
		if !strings.Contains(page, "```toml\n[[waiver]]"+waiver+"```\n") {
			ts.Fatalf("README.md shows another waiver than\n[[waiver]]%s", waiver)
		}
	}
}

// runGo runs a line of the page that needs the module, at its top. `go test` is
// what runs this.
func runGo(t *testing.T, line string) {
	if strings.HasPrefix(line, "go test") || testing.Short() {
		return
	}
	cmd := exec.Command("sh", "-c", line)
	cmd.Dir = "../../.."
	cmd.Env = append(os.Environ(), "GOBIN="+t.TempDir())
	out, err := cmd.CombinedOutput()
	found := strings.HasPrefix(line, "go run") && bytes.Contains(out, []byte("Verdict:"))
	if err != nil && !found { // go run makes 1 of every exit code but 0
		t.Errorf("%s: %v\n%s", line, err, out)
	}
}

// readmeCommands lists the commands of a page that are not shown with what they
// print.
func readmeCommands(page string) []string {
	var list []string
	var text strings.Builder
	fence := ""
	for line := range strings.Lines(page) {
		line = strings.TrimRight(line, "\n")
		mark, isFence := strings.CutPrefix(line, "```")
		isCommand := strings.HasPrefix(line, "    ")
		switch {
		case isFence && fence == "":
			fence = "```" + mark
		case isFence:
			fence = ""
		case fence == "```sh" && !strings.HasPrefix(line, "#!"), fence == "" && isCommand:
			list = append(list, strings.TrimSpace(line))
		case fence == "":
			text.WriteString(line + " ")
		}
	}
	for _, m := range regexp.MustCompile("`(preflash [^`]+)`").FindAllStringSubmatch(text.String(), -1) {
		list = append(list, m[1])
	}
	return list
}

// shorten cuts what was printed where the page leaves lines out at its end.
func shorten(got, shown string) string {
	if !strings.HasSuffix(shown, "\n…\n") {
		return got
	}
	keep := strings.Count(shown, "\n") - 1
	lines := strings.SplitAfter(got, "\n")
	if len(lines) <= keep {
		return got
	}
	return strings.Join(lines[:keep], "") + "…\n"
}
