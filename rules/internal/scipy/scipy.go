// Package scipy gives tests what SciPy computed: a script and its committed
// output, or the script run anew.
package scipy

import (
	"bytes"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
)

// Reference decodes dir/name.json, which dir/name.py printed. Where
// PREFLASH_LIVE=1 is set the script is run instead, and it is a failure that
// it cannot.
func Reference(t testing.TB, dir, name string, into any) {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(dir, name+".json"))
	if Live() {
		data, err = Run(t, dir, name+".py", nil), nil
	}
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(data, into); err != nil {
		t.Fatal(err)
	}
}

// Run runs a script in its folder and returns what it prints.
func Run(t testing.TB, dir, script string, input []byte, args ...string) []byte {
	t.Helper()
	cmd := exec.Command(python(), append([]string{"-B", script}, args...)...)
	cmd.Dir, cmd.Stdin = dir, bytes.NewReader(input)
	var problems bytes.Buffer
	cmd.Stderr = &problems
	data, err := cmd.Output()
	if err != nil {
		t.Fatalf("python3 with SciPy is needed for the live comparison: %v\n%s", err, &problems)
	}
	return data
}

// Live reports whether the outside programs are to be run.
func Live() bool { return os.Getenv("PREFLASH_LIVE") == "1" }

// python is the first Python that has SciPy: a version manager's python3 often
// hides the system's, which is where packages put it.
func python() string {
	for _, name := range []string{"python3", "/usr/bin/python3"} {
		if exec.Command(name, "-c", "import scipy").Run() == nil {
			return name
		}
	}
	return "python3"
}
