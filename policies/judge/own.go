package judge

import "fitup/policies"

// Findings of the tool's own: about waivers and baselines, which no rule can see
// because they are about rules, and about a fleet, which no single document
// shows.
var (
	waiverExpired = own("expired", policies.LevelFault, policies.Rule{
		Title:       "A waiver that has run out",
		Description: "A waiver holds to its last day. After it the finding is back in force, so that what was put off is looked at again.",
		Message:     "the waiver of {rule} ran out on {day}: its findings are in force again",
		Fix:         "mend what it set aside, or look at it again and write a new last day",
	})
	waiverUnknownRule = own("unknown_rule", policies.LevelFault, policies.Rule{
		Title:       "A waiver of a rule that does not exist",
		Description: "A waiver that names no rule sets nothing aside, while its author believes that it does.",
		Message:     "no rule is called {rule}{near}",
		Fix:         "write the rule's id as a finding prints it, in brackets at the end of its line",
	})
	waiverUnknownSubject = own("unknown_subject", policies.LevelFault, policies.Rule{
		Title:       "A waiver of something that is not in the file",
		Description: "A waiver holds for named subjects in its own file. One that names nothing there sets nothing aside; the part may have been renamed or taken off.",
		Message:     "this file has no {thing}",
		Fix:         "write the subject as the finding prints it, or take the waiver out",
	})
	waiverRefused = own("not_waivable", policies.LevelFault, policies.Rule{
		Title:       "A waiver of a danger to somebody",
		Description: "A danger to a person under, beside or in the car cannot be set aside in writing. It is made good, or nobody goes near.",
		Message:     "{rule} is about danger to a person and cannot be waived",
		Fix:         "make the danger good and take the waiver out",
	})
	waiverUnused = own("unused", policies.LevelAdvice, policies.Rule{
		Title:       "A waiver that sets nothing aside",
		Description: "What it was written for is mended or gone. Left in, it would hide the next fault of the same kind.",
		Message:     "the waiver of {rule} on {thing} set nothing aside",
		Fix:         "take it out",
	})
	fittedTwice = fleet("fitted_twice", policies.LevelFault, policies.Rule{
		Title:       "One driveline in two cars",
		Description: "A driveline is in one car at a time. Two files that both say it is fitted mean that one was not written up after the last swap, and whatever is judged of that car is judged of an engine that is elsewhere.",
		Message:     "{driveline} is also written as fitted in {others}",
		Fix:         "write driveline = \"none\" in the car that it left",
	})
	baselineExpired = baseline("expired", policies.LevelFault, policies.Rule{
		Title:       "A baseline that has run out",
		Description: "A baseline gives a workshop time to work an old list down. After its last day the findings that it covered are in force again.",
		Message:     "the baseline ran out on {day}: what it covered is in force again ({count})",
		Fix:         "mend what it covered, or look at it again and write a new last day",
	})
	baselineRefused = baseline("danger", policies.LevelFault, policies.Rule{
		Title:       "A baseline with a danger in it",
		Description: "A baseline puts faults and advice off. A danger is made good, or set aside by a waiver that says why, if it may be.",
		Message:     "{finding} is a danger, and no baseline covers one",
		Fix:         "make the danger good and take the line out",
	})
	baselineStale = baseline("stale", policies.LevelAdvice, policies.Rule{
		Title:       "A line of a baseline that covers nothing",
		Description: "What it was written for is mended or gone. Left in, it would hide the next fault of the same kind.",
		Message:     "nothing is found any more of {finding}",
		Fix:         "take the line out: --write-baseline does",
	})
)

// Own lists the tool's own rules, for those who print or name rules.
func Own() []*policies.Rule {
	return []*policies.Rule{baselineRefused, baselineExpired, baselineStale, fittedTwice, waiverExpired, waiverRefused, waiverUnknownRule, waiverUnknownSubject, waiverUnused}
}

func ownIDs() []string {
	var ids []string
	for _, r := range Own() {
		ids = append(ids, r.ID)
	}
	return ids
}

func own(name string, level policies.Level, r policies.Rule) *policies.Rule {
	r.Area, r.Subject = "waiver", "waivers"
	return complete(name, level, r)
}

func baseline(name string, level policies.Level, r policies.Rule) *policies.Rule {
	r.Area, r.Subject = "baseline", "baseline"
	return complete(name, level, r)
}

func fleet(name string, level policies.Level, r policies.Rule) *policies.Rule {
	r.Area, r.Subject = "fleet", "cars"
	return complete(name, level, r)
}

func complete(name string, level policies.Level, r policies.Rule) *policies.Rule {
	r.Name, r.ID, r.Level = name, r.Area+"."+name, level
	r.Rulebook, r.Confidence = policies.Workshop, policies.Practice
	r.Stages = policies.Stages
	r.Sources = []policies.Source{{Key: "common-practice", Clause: "one record for one thing"}}
	return &r
}
