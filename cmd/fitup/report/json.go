package report

import (
	"encoding/json"
	"io"
	"iter"
	"time"

	"fitup/policies"
	"fitup/policies/judge"
	"fitup/policies/tables"
)

// jsonVersion counts the changes of the form that could break its readers.
const jsonVersion = 1

// The types below are the JSON form of a check. Files are named from the root of
// the tree, lines and columns count from 1, columns in characters.
type (
	jsonCheck struct {
		Version    int           `json:"version" jsonschema_description:"of this form; it rises when a reader could break"`
		Tool       jsonTool      `json:"tool"`
		Date       string        `json:"date" jsonschema:"format=date" jsonschema_description:"day that was judged for"`
		Rules      jsonRules     `json:"rules"`
		Config     *jsonConfig   `json:"config,omitempty" jsonschema_description:"left out where there is none"`
		FailOn     string        `json:"fail_on" jsonschema:"enum=danger,enum=fault,enum=advice,enum=never"`
		Strict     bool          `json:"strict" jsonschema_description:"cannot tell counts as failing"`
		Read       jsonRead      `json:"read"`
		Judgements int           `json:"judgements" jsonschema_description:"rules times subjects"`
		Unjudged   int           `json:"unjudged_dangers" jsonschema_description:"judgements that could have found a danger, and could not be made"`
		Problems   []jsonProblem `json:"problems" jsonschema_description:"what cannot be read"`
		Unclear    []jsonProblem `json:"unclear" jsonschema_description:"what is written but says too little to be judged"`
		Findings   []jsonFinding `json:"findings" jsonschema_description:"in force, by file and place"`
		Waived     []jsonFinding `json:"waived" jsonschema_description:"set aside by a waiver"`
		Covered    []jsonFinding `json:"covered" jsonschema_description:"set aside by the baseline"`
		Change     *jsonChange   `json:"change,omitempty" jsonschema_description:"what became of the findings of an earlier state; left out where none was judged"`
		Measure    []jsonMeasure `json:"measure" jsonschema_description:"what to write so that more can be told, most wanted first"`
		NotJudged  []string      `json:"not_judged" jsonschema_description:"cars and drivelines with an error in them or in a file that they need"`
		NotRead    []string      `json:"not_read" jsonschema_description:"what could not be looked at, with the reason"`
		Taken      jsonTaken     `json:"taken_away" jsonschema_description:"what configuration and flags took away from the judgement"`
		Faults     []jsonFault   `json:"broken_rules"`
		Closing    string        `json:"closing"`
	}
	jsonChange struct {
		Since   string      `json:"since"`
		Appears []jsonTurn  `json:"appears" jsonschema_description:"in force now and not before, with how each stood before"`
		Goes    []jsonTurn  `json:"goes" jsonschema_description:"in force before and not now, as each was, with how it stands now"`
		Stays   []string    `json:"stays" jsonschema_description:"identities of findings in force before and now"`
		Shifts  []jsonShift `json:"shifts" jsonschema_description:"what takes more, or less, away from the judgement than before"`
		Unread  []string    `json:"not_judged_before"`
	}
	jsonTurn struct {
		Identity string `json:"identity"`
		Rule     string `json:"rule"`
		Level    string `json:"level" jsonschema:"enum=danger,enum=fault,enum=advice"`
		jsonPlace
		Message string `json:"message"`
		Other   string `json:"other" jsonschema_description:"how it stands on the other side of the change"`
	}
	jsonShift struct {
		Kind string `json:"kind"`
		What string `json:"what"`
		Back bool   `json:"back" jsonschema_description:"it was so before, and is no more"`
	}
	jsonTool struct {
		Name    string `json:"name"`
		Version string `json:"version"`
	}
	jsonRules struct {
		Asked  int    `json:"asked"`
		Digest string `json:"digest" jsonschema_description:"SHA-256 of rules, limits and tables"`
	}
	jsonConfig struct {
		File   string `json:"file"`
		Digest string `json:"digest" jsonschema_description:"SHA-256 of its text"`
	}
	jsonRead struct {
		Cars       int `json:"cars"`
		Drivelines int `json:"drivelines"`
		Shops      int `json:"shop_files"`
	}
	jsonPlace struct {
		File      string `json:"file"`
		Path      string `json:"path" jsonschema_description:"key path within the file"`
		Line      int    `json:"line"`
		Column    int    `json:"column"`
		EndLine   int    `json:"end_line"`
		EndColumn int    `json:"end_column" jsonschema_description:"one past the last character"`
	}
	jsonProblem struct {
		jsonPlace
		Message string `json:"message"`
		Want    string `json:"want,omitempty" jsonschema_description:"what would be right"`
	}
	jsonFinding struct {
		Identity string `json:"identity" jsonschema_description:"stays the same when the file is edited elsewhere"`
		Rule     string `json:"rule"`
		Case     string `json:"case,omitempty"`
		Level    string `json:"level" jsonschema:"enum=danger,enum=fault,enum=advice"`
		Subject  string `json:"subject" jsonschema_description:"as rules name it"`
		jsonPlace
		Message    string       `json:"message"`
		Figures    []jsonFigure `json:"figures"`
		Fix        string       `json:"fix"`
		Caution    string       `json:"caution,omitempty"`
		Sources    []jsonSource `json:"sources"`
		Confidence string       `json:"confidence" jsonschema:"enum=published,enum=practice,enum=memory"`
		Rulebook   string       `json:"rulebook"`
		Also       []jsonPlace  `json:"also"`
		See        []jsonPlace  `json:"see"`
		Guesses    []string     `json:"guesses" jsonschema_description:"paths of guesses that it rests on"`
		SeenBy     []string     `json:"seen_by" jsonschema_description:"cars that see a finding in a file that they share"`
		With       string       `json:"with,omitempty" jsonschema_description:"driveline it was judged with, when that is not the one fitted"`
		Waiver     *jsonWaiver  `json:"waiver,omitempty"`
	}
	jsonFigure struct {
		Name      string `json:"name"`
		Value     any    `json:"value" jsonschema_description:"in SI units, or a text"`
		Dimension string `json:"dimension"`
		Text      string `json:"text" jsonschema_description:"in the author's unit"`
	}
	jsonSource struct {
		Key     string `json:"key"`
		Title   string `json:"title"`
		Edition string `json:"edition,omitempty"`
		Kind    string `json:"kind,omitempty"`
		Clause  string `json:"clause,omitempty"`
		Seen    string `json:"seen,omitempty"`
	}
	jsonWaiver struct {
		jsonPlace
		Why   string `json:"why"`
		Until string `json:"until" jsonschema:"format=date" jsonschema_description:"last day on which it holds"`
	}
	jsonMeasure struct {
		jsonPlace
		Asked    bool     `json:"asked" jsonschema_description:"it is written as a question mark"`
		Rules    []string `json:"rules" jsonschema_description:"that wait for it"`
		Dangers  int      `json:"dangers" jsonschema_description:"how many of those could find a danger"`
		Subjects int      `json:"judgements" jsonschema_description:"how many judgements wait"`
	}
	jsonTaken struct {
		Loosened []jsonLoosened `json:"limits_loosened"`
		Skipped  []string       `json:"rules_skipped"`
		Only     []string       `json:"rules_only"`
		Excluded []string       `json:"specs_excluded"`
		Waived   []string       `json:"waivers" jsonschema_description:"in force: rule, subjects, last day and place"`
		FailOn   string         `json:"fail_on,omitempty"`
	}
	jsonLoosened struct {
		Limit string `json:"limit"`
		Rule  string `json:"rule"`
		Level string `json:"level"`
		Was   string `json:"was"`
		Is    string `json:"is"`
	}
	jsonFault struct {
		Rule    string `json:"rule"`
		Message string `json:"message"`
	}
)

// JSON prints everything that a check found, for programs.
func JSON(w io.Writer, c *Check, _ Style) error {
	out := jsonCheck{
		Version: jsonVersion, Tool: jsonTool{"fitup", c.Version}, Date: c.Date.Format(time.DateOnly),
		Rules: jsonRules{c.Rules, c.Digest}, FailOn: c.FailOn, Strict: c.Strict,
		Read:       jsonRead{c.Read.Cars, c.Read.Drivelines, c.Read.Shops},
		Judgements: c.Judged, Unjudged: c.Unjudged,
		Problems: each(c.Problems, problemJSON), Unclear: each(c.Notes, problemJSON),
		Findings: []jsonFinding{}, Waived: []jsonFinding{}, Covered: []jsonFinding{}, Change: changeJSON(c.Change), Measure: []jsonMeasure{},
		NotJudged: list(c.Skipped), NotRead: list(c.Unread),
		Taken: jsonTaken{
			Loosened: each(c.Taken.Loosened, loosenedJSON), Skipped: list(c.Taken.Skipped), Only: list(c.Taken.Only),
			Excluded: list(c.Taken.Excluded), Waived: list(c.Taken.Waived), FailOn: c.Taken.FailOn,
		},
		Faults:  each(c.Faults, func(f policies.Fault) jsonFault { return jsonFault{f.Rule, f.Message} }),
		Closing: Closing,
	}
	if c.Config != "" {
		out.Config = &jsonConfig{c.Config, c.ConfigDigest}
	}
	return writeJSON(w, out, map[string]iter.Seq[any]{
		"findings": lazily(c.Findings, findingJSON), "waived": lazily(c.Waived, findingJSON),
		"covered": lazily(c.Covered, findingJSON), "measure": lazily(c.Measures, measureJSON),
	})
}

func indented(v any) ([]byte, error) {
	text, err := json.MarshalIndent(v, "", "  ")
	return append(text, '\n'), err
}

// each converts a list; an empty one is [], never null.
func each[A, B any](all []A, convert func(A) B) []B {
	out := make([]B, len(all))
	for i, one := range all {
		out[i] = convert(one)
	}
	return out
}

func list(all []string) []string { return each(all, func(s string) string { return s }) }

func placeJSON(l judge.Location) jsonPlace {
	return jsonPlace{l.File, l.Path, l.Line, l.Column, l.EndLine, l.EndColumn}
}

func problemJSON(p judge.Problem) jsonProblem {
	return jsonProblem{placeJSON(p.Location), p.Message, p.Want}
}

func measureJSON(m judge.Measure) jsonMeasure {
	return jsonMeasure{placeJSON(m.Location), m.Asked, list(m.Rules), m.Dangers, m.Subjects}
}

func loosenedJSON(l policies.Loosened) jsonLoosened {
	return jsonLoosened{l.Limit, l.Rule, l.Level.String(), l.Was, l.Is}
}

func changeJSON(c *judge.Change) *jsonChange {
	if c == nil {
		return nil
	}
	turn := func(t judge.Turn) jsonTurn {
		return jsonTurn{t.Identity(), t.Rule, t.Level.String(), placeJSON(t.Location), t.Message, string(t.Other)}
	}
	return &jsonChange{
		Since: c.Since, Appears: each(c.Appears, turn), Goes: each(c.Goes, turn), Stays: list(c.Stays), Unread: list(c.Unread),
		Shifts: each(c.Shifts, func(s judge.Shift) jsonShift { return jsonShift{string(s.Kind), s.What, s.Back} }),
	}
}

func findingJSON(f judge.Finding) jsonFinding {
	out := jsonFinding{
		Identity: f.Identity(), Rule: f.Rule, Case: f.Case, Level: f.Level.String(), Subject: f.Subject, jsonPlace: placeJSON(f.Location),
		Message: f.Message, Fix: f.Fix, Caution: f.Caution, Confidence: string(f.Confidence), Rulebook: f.Rulebook,
		Figures: each(f.Figures, func(g judge.Figure) jsonFigure { return jsonFigure{g.Name, g.Value, g.Dimension, g.Text} }),
		Sources: each(f.Sources, sourceJSON), Also: each(f.Also, placeJSON), See: each(f.See, placeJSON), Guesses: list(f.Guessed), SeenBy: list(f.SeenBy), With: f.With,
	}
	if f.Waiver != nil {
		out.Waiver = &jsonWaiver{placeJSON(f.Waiver.Location), f.Waiver.Why, f.Waiver.Until.Format(time.DateOnly)}
	}
	return out
}

func sourceJSON(s policies.Source) jsonSource {
	cited, _ := tables.Source(s.Key)
	return jsonSource{s.Key, cited.Title, cited.Edition, cited.Kind, s.Clause, cited.Seen}
}
