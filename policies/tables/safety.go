package tables

// A SafetyDateRow is the life of one standard of safety item under one
// authority. Spans are in calendar months; 0 is none.
type SafetyDateRow struct {
	Item              string `yaml:"item"`
	Standard          string `yaml:"standard"`
	Authority         string `yaml:"authority"`
	LifeMonths        int    `yaml:"life_months"`
	CountedFrom       string `yaml:"counted_from"` // made, made-year-end or check
	GraceMonths       int    `yaml:"grace_months"` // that the authority allows past the label
	RecertifiedMonths int    `yaml:"recertified_months"`
	AcceptedUntil     string `yaml:"accepted_until"` // last day for the standard, as 2023-12-31
	Label             string `yaml:"label"`          // what the label says
	Row               `yaml:",inline"`
}

var safetyDates = load[SafetyDateRow]("safety_dates")

// SafetyDates returns the lives of a standard of item, a row an authority.
func SafetyDates(item, standard string) []SafetyDateRow {
	return safetyDates().all(func(r SafetyDateRow) bool { return r.Item == item && r.Standard == standard })
}
