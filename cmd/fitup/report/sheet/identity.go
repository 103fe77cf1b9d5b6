package sheet

import (
	"fmt"
	"strings"
	"time"

	"fitup/cmd/fitup/report"
)

// identityOf says what the sheet was made from, so that an old one is known as
// such and a kind one is seen through.
func identityOf(s *Sheet) []entry {
	c := s.Check
	config := c.Config
	if config == "" {
		config = "none"
	}
	all := []entry{
		{"specs", strings.Join(s.Files, ", ")},
		{"git", s.Revision},
		{"judged on", c.Date.Format(time.DateOnly)},
		{"read", report.ReadText(c)},
		{"fitup", c.Version},
		{"rules", "digest " + c.Digest},
		{"configuration", config},
		{"fails from", c.FailOn},
	}
	taken := c.Taken
	taken.Waived = nil // each stands below with its reason
	for _, each := range report.TakenAway(taken) {
		all = append(all, entry{"taken away", each})
	}
	if taken.Nothing() {
		all = append(all, entry{"taken away", "nothing: no limit is looser, no rule skipped, no spec excluded"})
	}
	for _, w := range c.Waivers {
		all = append(all, entry{"waiver in force", fmt.Sprintf("%s of %s until %s: %s", w.Rule, strings.Join(w.On, ", "), w.Until.Format(time.DateOnly), w.Why)})
	}
	for _, f := range c.Faults {
		all = append(all, entry{"rule broken", strings.TrimPrefix(f.Rule+": "+f.Message, ": ")})
	}
	return all
}
