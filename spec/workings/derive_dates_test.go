package workings

import (
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"fitup/spec/unit"
)

func TestAfter(t *testing.T) {
	for _, c := range []struct {
		label  string
		months int
		want   string
	}{
		{"2020", 60, "2025-12-31"},       // a year: to the end of the fifth year
		{"2020-02", 60, "2025-02-28"},    // a month: to the end of that month
		{"2024-03-15", 24, "2026-03-15"}, // a day: to the same day
		{"2023-08-31", 6, "2024-02-29"},  // which the month may not have
		{"2024-12", 1, "2025-01-31"},
	} {
		label, err := unit.ParseDate(c.label)
		if err != nil {
			t.Fatal(err)
		}
		if got := after(label, c.months).Format(time.DateOnly); got != c.want {
			t.Errorf("%s + %d months: %s, want %s", c.label, c.months, got, c.want)
		}
	}
}

const (
	underFIA = "[rulebooks.appendix-j]\nauthority = \"FIA\"\n"
	underUK  = "[rulebooks.speed]\nauthority = \"Motorsport UK\"\n"
)

// TestDates counts from 2025-09-20. Lives as FIA article 253, the SFI standards and
// the national rules have them; see the table of lives.
func TestDates(t *testing.T) {
	type last struct{ Day, By string }
	for _, c := range []struct {
		name, rules, item, says string
		want                    last
		figures                 map[string]string
	}{
		{"the label wins", underFIA, "harness", `standard = "FIA 8853-2016", until = "2026", made = "2021-05"`, last{"2026-12-31", "label"}, map[string]string{"days_left": "467"}},
		{"past", underFIA, "harness", `standard = "FIA 8853-2016", until = "2025-08"`, last{"2025-08-31", "label"}, map[string]string{"days_left": "-20"}},
		{"an authority that allows more", underUK, "harness", `standard = "8853-2016", until = "2024"`, last{"2029-12-31", "label"}, nil},
		{"the stricter of two", underFIA + underUK, "harness", `standard = "8853-2016", until = "2024"`, last{"2024-12-31", "label"}, nil},
		{"year of make, by FIA", underFIA, "harness", `standard = "8853-2016", made = "2021-05"`, last{"2026-12-31", "fia"}, nil},
		{"SFI, under nobody's rules", "", "harness", `standard = "SFI 16.1", made = "2024-03"`, last{"2026-03-31", "sfi"}, nil},
		{"a guess", underFIA, "seat", `standard = "FIA 8855-1999", made = "~2022-02"`, last{"2027-02-28", "fia"}, map[string]string{"days_left": "~526"}},
		{"a standard that has ended", underUK, "helmet", `standard = "Snell SA2015"`, last{"2026-12-31", "motorsport-uk"}, nil},
		{"a standard without an end", underFIA, "helmet", `standard = "FIA 8859-2015"`, last{By: "fia"}, map[string]string{"days_left": "refused without a last day"}},
		{"checked by its maker", "", "head-restraint", `standard = "SFI 38.1", made = "2018-01", serviced = "2023-04"`, last{"2028-04-30", "sfi"}, nil},
		{"no standard", underFIA, "seat", `made = "2022-02"`, last{}, map[string]string{"days_left": "missing safety.seat.until"}},
		{"no date", underFIA, "seat", `standard = "8862-2009"`, last{}, map[string]string{"days_left": "missing safety.seat.made"}},
		{"serviced", underFIA, "hand-extinguisher", `serviced = "2024-01-10"`, last{}, map[string]string{"service_days_left": "112"}},
		{"as made", underFIA, "hand-extinguisher", `made = "2022-01-10"`, last{}, map[string]string{"service_days_left": "-619"}},
		{"interval on the label", underFIA, "fire-system", `serviced = "2024-10-01", every = "1 years"`, last{}, map[string]string{"service_days_left": "11"}},
		{"never serviced", underFIA, "fire-system", `agent = "gas"`, last{}, map[string]string{"service_days_left": "missing safety.fire-system.serviced"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			d, trace := specs{car: c.rules + "[safety]\n" + c.item + " = { " + c.says + " }\n"}.derive(t)
			if diff := cmp.Diff(c.want, last{d.Dated[0].Calc.LastDay, d.Dated[0].Calc.By}); diff != "" {
				t.Error(diff)
			}
			want := map[string]string{}
			for name, value := range c.figures {
				want["safety."+c.item+" "+name] = value
			}
			expect(t, trace, want, 1e-12)
		})
	}

	// A bladder of 2022-06 lasts five years under FIA; its label wins here too.
	_, trace := specs{car: underFIA + "[fuel.cell]\nstandard = \"FT3-1999\"\nmade = \"2022-06\"\n"}.derive(t)
	expect(t, trace, map[string]string{"fuel cell_days_left": "648"}, 1e-12)
}

func TestLives(t *testing.T) {
	for _, c := range []struct{ name, says, want, left string }{
		{"runs", `at = "262 runs", lasts = "150 runs"`, "0.52", "72 runs"},
		{"the nearer of two", `at = ["262 runs", "70 h"], lasts = ["150 runs", "12 h"]`, "0.8333333333", "2 h"},
		{"used up", `at = "100 runs", lasts = "150 runs"`, "1.6", "90 runs over"},
		{"years", `fitted = 2023-09-20, lasts = "4 years"`, "0.5", "2 years"},
		{"months", `fitted = 2024-01-25, lasts = "2 years"`, "0.7916667", "5 months"}, // nineteen whole months
		{"a guessed clock", `at = "~262 runs", lasts = "150 runs"`, "~0.52", "72 runs"},
		{"not told when it was fitted", `lasts = "150 runs"`, "missing life.x.at", ""},
		{"only one clock told", `at = "262 runs", lasts = ["150 runs", "12 h"]`, "missing life.x.at", ""},
		{"a clock that ran backwards", `at = "400 runs", lasts = "150 runs"`, "refused at least the 400", ""},
		{"no life", `at = "262 runs"`, "missing life.x.lasts", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			d, trace := specs{car: "[clock]\nruns = \"340 runs\"\nrun-time = \"80 h\"\n[life]\nx = { " + c.says + " }\n"}.derive(t)
			expect(t, trace, map[string]string{"life.x share": c.want}, 0.001)
			if got := d.Life[0].Calc.Left; got != c.left {
				t.Errorf("left %q, want %q", got, c.left)
			}
		})
	}
}
