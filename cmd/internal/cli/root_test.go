package cli

import "testing"

// The command that is called is made alone, under the name that it has; whatever
// else is asked finds all of them.
func TestCommandsAreMadeByName(t *testing.T) {
	for _, c := range commands {
		made := newRoot([]string{c.name, "--help"}).Commands()
		if len(made) != 1 || made[0].Name() != c.name {
			t.Errorf("%s makes %v", c.name, made)
		}
	}
	if made := newRoot([]string{"--version"}).Commands(); len(made) > 0 {
		t.Errorf("--version makes %v", made)
	}
	for _, args := range [][]string{
		nil, {"-v"}, {"--help"}, {"help", "check"}, {"chekc"}, {"__complete", ""},
	} {
		if made := newRoot(args).Commands(); len(made) != len(commands) {
			t.Errorf("%q finds %d commands, want %d", args, len(made), len(commands))
		}
	}
}
