package heat

import (
	"sync"
	"sync/atomic"
	"testing"
)

func TestMemoComputesOnce(t *testing.T) {
	var m memo[riseKey, int]
	var computed atomic.Int64
	var all sync.WaitGroup
	for range 64 {
		all.Go(func() {
			// Each printer has a plant of its own with the same figures.
			key := riseKey{ptcPlant(), FanFull, windowRise, 240}
			if m.get(key, func() int { return int(computed.Add(1)) }) != 1 {
				t.Error("another value than the first")
			}
		})
	}
	all.Wait()
	if n := computed.Load(); n != 1 {
		t.Errorf("computed %d times", n)
	}
}

func TestMemoIsBounded(t *testing.T) {
	var m memo[int, int]
	for i := range 3 * memoLimit {
		if got := m.get(i, func() int { return -i }); got != -i {
			t.Fatalf("got %d for %d", got, i)
		}
	}
	kept := 0
	m.entries.Range(func(any, any) bool { kept++; return true })
	if kept != memoLimit {
		t.Errorf("keeps %d entries, want %d", kept, memoLimit)
	}
}
