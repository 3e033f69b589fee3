package heat

import (
	"sync"
	"sync/atomic"
)

// memoLimit bounds what a memo keeps. A fleet has few kinds of hotend; one
// with more of them loses speed and nothing else.
const memoLimit = 4096

// memo computes the figures of one plant once, however many printers have it.
// It is safe for use by several goroutines; the zero memo is ready.
type memo[K comparable, V any] struct {
	entries sync.Map // K to *memoEntry[V]
	count   atomic.Int64
}

type memoEntry[V any] struct {
	once  sync.Once
	value V
}

func (m *memo[K, V]) get(key K, compute func() V) V {
	found, ok := m.entries.Load(key)
	if !ok {
		if m.count.Load() >= memoLimit {
			return compute()
		}
		var loaded bool
		if found, loaded = m.entries.LoadOrStore(key, new(memoEntry[V])); !loaded {
			m.count.Add(1)
		}
	}
	entry := found.(*memoEntry[V])
	entry.once.Do(func() { entry.value = compute() })
	return entry.value
}
