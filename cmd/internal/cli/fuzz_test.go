package cli

import (
	"bytes"
	"encoding/json"
	"encoding/xml"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"preflash/cmd/internal/testfiles"
)

// hangs is after how long a command is taken to hang. Nothing that a fuzzer
// writes takes a hundredth of it.
const hangs = 60 * time.Second

// FuzzCommands gives a sheet and a configuration to every command that reads
// them, in every format. Nothing panics or hangs, JSON, SARIF and HTML are
// valid, and no output could act on a terminal or on a service.
func FuzzCommands(f *testing.F) {
	seeds, err := filepath.Glob(filepath.Join(hostileDir, "*", "swap.toml"))
	if err != nil || len(seeds) == 0 {
		f.Fatal("no seeds: ", err)
	}
	demo, err := filepath.Glob("../../../testdata/demo/*/swap.toml")
	if err != nil || len(demo) == 0 {
		f.Fatal("no seeds: ", err)
	}
	for _, name := range append(seeds, demo...) {
		sheet, err := os.ReadFile(name)
		if err != nil {
			continue // a link out of the corpus
		}
		for _, config := range []string{"Configuration.h", "printer.cfg"} {
			text, err := os.ReadFile(filepath.Join(filepath.Dir(name), config))
			if err == nil && len(text) < 20_000 {
				f.Add(string(sheet), text)
			}
		}
	}
	schema, err := jsonschema.NewCompiler().Compile("../../../testdata/reference/sarif/sarif-2.1.0.json")
	if err != nil {
		f.Fatal(err)
	}
	f.Fuzz(func(t *testing.T, sheet string, config []byte) {
		dir := t.TempDir()
		testfiles.Write(t, dir, map[string]string{"swap.toml": sheet, "Configuration.h": string(config),
			"printer.cfg": string(config)})
		run := func(args ...string) string {
			args = append(args, "--root", dir, dir)
			var stdout, stderr bytes.Buffer
			// The engine says of a worker that hangs only that it is gone.
			watch := time.AfterFunc(hangs, func() {
				panic(fmt.Sprintf("preflash %q hangs with the sheet %q and the configuration %q",
					args[:len(args)-3], sheet, config))
			})
			defer watch.Stop()
			code := Run(args, &stdout, &stderr)
			if code < exitClean || code > exitFailure {
				t.Errorf("%v exits with %d", args, code)
			}
			for _, out := range []string{stdout.String(), stderr.String()} {
				if strings.Contains(out, "fault in preflash") {
					t.Errorf("%v: %s", args, out)
				}
			}
			return stdout.String()
		}
		text := run("check", "--today", "2026-11-25")
		text += run("values", "--all") + run("bench")
		for line := range strings.Lines(text) {
			if strings.HasPrefix(strings.TrimLeft(line, " \t"), "::") || strings.Contains(line, "##") {
				t.Errorf("a service could take this line for a command: %q", line)
			}
			if r, found := testfiles.Hidden(line); found {
				t.Fatalf("%U stands raw in %q", r, line)
			}
		}
		for _, command := range []string{"check", "values --all"} {
			out := run(append(strings.Fields(command), "--format", "json")...)
			if !json.Valid([]byte(out)) {
				t.Errorf("no JSON: %s", out)
			}
		}
		log, err := jsonschema.UnmarshalJSON(strings.NewReader(run("check", "--format", "sarif")))
		if err != nil {
			t.Fatalf("no JSON: %v", err)
		}
		if err := schema.Validate(log); err != nil {
			t.Errorf("no SARIF: %v", err)
		}
		if out := run("check", "--format", "markdown"); len(out) >= 60_000 {
			t.Errorf("Markdown has %d bytes", len(out))
		}
		run("bench", "--format", "markdown")
		run("diff")
		for d := xml.NewDecoder(strings.NewReader(run("report"))); ; {
			if _, err := d.Token(); err == io.EOF {
				break
			} else if err != nil {
				t.Fatalf("the page is not well-formed: %v", err)
			}
		}
	})
}
