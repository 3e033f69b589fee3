//go:build unix

package fleet

import (
	"os"
	"os/exec"
	"path/filepath"
	"runtime/debug"
	"strings"
	"syscall"
	"testing"
	"time"
)

const (
	definesSize  = 280_000 // bytes, some 8,000 lines
	sectionsSize = 30_000
)

// BenchmarkOnePrinter reads and checks one printer of defines, 280 KB.
func BenchmarkOnePrinter(b *testing.B) { benchmarkOne(b, 1, 0, definesSize) }

// BenchmarkOneSections does the same for one printer of sections, 30 KB.
func BenchmarkOneSections(b *testing.B) { benchmarkOne(b, 0, 1, sectionsSize) }

func benchmarkOne(b *testing.B, defines, sections int, size int64) {
	b.Chdir(b.TempDir())
	writeFleet(b, defines, sections, definesSize, sectionsSize)
	b.SetBytes(size)
	collectSeldom(b)
	for b.Loop() {
		check(Options{Today: today})
	}
}

// collectSeldom sets the garbage collector as the program does.
func collectSeldom(b *testing.B) {
	before := debug.SetGCPercent(400)
	b.Cleanup(func() { debug.SetGCPercent(before) })
}

// BenchmarkReadAlone only reads the files that BenchmarkOnePrinter reads: the
// limit that no check can beat.
func BenchmarkReadAlone(b *testing.B) {
	b.Chdir(b.TempDir())
	writeFleet(b, 1, 0, definesSize, sectionsSize)
	b.SetBytes(definesSize)
	for b.Loop() {
		for _, name := range []string{"swap.toml", "Configuration.h", "Configuration_adv.h"} {
			if _, err := os.ReadFile(filepath.Join("printer-0001", name)); err != nil {
				b.Fatal(err)
			}
		}
	}
}

// BenchmarkFleet runs the program over 1,000 printers of each style, one in five
// faulty, and reports how many times the processor time of wc -l over the same
// files that costs, in turn with it, and how many times less than cpp once for
// each printer of defines plus configparser, in one process, over all of
// sections. BenchmarkFleetTwice shows whether it grows with the printers.
func BenchmarkFleet(b *testing.B) { benchmarkFleet(b, 1000) }

func BenchmarkFleetTwice(b *testing.B) { benchmarkFleet(b, 2000) }

func benchmarkFleet(b *testing.B, each int) {
	program := build(b)
	b.Chdir(b.TempDir())
	writeFleet(b, each, each, definesSize, sectionsSize)
	breakSome(b)
	others := othersCPU(b, each)
	files, err := filepath.Glob("printer-*/*")
	if err != nil || len(files) != 5*each {
		b.Fatalf("%d files, %v", len(files), err)
	}
	b.ResetTimer()
	var ours, wc time.Duration
	var peakMiB float64
	for b.Loop() {
		start := cpuOf(b, syscall.RUSAGE_CHILDREN)
		run(b, "wc", append([]string{"-l"}, files...)...)
		between := cpuOf(b, syscall.RUSAGE_CHILDREN)
		output := filepath.Join(b.TempDir(), "result.json")
		peakMiB = max(peakMiB, run(b, program, "check", "--format", "json", "--output", output))
		wc += between - start
		ours += cpuOf(b, syscall.RUSAGE_CHILDREN) - between
	}
	perRun := ours / time.Duration(b.N)
	b.ReportMetric(perRun.Seconds(), "cpu-s/op")
	b.ReportMetric(peakMiB, "peak-MiB")
	b.ReportMetric(ours.Seconds()/wc.Seconds(), "times-wc")
	b.ReportMetric(others.Seconds()/perRun.Seconds(), "times-less-cpu")
}

// breakSome makes every fifth printer shut down too late.
func breakSome(b *testing.B) {
	files, _ := filepath.Glob("printer-*[05]/*")
	late := strings.NewReplacer("max_temp: 290", "max_temp: 340", "MAXTEMP 275", "MAXTEMP 340")
	for _, name := range files {
		text, err := os.ReadFile(name)
		if err == nil {
			err = os.WriteFile(name, []byte(late.Replace(string(text))), 0o666)
		}
		if err != nil {
			b.Fatal(err)
		}
	}
}

// build builds the program into a folder that the benchmark removes.
func build(b *testing.B) string {
	b.Helper()
	program := filepath.Join(b.TempDir(), "preflash")
	run(b, "go", "build", "-o", program, "preflash/cmd/preflash")
	return program
}

const parseAll = `
import configparser, glob
for name in glob.glob("*/printer.cfg"):
    text = "".join(line.split("#")[0].rstrip("\n") + "\n" for line in open(name))
    p = configparser.RawConfigParser(strict=False, inline_comment_prefixes=(";", "#"))
    p.read_string(text)
`

// othersCPU is the processor time of the programs that Preflash is held
// against. cpp runs on a sample and is scaled up.
func othersCPU(b *testing.B, each int) time.Duration {
	b.Helper()
	const sample = 20
	start := cpuOf(b, syscall.RUSAGE_CHILDREN)
	for range sample {
		run(b, "cpp", "-dM", "-undef", "-w", "-DENABLED(x)=0",
			"-include", "printer-0001/Configuration.h", "printer-0001/Configuration_adv.h")
	}
	preprocessor := (cpuOf(b, syscall.RUSAGE_CHILDREN) - start) * time.Duration(each) / sample
	start = cpuOf(b, syscall.RUSAGE_CHILDREN)
	run(b, "python3", "-c", parseAll)
	return preprocessor + cpuOf(b, syscall.RUSAGE_CHILDREN) - start
}

// run runs a command and returns the most memory that it held, in MiB.
func run(b *testing.B, name string, args ...string) float64 {
	b.Helper()
	cmd := exec.Command(name, args...)
	cmd.Stderr = os.Stderr
	err := cmd.Run()
	// 1 says that it found something.
	if _, exited := err.(*exec.ExitError); err != nil && (!exited || cmd.ProcessState.ExitCode() > 1) {
		b.Fatalf("%s: %v", name, err)
	}
	usage := cmd.ProcessState.SysUsage().(*syscall.Rusage)
	return float64(usage.Maxrss) / 1024 // Linux counts KiB
}

// cpuOf is the processor time used so far.
func cpuOf(b *testing.B, who int) time.Duration {
	b.Helper()
	var u syscall.Rusage
	if err := syscall.Getrusage(who, &u); err != nil {
		b.Fatal(err)
	}
	return time.Duration(u.Utime.Nano() + u.Stime.Nano())
}
