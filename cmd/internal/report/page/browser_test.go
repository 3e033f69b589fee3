package page

import (
	"bufio"
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"sync"
	"testing"
	"time"
)

// browser is a headless Chromium, spoken to over its DevTools protocol: one
// JSON message after the other, each ended by a NUL, on a pair of pipes.
type browser struct {
	t       *testing.T
	in      *os.File
	session string
	lastID  int

	mu      sync.Mutex
	answers map[int]chan message
	events  []message
	loaded  chan struct{}
}

type message struct {
	ID        int             `json:"id,omitempty"`
	SessionID string          `json:"sessionId,omitempty"`
	Method    string          `json:"method,omitempty"`
	Params    json.RawMessage `json:"params,omitempty"`
	Result    json.RawMessage `json:"result,omitempty"`
	Error     *struct {
		Message string `json:"message"`
	} `json:"error,omitempty"`
}

// patience is how long an answer may take on a busy machine.
const patience = 2 * time.Minute

// startBrowser starts Chromium; a missing one is a failure.
func startBrowser(t *testing.T) *browser {
	t.Helper()
	program, err := exec.LookPath("chromium")
	if err != nil {
		t.Fatal("chromium is missing; .ci/run installs it")
	}
	toChild, in, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	out, fromChild, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(program, "--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage",
		"--no-first-run", "--disable-extensions", "--disable-background-networking",
		"--remote-debugging-pipe", "--user-data-dir="+t.TempDir(), "about:blank")
	cmd.ExtraFiles = []*os.File{toChild, fromChild} // its descriptors 3 and 4
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	toChild.Close()
	fromChild.Close()
	b := &browser{t: t, in: in, answers: map[int]chan message{}, loaded: make(chan struct{}, 1)}
	go b.listen(out)
	t.Cleanup(func() {
		b.send("Browser.close", nil)
		done := make(chan error, 1)
		go func() { done <- cmd.Wait() }()
		select {
		case <-done:
		case <-time.After(10 * time.Second):
			_ = cmd.Process.Kill()
			<-done
		}
		in.Close()
		out.Close()
	})
	var target struct{ TargetID string }
	b.call("Target.createTarget", map[string]any{"url": "about:blank"}, &target)
	var attached struct{ SessionID string }
	b.call("Target.attachToTarget", map[string]any{"targetId": target.TargetID, "flatten": true}, &attached)
	b.session = attached.SessionID
	for _, domain := range []string{"Page", "Network", "Log", "Runtime"} {
		b.call(domain+".enable", nil, nil)
	}
	return b
}

// listen sorts what the browser says into answers and events.
func (b *browser) listen(out *os.File) {
	r := bufio.NewReader(out)
	for {
		text, err := r.ReadBytes(0)
		if err != nil {
			return // the browser has ended
		}
		var m message
		if json.Unmarshal(text[:len(text)-1], &m) != nil {
			continue
		}
		b.mu.Lock()
		if answer := b.answers[m.ID]; m.ID != 0 && answer != nil {
			answer <- m
		} else {
			b.events = append(b.events, m)
			if m.Method == "Page.loadEventFired" {
				select {
				case b.loaded <- struct{}{}:
				default:
				}
			}
		}
		b.mu.Unlock()
	}
}

func (b *browser) send(method string, params any) chan message {
	b.lastID++
	answer := make(chan message, 1)
	b.mu.Lock()
	b.answers[b.lastID] = answer
	b.mu.Unlock()
	text, err := json.Marshal(map[string]any{"id": b.lastID, "method": method, "params": params,
		"sessionId": b.session})
	if params == nil {
		text, err = json.Marshal(message{ID: b.lastID, Method: method, SessionID: b.session})
	}
	if err == nil {
		_, err = b.in.Write(append(text, 0))
	}
	if err != nil {
		answer <- message{Error: &struct {
			Message string `json:"message"`
		}{err.Error()}}
	}
	return answer
}

// call sends a command and reads its result.
func (b *browser) call(method string, params, result any) {
	b.t.Helper()
	select {
	case m := <-b.send(method, params):
		if m.Error != nil {
			b.t.Fatalf("%s: %s", method, m.Error.Message)
		}
		if result != nil {
			if err := json.Unmarshal(m.Result, result); err != nil {
				b.t.Fatalf("%s: %v", method, err)
			}
		}
	case <-time.After(patience):
		b.t.Fatalf("%s: the browser does not answer", method)
	}
}

// open loads a file and forgets what happened before.
func (b *browser) open(file string) {
	b.t.Helper()
	b.mu.Lock()
	b.events = nil
	select {
	case <-b.loaded:
	default:
	}
	b.mu.Unlock()
	b.call("Page.navigate", map[string]any{"url": "file://" + file}, nil)
	select {
	case <-b.loaded:
	case <-time.After(patience):
		b.t.Fatalf("%s does not load", file)
	}
}

// evaluate runs an expression in the page and reads its value.
func (b *browser) evaluate(expression string, value any) {
	b.t.Helper()
	var r struct {
		Result           struct{ Value json.RawMessage }
		ExceptionDetails *struct {
			Exception struct{ Description string }
		}
	}
	b.call("Runtime.evaluate", map[string]any{"expression": expression, "returnByValue": true}, &r)
	if r.ExceptionDetails != nil {
		b.t.Fatalf("in the page: %s", r.ExceptionDetails.Exception.Description)
	}
	if err := json.Unmarshal(r.Result.Value, value); err != nil {
		b.t.Fatalf("in the page: %v: %s", err, r.Result.Value)
	}
}

// complaints lists errors of the page and requests for anything but itself.
func (b *browser) complaints(page string) []string {
	b.mu.Lock()
	defer b.mu.Unlock()
	var all []string
	for _, e := range b.events {
		var p struct {
			Request struct{ URL string }
			Entry   struct{ Level, Text string }
			Type    string
		}
		_ = json.Unmarshal(e.Params, &p) // only what is there counts
		switch e.Method {
		case "Network.requestWillBeSent":
			if p.Request.URL != "file://"+page {
				all = append(all, "a request for "+p.Request.URL)
			}
		case "Log.entryAdded":
			all = append(all, fmt.Sprintf("%s in the log: %s", p.Entry.Level, p.Entry.Text))
		case "Runtime.consoleAPICalled":
			all = append(all, p.Type+" on the console")
		case "Runtime.exceptionThrown":
			all = append(all, "an exception")
		}
	}
	return all
}
