package patch

import (
	"bytes"
	"fmt"
	"io"
	"testing"

	"preflash/parser"
)

// largeFile is a configuration of 8,000 lines and five edits spread over it.
func largeFile() (*parser.File, []parser.Edit) {
	var b bytes.Buffer
	for i := range 8000 {
		switch i % 4 {
		case 0:
			fmt.Fprintf(&b, "#define OPTION_%d %d // what it does\n", i, i*7)
		case 3:
			b.WriteString("\n")
		default:
			b.WriteString("//\n")
		}
	}
	f := parser.NewFile("Configuration.h", b.Bytes())
	var edits []parser.Edit
	for _, line := range []int{40, 1600, 3200, 6400, 7996} {
		edits = append(edits, edit(f, fmt.Sprintf(" %d //", line*7), " 1 //", "x"))
	}
	return f, edits
}

// largeChange is largeFile with its edits made.
func largeChange(b *testing.B) FileChange {
	f, edits := largeFile()
	text, err := Apply(f, edits)
	if err != nil {
		b.Fatal(err)
	}
	b.SetBytes(int64(len(f.Data)))
	return FileChange{f.Name, f.Data, text}
}

func BenchmarkApply(b *testing.B) {
	f, edits := largeFile()
	b.SetBytes(int64(len(f.Data)))
	for b.Loop() {
		if _, err := Apply(f, edits); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkUnified(b *testing.B) {
	c := largeChange(b)
	b.ReportAllocs()
	for b.Loop() {
		if err := Unified(io.Discard, []FileChange{c}, Options{}); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkPatch(b *testing.B) {
	c := largeChange(b)
	diff := unified(b, []FileChange{c}, Options{})
	for b.Loop() {
		if _, err := patchOne(c.Name, c.Old, diff); err != nil {
			b.Fatal(err)
		}
	}
}
