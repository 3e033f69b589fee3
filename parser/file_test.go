package parser

import (
	"bytes"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func TestPosition(t *testing.T) {
	f := NewFile("a.h", []byte("ab\r\n\ncé\n"))
	for _, tt := range []struct{ offset, line, column int }{
		{-1, 1, 1}, {0, 1, 1}, {1, 1, 2}, {3, 1, 4}, {4, 2, 1}, {5, 3, 1}, {7, 3, 3}, {8, 3, 4}, {9, 4, 1},
		{99, 4, 1},
	} {
		if line, column := f.Position(tt.offset); line != tt.line || column != tt.column {
			t.Errorf("Position(%d) = %d, %d, want %d, %d", tt.offset, line, column, tt.line, tt.column)
		}
	}
}

// Both ways to find a line, by counting and in the list, agree with a count
// of another kind.
func TestPositionCounts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		data := rapid.SliceOf(rapid.SampledFrom([]byte("ab\n\r"))).Draw(t, "data")
		offset := rapid.IntRange(0, len(data)).Draw(t, "offset")
		lines := bytes.SplitAfter(data[:offset], []byte("\n"))
		wantLine, wantColumn := len(lines), len(lines[len(lines)-1])+1
		f := NewFile("a.h", data)
		for range 2 * fewQuestions {
			if line, column := f.Position(offset); line != wantLine || column != wantColumn {
				t.Fatalf("Position = %d, %d, want %d, %d", line, column, wantLine, wantColumn)
			}
		}
	})
}

func TestErrorText(t *testing.T) {
	f := NewFile("dir/a.h", []byte("one\ntwo"))
	for _, tt := range []struct {
		err  *Error
		want string
	}{
		{Errorf(Span{f, 4, 7}, "is %d", 2), "dir/a.h:2: is 2"},
		{Errorf(Span{}, "nowhere"), "nowhere"},
		{&Error{File: "a.h", Message: "is missing"}, "a.h: is missing"},
	} {
		if got := tt.err.Error(); got != tt.want {
			t.Errorf("Error() = %q, want %q", got, tt.want)
		}
	}
}

func TestClip(t *testing.T) {
	for _, tt := range []struct {
		text string
		most int
		want string
	}{
		{"12345", 6, "12345"},
		{"123456", 6, "123456"},
		{"1234567", 6, "123…"},
		{"12é4567", 7, "12é…"},
		{"123é567", 7, "123…"}, // not in the middle of a character
		{strings.Repeat("\x80", 11), 10, strings.Repeat("\x80", 4) + "…"}, // bytes that are none
	} {
		if got := Clip(tt.text, tt.most); got != tt.want || len(got) > tt.most {
			t.Errorf("Clip(%q, %d) = %q, want %q", tt.text, tt.most, got, tt.want)
		}
	}
}

func TestCite(t *testing.T) {
	for name, cited := range map[string]bool{
		"a.h": true, "A.CFG": true, "x/printer.cfg": true, "a.conf": true, "a.ini": true, "a.inc": true,
		"a.hpp": true, "a.hh": true,
		".env": false, "config": false, "a.txt": false, "cfg": false, "x.cfg/secret": false, "": false,
	} {
		if got := NewFile(name, nil).Cite("line"); (got == "line") != cited {
			t.Errorf("%s: %q", name, got)
		}
	}
}

func TestHidden(t *testing.T) {
	for r, want := range map[rune]bool{
		' ': false, '\n': true, 0x1f: true, 0x7e: false, 0x7f: true, 0x9f: true, 0xa0: false, 'é': false,
		0x202e: true, 0x2028: true, 0xe0041: true,
	} {
		if Hidden(r) != want {
			t.Errorf("%U is hidden: %v", r, !want)
		}
	}
}
