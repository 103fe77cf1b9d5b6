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
		Version   int             `json:"version"`
		Tool      jsonTool        `json:"tool"`
		Date      string          `json:"date"`
		From      string          `json:"from,omitempty"`
		Into      string          `json:"into"`
		Driveline string          `json:"driveline"`
		Occupied  string          `json:"comes_out_first,omitempty"`
		FailOn    string          `json:"fail_on"`
		Fit       []jsonInterface `json:"fit"`
		Appears   []jsonFinding   `json:"appears"`
		Goes      []jsonTurn      `json:"goes"`
		Stays     []string        `json:"stays"`
		Parting   []jsonParting   `json:"parting"`
		Order     []jsonStretch   `json:"order"`
		Lists     []jsonList      `json:"lists"`
		Standing  []jsonStanding  `json:"standing"`
		Energy    []jsonEnergy    `json:"stored_energy"`
		Left      []string        `json:"giving_car_left"`
		Withheld  []jsonWithheld  `json:"withheld"`
		Taken     []string        `json:"taken_away"`
		Faults    []jsonFault     `json:"broken_rules"`
		Closing   string          `json:"closing"`
	}
	jsonInterface struct {
		Kind      string           `json:"kind"`
		Name      string           `json:"name"`
		Driveline string           `json:"driveline,omitempty"`
		Car       string           `json:"car,omitempty"`
		Verdict   string           `json:"verdict"`
		Why       []string         `json:"why"`
		Adaptors  []jsonAdaptor    `json:"adaptors"`
		Figures   []jsonSwapFigure `json:"figures"`
	}
	jsonAdaptor struct {
		Name   string   `json:"name"`
		Ends   string   `json:"ends"`
		Stock  bool     `json:"in_stock"`
		Adds   *float64 `json:"adds_length,omitempty"`
		Bore   *float64 `json:"bore,omitempty"`
		Source string   `json:"source,omitempty"`
		Clause string   `json:"clause,omitempty"`
	}
	jsonSwapFigure struct {
		Name      string  `json:"name"`
		Value     float64 `json:"value"`
		Dimension string  `json:"dimension"`
	}
	jsonParting struct {
		Car      string   `json:"car"`
		Best     jsonCut  `json:"best"`
		Next     *jsonCut `json:"next,omitempty"`
		Turned   []string `json:"goes_the_other_way"`
		Unopened []string `json:"circuits_unopened"`
		Tied     []string `json:"tied_on_its_lines"`
		Loose    []string `json:"loose"`
	}
	jsonCut struct {
		Leaves  []string `json:"leaves"`
		Open    []string `json:"open"`
		Off     []string `json:"off"`
		Seconds int      `json:"planning_weight_seconds"`
		Wet     int      `json:"wet"`
		Spill   float64  `json:"spill"`
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
	// jsonSwapNumbers are figures by name; null for one that is not known.
	jsonSwapNumbers struct {
		Subject string              `json:"subject"`
		Figures map[string]*float64 `json:"figures"`
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
		Fit:     each(s.Fit.Interfaces, interfaceJSON),
		Appears: each(s.Change.Appears, func(t judge.Turn) jsonFinding { return findingJSON(t.Finding) }),
		Goes:    changeJSON(s.Change).Goes, Stays: list(s.Change.Stays),
		Parting: each(s.partings(), partingJSON), Order: []jsonStretch{}, Standing: []jsonStanding{}, Energy: []jsonEnergy{}, Left: []string{},
		Lists: each(s.listing().blocks, func(p passage) jsonList {
			return jsonList{p.heading, each(p.lines, func(r remark) string { return r.text })}
		}),
		Withheld: each(s.Withheld, func(w Withheld) jsonWithheld { return jsonWithheld{w.Part, list(w.Why), each(w.Measures, measureJSON)} }),
		Taken:    list(takenAway(s.Report.Taken)),
		Faults:   each(s.Report.Faults, func(f policies.Fault) jsonFault { return jsonFault{f.Rule, f.Message} }),
		Closing:  Closing,
	}
	if !s.isWithheld(PartOrder) {
		out.Order = each(s.stretches(), stretchJSON)
	}
	if !s.isWithheld(PartHolds) {
		out.Energy = each(s.energies(), func(e storedIn) jsonEnergy { return jsonEnergy{e.file, e.What, e.LetGo, e.Proved, e.Subject} })
		if s.Out != nil {
			out.Left = each(s.Out.Finish, checkText)
		}
	}
	if !s.isWithheld(PartStanding) {
		out.Standing = each(s.Standing, standingJSON)
	}
	return indented(out)
}

func interfaceJSON(i swap.Interface) jsonInterface {
	out := jsonInterface{
		Kind: i.Kind, Name: i.Name, Driveline: i.Driveline, Car: i.Car, Verdict: string(i.Verdict), Why: list(i.Why), Adaptors: []jsonAdaptor{},
		Figures: each(i.Figures, func(f swap.Figure) jsonSwapFigure { return jsonSwapFigure{f.Name, f.Value, string(f.Dimension)} }),
	}
	if i.Chain != nil {
		out.Adaptors = each(i.Chain.Adaptors, func(a swap.Adaptor) jsonAdaptor {
			return jsonAdaptor{a.Name, a.Ends(), a.Stock, a.Adds, a.Bore, a.Source, a.Clause}
		})
	}
	return out
}

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

func stretchJSON(s stretch) jsonStretch {
	out := jsonStretch{s.title, []jsonStep{}}
	for i, step := range s.steps {
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
		out := jsonSwapNumbers{subject, map[string]*float64{}}
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
