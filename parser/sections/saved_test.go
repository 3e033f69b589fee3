package sections

import (
	"crypto/sha256"
	"fmt"
	"strings"
	"testing"

	"preflash/parser"
)

const savedHead = `
#*# <---------------------- SAVE_CONFIG ---------------------->
#*# DO NOT EDIT THIS BLOCK OR BELOW. The contents are auto-generated.
#*#
`

const savedGain = "#*# [extruder]\n#*# pid_kp = 20\n"

// The saved block fills gaps.
func TestSavedFillsGaps(t *testing.T) {
	for _, newline := range []string{"\n", "\r\n"} {
		text := "[extruder]\npid_Kp: 10\n[include more.cfg]\n" + savedHead +
			"#*# [extruder]\n#*# control = pid\n#*# pid_kp = 20\n#*# pid_ki = 2\n#*#\n" +
			"#*# [bed_mesh default]\n#*# points =\n#*# \t1, 2\n#*# \t3, 4\n#*# version = 1\n\n  \n"
		c := readFiles(t, files{
			"printer.cfg": strings.ReplaceAll(text, "\n", newline),
			"more.cfg":    "[extruder]\npid_ki: 1\n",
		})
		for name, want := range map[string]string{
			"extruder.pid_kp": "10", "extruder.pid_ki": "1", "extruder.control": "pid",
			"bed_mesh default.points": "\n1, 2\n3, 4", "bed_mesh default.version": "1",
		} {
			if got, ok := entry(c, name); !ok || got != want {
				t.Errorf("%s is %q, want %q", name, got, want)
			}
		}
		s := described(t, c, parser.GainP)
		if s.Value != 10.0 || s.Saved || len(s.Hides) != 1 || !s.Hides[0].Saved ||
			s.Hides[0].Written != "20" {
			t.Errorf("kp %+v", s)
		}
		if s := described(t, c, parser.LoopControl); !s.Saved || s.At.Text() != "pid" {
			t.Errorf("control %+v", s)
		}
		hidden := remarksOf(c, parser.RemarkSavedHidden)
		if len(hidden) != 2 || !strings.Contains(hidden[0].Text, "pid_kp of [extruder]") ||
			!strings.Contains(hidden[0].Text, "printer.cfg:2") ||
			!strings.Contains(hidden[1].Text, "pid_ki of [extruder]") ||
			!strings.Contains(hidden[1].Text, "more.cfg:2") {
			t.Errorf("hidden: %v", hidden)
		}
		if d := remarksOf(c, parser.RemarkSavedDamaged); len(d) > 0 {
			t.Errorf("damaged: %v", d)
		}
	}
}

// Saved values that no setting is about are summarised.
func TestSavedHiddenSummary(t *testing.T) {
	c := readText(t, "[extruder]\n[bed_mesh default]\nversion: 1\npoints: 1\n"+savedHead+
		"#*# [bed_mesh default]\n#*# version = 1\n#*# points =\n#*# \t1\n")
	hidden := remarksOf(c, parser.RemarkSavedHidden)
	if len(hidden) != 1 || !strings.HasPrefix(hidden[0].Text, "2 saved values are hidden") ||
		!strings.Contains(hidden[0].Text, "bed_mesh default.version, bed_mesh default.points") {
		t.Errorf("hidden: %v", hidden)
	}
}

// A damaged block counts for nothing, and the finding stands at the place.
func TestSavedDamaged(t *testing.T) {
	const hand = "[extruder]\npid_ki: 1\n"
	for _, test := range []struct {
		name, text string
		line       int
		says       string
	}{
		{"text after it", hand + savedHead + savedGain + "[fan]\npin: a\n",
			9, "move this line above the saved block"},
		{"a comment after it", hand + savedHead + savedGain + "# c\n", 9, "move this line"},
		{"an empty line in it", hand + savedHead + "#*# [extruder]\n\n#*# pid_kp = 20\n",
			8, "move this line"},
		{"no space after the mark", hand + savedHead + "#*# [extruder]\n#*#pid_kp = 20\n",
			8, "move this line"},
		{"a line above the ruler", hand + "#*# pid_kp = 20\n" + savedHead + savedGain, 3, "ruler back above"},
		{"no ruler", hand + savedGain, 3, "ruler back above"},
		{"a tab after the mark", hand + savedHead + "#*# [extruder]\n#*#\tpid_kp = 20\n",
			8, "move this line"},
		{"at the start of the file", strings.TrimPrefix(savedHead, "\n") + savedGain, 1, "first line"},
		{"a line that is no option", hand + savedHead + savedGain + "#*# nonsense\n",
			9, "neither a [section] nor an option"},
		{"an option before a section", hand + savedHead + "#*# pid_kp = 20\n", 7, "before any [section]"},
		{"a second block", hand + savedHead + savedGain + savedHead + "#*# [extruder]\n#*# pid_kp = 30\n",
			9, "move this line"},
		{"a second ruler", hand + savedHead + "#*# [extruder]\n#*# pid_kp = 20" + savedHead,
			9, "the second begins here"},
	} {
		c := readText(t, test.text)
		damaged := remarksOf(c, parser.RemarkSavedDamaged)
		if len(damaged) != 1 {
			t.Errorf("%s: %v", test.name, damaged)
			continue
		}
		if line, _ := damaged[0].At.Position(); line != test.line ||
			!strings.Contains(damaged[0].Text, test.says) {
			t.Errorf("%s: line %d, %q; want line %d, %q",
				test.name, line, damaged[0].Text, test.line, test.says)
		}
		if v, ok := entry(c, "extruder.pid_kp"); ok {
			t.Errorf("%s: the saved pid_kp is used: %s", test.name, v)
		}
	}
}

// Sections that only a refused saved block opened are forgotten with it.
func TestSavedForgotten(t *testing.T) {
	c := readText(t, "[extruder]\n"+savedHead+
		"#*# [extruder]\n#*# max_temp = 1\n#*# [probe]\n#*# z_offset = 1\n#*# nonsense\n")
	if s := described(t, c, parser.ProbeTrigger); s.State != parser.Off {
		t.Errorf("trigger height %+v", s)
	}
	if s := described(t, c, parser.MaxTemp); s.State != parser.Unknown || len(c.Entries()) > 0 {
		t.Errorf("max temp %+v, entries %v", s, c.Entries())
	}
}

// The header is the one whose SHA-256 is known of the style's firmware as it is
// published.
func TestSavedHeader(t *testing.T) {
	text := "\n" + strings.Join(savedHeader[:], "\n") + "\n"
	const published = "0e19e5d78f04ad0756619ee6de8b134a6f80abef02340d0b0324962fa226a89b"
	if got := fmt.Sprintf("%x", sha256.Sum256([]byte(text))); got != published || len(text) != 139 {
		t.Errorf("%d bytes, SHA-256 %s; want 139, %s", len(text), got, published)
	}
	if text != savedHead {
		t.Error("the tests use another header")
	}
}

// Any other header is none, and the finding says which line is wrong.
func TestSavedHeaderWrong(t *testing.T) {
	lines := strings.SplitAfter(savedHead, "\n")[1:4]
	for _, test := range []struct {
		name  string
		lines []string
		says  string
	}{
		{"a shorter ruler", []string{"#*# <--- SAVE_CONFIG --->\n", lines[1], lines[2]}, "line 1"},
		{"a blank behind the ruler",
			[]string{strings.Replace(lines[0], "\n", " \n", 1), lines[1], lines[2]}, "line 1"},
		{"two blanks in the ruler",
			[]string{strings.Replace(lines[0], "# <", "#  <", 1), lines[1], lines[2]}, "line 1"},
		{"another wording", []string{lines[0], "#*# DO NOT EDIT: the machine writes by itself.\n", lines[2]},
			"line 2"},
		{"no second line", []string{lines[0], lines[2]}, "line 2"},
		{"no third line", []string{lines[0], lines[1]}, "line 3"},
		{"a blank behind the third line", []string{lines[0], lines[1], "#*# \n"}, "line 3"},
		{"only a ruler", []string{lines[0]}, "line 2"},
	} {
		c := readText(t, "[extruder]\n\n"+strings.Join(test.lines, "")+savedGain)
		damaged := remarksOf(c, parser.RemarkSavedDamaged)
		if len(damaged) != 1 || !strings.Contains(damaged[0].Text, test.says+" of it should be") ||
			!strings.Contains(damaged[0].Text, "none of its values is used") {
			t.Errorf("%s: %v", test.name, damaged)
			continue
		}
		if line, _ := damaged[0].At.Position(); line != 3 {
			t.Errorf("%s: points at line %d", test.name, line)
		}
		if s := described(t, c, parser.GainP); s.State != parser.Unknown {
			t.Errorf("%s: kp %+v", test.name, s)
		}
	}
}

// What the firmware takes without a word.
func TestSavedSound(t *testing.T) {
	const hand = "[extruder]\n"
	for _, test := range []struct{ name, text, kp string }{
		{"nothing below the header", hand + savedHead, ""},
		{"white space below the header", hand + savedHead + "\n \n", ""},
		{"an empty line below the header", hand + savedHead + "\n#*# [extruder]\n#*# pid_kp = 20\n", "20"},
		{"empty lines at the end", hand + savedHead + savedGain + "\n\n", "20"},
		{"no last newline", hand + savedHead + "#*# [extruder]\n#*# pid_kp = 20", "20"},
		{"a bare mark at the end", hand + savedHead + savedGain + "#*#\n", "20"},
		{"a marked line at the very top", "#*# mine\n" + hand + savedHead + savedGain, "20"},
		{"an include, which is a section there",
			hand + savedHead + "#*# [include x.cfg]\n#*# [extruder]\n#*# pid_kp = 20\n", "20"},
		{"an unknown option", hand + savedHead + savedGain + "#*# nonsense = 1\n", "20"},
	} {
		for _, newline := range []string{"\n", "\r\n"} {
			c := readText(t, strings.ReplaceAll(test.text, "\n", newline))
			for _, kind := range []parser.RemarkKind{parser.RemarkSavedDamaged, parser.RemarkGap} {
				if r := remarksOf(c, kind); len(r) > 0 {
					t.Errorf("%s: %v", test.name, r)
				}
			}
			if got, _ := entry(c, "extruder.pid_kp"); got != test.kp {
				t.Errorf("%s: pid_kp is %q, want %q", test.name, got, test.kp)
			}
		}
	}
}

func TestSavedBlockInIncludedFile(t *testing.T) {
	c := readFiles(t, files{
		"printer.cfg": "[extruder]\n[include other.cfg]\n",
		"other.cfg":   "[fan]\npin: a\n" + savedHead + savedGain,
	})
	damaged := remarksOf(c, parser.RemarkSavedDamaged)
	if len(damaged) != 1 || !strings.Contains(damaged[0].Text, "in an included one") ||
		damaged[0].At.File.Path != "other.cfg" {
		t.Errorf("%v", damaged)
	}
	if _, ok := entry(c, "extruder.pid_kp"); ok {
		t.Error("the saved value of an included file is used")
	}
}
