package report

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"github.com/google/go-cmp/cmp"

	"fitup/policies/judge"
)

func someDue() *judge.Due {
	day := func(text string) time.Time {
		d, err := time.Parse(time.DateOnly, text)
		if err != nil {
			panic(err)
		}
		return d
	}
	return &judge.Due{
		On: day("2026-11-25"), By: day("2027-03-31"), Later: 2,
		Dated: []judge.DueItem{
			{Location: at("a.toml", 4, 1, 2, "safety.harness"), What: "harness", Day: day("2026-11-20"), By: "label"},
			{Location: at("a.toml", 9, 1, 2, "waivers.w"), What: "waiver of lines.age", Day: day("2026-11-25"), By: "waiver"},
			{Location: at("b.toml", 5, 1, 2, "safety.seat"), What: "seat", Day: day("2026-12-31"), By: "fia", Guessed: true},
		},
		Used: []judge.DueItem{
			{Location: at("a.toml", 11, 1, 2, "life.oil"), What: "use of oil", By: "file", Share: 1.25, Left: "2 h over"},
			{Location: at("a.toml", 14, 1, 2, "life.rods"), What: "use of rods", By: "file", Share: 0.5, Left: "120 runs"},
		},
		Unknown: []judge.DueItem{{Location: at("b.toml", 7, 1, 2, "safety.helmet"), What: "helmet", Missing: []string{"safety.helmet.until"}}},
	}
}

func TestDueText(t *testing.T) {
	got, err := DueText(someDue(), plainStyle())
	if err != nil {
		t.Fatal(err)
	}
	const want = `Last days up to 2027-03-31:
  2026-11-20, 5 days past: cars/a.toml:4: harness, by its label
  2026-11-25, today: cars/a.toml:9: waiver of lines.age
  2026-12-31, 36 days left: cars/b.toml:5: seat, by fia, resting on a guess

Lives, the most used first:
  125 % used: cars/a.toml:11: use of oil: 2 h over
  50 % used: cars/a.toml:14: use of rods: 120 runs left

Cannot tell, as too little is written:
  cars/b.toml:7: helmet: write safety.helmet.until

On 2026-11-25: 3 last days up to 2027-03-31 (2 later), 2 items past or used up,
2 lives by use, 1 item that cannot be told.

Local codes, the event's own regulations and a licensed inspector or scrutineer
decide. This checks a written spec, not the car.
`
	if diff := cmp.Diff(want, string(got)); diff != "" {
		t.Errorf("-want +got:\n%s", diff)
	}
}

// unfold reads content lines back as RFC 5545, 3.1 says.
func unfold(t *testing.T, text string) []string {
	t.Helper()
	for line := range strings.SplitSeq(strings.TrimSuffix(text, "\r\n"), "\r\n") {
		if len(line) > icsWidth || strings.ContainsAny(line, "\r\n") || !utf8.ValidString(line) {
			t.Errorf("a line of %d bytes: %q", len(line), line)
		}
	}
	if !strings.HasSuffix(text, "\r\n") {
		t.Error("the last line has no end")
	}
	return strings.Split(strings.TrimSuffix(strings.ReplaceAll(text, "\r\n ", ""), "\r\n"), "\r\n")
}

func TestDueICS(t *testing.T) {
	got, err := DueICS(someDue(), plainStyle())
	if err != nil {
		t.Fatal(err)
	}
	closing := `Local codes\, the event's own regulations and a licensed inspector or scrutineer decide. This checks a written spec\, not the car.`
	event := func(day, summary, about string) []string {
		return []string{
			"BEGIN:VEVENT", "UID", "DTSTAMP:20261125T000000Z", "DTSTART;VALUE=DATE:" + day, "SUMMARY:" + summary,
			"DESCRIPTION:" + about + `\n` + closing, "TRANSP:TRANSPARENT", "END:VEVENT",
		}
	}
	want := []string{"BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//fitup//due//EN", "CALSCALE:GREGORIAN"}
	for _, each := range [][]string{
		event("20261120", `harness\, last day`, `a.toml:4\nharness\, by its label`),
		event("20261125", `waiver of lines.age\, last day`, `a.toml:9\nwaiver of lines.age`),
		event("20261231", `seat\, last day`, `b.toml:5\nseat\, by fia\, resting on a guess`),
		event("20270331", "look again at what runs out", `On 2026-11-25: 3 last days up to 2027-03-31 (2 later)\, 2 items past or used up\, 2 lives by use\, 1 item that cannot be told`),
	} {
		want = append(want, each...)
	}
	want = append(want, "END:VCALENDAR")
	lines := unfold(t, string(got))
	seen := map[string]bool{}
	for i, line := range lines {
		if uid, ok := strings.CutPrefix(line, "UID:"); ok {
			if seen[uid] {
				t.Errorf("two events have UID %s", uid)
			}
			seen[uid], lines[i] = true, "UID"
		}
	}
	if diff := cmp.Diff(want, lines); diff != "" {
		t.Errorf("-want +got:\n%s", diff)
	}
}

// TestDueICSKeepsUIDs holds that an item that is renewed moves its event.
func TestDueICSKeepsUIDs(t *testing.T) {
	uids := func(d *judge.Due) (out []string) {
		got, err := DueICS(d, plainStyle())
		if err != nil {
			t.Fatal(err)
		}
		for _, line := range unfold(t, string(got)) {
			if strings.HasPrefix(line, "UID:") {
				out = append(out, line)
			}
		}
		return out
	}
	later := someDue()
	for i := range later.Dated {
		later.Dated[i].Day = later.Dated[i].Day.AddDate(1, 0, 0)
		later.Dated[i].Line += 7
	}
	if diff := cmp.Diff(uids(someDue()), uids(later)); diff != "" {
		t.Error(diff)
	}
}

func TestDueForged(t *testing.T) {
	d := someDue()
	d.Dated[0].File, d.Dated[0].What = forgedFile+"\r\nEND:VEVENT\r\nBEGIN:VEVENT", strings.Repeat("\u00e9\u4e16\U0001f600", 40)+forged
	got, err := DueICS(d, plainStyle())
	if err != nil {
		t.Fatal(err)
	}
	golden := filepath.Join("testdata", "due.ics")
	if *update {
		if err := os.WriteFile(golden, got, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(golden)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(want), string(got)); diff != "" {
		t.Errorf("-want +got:\n%s", diff)
	}
	lines := unfold(t, string(got))
	n := 0
	for _, line := range lines {
		if line == "BEGIN:VEVENT" {
			n++
		}
	}
	if n != len(d.Dated)+1 {
		t.Errorf("%d events of %d items", n, len(d.Dated))
	}
	text, err := DueText(d, plainStyle())
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range string(text) {
		if r != '\n' && forges(r) {
			t.Errorf("the text lets %q through", r)
		}
	}
}
