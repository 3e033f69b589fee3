package defines

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"preflash/parser"
)

// large writes a configuration of about 8,000 lines and 280 KB in the manner
// of real ones: most lines are comments, most options are commented out, and
// some hundred conditionals depend on them.
func large() string {
	var b strings.Builder
	b.WriteString("#pragma once\n\n")
	for section := 0; strings.Count(b.String(), "\n") < 7900; section++ {
		n := func(k int) string { return fmt.Sprintf("AREA%02d_OPTION_%d", section, k) }
		fmt.Fprintf(&b, "/**\n * Area %d of the printer\n *\n", section)
		for i := range 24 {
			fmt.Fprintf(&b, " *   %d : what choice %d of this area means, in words\n", i, i)
		}
		fmt.Fprintf(&b, " */\n#define %s %d // the usual one\n\n", n(0), section%7)
		for i := range 6 {
			fmt.Fprintf(&b, `// A line that explains the option below,
// and another one
//#define %s %d.%d   // (mm) another remark
`, n(10+i), i, section%10)
		}
		fmt.Fprintf(&b, "#define %s\n", n(1))
		fmt.Fprintf(&b, "#define %s { 80, 80, 400, %d }\n\n", n(2), section)
		fmt.Fprintf(&b, `#if ENABLED(%s)
  //#define %s
  #define %s 12.5f // degrees
  #if %s > 3
    #define %s (%s + 1)
  #endif
#endif

`, n(1), n(20), n(21), n(0), n(22), n(0))
		fmt.Fprintf(&b, `#if ANY(%s, %s) && DISABLED(%s)
  #define %s "text with // in it" // and a remark
  // nothing else
#elif defined(%s)
  #define %s 4
#else
  #define %s true
#endif

`, n(10), n(1), n(20), n(23), n(11), n(24), n(25))
		fmt.Fprintf(&b, "#ifdef %s\n  /* a block comment of one line */\n  #define %s 115200\n#endif\n",
			n(12), n(26))
		fmt.Fprintf(&b, `#if EITHER(%s, %s) || (%s >= 2 && !defined(%s))
  #define %s 1
#endif

//
// The next area
//


`, n(13), n(14), n(0), n(1), n(27))
	}
	return b.String()
}

func writeLarge(b *testing.B) (dir string, size int) {
	dir, text := b.TempDir(), large()
	writeFile(b, dir, "main.h", text)
	return dir, len(text)
}

func BenchmarkRead(b *testing.B) {
	dir, size := writeLarge(b)
	tree := openTree(b, dir)
	b.SetBytes(int64(size))
	b.ReportAllocs()
	for b.Loop() {
		if _, err := load(tree, parser.Request{Files: []string{"main.h"}}, nil); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkCPP runs GNU cpp on the same file, its start-up included;
// BenchmarkCPPStart is that start-up alone.
func BenchmarkCPP(b *testing.B) {
	dir, size := writeLarge(b)
	b.SetBytes(int64(size))
	cpp(b, filepath.Join(dir, "main.h"))
}

func BenchmarkCPPStart(b *testing.B) {
	cpp(b, os.DevNull)
}

func cpp(b *testing.B, name string) {
	shim := filepath.Join(references, "shim.h")
	for b.Loop() {
		cmd := exec.Command("cpp", "-x", "c++", "-undef", "-nostdinc", "-dM", "-imacros", shim, name)
		if out, err := cmd.CombinedOutput(); err != nil {
			b.Fatalf("%v\n%s", err, out)
		}
	}
}
