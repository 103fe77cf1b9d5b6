package document

import "fitup/spec"

// Shop is the workshop.
type Shop struct {
	Subject
	spec.ShopHead
}

// Gear is something that car or driveline is lifted, held or tightened with. It is
// looked over from time to time, and says what it bears.
type Gear struct {
	Subject
	Kind       string     `json:"kind" doc:"hoist, sling, stand, jack, torque wrench or lift point"`
	Marked     spec.Flag  `json:"marked" doc:"carries its limit, of a sling or lift point"`
	Checked    spec.Label `json:"checked" doc:"day of its last examination"`
	Calibrated spec.Label `json:"calibrated" doc:"day of the last calibration, of a torque wrench"`
	Calc       GearCalc   `json:"calc" doc:"computed"`
}

// GearCalc holds how long ago gear was looked over.
type GearCalc struct {
	Age Figure `json:"age" doc:"whole months since it was examined or calibrated" dim:"age"`
}

// Support is how the car stands.
type Support struct {
	Subject
	spec.Support
	StandCount int        `json:"stand_count" doc:"stands in place"`
	Unchocked  []string   `json:"unchocked" doc:"wheels that are down and not chocked; absent where either is not said"`
	Locking    *int       `json:"locking" doc:"castors of the dolly in use that lock; absent while one of them does not say"`
	Tackle     spec.Sling `json:"tackle" by:"sling" doc:"the sling in use, from the shop file"`
	Crane      spec.Hoist `json:"crane" by:"hoist" doc:"the hoist in use, from the shop file"`
	Carrier    spec.Dolly `json:"carrier" by:"dolly" doc:"the dolly in use, from the shop file"`
	Driveline  string     `json:"driveline" doc:"the driveline fitted"`
	Fit        spec.Fit   `json:"fit" doc:"what is true of the car with this driveline"`

	Weighed spec.DrivelineWeighing `json:"weighed" doc:"that driveline on the scale"`

	Calc SupportCalc `json:"calc" doc:"computed"`

	unlocked []string // what would say which castors lock
}

// SupportCalc holds what hangs from the hoist, and what it may.
type SupportCalc struct {
	HookLoad   Figure `json:"hook_load" doc:"driveline, tackle and sling" dim:"mass"`
	HookRated  Figure `json:"hook_rated" doc:"plate figure of the hoist at the boom position in use" dim:"mass"`
	HangTilt   Figure `json:"hang_tilt" doc:"tilt of the driveline as it hangs" dim:"angle"`
	HookNeeded Figure `json:"hook_needed" doc:"height of the hook that lifts the driveline over what stays in the car" dim:"length"`
	Saddle     Figure `json:"saddle_needed" doc:"height of the saddles that lets the driveline out beneath on its dolly" dim:"length"`
	DollyEdge  Figure `json:"dolly_margin" doc:"driveline's centre of mass inside the castors, all turned inwards" dim:"length"`
	DollyTips  Figure `json:"dolly_tilt" doc:"tilt at which driveline and dolly go over" dim:"angle"`
	DollyStep  Figure `json:"dolly_step" doc:"step under one castor that tilts them so far" dim:"length"`
	DollyFrame Figure `json:"dolly_stress" doc:"bending stress of one frame tube with the whole weight at its middle" dim:"pressure"`
}

// Stand is one stand in its place.
type Stand struct {
	Subject
	spec.StandPoint
	Kind   spec.Stand `json:"kind" by:"stand" doc:"the stand, from the shop file"`
	Leaves bool       `json:"leaves" doc:"it stands under something that comes off in the swap"`
	Calc   StandCalc  `json:"calc" doc:"computed"`
}

// StandCalc holds a stand's computed figures.
type StandCalc struct {
	Capacity  Figure `json:"capacity" doc:"load that one stand is rated for" dim:"mass"`
	LoadIn    Figure `json:"load_in" doc:"load with the driveline in" dim:"mass"`
	LoadOut   Figure `json:"load_out" doc:"load with the driveline out" dim:"mass"`
	LoadMost  Figure `json:"load_most" doc:"highest elastic load at any stage" dim:"mass"`
	LoadLeast Figure `json:"load_least" doc:"lowest elastic load at any stage" dim:"mass"`
	Rocking   Figure `json:"rocking" doc:"highest load when the car rocks on three stands" dim:"mass"`
	Push      Figure `json:"push" doc:"push at the saddle that topples the stand at its lowest load" dim:"force"`
}

// SupportCase is how the car stands in one stage.
type SupportCase struct {
	Subject
	Stage string          `json:"stage" doc:"the stage"`
	Calc  SupportCaseCalc `json:"calc" doc:"computed"`
}

// SupportCaseCalc holds the stability of one stage.
type SupportCaseCalc struct {
	Mass   Figure `json:"mass" doc:"mass on the supports" dim:"mass"`
	Margin Figure `json:"margin" doc:"least distance of the centre of mass inside the edge, before its uncertainty" dim:"length"`
	Unsure Figure `json:"unsure" doc:"uncertainty of the centre of mass" dim:"length"`
	Left   Figure `json:"margin_left" doc:"margin with the uncertainty taken off; below nothing it may tip" dim:"length"`
	Tilt   Figure `json:"tilt" doc:"tilt at which it tips, with the uncertainty taken off" dim:"angle"`
	Share  Figure `json:"at_share" doc:"share of the driveline's weight on the hoist where the margin is least" dim:"ratio"`
}

// LiftPoint is a point the driveline may hang from.
type LiftPoint struct {
	Subject
	spec.LiftPoint
	Tackle spec.Sling    `json:"tackle" doc:"the sling in use, from the shop file"`
	Calc   LiftPointCalc `json:"calc" doc:"computed"`
}

// LiftPointCalc holds a lift point's computed figures.
type LiftPointCalc struct {
	AboveMass Figure `json:"above_mass" doc:"height of the point above the driveline's centre of mass" dim:"length"`
	Diameters Figure `json:"depth_diameters" doc:"thread engaged, in diameters" dim:"ratio"`
	Needed    Figure `json:"depth_needed" doc:"diameters asked of an eye bolt in that metal" dim:"ratio"`
	LegAngle  Figure `json:"leg_angle" doc:"of its sling leg, from the horizontal" dim:"angle"`
	Tension   Figure `json:"tension" doc:"of its sling leg; of four or more the worst" dim:"mass"`
	EyePull   Figure `json:"eye_pull" doc:"between its sling leg and straight up in the driveline's axes, the axis of an eye bolt" dim:"angle"`
}

// Castor is one castor of the dolly in use.
type Castor struct {
	Subject
	spec.Castor
	Calc CastorCalc `json:"calc" doc:"computed"`
}

// CastorCalc holds what a castor carries.
type CastorCalc struct {
	Load    Figure `json:"load" doc:"what it carries of the driveline" dim:"mass"`
	Rocking Figure `json:"rocking" doc:"the most it carries on an uneven floor" dim:"mass"`
}
