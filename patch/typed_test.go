package patch

import (
	"os/exec"
	"testing"
)

func TestTyped(t *testing.T) {
	for name, want := range map[string]string{
		"printers/egret-01/swap.toml": "printers/egret-01/swap.toml",
		"my printer/swap.toml":        "'my printer/swap.toml'",
		"it's":                        `'it'\''s'`,
		"größe/swap.toml":             "größe/swap.toml",
		"$(id);`id`&*":                "'$(id);`id`&*'",
		"":                            "''",
		"azAZ09_./+=@%:,-":            "azAZ09_./+=@%:,-",
		"`":                           "'`'", // the characters beside a, z, A, Z, 0 and 9
		"{":                           "'{'",
		"[":                           "'['",
		";":                           "';'",
		"\x7f":                        "'\x7f'",
	} {
		if got := Typed(name); got != want {
			t.Errorf("%q is typed %s, want %s", name, got, want)
		}
		shell, err := exec.LookPath("sh")
		if err != nil {
			continue
		}
		out, err := exec.Command(shell, "-c", "printf %s "+Typed(name)).Output()
		if err != nil || string(out) != name {
			t.Errorf("a shell makes %q of %q (%v)", out, name, err)
		}
	}
}
