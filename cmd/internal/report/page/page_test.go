package page

import (
	"encoding/xml"
	"io"
	"slices"
	"strings"
	"testing"
	"time"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/measure"
	"preflash/cmd/internal/testfiles"
	"preflash/patch"
	"preflash/rules/melt"
)

const demoDay = "2026-11-25"

func survey(t testing.TB, paths ...string) *fleet.Survey {
	t.Helper()
	day, err := time.Parse(time.DateOnly, demoDay)
	if err != nil {
		t.Fatal(err)
	}
	f := fleet.Load(paths, fleet.Options{Today: day, Keep: true}, nil)
	defer f.Close()
	return f.Survey()
}

func htmlOf(t testing.TB, s *fleet.Survey) string {
	t.Helper()
	return render(t, func(w io.Writer) error { return HTML(w, s, Options{Day: demoDay}) })
}

// element is one element of a page with the text directly in it.
type element struct {
	name string
	attr map[string]string
	text string
}

// parsed reads a page as XML, which its template is written to be.
func parsed(t *testing.T, page string) []*element {
	t.Helper()
	var all, open []*element
	for d := xml.NewDecoder(strings.NewReader(page)); ; {
		token, err := d.Token()
		if err == io.EOF {
			return all
		}
		if err != nil {
			t.Fatalf("not well-formed: %v", err)
		}
		switch token := token.(type) {
		case xml.StartElement:
			el := &element{name: token.Name.Local, attr: map[string]string{}}
			for _, a := range token.Attr {
				el.attr[a.Name.Local] = a.Value
			}
			all, open = append(all, el), append(open, el)
		case xml.EndElement:
			open = open[:len(open)-1]
		case xml.CharData:
			if len(open) > 0 {
				open[len(open)-1].text += string(token)
			}
		}
	}
}

// pages are the report of the demo and one of printers that mean harm.
func pages(t *testing.T) map[string]string {
	all := map[string]string{
		"fleet":    htmlOf(t, survey(t, "../../../../testdata/demo")),
		"hostile":  htmlOf(t, survey(t, "../../../../testdata/hostile")),
		"invented": htmlOf(t, invented()),
		"trials": render(t, func(w io.Writer) error {
			return HTML(w, survey(t, "../../../../testdata/demo/egret-01"),
				Options{Day: demoDay, Trials: inventedTrials(t)})
		}),
	}
	withErrors := []string{"egret-02", "egret-03", "egret-05", "egret-06", "egret-07"}
	for _, name := range withErrors {
		all[name] = htmlOf(t, survey(t, "../../../../testdata/demo/"+name))
	}
	return all
}

// inventedTrials are those of six filaments, more than there are line styles,
// one of them with a name that means harm.
func inventedTrials(t *testing.T) *measure.FlowTrials {
	var trials []melt.Trial
	for i, filament := range []string{"a", "b", "c", "d", "e", "\x1b[2J<script>\u202e"} {
		for _, flow := range []float64{3, 6, 9, 12} {
			mass := 3 - 0.002*flow*flow*float64(i)
			trials = append(trials, melt.Trial{
				FlowMM3S: flow, CommandedMM: 1000, MassG: mass, DensityGCM3: 1.24,
				Setup: melt.Setup{Extruder: "one & only", Filament: filament, TempC: 220}})
		}
	}
	extruders, err := melt.Judge(trials, melt.Options{FilamentMM: 1.75, Loss: 0.05})
	if err != nil {
		t.Fatal(err)
	}
	return &measure.FlowTrials{File: "flow.csv", FilamentMM: 1.75, Loss: 0.05, Extruders: extruders}
}

// A page loads nothing, runs nothing, and can be read by those who do not see
// it: headings in order, every picture named, every name in the page.
func TestHTMLStructure(t *testing.T) {
	for name, page := range pages(t) {
		t.Run(name, func(t *testing.T) {
			if r, found := testfiles.Hidden(page); found {
				t.Errorf("the page holds %U raw", r)
			}
			ids := map[string]bool{}
			level, figures, tables := 0, 0, 0
			elements := parsed(t, page)
			for _, el := range elements {
				if id := el.attr["id"]; id != "" {
					if ids[id] {
						t.Errorf("two elements are called %s", id)
					}
					ids[id] = true
				}
			}
			for _, el := range elements {
				for attr, value := range el.attr {
					loads := attr == "src" || attr == "srcset" || attr == "href" &&
						!strings.HasPrefix(value, "#") || attr == "data" || attr == "action"
					acts := strings.HasPrefix(attr, "on") || attr == "style"
					if loads || acts {
						t.Errorf("<%s %s=%q>", el.name, attr, value)
					}
					if attr == "aria-labelledby" || attr == "href" {
						for _, id := range strings.Fields(strings.TrimPrefix(value, "#")) {
							if !ids[id] {
								t.Errorf("<%s> points at %s, which is not there", el.name, id)
							}
						}
					}
				}
				switch el.name {
				case "script", "link", "img", "iframe", "object", "embed", "form", "base", "image", "use",
					"foreignObject":
					t.Errorf("there is a <%s>", el.name)
				case "html":
					if el.attr["lang"] != "en" {
						t.Errorf("lang = %q", el.attr["lang"])
					}
				case "h1", "h2", "h3", "h4", "h5":
					n := int(el.name[1] - '0')
					if n > level+1 || strings.TrimSpace(el.text) == "" || n == 1 && level > 0 {
						t.Errorf("<%s> %q after one of level %d", el.name, el.text, level)
					}
					level = n
				case "svg":
					if el.attr["role"] != "img" || el.attr["aria-labelledby"] == "" {
						t.Error("a picture without a name")
					}
					figures++
				case "summary":
					if el.text == "The numbers of this plot" {
						tables++
					}
				}
			}
			if figures != tables {
				t.Errorf("%d plots and %d tables of numbers", figures, tables)
			}
			if !strings.Contains(page, "default-src &#39;none&#39;") &&
				!strings.Contains(page, "default-src 'none'") {
				t.Error("no policy forbids requests")
			}
		})
	}
}

// The order is: what is worst, cautions, overview, then each printer, worst
// first, with findings, diff and bench list. A plot stands with a finding that
// it proves, and its title holds a figure.
func TestHTMLOrder(t *testing.T) {
	s := survey(t, "../../../../testdata/demo")
	var got []string
	plots, finding := map[string]int{}, ""
	for _, el := range parsed(t, htmlOf(t, s)) {
		switch {
		case el.name == "h2" || el.name == "h3":
			got = append(got, el.text)
		case el.name == "article":
			finding = el.attr["class"]
		case el.name == "figure":
			plots[strings.Split(el.attr["id"], "-")[0]]++
			if !strings.HasSuffix(finding, "proof") {
				t.Errorf("%s stands with %q", el.attr["id"], finding)
			}
		case el.name == "title" && plots["p1"]+plots["p2"] > 0 && !strings.ContainsAny(el.text, "0123456789"):
			t.Errorf("the plot %q states no figure", el.text)
		}
	}
	want := []string{"Worst first", "Before you apply this and heat", "The diff", "Contents",
		"Overview, worst first"}
	for _, n := range "7236514" {
		name := "egret-0" + string(n)
		want = append(want, name, "Findings", "The diff", "Bench list: "+name)
	}
	if !slices.Equal(got, want) {
		t.Errorf("headings\n%q\nwant\n%q", got, want)
	}
	if plots["p2"] != 4 || plots["p4"] != 0 { // a printer with ten errors, and one without
		t.Errorf("plots by printer: %v", plots)
	}
}

func TestHTMLDeterministic(t *testing.T) {
	one := htmlOf(t, survey(t, "../../../../testdata/demo"))
	if two := htmlOf(t, survey(t, "../../../../testdata/demo")); one != two {
		t.Error("two runs gave two pages")
	}
}

// What configurations say stands on the page as text and nowhere else.
func TestHTMLUntrusted(t *testing.T) {
	dir := t.TempDir()
	t.Chdir(dir)
	const evil = `</style><script>alert(1)</script><img src=x onerror=alert(1)>"'&{{.}}`
	sheet := strings.NewReplacer("printer.cfg", "a & <b>.cfg",
		`"egret-90"`, `'`+strings.ReplaceAll(evil, "'", "")+`\u202e'`,
		"[new]\n", "[new]\nname = \""+strings.ReplaceAll(evil, `"`, `\"`)+`\u202e\u001b[2J"`+"\n",
	).Replace(testfiles.Sheet)
	config := "[extruder]\nsensor_type: <script>alert(2)</script>\x1b[2J\xff\n" +
		"max_temp: 400 # <b>\x1b]0;x\x07\nmin_temp: 0\ncontrol: pid\npid_Kp: 20\npid_Ki: 1\npid_Kd: 100\n" +
		"nozzle_diameter: 0.4\n"
	testfiles.Write(t, dir, map[string]string{"swap.toml": sheet, "a & <b>.cfg": config})
	page := htmlOf(t, survey(t, "."))
	if r, found := testfiles.Hidden(page); found {
		t.Errorf("the page holds %U raw", r)
	}
	var text strings.Builder
	for _, el := range parsed(t, page) {
		if el.name == "script" || el.name == "img" || el.name == "b" && strings.Contains(el.text, ".cfg") {
			t.Errorf("an element from a configuration: <%s> %s", el.name, el.text)
		}
		text.WriteString(el.text + "\n")
	}
	for _, want := range []string{"alert(1)", "alert(2)", `\u202e`, `\u001b[2J`, "a & <b>.cfg"} {
		if !strings.Contains(text.String(), want) {
			t.Errorf("%s is not on the page\n%s", want, text.String())
		}
	}
}

func TestHTMLUnreadable(t *testing.T) {
	s := invented()
	s.Refusals = []fleet.Refusal{{Sheets: []string{s.Printers[0].Sheet}, Err: io.ErrUnexpectedEOF}}
	page := htmlOf(t, s)
	for _, want := range []string{"There is no diff", io.ErrUnexpectedEOF.Error(), "Cannot be read.",
		"includes panel.cfg", "Waived, not counted", "the third wire is cut"} {
		if !strings.Contains(page, want) {
			t.Errorf("%q is not on the page", want)
		}
	}
}

// What differs inside a line is marked, and no more.
func TestMarks(t *testing.T) {
	show := func(pieces []piece) string {
		var b strings.Builder
		for _, p := range pieces {
			if p.Marked {
				b.WriteString("[" + p.Text + "]")
			} else {
				b.WriteString(p.Text)
			}
		}
		return b.String()
	}
	tests := []struct{ old, new, wantOld, wantNew string }{
		{"#define MAX 275 // °C", "#define MAX 240 // °C",
			"#define MAX [275] // °C", "#define MAX [240] // °C"},
		{"//#define WATCH 20", "#define WATCH 20", "[//]#define WATCH 20", "#define WATCH 20"},
		{"sensor: Düse A", "sensor: Düse B", "sensor: Düse [A]", "sensor: Düse [B]"},
		{"max_power: 1", "max_power: 1", "max_power: 1", "max_power: 1"},
		{"sensor_type = bag_3950", "sensor_type = Generic 3950", "sensor_type = [bag_3950]",
			"sensor_type = [Generic 3950]"},
		{"check_gain_time = 600", "check_gain_time = 20",
			"check_gain_time = [600]", "check_gain_time = [20]"},
		{"{ -0.5, 1e3 }", "{ 0.25, 1e3 }", "{ [-0.5], 1e3 }", "{ [0.25], 1e3 }"},
		{"abcdefgh", "12345678", "abcdefgh", "12345678"},
	}
	for _, tt := range tests {
		old, new := marks(tt.old, tt.new)
		if show(old) != tt.wantOld || show(new) != tt.wantNew {
			t.Errorf("%s → %s: %s, %s; want %s, %s",
				tt.old, tt.new, show(old), show(new), tt.wantOld, tt.wantNew)
		}
	}
}

func TestHunkView(t *testing.T) {
	const old = "a\nb\nmax: 275\nd\ne\n"
	const new = "a\nb\nmax: 240\nmin: 5\nd\ne"
	view := fileViewOf(patch.FileChange{Name: "x.cfg", Old: []byte(old), New: []byte(new)})
	var b strings.Builder
	for _, h := range view.Hunks {
		for _, l := range h {
			b.WriteString(l.Old + "|" + l.New + "|" + l.Sign + "|")
			for _, p := range l.Pieces {
				if p.Marked {
					b.WriteString("[" + p.Text + "]")
				} else {
					b.WriteString(p.Text)
				}
			}
			b.WriteString("\n")
		}
	}
	want := `1|1||a
2|2||b
3||−|max: [275]
|3|+|max: [240]
|4|+|min: 5
4|5||d
5||−|e
|6|+|e (no line break at the end of the file)
`
	if b.String() != want {
		t.Errorf("got\n%swant\n%s", b.String(), want)
	}
	if gone, come := view.size(); gone != 2 || come != 3 {
		t.Errorf("%d lines go and %d come, want 2 and 3", gone, come)
	}
	long := fileViewOf(patch.FileChange{Name: "x", Old: []byte(strings.Repeat("x", 1<<20)),
		New: []byte(strings.Repeat("y", 1<<20))})
	if n := len(long.Hunks[0][0].Pieces[0].Text); n > 2*longest {
		t.Errorf("a line of a megabyte shows %d bytes", n)
	}
}

func BenchmarkHTML(b *testing.B) {
	s := survey(b, "../../../../testdata/demo")
	for b.Loop() {
		if err := HTML(io.Discard, s, Options{Day: demoDay}); err != nil {
			b.Fatal(err)
		}
	}
}
