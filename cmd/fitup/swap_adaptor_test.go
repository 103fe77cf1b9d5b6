package main

import (
	"encoding/json"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// TestSwapJudgesAdaptors puts a chain into the oil suction of the receiving car and
// asks what the line rules make of it.
//
// By hand: 46 L/min through 22.2 mm is 1.981 m/s, a dynamic pressure of 1705 Pa in
// oil of 869 kg/m³. Into 15.47 mm and out again is 1/2 (1 - 0.4855) + (1 - 0.4855)²,
// with 0.08 for the fitting 0.602 there, and 2.554 times the pressure in the hose:
// 4353 Pa. Without it the pump has -0.161 bar at its inlet, so with it -0.205 bar.
func TestSwapJudgesAdaptors(t *testing.T) {
	const (
		twelve = `"-12 male 37-flare"`
		banjo  = `"M22x1.5 female banjo"`
		reduce = "reducer = { one = \"-16 male 37-flare\", other = \"-12 female 37-flare\", adds = \"40 mm\", bore = \"15.4686 mm\" }\n"
		screw  = "screw = { one = \"-16 male 37-flare\", other = \"M22x1.5 male banjo\", adds = \"40 mm\" }\n"
	)
	for _, test := range []struct {
		name, port, least, drawer string
		hose                      string  // length; "" for the demo's
		lost                      float64 // Pa; 0 if it cannot be worked out
		usual                     bool
		found, unclear            []string // LEVEL RULE; RULE
		mended                    string   // RULE
	}{
		{name: "a standard form that starves the pump", port: twelve, least: "-0.20 bar", lost: 4353, usual: true, found: []string{"advice lines.suction_loss"}},
		{name: "that leaves it enough", port: twelve, least: "-0.21 bar", lost: 4353, usual: true},
		{name: "one of the drawer that starves it", port: twelve, least: "-0.20 bar", drawer: reduce, lost: 4353, found: []string{"fault lines.suction_loss"}},
		{name: "that leaves it enough too", port: twelve, least: "-0.21 bar", drawer: reduce, lost: 4353},
		// From port to port it is 503 mm, and the hose wants 28 mm more; its ends give 50 mm.
		{name: "one that makes a short hose reach", port: twelve, least: "-0.21 bar", drawer: reduce, hose: "0.47 m", lost: 4353, mended: "lines.reach"},
		{name: "one whose bore nobody knows", port: banjo, least: "-0.20 bar", drawer: screw, unclear: []string{"lines.suction_loss"}},
	} {
		t.Run(test.name, func(t *testing.T) {
			demo(t)
			reword(t, filepath.Join("cars", "drivelines", "bellows.toml"), "oil-in          = { end = \"-16 male 37-flare\"", "oil-in          = { end = "+test.port)
			reword(t, filepath.Join("cars", "drivelines", "bellows.toml"), `inlet-least = "-0.3 bar"`, `inlet-least = "`+test.least+`"`)
			reword(t, filepath.Join("cars", "shop", "outfit.toml"), "[adaptors]\n", "[adaptors]\n"+test.drawer)
			if test.hose != "" {
				reword(t, cars[0], "0.66 m of oil-16", test.hose+" of oil-16")
			}
			var s struct {
				Fit []struct {
					Car, Verdict string
					Adaptors     []struct {
						Bore_is_usual bool
					}
					With_adaptors *struct {
						Lost        float64
						Appears     []string
						Mends       []string
						Cannot_tell []string
					}
				}
				Appears []struct{ Identity, Level, Rule, Subject string }
			}
			said := call(t, exitFindings, "swap", "--from", cars[1], "--into", cars[0], "--on", "2026-11-25", "--format", "json")
			if err := json.Unmarshal([]byte(said), &s); err != nil {
				t.Fatal(err)
			}
			var found, unclear []string
			for _, i := range s.Fit {
				if i.Car != "lines.oil-suction.to" {
					continue
				}
				if len(i.Adaptors) != 1 || i.With_adaptors == nil || i.Adaptors[0].Bore_is_usual != test.usual {
					t.Fatalf("%s: %+v", i.Verdict, i)
				}
				if math.Abs(i.With_adaptors.Lost-test.lost) > 1 {
					t.Errorf("it loses %.0f Pa, by hand %.0f", i.With_adaptors.Lost, test.lost)
				}
				if mends := strings.Join(i.With_adaptors.Mends, "\n"); !strings.HasPrefix(mends, test.mended) || test.mended == "" && mends != "" {
					t.Errorf("it mends %s, want %s", mends, test.mended)
				}
				unclear = i.With_adaptors.Cannot_tell
				for _, f := range s.Appears {
					if strings.Contains(strings.Join(i.With_adaptors.Appears, "\n"), f.Identity) {
						found = append(found, f.Level+" "+f.Rule)
					}
				}
			}
			if diff := cmp.Diff(test.found, found); diff != "" {
				t.Errorf("found because of it (-want +got):\n%s", diff)
			}
			if len(unclear)+len(test.unclear) > 0 && !cmp.Equal(test.unclear, unclear) {
				t.Errorf("cannot be told with it: %v, want %v", unclear, test.unclear)
			}
			text := call(t, exitFindings, "swap", "--from", cars[1], "--into", cars[0], "--on", "2026-11-25", "--part", "fit", "--part", "breaks")
			for want, is := range map[string]bool{
				"leaves the pump": len(test.found) > 0, "Appear because of an adaptor:": len(test.found) > 0, "bore not known, so what it loses is not: screw": test.drawer == screw,
			} {
				if strings.Contains(text, want) != is {
					t.Errorf("%q said: %v, want %v\n%s", want, !is, is, text)
				}
			}
		})
	}
}

// reword replaces what a file of the demo says once.
func reword(t *testing.T, file, old, now string) {
	t.Helper()
	text := read(t, file)
	if strings.Count(text, old) != 1 {
		t.Fatalf("%s says %q %d times, want once", file, old, strings.Count(text, old))
	}
	if err := os.WriteFile(file, []byte(strings.Replace(text, old, now, 1)), 0o600); err != nil {
		t.Fatal(err)
	}
}
