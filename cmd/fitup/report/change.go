package report

import (
	"strings"

	"fitup/policies"
	"fitup/policies/judge"
)

// change prints what a change does beside what it breaks: what is mended, what is
// gone without being mended, what stays, and how the judgement itself has changed.
func (t *textCheck) change() {
	if t.Change == nil {
		return
	}
	t.turns("Mended, or gone", func(turn judge.Turn) bool { return turn.Other == judge.Clear })
	t.turns("Gone, but not mended", func(turn judge.Turn) bool { return turn.Other != judge.Clear })
	var stays []judge.Finding
	for _, f := range t.Staying() {
		if t.All || f.Level == policies.LevelDanger {
			stays = append(stays, f)
		}
	}
	if len(stays) > 0 {
		t.heading("As before")
	}
	for _, f := range stays {
		t.para(2, 4, "%s %s: %s [%s]", t.at(f.Location), t.paint(levelColours[f.Level], f.Level.String()), f.Message, f.Rule)
	}
	if len(t.Change.Shifts) > 0 {
		t.heading("How this is judged has changed")
	}
	for _, s := range t.Change.Shifts {
		t.para(2, 4, "%s", shiftText(s))
	}
	if len(t.Change.Unread) > 0 {
		t.heading("Could not be judged before, so all that is found in it is new")
		t.para(2, 4, "%s", strings.Join(t.Change.Unread, ", "))
	}
}

func (t *textCheck) heading(text string) {
	t.gap()
	t.para(0, 0, "%s:", t.paint(bold, text))
}

// turns prints the findings that have gone, of a kind.
func (t *textCheck) turns(title string, of func(judge.Turn) bool) {
	first := true
	for _, turn := range t.Change.Goes {
		if !of(turn) {
			continue
		}
		if first {
			t.heading(title)
			first = false
		}
		text := ""
		if turn.Other != judge.Clear {
			text = string(turn.Other) + ": "
		}
		t.para(2, 4, "%s%s %s: %s [%s]", text, t.at(turn.Location), turn.Level.String(), turn.Message, turn.Rule)
	}
}
