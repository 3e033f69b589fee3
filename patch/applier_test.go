package patch

import (
	"strings"
	"testing"
)

// patchOne applies a diff that names this file at most.
func patchOne(name string, old, diff []byte) ([]byte, error) {
	texts, err := Patch(map[string][]byte{name: old}, diff)
	if err != nil {
		return nil, err
	}
	if text, changed := texts[name]; changed {
		return text, nil
	}
	return old, nil
}

func TestPatchRefuses(t *testing.T) {
	const old = "a\nb\nc\nd\n"
	const head = "--- a/x\n+++ b/x\n"
	tests := []struct{ name, diff, want string }{
		{"wrong line", head + "@@ -2 +2 @@\n-x\n+y\n", "diff:4: does not match line 2"},
		{"part of a line",
			"--- a/x\n+++ b/x\n@@ -1 +1 @@\n-\n\\ No newline at end of file\n+y\n", "does not match line 1"},
		{"wrong context", head + "@@ -1,2 +1,2 @@\n x\n-b\n+y\n", "does not match line 1"},
		{"elsewhere", head + "@@ -3 +3 @@\n-b\n+y\n", "does not match line 3"},
		{"past the end", head + "@@ -9 +9 @@\n-b\n+y\n", "past the end"},
		{"backwards", head + "@@ -3 +3 @@\n-c\n+y\n@@ -1 +1 @@\n-a\n+z\n", "goes back to line 1"},
		{"new line number after lines were gained",
			head + "@@ -1 +1,2 @@\n-a\n+y\n+z\n@@ -3 +3 @@\n-c\n+y\n", "puts line 3 at 3, not 4"},
		{"new line number", head + "@@ -2 +3 @@\n-b\n+y\n", "puts line 2 at 3, not 2"},
		{"too few lines", head + "@@ -2,2 +2,2 @@\n-b\n+y\n", "ends in the middle of a hunk"},
		{"too many new lines", head + "@@ -2,2 +2 @@\n+y\n+z\n-b\n-c\n", "more new lines"},
		{"cut off", head + "@@ -2 +2 @@\n-b\n+y", "ends in the middle"},
		{"odd mark", head + "@@ -2 +2 @@\n*b\n+y\n", `starts with '*'`},
		{"malformed hunk", head + "@@ -2 @@\n-b\n+y\n", "malformed hunk"},
		{"overflow", head + "@@ -99999999999999999999 +1 @@\n-b\n+y\n", "malformed hunk"},
		{"negative", head + "@@ --2 +2 @@\n-b\n+y\n", "malformed hunk"},
		{"no hunk", head, "has no hunk for x"},
		{"no second name", "--- a/x\n@@ -2 +2 @@\n-b\n+y\n", "no file name"},
		{"no prefix", "--- x\n+++ x\n@@ -2 +2 @@\n-b\n+y\n", "no file name"},
		{"two names", "--- a/x\n+++ b/y\n@@ -2 +2 @@\n-b\n+y\n", "names two files"},
		{"bad quotes", "--- \"a/x\\9\"\n+++ b/y\n", "no file name"},
		{"unmarked lead", "hello\n" + head + "@@ -2 +2 @@\n-b\n+y\n", "diff:1: has a line above"},
		{"no newline in the middle",
			head + "@@ -2 +2 @@\n-b\n+y\n\\ No newline at end of file\n", "no newline in the middle"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			got, err := patchOne("x", []byte(old), []byte(tt.diff))
			if err == nil || got != nil || !strings.Contains(err.Error(), tt.want) {
				t.Errorf("got %q, error %v; want %q", got, err, tt.want)
			}
		})
	}
}

func TestPatchRefusesFiles(t *testing.T) {
	const one = "--- a/x\n+++ b/x\n@@ -1 +1 @@\n-a\n+b\n"
	tests := []struct{ name, diff, want string }{
		{"unread file", strings.ReplaceAll(one, "/x", "/y"), "changes y, which was not read"},
		{"twice", one + one, "changes x twice"},
		{"text between", one + "hello\n" + one, "no file name"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			_, err := Patch(map[string][]byte{"x": []byte("a\n")}, []byte(tt.diff))
			if err == nil || !strings.Contains(err.Error(), tt.want) {
				t.Errorf("error %v, want %q", err, tt.want)
			}
		})
	}
}

// Hunks without context, as other programs write them.
func TestPatchWithoutContext(t *testing.T) {
	for _, tt := range []struct{ old, hunk, want string }{
		{"a\nb\n", "@@ -1 +0,0 @@\n-a\n", "b\n"},
		{"a\nb\n", "@@ -2 +1,0 @@\n-b\n", "a\n"},
		{"b\n", "@@ -0,0 +1 @@\n+a\n", "a\nb\n"},
		{"", "@@ -0,0 +1 @@\n+a\n", "a\n"},
	} {
		got, err := patchOne("x", []byte(tt.old), []byte("--- a/x\n+++ b/x\n"+tt.hunk))
		if err != nil || string(got) != tt.want {
			t.Errorf("%q with %q: %q, %v, want %q", tt.old, tt.hunk, got, err, tt.want)
		}
	}
}

func TestPatchNothing(t *testing.T) {
	for _, diff := range []string{"", "# only words\n"} {
		if got, err := patchOne("x", []byte("a\n"), []byte(diff)); err != nil || string(got) != "a\n" {
			t.Errorf("%q gives %q, %v", diff, got, err)
		}
	}
}

func FuzzPatch(f *testing.F) {
	for _, c := range textCases() {
		f.Add(c.file, []byte(c.old),
			unified(f, []FileChange{{c.file, []byte(c.old), []byte(c.new)}}, Options{}))
	}
	f.Fuzz(func(t *testing.T, name string, old, diff []byte) {
		text, err := patchOne(name, old, diff)
		if err != nil && text != nil {
			t.Errorf("text %q beside the error %v", text, err)
		}
		if len(text) > len(old)+len(diff) {
			t.Errorf("%d bytes from %d and %d", len(text), len(old), len(diff))
		}
	})
}
