package document

import "fitup/spec"

// Dated is a safety item with a date.
type Dated struct {
	Subject
	spec.Dated
	Kind string    `json:"kind" doc:"harness, seat, helmet, window net, head restraint, hand extinguisher, fire system or fuel cell"`
	Calc DatedCalc `json:"calc" doc:"computed"`
}

// DatedCalc holds what follows from a label.
type DatedCalc struct {
	DaysLeft    Figure `json:"days_left" doc:"days until its last day, below nothing when past"`
	LastDay     string `json:"last_day" doc:"its last day"`
	ServiceLeft Figure `json:"service_days_left" doc:"days until its service is due"`
	By          string `json:"by" doc:"the label, or the authority whose life is used"`
}

// TowEye is a towing eye.
type TowEye struct {
	Subject
	spec.TowEye
	Calc TowEyeCalc `json:"calc" doc:"computed"`
}

// TowEyeCalc holds what an eye has to pull.
type TowEyeCalc struct {
	Weight Figure `json:"weight" doc:"weight of the car as it was on the scales" dim:"force"`
}

// Ballast is a piece of ballast.
type Ballast struct {
	Subject
	spec.Ballast
}

// Weighed is a weighing: of the car, or of the driveline.
type Weighed struct {
	Subject
	Of     string      `json:"of" doc:"car or driveline"`
	Unsure spec.Length `json:"unsure" doc:"how far the centre of mass may be from the figures"`
}

// FireSystem is the plumbed-in fire system.
type FireSystem struct {
	Subject
	spec.FireSystem
}

// LifeItem is an item with a life.
type LifeItem struct {
	Subject
	spec.LifeItem
	Clock spec.Clock   `json:"clock" doc:"the clock it counts on"`
	Calc  LifeItemCalc `json:"calc" doc:"computed"`
}

// LifeItemCalc holds what is left of a life. Only the limits that the item has
// are there.
type LifeItemCalc struct {
	Share Figure `json:"share" doc:"share of the life used, by the limit nearest its end" dim:"ratio"`
	Left  string `json:"left" doc:"what is left, in the words of that limit"`
}

// Gap is a measured clearance.
type Gap struct {
	Subject
	spec.Gap
	Moves bool     `json:"moves" doc:"one of the two rocks with the driveline, and the other stays"`
	Fit   spec.Fit `json:"fit" doc:"what is true of the car with this driveline"`
}

// Access is a panel or part in the way.
type Access struct {
	Subject
	spec.Access
}

// History is what a part has been through.
type History struct {
	Subject
	spec.HistoryOf
}
