package report

import (
	"time"

	"fitup/policies"
	"fitup/policies/judge"
	"fitup/spec/document"
	"fitup/spec/swap"
)

// The types below are the JSON form of a swap. Values are in SI units, files are
// named from the root of the tree.
type (
	jsonSwap struct {
		Version   int             `json:"version" jsonschema_description:"of this form; it rises when a reader could break"`
		Tool      jsonTool        `json:"tool"`
		Date      string          `json:"date" jsonschema:"format=date" jsonschema_description:"day that was judged for"`
		From      string          `json:"from,omitempty" jsonschema_description:"car that gives; left out for a driveline on the bench"`
		Into      string          `json:"into" jsonschema_description:"car that receives"`
		Driveline string          `json:"driveline"`
		Occupied  string          `json:"comes_out_first,omitempty" jsonschema_description:"driveline that is in the receiving car"`
		FailOn    string          `json:"fail_on" jsonschema:"enum=danger,enum=fault,enum=advice,enum=never"`
		Fit       []jsonInterface `json:"fit" jsonschema_description:"every interface, by kind"`
		Appears   []jsonFinding   `json:"appears" jsonschema_description:"findings that the swap brings, those of its adaptors included"`
		Goes      []jsonTurn      `json:"goes" jsonschema_description:"findings that were there before it"`
		Stays     []string        `json:"stays" jsonschema_description:"identities of findings before and after"`
		Parting   []jsonParting   `json:"parting" jsonschema_description:"of each car that a driveline comes out of"`
		Order     []jsonStretch   `json:"order" jsonschema_description:"empty if it is withheld"`
		Lists     []jsonList      `json:"lists"`
		Standing  []jsonStanding  `json:"standing" jsonschema_description:"empty if it is withheld"`
		Energy    []jsonEnergy    `json:"stored_energy" jsonschema_description:"empty if the hold points are withheld"`
		Left      []string        `json:"giving_car_left" jsonschema_description:"how the giving car is left; empty if the hold points are withheld"`
		Withheld  []jsonWithheld  `json:"withheld" jsonschema_description:"parts that are no plan, for want of figures"`
		Taken     []string        `json:"taken_away" jsonschema_description:"what configuration and flags took away from the judgement"`
		Faults    []jsonFault     `json:"broken_rules"`
		Closing   string          `json:"closing"`
	}
	jsonInterface struct {
		Kind      string           `json:"kind" jsonschema:"enum=mount,enum=port,enum=pin,enum=sensor,enum=throttle,enum=reach,enum=room"`
		Name      string           `json:"name"`
		Driveline string           `json:"driveline,omitempty" jsonschema_description:"key path of the driveline's half"`
		Car       string           `json:"car,omitempty" jsonschema_description:"key path of the car's half"`
		Verdict   string           `json:"verdict" jsonschema:"enum=meets,enum=meets with an adaptor,enum=left over,enum=cannot tell,enum=missing,enum=fouls,enum=must be made"`
		Why       []string         `json:"why"`
		Adaptors  []jsonAdaptor    `json:"adaptors" jsonschema_description:"from the car to the driveline"`
		Adapted   *jsonAdapted     `json:"with_adaptors,omitempty" jsonschema_description:"what the line rules make of the line with its adaptors"`
		Figures   []jsonSwapFigure `json:"figures"`
	}
	jsonAdaptor struct {
		Name   string   `json:"name"`
		Ends   string   `json:"ends"`
		Stock  bool     `json:"in_stock"`
		Adds   *float64 `json:"adds_length,omitempty" jsonschema_description:"m"`
		Bore   *float64 `json:"bore,omitempty" jsonschema_description:"m"`
		Usual  bool     `json:"bore_is_usual" jsonschema_description:"nobody measured the bore: it is what such ends are usually drilled to"`
		Source string   `json:"source,omitempty"`
		Clause string   `json:"clause,omitempty"`
	}
	jsonAdapted struct {
		Lost    *float64 `json:"lost,omitempty" jsonschema_description:"pressure that the adaptors cost at full flow, Pa; left out where it cannot be worked out"`
		Found   []string `json:"appears" jsonschema_description:"identities of findings only with them"`
		Mended  []string `json:"mends" jsonschema_description:"identities of findings only without them"`
		Unclear []string `json:"cannot_tell" jsonschema_description:"rules that can tell only without them"`
	}
	jsonSwapFigure struct {
		Name      string  `json:"name"`
		Value     float64 `json:"value" jsonschema_description:"in SI units"`
		Dimension string  `json:"dimension"`
	}
	jsonParting struct {
		Car      string   `json:"car"`
		Best     jsonCut  `json:"best"`
		Next     *jsonCut `json:"next,omitempty"`
		Turned   []string `json:"goes_the_other_way" jsonschema_description:"parts, in the next best choice"`
		Unopened []string `json:"circuits_unopened"`
		Tied     []string `json:"tied_on_its_lines"`
		Loose    []string `json:"loose"`
	}
	jsonCut struct {
		Leaves  []string `json:"leaves" jsonschema_description:"parts that go with the driveline"`
		Open    []string `json:"open"`
		Off     []string `json:"off"`
		Seconds int      `json:"planning_weight_seconds"`
		Wet     int      `json:"wet" jsonschema_description:"how many of the joints are"`
		Spill   float64  `json:"spill" jsonschema_description:"m3 that runs out at the joints, as far as it is known"`
	}
	jsonStretch struct {
		Title string     `json:"title"`
		Steps []jsonStep `json:"steps"`
	}
	jsonStep struct {
		Number  int         `json:"number"`
		Name    string      `json:"name"`
		Do      string      `json:"do"`
		Station string      `json:"station"`
		Subject string      `json:"subject,omitempty"`
		Hold    bool        `json:"hold"`
		After   []jsonAfter `json:"after"`
		Tools   []string    `json:"tools"`
		Torque  string      `json:"torque,omitempty"`
		Notes   []string    `json:"notes"`
	}
	jsonAfter struct {
		Step string `json:"step"`
		Why  string `json:"why"`
	}
	jsonList struct {
		Title string   `json:"title"`
		Lines []string `json:"lines"`
	}
	jsonStanding struct {
		Car    string            `json:"car"`
		What   string            `json:"what"`
		Stages []jsonStage       `json:"stages"`
		Stands []jsonStand       `json:"stands"`
		Hook   []jsonSwapNumbers `json:"hook"`
		Eyes   []jsonSwapNumbers `json:"eyes"`
	}
	jsonStage struct {
		Stage string `json:"stage"`
		jsonSwapNumbers
	}
	jsonStand struct {
		jsonSwapNumbers
		Leaves bool `json:"under_what_leaves"`
	}
	// jsonSwapNumbers are the figures of one subject.
	jsonSwapNumbers struct {
		Subject string      `json:"subject"`
		Figures jsonNumbers `json:"figures"`
	}
	jsonEnergy struct {
		Car     string `json:"car"`
		What    string `json:"what"`
		LetGo   string `json:"let_go"`
		Proved  string `json:"proved"`
		Subject string `json:"subject"`
	}
	jsonWithheld struct {
		Part    string        `json:"part"`
		Why     []string      `json:"why"`
		Measure []jsonMeasure `json:"measure"`
	}
)

// SwapJSON prints a swap, for programs. What is withheld is not in it.
func SwapJSON(s *Swap, _ Style) ([]byte, error) {
	out := jsonSwap{
		Version: jsonVersion, Tool: jsonTool{"fitup", s.Version}, Date: s.Date.Format(time.DateOnly),
		From: s.From, Into: s.Into, Driveline: s.Driveline, Occupied: s.Occupied, FailOn: s.FailOn,
		Fit:     each(s.Fit.Interfaces, s.interfaceJSON),
		Appears: each(s.Change.Appears, func(t judge.Turn) jsonFinding { return findingJSON(t.Finding) }),
		Goes:    changeJSON(s.Change).Goes, Stays: list(s.Change.Stays),
		Parting: each(s.partings(), partingJSON), Order: []jsonStretch{}, Standing: []jsonStanding{}, Energy: []jsonEnergy{}, Left: []string{},
		Lists: each(s.listing().Blocks, func(p Passage) jsonList {
			return jsonList{p.Heading, each(p.Lines, func(r Remark) string { return r.Text })}
		}),
		Withheld: each(s.Withheld, func(w Withheld) jsonWithheld { return jsonWithheld{w.Part, list(w.Why), each(w.Measures, measureJSON)} }),
		Taken:    list(TakenAway(s.Report.Taken)),
		Faults:   each(s.Report.Faults, func(f policies.Fault) jsonFault { return jsonFault{f.Rule, f.Message} }),
		Closing:  Closing,
	}
	if !s.IsWithheld(PartOrder) {
		out.Order = each(s.Stretches(), stretchJSON)
	}
	if !s.IsWithheld(PartHolds) {
		out.Energy = each(s.Energies(), func(e Stored) jsonEnergy { return jsonEnergy{e.File, e.What, e.LetGo, e.Proved, e.Subject} })
		if s.Out != nil {
			out.Left = each(s.Out.Finish, CheckText)
		}
	}
	if !s.IsWithheld(PartStanding) {
		out.Standing = each(s.Standing, standingJSON)
	}
	return indented(out)
}

func (s *Swap) interfaceJSON(i swap.Interface) jsonInterface {
	out := jsonInterface{
		Kind: i.Kind, Name: i.Name, Driveline: i.Driveline, Car: i.Car, Verdict: string(i.Verdict), Why: list(i.Why), Adaptors: []jsonAdaptor{},
		Figures: each(i.Figures, func(f swap.Figure) jsonSwapFigure { return jsonSwapFigure{f.Name, f.Value, string(f.Dimension)} }),
	}
	if i.Chain != nil {
		out.Adaptors = each(i.Chain.Adaptors, func(a swap.Adaptor) jsonAdaptor {
			return jsonAdaptor{a.Name, a.Ends(), a.Stock, a.Adds, a.Bore, a.Usual, a.Source, a.Clause}
		})
	}
	if a, is := s.adaptedAt(i.Car); is {
		out.Adapted = &jsonAdapted{a.Lost, each(a.Found, identity), each(a.Mended, identity), list(a.Unclear)}
	}
	return out
}

func identity(f judge.Finding) string { return f.Identity() }

func partingJSON(p partingOf) jsonParting {
	out := jsonParting{
		Car: p.file, Best: cutJSON(p.plan.Parting.Best), Turned: list(p.plan.Parting.Turned), Unopened: list(p.plan.NotOpened),
		Tied: each(p.plan.Tied, func(t swap.Tied) string { return t.Part }), Loose: list(p.plan.Parting.Loose),
	}
	if next := p.plan.Parting.Next; next != nil {
		cut := cutJSON(*next)
		out.Next = &cut
	}
	return out
}

func cutJSON(c swap.Cut) jsonCut {
	return jsonCut{list(c.Leaves), list(c.Open), list(c.Off), int(c.Effort), c.Wet, c.Spill}
}

func stretchJSON(s Stretch) jsonStretch {
	out := jsonStretch{s.Title, []jsonStep{}}
	for i, step := range s.Steps {
		out.Steps = append(out.Steps, jsonStep{
			Number: i + 1, Name: step.Name, Do: step.Do, Station: step.Station, Subject: step.Subject, Hold: step.Hold,
			After: each(step.After, func(c swap.Constraint) jsonAfter { return jsonAfter{c.Before, c.Why} }),
			Tools: list(step.Tools), Torque: step.Torque, Notes: list(step.Notes),
		})
	}
	return out
}

func standingJSON(st Standing) jsonStanding {
	d := st.Document
	numbers := func(subject string, figures map[string]document.Figure) jsonSwapNumbers {
		out := jsonSwapNumbers{subject, jsonNumbers{}}
		for name, f := range figures {
			out.Figures[name] = nil
			if f.Known {
				out.Figures[name] = &f.Value
			}
		}
		return out
	}
	return jsonStanding{
		Car: st.File, What: st.What,
		Stages: each(d.Cases, func(k document.SupportCase) jsonStage {
			return jsonStage{k.Stage, numbers(k.Path, map[string]document.Figure{
				"mass": k.Calc.Mass, "margin": k.Calc.Margin, "unsure": k.Calc.Unsure, "margin_left": k.Calc.Left, "tilt": k.Calc.Tilt, "at_share": k.Calc.Share,
			})}
		}),
		Stands: each(d.Stands, func(k document.Stand) jsonStand {
			return jsonStand{numbers(k.Path, map[string]document.Figure{
				"capacity": k.Calc.Capacity, "load_in": k.Calc.LoadIn, "load_out": k.Calc.LoadOut, "load_least": k.Calc.LoadLeast,
				"load_most": k.Calc.LoadMost, "rocking": k.Calc.Rocking, "push": k.Calc.Push,
			}), k.Leaves}
		}),
		Hook: each(d.Support, func(k document.Support) jsonSwapNumbers {
			return numbers(k.Path, map[string]document.Figure{
				"load": k.Calc.HookLoad, "rated": k.Calc.HookRated, "hang_tilt": k.Calc.HangTilt, "hook_needed": k.Calc.HookNeeded, "saddle_needed": k.Calc.Saddle,
				"dolly_margin": k.Calc.DollyEdge, "dolly_tilt": k.Calc.DollyTips, "dolly_step": k.Calc.DollyStep,
			})
		}),
		Eyes: each(d.Lift, func(k document.LiftPoint) jsonSwapNumbers {
			return numbers(k.Path, map[string]document.Figure{"tension": k.Calc.Tension, "leg_angle": k.Calc.LegAngle, "pull_angle": k.Calc.EyePull, "above_mass": k.Calc.AboveMass})
		}),
	}
}
