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
	if os.Getenv("PREFLASH_LIVE") == "1" {
		cmd := exec.Command(python(), name+".py")
		cmd.Dir = dir
		var problems bytes.Buffer
		cmd.Stderr = &problems
		if data, err = cmd.Output(); err != nil {
			t.Fatalf("python3 with SciPy is needed for the live comparison: %v\n%s", err, &problems)
		}
	}
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(data, into); err != nil {
		t.Fatal(err)
	}
}

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
