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
			return w.Sum.outcome(w.Sum.sight(q, FanFull, 272), 272).MostCS
		}
		return w.Heating.measure(riseCurve(q, FanFull, w.Heating, 272), 272).LastC
	}
	answer := func(q Plant) float64 {
		watch := w.begin(240, phases[:])
		return step(q, Load{}, loop, &watch, 240, nil).OvershootC
	}
	for _, f := range []struct {
		figure func(Plant) float64
		not    Figures
	}{{ask, Loss}, {answer, LossFan}, {Plant.StuckOn, AllFigures &^ Loss}} {
		least, most := p.Range(SpreadsOf(AllFigures&^f.not, assumed), f.figure)
		sum += f.figure(p) + least + most
	}
	flow := Load{Fan: 1, FlowMM3S: 18}
	bounds := Bounds{120, 360}
	plants := p.Margins()
	var trip float64
	if w.Form == ErrorSumWatch {
		sum += w.Sum.outcome(w.Sum.sight(p, Load{}, 272), 272).MostCS
		widenSum(plants, FanFull, w, 272, bounds)
		trip, _ = w.Sum.TripsAfter(p, flow, 272)
	} else {
		for _, q := range plants {
			sum += w.Heating.measure(riseCurve(q, FanFull, w.Heating, 272), 272).NeededS
		}
		trip, _ = w.Drop.TripsAfter(p, flow, 272)
	}
	return sum + trip + p.Headroom(272, 18).Ratio
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
		c := riseCurve(ptcPlant(), FanFull, windowRise, 270)
		windowRise.measure(c, 270)
	}
}

func BenchmarkSum(b *testing.B) {
	for b.Loop() {
		sumDefault.outcome(sumDefault.sight(ptcPlant(), FanFull, 270), 270)
	}
}

func BenchmarkStep(b *testing.B) {
	for b.Loop() {
		watch := windowWatch.begin(240, phases[:])
		step(ptcPlant(), Load{}, tunedRange, &watch, 240, nil)
	}
}

// A fast board reads the sensor a hundred times a second.
func BenchmarkStepFast(b *testing.B) {
	loop := tunedRange
	loop.SampleS = 0.01
	for b.Loop() {
		watch := windowWatch.begin(240, phases[:])
		step(ptcPlant(), Load{}, loop, &watch, 240, nil)
	}
}

func BenchmarkMemo(b *testing.B) {
	for b.Loop() {
		PredictRise(ptcPlant(), FanFull, windowRise, 270)
	}
}
