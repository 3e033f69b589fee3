package patch_test

import (
	"strings"
	"testing"
)

// A diff writes no value that the firmware of the stated version refuses to
// build: the table of number 60 ends at 272 °C, which is 257 °C of max temp.
func TestProveBuilds(t *testing.T) {
	const beta = "beta = { r25_ohm = 100000, b_k = 3950 }"
	header := func(version, maxTemp string) string {
		return strings.NewReplacer("02000905", version, "SENSOR_0 5", "SENSOR_0 60",
			"MAXTEMP 300", "MAXTEMP "+maxTemp).Replace(proofHeader)
	}
	for _, c := range []struct{ version, has, top, gets string }{
		{"02010300", "250", "240", "255"},
		{"02010300", "250", "255", "257"}, // as far as it builds
		{"02010300", "270", "240", "257"}, // does not build
		{"02000901", "250", "255", "270"}, // does not look
	} {
		old := header(c.version, c.has)
		got := proveDefines(t, old, `curve = "ntc-100k-3950"`, beta, "[190, 250]", "[190, "+c.top+"]")
		if want := header(c.version, c.gets); got != want {
			t.Errorf("%s, max temp %s, printing to %s °C: got\n%s\nwant\n%s",
				c.version, c.has, c.top, got, want)
		}
	}
}
