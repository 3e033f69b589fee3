//go:build unix

package heat

import (
	"syscall"
	"testing"
)

// onePrinter is all that the rules ask of one printer whose watch trips, the
// case that costs most, without the memo.
func onePrinter(p Plant, w Watch, loop Loop, assumed Figures) (sum float64) {
	ask := func(q Plant) float64 {
		if w.Form == ErrorSumWatch {
			return w.Sum.outcome(q, FanFull, 272).MostCS
		}
		return w.Rise.measure(riseCurve(q, FanFull, w.Rise, 272, w.Rise.WindowS), 272).LastC
	}
	answer := func(q Plant) float64 {
		return step(q, Load{}, loop, w, 240, func(Sample) {}).OvershootC
	}
	for _, f := range []struct {
		figure func(Plant) float64
		of     Figures
	}{{ask, assumed &^ Loss}, {answer, assumed &^ LossFan}, {Plant.StuckOn, assumed & Loss}} {
		least, most := p.Range(f.of, f.figure)
		sum += f.figure(p) + least + most
	}
	flow := Load{Fan: 1, FlowMM3S: 18}
	var fixed, trip float64
	if w.Form == ErrorSumWatch {
		sum += w.Sum.outcome(p, Load{}, 272).MostCS
		trip, _ = w.Sum.HoldTrip(p, flow, 272)
	} else {
		fixed, _ = LeastWindow(p, FanFull, w.Rise, 272, 120)
		trip, _ = w.Hold.HoldTrip(p, flow, 272)
	}
	return sum + fixed + trip + p.Headroom(272, 18).Ratio
}

func BenchmarkOnePrinter(b *testing.B) {
	for _, c := range []struct {
		name    string
		watch   Watch
		loop    Loop
		assumed Figures
	}{
		{"window/given", windowWatch, tunedRange, 0},
		{"window/assumed", windowWatch, tunedRange, AllFigures},
		{"sum/given", sumWatch, tunedClamped, 0},
		{"sum/assumed", sumWatch, tunedClamped, AllFigures},
	} {
		b.Run(c.name, func(b *testing.B) {
			b.ReportAllocs()
			before := processorTime()
			for b.Loop() {
				onePrinter(ptcPlant(), c.watch, c.loop, c.assumed)
			}
			b.ReportMetric(float64(processorTime()-before)/float64(b.N), "cpu-ns/op")
		})
	}
}

// processorTime is that of the whole process in ns: on a machine that others
// use too, the clock on the wall says little.
func processorTime() int64 {
	var u syscall.Rusage
	if err := syscall.Getrusage(syscall.RUSAGE_SELF, &u); err != nil {
		panic(err)
	}
	return u.Utime.Nano() + u.Stime.Nano()
}

func BenchmarkRise(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		c := riseCurve(ptcPlant(), FanFull, windowRise, 270, 20)
		windowRise.measure(c, 270)
	}
}

func BenchmarkSum(b *testing.B) {
	for b.Loop() {
		sumDefault.outcome(ptcPlant(), FanFull, 270)
	}
}

func BenchmarkStep(b *testing.B) {
	for b.Loop() {
		step(ptcPlant(), Load{}, tunedRange, windowWatch, 240, func(Sample) {})
	}
}

func BenchmarkMemo(b *testing.B) {
	for b.Loop() {
		PredictRise(ptcPlant(), FanFull, windowRise, 270)
	}
}
