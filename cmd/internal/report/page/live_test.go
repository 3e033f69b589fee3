package page

import (
	_ "embed"
	"encoding/base64"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

//go:embed contrast_test.js
var contrastJS string

//go:embed layout_test.js
var layoutJS string

// layout is what a page shows in a window of some size.
type layout struct {
	Below, Wider, Uncued, OneWay []string

	Wide  bool
	Links int
}

type contrast struct {
	Texts, Lines     int
	Least, LeastLine float64
	Low              []string
	Paper            float64 // luminance, 0 to 1
	Wide             bool
}

// The page in a real browser: no error, no request, nothing too pale, and it
// fits a telephone and a sheet of paper.
func TestHTMLInBrowser(t *testing.T) {
	if os.Getenv("PREFLASH_LIVE") != "1" {
		t.Log("a browser opens the page when PREFLASH_LIVE=1; see TestHTMLStructure")
		return
	}
	dir := t.TempDir()
	file := func(name, page string) string {
		name = filepath.Join(dir, name)
		if err := os.WriteFile(name, []byte(page), 0o600); err != nil {
			t.Fatal(err)
		}
		return name
	}
	b := startBrowser(t)

	// First, a page with every fault, to see that each is noticed.
	bad := file("bad.html", `<!DOCTYPE html><body style="background:#fff;width:3000px">
<p style="color:#999">pale</p>
<svg><path class="s0" d="M0 0L9 9" style="stroke:#eee"/></svg><img src="gone.png">
<script>console.error("x"); throw 1</script>`)
	b.open(bad)
	complaints := strings.Join(b.complaints(bad), "\n")
	for _, want := range []string{"a request for file://", "error in the log", "error on the console",
		"an exception"} {
		if !strings.Contains(complaints, want) {
			t.Fatalf("the test does not notice %s: %s", want, complaints)
		}
	}
	if c := b.contrast("light"); len(c.Low) != 2 || !c.Wide || c.Paper < 0.99 {
		t.Fatalf("the test does not notice a pale text, a pale line and a wide page: %+v", c)
	}

	b.open(file("sideways.html", `<!DOCTYPE html><body>
<header><p class="lead" style="margin-top:900px">low</p></header>
<div id="s" class="scroll" style="overflow-x:auto"><div style="width:3000px">x</div></div>
<div style="width:3000px">x</div>
<article class="finding" id="f"><a href="#d">there</a><a href="#gone">x</a></article>
<table class="diff"><tr id="d"><td>y</td></tr></table>`))
	if l := b.layout(1280, 800); !l.Wide || len(l.Below) != 6 || len(l.Uncued) != 1 || len(l.Wider) != 1 ||
		len(l.OneWay) != 2 {
		t.Fatalf("the test does not notice what is too low, too wide, "+
			"without a cue or without a way back: %+v", l)
	}

	for name, page := range pages(t) {
		t.Run(name, func(t *testing.T) {
			path := file(name+".html", page)
			b.t = t
			b.open(path)
			for _, scheme := range []string{"light", "dark"} {
				c := b.contrast(scheme)
				if dark := c.Paper < 0.2; dark != (scheme == "dark") {
					t.Errorf("%s: the page has a luminance of %.2f", scheme, c.Paper)
				}
				if c.Texts < 50 {
					t.Errorf("%s: only %d texts were seen", scheme, c.Texts)
				}
				for _, low := range c.Low {
					t.Errorf("%s: too little contrast: %s", scheme, low)
				}
				t.Logf("%s: %d texts, least contrast %.2f; %d lines, least %.2f", scheme, c.Texts, c.Least,
					c.Lines, c.LeastLine)
			}
			desk := b.layout(1280, 800)
			for _, what := range desk.Below {
				t.Errorf("not on the first screen: %s", what)
			}
			if least := 5; desk.Links < least {
				t.Errorf("%d links, want %d at least", desk.Links, least)
			}
			for width, l := range map[int]layout{1280: desk, 390: b.layout(390, 800)} {
				if l.Wide {
					t.Errorf("%d px: the page is wider than the window", width)
				}
				for _, what := range l.Wider {
					t.Errorf("%d px: it sticks out of the window: %s", width, what)
				}
				for _, what := range l.Uncued {
					t.Errorf("%d px: it scrolls sideways and does not say so, or the other way round: %s",
						width, what)
				}
				for _, what := range l.OneWay {
					t.Errorf("%d px: %s", width, what)
				}
			}
			b.call("Emulation.clearDeviceMetricsOverride", nil, nil)
			for _, c := range b.complaints(path) {
				t.Error(c)
			}
			if name == "fleet" {
				return // its printers are printed one by one
			}
			if most, n := 3, b.paper(t); n > most && strings.HasPrefix(name, "egret") {
				t.Errorf("%d pages on paper without the bench list, want %d at most", n, most)
			}
		})
	}
}

func (b *browser) contrast(scheme string) contrast {
	b.call("Emulation.setEmulatedMedia",
		map[string]any{"features": []map[string]string{{"name": "prefers-color-scheme", "value": scheme}}},
		nil)
	var c contrast
	b.evaluate(contrastJS, &c)
	return c
}

var mediaBox = regexp.MustCompile(`/MediaBox \[0 0 (\d+)[.\d]* (\d+)[.\d]*\]`)

func (b *browser) layout(width, height int) layout {
	b.call("Emulation.setDeviceMetricsOverride", map[string]any{"width": width, "height": height,
		"deviceScaleFactor": 1, "mobile": false}, nil)
	var l layout
	b.evaluate(layoutJS, &l)
	return l
}

// paper prints the page: light also for those who read in the dark, on A4. The
// bench list must start on a page of its own. It returns the number of pages
// without it.
func (b *browser) paper(t *testing.T) int {
	b.call("Emulation.setEmulatedMedia",
		map[string]any{"media": "print",
			"features": []map[string]string{{"name": "prefers-color-scheme", "value": "dark"}}}, nil)
	var c contrast
	b.evaluate(contrastJS, &c)
	if c.Paper < 0.9 || len(c.Low) > 0 {
		t.Errorf("printed in the dark scheme, the paper has a luminance of %.2f, and too pale are %q",
			c.Paper, c.Low)
	}
	var starts []string // how each bench list starts
	b.evaluate(`starts = [...document.querySelectorAll('.bench')].map((el) => {
		const at = getComputedStyle(el).breakBefore; el.remove(); return at; });
	document.querySelectorAll("details").forEach((d) => { d.open = false; }); starts`, &starts)
	for _, at := range starts {
		if at != "page" {
			t.Errorf("a bench list starts with break-before: %s", at)
		}
	}
	b.call("Emulation.setEmulatedMedia", map[string]any{"media": ""}, nil)
	var pdf struct{ Data string }
	b.call("Page.printToPDF", map[string]any{"preferCSSPageSize": true}, &pdf)
	data, err := base64.StdEncoding.DecodeString(pdf.Data)
	if err != nil {
		t.Fatal(err)
	}
	boxes := mediaBox.FindAllStringSubmatch(string(data), -1)
	if len(boxes) == 0 {
		t.Fatal("nothing was printed")
	}
	for _, box := range boxes {
		if box[1] != "594" && box[1] != "595" || box[2] != "841" && box[2] != "842" {
			t.Errorf("a sheet of %s by %s points is no A4", box[1], box[2])
		}
	}
	return len(boxes)
}
