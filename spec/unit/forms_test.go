package unit

import (
	"errors"
	"math"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
)

var close = cmpopts.EquateApprox(1e-12, 0)

// refused checks that err is an *Error at word whose message begins with want.
func refused(t *testing.T, text string, err error, word, want string) {
	t.Helper()
	var e *Error
	if !errors.As(err, &e) {
		t.Errorf("%q: %v, want an error: %s", text, err, want)
		return
	}
	if got := e.Text[e.Start:e.End]; got != word {
		t.Errorf("%q: error at %q, want %q", text, got, word)
	}
	if !strings.HasPrefix(e.Error(), want) {
		t.Errorf("%q: %q, want %q", text, e, want)
	}
}

func TestParseDash(t *testing.T) {
	for text, od := range map[string]float64{"-8": 0.0127, "-08": 0.0127, "-3": 0.0047625, "-16": 0.0254, "-32": 0.0508} {
		d, err := ParseDash(text)
		if err != nil {
			t.Errorf("ParseDash(%q): %v", text, err)
		} else if d.TubeOD() != od {
			t.Errorf("ParseDash(%q).TubeOD() = %v, want %v", text, d.TubeOD(), od)
		}
	}
	for _, c := range []struct{ text, want string }{
		{"8", `"8" is no dash size: did you mean -8? `},
		{"AN8", `"AN8" is no dash size: did you mean -8? `},
		{"AN-08", `"AN-08" is no dash size: did you mean -8? `},
		{"-7", "no fitting is made in size -7: the sizes beside it are -6 and -8"},
		{"-1", "no fitting is made in size -1: the sizes beside it are -2"},
		{"-64", "no fitting is made in size -64: the sizes beside it are -32"},
		{"1/2 in", `"1/2 in" is no dash size: a dash size is due`},
		{"-0", `"-0" is no dash size: a dash size is due`},
	} {
		_, err := ParseDash(c.text)
		refused(t, c.text, err, c.text, c.want)
	}
	if got := Dash(8).String(); got != "-8" {
		t.Errorf("Dash(8) = %q", got)
	}
}

// Diameters and pitches: ISO 261, ASME B1.1, ASME B1.20.1 table 2, ISO 228-1.
func TestParseThread(t *testing.T) {
	for _, c := range []struct {
		text string
		want Thread
	}{
		{"M10x1.5", Thread{System: Metric, Major: 0.010, Pitch: 0.0015, Text: "M10x1.5"}},
		{"M10×1.50", Thread{System: Metric, Major: 0.010, Pitch: 0.0015, Text: "M10x1.5"}},
		{"M10 x 1", Thread{System: Metric, Major: 0.010, Pitch: 0.001, Text: "M10x1"}},
		{"M10x1 LH", Thread{System: Metric, Major: 0.010, Pitch: 0.001, Left: true, Text: "M10x1 LH"}},
		{"3/8-24", Thread{System: Unified, Major: 0.009525, Pitch: 0.0254 / 24, TPI: 24, Text: "3/8-24"}},
		{"7/16-20 UNF", Thread{System: Unified, Major: 0.0111125, Pitch: 0.00127, TPI: 20, Text: "7/16-20"}},
		{"7/16-20 UNJF", Thread{System: Unified, Major: 0.0111125, Pitch: 0.00127, TPI: 20, Text: "7/16-20"}},
		{"1-1/16-12", Thread{System: Unified, Major: 0.0269875, Pitch: 0.0254 / 12, TPI: 12, Text: "1-1/16-12"}},
		{"2-1/2-12", Thread{System: Unified, Major: 0.0635, Pitch: 0.0254 / 12, TPI: 12, Text: "2-1/2-12"}},
		{"1-12", Thread{System: Unified, Major: 0.0254, Pitch: 0.0254 / 12, TPI: 12, Text: "1-12"}},
		{"10-32", Thread{System: Unified, Major: 0.004826, Pitch: 0.00079375, TPI: 32, Text: "10-32"}},
		{"#10-32 UNF", Thread{System: Unified, Major: 0.004826, Pitch: 0.00079375, TPI: 32, Text: "10-32"}},
		{"1/4-18 NPT", Thread{System: NPT, Major: 0.013716, Pitch: 0.0254 / 18, TPI: 18, Taper: true, Text: "1/4-18 NPT"}},
		{"1/8 NPT", Thread{System: NPT, Major: 0.010287, Pitch: 0.0254 / 27, TPI: 27, Taper: true, Text: "1/8-27 NPT"}},
		{"1/8 NPTF", Thread{System: NPT, Major: 0.010287, Pitch: 0.0254 / 27, TPI: 27, Taper: true, Text: "1/8-27 NPT"}},
		{"1-11.5 NPT", Thread{System: NPT, Major: 0.033401, Pitch: 0.0254 / 11.5, TPI: 11.5, Taper: true, Text: "1-11.5 NPT"}},
		{"G1/4", Thread{System: G, Major: 0.013157, Pitch: 0.0254 / 19, TPI: 19, Text: "G1/4"}},
		{"R1/4", Thread{System: R, Major: 0.013157, Pitch: 0.0254 / 19, TPI: 19, Taper: true, Text: "R1/4"}},
		{"Rc 1/4", Thread{System: R, Major: 0.013157, Pitch: 0.0254 / 19, TPI: 19, Taper: true, Text: "R1/4"}},
		{"G1-1/4", Thread{System: G, Major: 0.04191, Pitch: 0.0254 / 11, TPI: 11, Text: "G1-1/4"}},
	} {
		got, err := ParseThread(c.text)
		if err != nil {
			t.Errorf("ParseThread(%q): %v", c.text, err)
			continue
		}
		if diff := cmp.Diff(c.want, got, close); diff != "" {
			t.Errorf("ParseThread(%q): %s", c.text, diff)
		}
		if again, err := ParseThread(got.String()); err != nil || again != got {
			t.Errorf("%q is written %q, read as %v, %v", c.text, got, again, err)
		}
	}
	for _, c := range []struct{ text, want string }{
		{"M10", "M10 is made in several pitches: write M10x1.5 (coarse), M10x1.25 or M10x1"},
		{"M99", "a thread with no pitch: "},
		{"M1.5x10", "no thread has that pitch: "},
		{"M10x0", "no thread has that pitch: "},
		{"3/8", "3/8 is made in several pitches: write 3/8-16, 3/8-24 or 3/8-32"},
		{"7/16 UNF", "7/16 is made in several pitches: "},
		{"7/16-14 UNF", "7/16 UNF has 20 threads an inch, not 14: write 7/16-20, or leave UNF out"},
		{"1/4-19 NPT", "1/4 NPT has 18 threads an inch, not 19: write 1/4-18 NPT"},
		{"5/16 NPT", "no size 5/16 in the NPT series: the sizes are 1/16, 1/8, 1/4, "},
		{"1/4 BSP", "1/4 BSP hides a choice: write G and the size if it is parallel"},
		{"3/0-24", "a fraction over nought: "},
		{"10 mm", `"10 mm" is no thread: write it like M10x1.5, `},
	} {
		_, err := ParseThread(c.text)
		refused(t, c.text, err, c.text, c.want)
	}
}

func thread(t *testing.T, text string) Thread {
	t.Helper()
	th, err := ParseThread(text)
	if err != nil {
		t.Fatal(err)
	}
	return th
}

func TestThreadEqual(t *testing.T) {
	for _, c := range []struct {
		a, b string
		want bool
	}{
		{"7/16-20 UNF", "7/16-20 UNJF", true},
		{"M10x1.0", "M10x1", true},
		{"M10x1", "M10x1.25", false},
		{"M10x1", "M10x1 LH", false},
		{"G1/4", "R1/4", false},
		{"1/2-14 NPT", "G1/2", false},
	} {
		if got := thread(t, c.a).Equal(thread(t, c.b)); got != c.want {
			t.Errorf("%s equal to %s: %v", c.a, c.b, got)
		}
	}
}

// TestNearMatch holds the rule against pairs known in the trade (common
// practice), with differences worked by hand from the nominal sizes.
func TestNearMatch(t *testing.T) {
	for _, c := range []struct {
		male, female string
		want         NearEffect // "" for no near match
	}{
		// Starts and strips after about a thread.
		{"M10x1", "3/8-24", Jams}, // 0.475 mm, 5.5 %
		{"5/16-24", "M8x1", Jams},
		{"M8x1", "5/16-24", Jams},
		{"1/2-20", "M12x1.25", Jams}, // 0.700 mm, just within
		{"1/2-20", "G1/4", Slack},
		{"9/16-18", "M14x1.5", Jams},
		{"9/16-18", "1/4 NPT", Jams},
		{"1/4 NPT", "9/16-18", Slack}, // same pitch
		{"M14x1.5", "1/4 NPT", Jams},
		{"M10x1", "1/8 NPT", Slack},
		{"1/8 NPT", "M10x1", Jams},
		{"5/8-18", "M16x1.5", Jams},
		{"M16x1.5", "5/8-18", Jams},
		{"7/8-14", "G5/8", Slack},
		{"G5/8", "7/8-14", Jams},
		{"1-1/16-12", "M27x2", Jams},
		{"M27x2", "1-1/16-12", Jams},
		{"1-1/16-14", "3/4 NPT", Jams},
		{"1-1/16-14", "G3/4", Jams},
		{"1-3/16-12", "M30x2", Jams},
		{"1-5/16-12", "M33x2", Jams},
		{"1-5/16-12", "1-11.5 NPT", Jams},
		{"M48x2", "1-7/8-12", Jams},
		{"10-32", "M5x0.8", Slack},
		{"M5x0.8", "10-32", Jams},
		{"M10x1.5", "3/8-16", Jams},
		{"9/16-12", "M14x2", Jams},
		{"M11x1.25", "7/16-20", Jams},
		{"7/16-20", "M11x1.25", Jams},
		{"7/16-24", "M11x1", Jams},
		{"3/8-24", "M9x1", Jams},
		{"M18x1.5", "11/16-16", Jams},
		{"13/16-16", "M20x1.5", Jams},
		{"1-7/16-12", "M36x2", Jams},
		{"M13x1.25", "1/2-20", Jams},
		{"1/8 NPT", "G1/8", Jams},
		{"1/4 NPT", "G1/4", Jams},
		{"3/8 NPT", "G3/8", Jams},
		{"1/2 NPT", "G1/2", Jams},
		{"3/4 NPT", "G3/4", Jams},
		{"1 NPT", "G1", Jams},

		// Goes in slack and holds by its tips.
		{"3/8-24", "M10x1", Slack},
		{"7/16-20", "M12x1.25", Slack}, // 0.89 mm
		{"M12x1.25", "7/16-20", ""},
		{"1/2 NPT", "7/8-14", Slack}, // 0.89 mm, same pitch
		{"5/8-18", "3/8 NPT", Slack}, // same pitch
		{"M18x1.5", "3/4-16", Slack},
		{"3/4-16", "M20x1.5", Slack},
		{"G1/8", "M10x1", Slack}, // 9.3 %
		{"M6x1", "1/4-28", Slack},
		{"M12x1.25", "1/2-20", Slack},

		// One diameter, two pitches.
		{"M10x1", "M10x1.25", Jams},
		{"M10x1", "M10x1.5", Jams},
		{"M12x1.75", "M12x1.5", Jams},
		{"M14x1.25", "M14x1.5", Jams},
		{"7/16-20", "7/16-24", Jams},
		{"3/4-16", "3/4-18", Jams},
		{"1-1/16-12", "1-1/16-14", Jams},
		{"M8x1.25", "5/16-18", Jams}, // 0.06 mm, 11.4 %

		{"R1/4", "G1/4", Tapers},

		{"M10x1", "M10x1", ""},
		{"M10x1", "M10x1 LH", ""},
		{"M10x1.5", "M12x1.75", ""},
		{"M8x1.25", "M10x1.25", ""},
		{"5/8-18", "9/16-18", ""},
		{"M6x1", "M5x0.8", ""},
	} {
		got, ok := NearMatch(thread(t, c.male), thread(t, c.female))
		if ok != (c.want != "") || got.Effect != c.want {
			t.Errorf("male %s in female %s: %q (overlap %.3f, pitch %.3f), want %q", c.male, c.female, got.Effect, got.Overlap, got.Pitch, c.want)
		}
	}
}

// TestNearMatchFigures: 7/16-20 goes into M12x1.25 by about a third of the
// flank; worked by hand, (11.1125 - (12 - 1.08253×1.25)) / (1.08253×1.25).
func TestNearMatchFigures(t *testing.T) {
	got, ok := NearMatch(thread(t, "7/16-20"), thread(t, "M12x1.25"))
	want := Near{Effect: Slack, Major: -0.8875e-3, Pitch: 0.02 / 1.27, Overlap: 0.34414}
	if !ok {
		t.Fatal("no near match")
	}
	if diff := cmp.Diff(want, got, cmpopts.EquateApprox(1e-4, 0)); diff != "" {
		t.Error(diff)
	}
}

// Areas: ASTM B258, as printed in wire tables to three figures.
func TestParseWire(t *testing.T) {
	for _, c := range []struct {
		text string
		mm2  float64
		awg  string
	}{
		{"24 AWG", 0.205, "24"},
		{"18 AWG", 0.823, "18"},
		{"14AWG", 2.08, "14"},
		{"10 AWG", 5.26, "10"},
		{"2 AWG", 33.6, "2"},
		{"1/0 AWG", 53.5, "1/0"},
		{"0 AWG", 53.5, "1/0"},
		{"4/0 AWG", 107, "4/0"},
		{"2.5 mm2", 2.5, ""},
		{"2.5 mm²", 2.5, ""},
	} {
		w, err := ParseWire(c.text)
		if err != nil {
			t.Errorf("ParseWire(%q): %v", c.text, err)
			continue
		}
		if got := w.Area * 1e6; math.Abs(got/c.mm2-1) > 0.004 || w.AWG != c.awg {
			t.Errorf("ParseWire(%q) = %.4g mm2, AWG %q, want %v, %q", c.text, got, w.AWG, c.mm2, c.awg)
		}
		if again, err := ParseWire(w.String()); err != nil || again != w {
			t.Errorf("%q is written %q, read as %v, %v", c.text, w, again, err)
		}
	}
	for _, c := range []struct{ text, word, want string }{
		{"18", "18", "a number with no unit: write it like 2.5 mm2 or 18 AWG"},
		{"AWG 18", "AWG 18", `"AWG 18" is no wire size: write it like 18 AWG`},
		{"5/0 AWG", "5/0 AWG", `"5/0 AWG" is no wire size`},
		{"50 AWG", "50 AWG", "no wire is so thin: "},
		{"2.5 mm", "mm", "mm is a length: "},
		{"0 mm2", "0 mm2", "nothing at all: "},
	} {
		_, err := ParseWire(c.text)
		refused(t, c.text, err, c.word, c.want)
	}
}

func TestParsePosition(t *testing.T) {
	p, err := ParsePosition("-391, 216, 277 mm")
	if err != nil {
		t.Fatal(err)
	}
	want := Position{XYZ: [3]float64{-0.391, 0.216, 0.277}, Unit: "mm", Text: "-391, 216, 277 mm"}
	if diff := cmp.Diff(want, p); diff != "" {
		t.Error(diff)
	}
	for _, c := range []struct{ text, word, want string }{
		{"1, 2 mm", "1, 2 mm", "a position has three numbers: "},
		{"1, 2, 3", "3", "a number with no unit: a length is due"},
		{"1 mm, 2, 3 mm", "mm", "a unit inside a position: "},
		{"1, x, 3 mm", "x", "no number here: a number is due"},
		{"1, 2, 3 bar", "bar", "bar is a pressure: "},
		{"1, 2, mm", "mm", "no number here: a number is due"},
	} {
		_, err := ParsePosition(c.text)
		refused(t, c.text, err, c.word, c.want)
	}
}

func TestParseRange(t *testing.T) {
	for _, c := range []struct {
		text      string
		d         Dimension
		low, high float64
	}{
		{"0 to 10 bar", Pressure, 0, 1e6},
		{"-18 to 22 mm", Length, -0.018, 0.022},
		{"0 bar to 145 psi", Pressure, 0, 145 * 6894.757293168361},
		{"-20 to 100 °C", Temperature, 253.15, 373.15},
		{"5 to 5 mm", Length, 0.005, 0.005},
	} {
		r, err := ParseRange(c.text, c.d)
		if err != nil {
			t.Errorf("ParseRange(%q): %v", c.text, err)
			continue
		}
		if diff := cmp.Diff([]float64{c.low, c.high}, []float64{r.Low, r.High}, close); diff != "" {
			t.Errorf("ParseRange(%q): %s", c.text, diff)
		}
		if !r.Holds(r.Low) || !r.Holds(r.High) || r.Holds(r.High+1) || r.Holds(r.Low-1) {
			t.Errorf("%q does not hold what it should", c.text)
		}
	}
	for _, c := range []struct{ text, word, want string }{
		{"5 mm", "5 mm", "not a range: "},
		{"10 to 0 mm", "10 to 0 mm", "a range that runs backwards: "},
		{"0 to 10", "10", "a number with no unit: "},
		{"x to 10 mm", "x", "no number here: "},
		{"0 bar to 10 mm", "bar", "bar is a pressure: "},
	} {
		_, err := ParseRange(c.text, Length)
		refused(t, c.text, err, c.word, c.want)
	}
}

func TestParseAt(t *testing.T) {
	a, err := ParseAt("360 kW at 6900 rpm", Power, RotationalSpeed)
	if err != nil {
		t.Fatal(err)
	}
	want := At{
		Value: Quantity{SI: 360e3, Unit: "kW", Text: "360 kW"},
		At:    Quantity{SI: 6900 * math.Pi / 30, Unit: "rpm", Text: "6900 rpm"},
		Text:  "360 kW at 6900 rpm",
	}
	if diff := cmp.Diff(want, a, close); diff != "" {
		t.Error(diff)
	}
	for _, c := range []struct{ text, word, want string }{
		{"360 kW", "360 kW", "a value with nothing that it holds at: a power at a rotational speed is due"},
		{"360 hp at 6900 rpm", "hp", "hp hides a choice: "},
		{"360 kW at 6900", "6900", "a number with no unit: a rotational speed is due"},
	} {
		_, err := ParseAt(c.text, Power, RotationalSpeed)
		refused(t, c.text, err, c.word, c.want)
	}
}

func TestParseDate(t *testing.T) {
	day := func(y int, m time.Month, d int) time.Time { return time.Date(y, m, d, 0, 0, 0, 0, time.UTC) }
	for _, c := range []struct {
		text        string
		first, last time.Time
	}{
		{"2022", day(2022, 1, 1), day(2022, 12, 31)},
		{"2022-06", day(2022, 6, 1), day(2022, 6, 30)},
		{"2024-02", day(2024, 2, 1), day(2024, 2, 29)},
		{"2022-12", day(2022, 12, 1), day(2022, 12, 31)},
		{"2022-06-15", day(2022, 6, 15), day(2022, 6, 15)},
	} {
		d, err := ParseDate(c.text)
		if err != nil {
			t.Errorf("ParseDate(%q): %v", c.text, err)
			continue
		}
		if !d.First().Equal(c.first) || !d.Last().Equal(c.last) || d.String() != c.text {
			t.Errorf("ParseDate(%q) runs from %v to %v, want %v to %v", c.text, d.First(), d.Last(), c.first, c.last)
		}
	}
	for _, c := range []struct{ text, want string }{
		{"2022-13", "2022-13 does not exist: a month from 01 to 12 is due"},
		{"2022-00", "2022-00 does not exist: "},
		{"2023-02-29", "2023-02-29 does not exist: February 2023 has 28 days"},
		{"2022-06-00", "2022-06-00 does not exist: "},
		{"06/2022", `"06/2022" is no date: `},
		{"0022", "no car part is that old: "},
		{"june", `"june" is no date: `},
	} {
		_, err := ParseDate(c.text)
		refused(t, c.text, err, c.text, c.want)
	}
}

// FuzzForms: whatever is written, each form is read or refused with an error
// whose span lies within the text, and what is read has a finite value.
func FuzzForms(f *testing.F) {
	for _, seed := range []string{
		"12.5 mm", "3 1/2 in", "-8", "M10x1.5", "1-1/16-12 UN", "1/4-18 NPT", "G1/4", "2/0 AWG", "-391, 216, 277 mm",
		"0 to 10 bar", "360 kW at 6900 rpm", "2022-06-15", "", " ", ",", "°C", "1/0-0", " to ", "1 at 2", "#0-0", "9999-99-99", "M0x0",
	} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		check := func(form string, si float64, err error) {
			t.Helper()
			var e *Error
			switch {
			case err == nil:
				if math.IsNaN(si) || math.IsInf(si, 0) {
					t.Errorf("%s %q is %v", form, text, si)
				}
			case !errors.As(err, &e):
				t.Errorf("%s %q: %T", form, text, err)
			case e.Text != text || e.Start < 0 || e.End < e.Start || e.End > len(text) || e.Problem == "" || e.Want == "":
				t.Errorf("%s %q: %+v", form, text, e)
			}
		}
		for _, d := range Dimensions() {
			q, err := Parse(text, d)
			check(string(d), q.SI, err)
		}
		dash, err := ParseDash(text)
		check("dash", dash.TubeOD(), err)
		thread, err := ParseThread(text)
		check("thread", thread.Major+thread.Pitch, err)
		wire, err := ParseWire(text)
		check("wire", wire.Area, err)
		position, err := ParsePosition(text)
		check("position", position.XYZ[0]+position.XYZ[1]+position.XYZ[2], err)
		r, err := ParseRange(text, Length)
		check("range", r.Low+r.High, err)
		a, err := ParseAt(text, Power, RotationalSpeed)
		check("at", a.Value.SI+a.At.SI, err)
		date, err := ParseDate(text)
		check("date", float64(date.Year), err)
	})
}
