package patch

import (
	"strings"
	"testing"

	"preflash/parser"
)

func TestMerge(t *testing.T) {
	const text = "a: 1\nb: 2\n"
	shared := parser.NewFile("shared.cfg", []byte(text))
	twin := parser.NewFile("shared.cfg", []byte(text))
	changed := parser.NewFile("shared.cfg", []byte("a: 9\n"))
	own := parser.NewFile("own.cfg", []byte(text))
	tests := []struct {
		name string
		a, b []parser.Edit // asked for by egret-01 and egret-02
		want map[string]string
		err  string
	}{
		{
			name: "equal edits of a file that was read twice",
			a:    []parser.Edit{edit(shared, "1", "5", "x")},
			b:    []parser.Edit{edit(twin, "1", "5", "x")},
			want: map[string]string{"shared.cfg": "a: 5\nb: 2\n"},
		},
		{
			name: "different places, different files",
			a:    []parser.Edit{edit(shared, "2", "6", "y")},
			b:    []parser.Edit{edit(own, "1", "7", "x"), edit(twin, "1", "5", "x")},
			want: map[string]string{"shared.cfg": "a: 5\nb: 6\n", "own.cfg": "a: 7\nb: 2\n"},
		},
		{
			name: "insertions of different settings at one place",
			a:    []parser.Edit{edit(shared, "b", "+c: 3\n", "c"), edit(shared, "b", "+d: 4\n", "d")},
			b:    []parser.Edit{edit(twin, "b", "+d: 4\n", "d"), edit(twin, "b: 2", "b: 3", "b")},
			want: map[string]string{"shared.cfg": "a: 1\nc: 3\nd: 4\nb: 3\n"},
		},
		{
			name: "two values",
			a:    []parser.Edit{edit(shared, "1", "5", "limit")},
			b:    []parser.Edit{edit(twin, "1", "6", "limit")},
			err: `shared.cfg:1: egret-01 and egret-02 share this file and want different changes here: ` +
				`limit "5" and limit "6"; let their sheets agree`,
		},
		{
			name: "one setting inserted with two values",
			a:    []parser.Edit{edit(shared, "b", "+c: 3\n", "c")},
			b:    []parser.Edit{edit(twin, "b", "+c: 4\n", "c")},
			err:  `shared.cfg:2: egret-01 and egret-02 share`,
		},
		{
			name: "insertion inside a replacement",
			a:    []parser.Edit{edit(shared, "a: 1\nb", "x", "x")},
			b:    []parser.Edit{edit(twin, "b", "+c: 4\n", "c")},
			err:  `egret-01 and egret-02 share`,
		},
		{
			name: "contents differ",
			a:    []parser.Edit{edit(shared, "1", "5", "x")},
			b:    []parser.Edit{edit(changed, "9", "5", "x")},
			err:  "shared.cfg: changed while it was read for egret-01 and for egret-02; run again",
		},
		{name: "no file", b: []parser.Edit{{For: "x"}}, err: "egret-02: an edit of the x belongs to no file"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			files, err := Merge([]Owned{{"egret-01", tt.a}, {"egret-02", tt.b}})
			if tt.err != "" {
				if err == nil || !strings.Contains(err.Error(), tt.err) {
					t.Fatalf("error %v, want %q", err, tt.err)
				}
				return
			}
			if err != nil {
				t.Fatal(err)
			}
			if len(files) != len(tt.want) {
				t.Errorf("%d files, want %d", len(files), len(tt.want))
			}
			for _, f := range files {
				got, err := Apply(f.File, f.Edits)
				if err != nil || string(got) != tt.want[f.File.Name] {
					t.Errorf("%s: got %q, %v; want %q", f.File.Name, got, err, tt.want[f.File.Name])
				}
			}
		})
	}
}

func TestMergeConflictNamesOwners(t *testing.T) {
	f := parser.NewFile("shared.cfg", []byte("a: 1\n"))
	_, err := Merge([]Owned{
		{"egret-01/swap.toml", []parser.Edit{edit(f, "1", "5", "x")}},
		{"egret-02/swap.toml", []parser.Edit{edit(f, "1", "5", "x")}},
		{"egret-03/swap.toml", []parser.Edit{edit(f, "1", "7", "x")}},
	})
	if err == nil || !strings.Contains(err.Error(), "egret-01/swap.toml and egret-03/swap.toml share") {
		t.Errorf("error %v", err)
	}
}
