package workings

import (
	"cmp"
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"fitup/policies/tables"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/unit"
)

// preloadScatter is how far, as a share, the preload may lie from what a torque
// aims at with a torque wrench. Source: from-memory.
const preloadScatter = 0.30

// softTapped is what an aluminium or magnesium thread leaves of the torque for
// steel: a machine maker's table for cast aluminium against that for steel.
const softTapped = 0.8

// soft are the tapped metals that softTapped is for.
var soft = []string{"aluminium", "cast-aluminium", "magnesium"}

// unscrewed are heads that no thread tightens.
var unscrewed = []string{"quarter-turn", "press-stud", "rivet"}

func (n *notebook) fastenings() {
	for i := range n.d.Fastenings {
		f := &n.d.Fastenings[i]
		if slices.Contains(unscrewed, f.Head.V) || f.Class.V == "special" || f.Maker.Given() {
			continue
		}
		n.strength(f)
		n.torqueBand(f)
		n.preload(f)
		n.spanner(f)
		n.engagement(f)
	}
}

// makersTorque stands for a figure that no table has, such as the strength of a
// stainless class: only a maker's own torque helps.
func (n *notebook) makersTorque(symbol string, f *document.Fastening) Input {
	return lacking(symbol, n.said(symbol, &f.By).Path)
}

// isPlug reports whether a fastening is a drain plug, by where it is written.
func isPlug(path string) bool {
	return strings.HasSuffix(path, ".drain") || strings.HasSuffix(path, ".plug")
}

// tightened is the diameter of a thread that is tightened by torque. A pipe
// thread is not: it has no stress area.
func (n *notebook) tightened(f *document.Fastening) Input {
	if t := &f.Thread; t.Given() && t.V.System != unit.Metric && t.V.System != unit.Unified {
		return n.makersTorque("d", f)
	}
	return n.diameter(&f.Thread)
}

func (n *notebook) strength(f *document.Fastening) {
	s := step{
		to:      &f.Calc.StressArea,
		formula: "A = (π/4) (d - 0.9382 P)²", source: "iso-898-1",
		in: []Input{n.tightened(f)},
		by: func(x []float64) (float64, error) { return MetricStressArea(x[0], f.Thread.V.Pitch) },
	}
	if f.Thread.V.System == unit.Unified {
		s.formula, s.source = "A = (π/4) (D - 0.9743 p)²", "asme-b1.1"
		s.by = func(x []float64) (float64, error) { return UnifiedStressArea(x[0], f.Thread.V.Pitch) }
	}
	if class := f.Class.V; f.Thread.V.System == unit.Unified && class == "grade-8" {
		s.note = "over 690 MPa a lower estimate exists, on the least pitch diameter"
	}
	n.work(s)
	n.work(step{
		to:      &f.Calc.ProofLoad,
		formula: "F_p = A S_p", source: "iso-898-1",
		in: []Input{n.worked("A", &f.Calc.StressArea), n.proofStress(f)},
		by: two(ProofLoad),
	})
}

// proofStress is the proof stress of the class at the diameter of the thread. A
// class without a row in the table, such as a stainless one, gives none.
func (n *notebook) proofStress(f *document.Fastening) Input {
	class, major := n.said("S_p", &f.Class), n.tightened(f)
	if !class.Known && !class.asked && isPlug(f.Path) {
		return n.makersTorque("S_p", f) // nobody knows the class of a drain plug
	}
	if !class.Known || !major.Known {
		return class
	}
	row, ok := tables.BoltStrength(class.Text, major.Value)
	if !ok {
		return n.makersTorque("S_p", f)
	}
	return class.standsFor(row.Proof, unit.Pressure, row.Source, row.Clause)
}

// torqueBand works out the torques between which a fastener is tightened enough
// and not too much. Most aims at 90 % of the proof load, least at 75 % less the
// scatter: a torque below it may leave the joint looser than one that aims at
// 75 % ever is. Which nut factor holds goes by the state of the threads; none is
// taken for granted.
func (n *notebook) torqueBand(f *document.Fastening) {
	in := []Input{n.nutFactor(f), n.worked("F_p", &f.Calc.ProofLoad), n.diameter(&f.Thread)}
	note := "a torque wrench scatters the preload by about 30 %"
	share, symbol := 1.0, ""
	if slices.Contains(soft, f.Tapped) {
		in = append(in, tabled("k", softTapped, unit.Ratio, "machine-maker-cast-aluminium", ""))
		share, symbol = softTapped, " k"
		note += "; k for threads tapped in light metal"
	}
	torque := func(preload func(proof float64) (float64, error)) func([]float64) (float64, error) {
		return func(x []float64) (float64, error) {
			load, err := preload(x[1])
			if err != nil {
				return 0, err
			}
			t, err := TorqueForPreload(x[0], load, x[2])
			return share * t, err
		}
	}
	n.work(step{
		to:      &f.Calc.TorqueLeast,
		formula: "T = K (1 - 0.30) 0.75 F_p d" + symbol, source: "shigley-9e", clause: "eq. 8-27, 8-31", note: note,
		in: in,
		by: torque(func(proof float64) (float64, error) {
			load, err := Preload(proof, ReusedShare)
			if err != nil {
				return 0, err
			}
			low, _, err := PreloadBand(load, preloadScatter)
			return low, err
		}),
	})
	n.work(step{
		to:      &f.Calc.TorqueMost,
		formula: "T = K 0.90 F_p d" + symbol, source: "shigley-9e", clause: "eq. 8-27, 8-31", note: note,
		in: in,
		by: torque(func(proof float64) (float64, error) { return Preload(proof, PermanentShare) }),
	})
}

// nutFactor is the factor of torque to preload for the state of the threads.
func (n *notebook) nutFactor(f *document.Fastening) Input {
	wet := n.said("K", &f.Wet)
	if !wet.Known {
		return wet
	}
	row, ok := tables.NutFactor(wet.Text)
	if !ok {
		return n.makersTorque("K", f)
	}
	return wet.standsFor(row.Factor, unit.Ratio, row.Source, row.Clause)
}

// preload works out what a torque does to the fastener, with its scatter.
func (n *notebook) preload(f *document.Fastening) {
	n.work(step{
		to:      &f.Calc.Preload,
		formula: "F = T / (K d)", source: "shigley-9e", clause: "eq. 8-27",
		in: []Input{n.said("T", &f.Torque), n.nutFactor(f), n.diameter(&f.Thread)},
		by: three(func(torque, factor, major float64) (float64, error) { return PreloadForTorque(factor, torque, major) }),
	})
	load := []Input{n.worked("F", &f.Calc.Preload), tabled("s", preloadScatter, unit.Ratio, "from-memory", "torque wrench")}
	n.work(step{
		to:      &f.Calc.PreloadLow,
		formula: "F (1 - s)", source: "shigley-9e", clause: "table 8-14", note: "ten bolts of one kind, oiled and at one torque, scattered by 18 % to either side; a joint whose state is less sure by more",
		in: load,
		by: two(func(load, scatter float64) (float64, error) {
			low, _, err := PreloadBand(load, scatter)
			return low, err
		}),
	})
	n.work(step{
		to:      &f.Calc.PreloadHigh,
		formula: "F (1 + s)", source: "shigley-9e", clause: "table 8-14",
		in: load,
		by: two(func(load, scatter float64) (float64, error) {
			_, high, err := PreloadBand(load, scatter)
			return high, err
		}),
	})
}

// spannersOf names the tables of spanners for each kind of head. A flange head
// has none: makers and standards differ, so its spanner has to be said. A plain
// hexagon has two, and is settled only where they agree.
var spannersOf = map[string][]string{
	"hex": {"iso-hex", "din-hex"}, "small-hex": {"jis-small-hex"}, "socket": {"socket-key"},
}

// spanner works out which spanner or key a fastener takes: as said, else the usual
// one of its head and thread.
func (n *notebook) spanner(f *document.Fastening) {
	across := n.said("AF", &f.Across)
	s := step{to: &f.Calc.Spanner, formula: "across flats as said", source: "common-practice", in: []Input{across}, by: same}
	if !across.Known && !across.asked && f.Thread.Given() {
		sets, size := spannersOf[f.Head.V], "M"+strconv.FormatFloat(f.Thread.V.Major*1000, 'f', -1, 64)
		if f.Thread.V.System == unit.Unified {
			size, _, _ = cutLast(f.Thread.V.Text, "-")
			sets = map[string][]string{"hex": {"inch-hex"}}[f.Head.V]
		}
		var found []tables.SpannerRow
		for _, set := range sets {
			if row, ok := tables.AcrossFlats(set, size); ok && (len(found) == 0 || found[0].AcrossFlats != row.AcrossFlats) {
				found = append(found, row)
			}
		}
		if len(found) == 1 {
			row := found[0]
			s.formula, s.source, s.clause, s.note = "across flats by head and thread", row.Source, row.Clause, row.Written
			s.in = []Input{n.said("head", &f.Head), n.diameter(&f.Thread), tabled("AF", row.AcrossFlats, unit.Length, row.Source, row.Clause)}
			s.by = func(x []float64) (float64, error) { return x[2], nil }
			s.unit = "mm"
			if f.Thread.V.System == unit.Unified {
				s.unit = "in"
			}
		} else if len(found) > 1 {
			s.note = fmt.Sprintf("%s by one standard, %s by another", unit.Format(found[0].AcrossFlats, unit.Length, ""), unit.Format(found[1].AcrossFlats, unit.Length, ""))
		}
	}
	n.work(s)
}

// engagement works out the thread engaged and the thread needed, for a fastener
// that goes into a tapped hole.
func (n *notebook) engagement(f *document.Fastening) {
	if f.Nut.Given() {
		return
	}
	engaged, into := n.said("engaged", &f.Engaged), n.said("into", &f.Into)
	if m := n.mountOf(f); m != nil {
		engaged = first(engaged, n.worked("engaged", &m.Calc.Engagement))
		if m.There != nil {
			into = first(into, n.said("into", &m.There.Holes.Into), n.said("into", &m.Holes.Into))
		}
	}
	if !into.Known && f.Tapped != "" {
		into.Known, into.Text, into.missing = true, f.Tapped, nil
	}
	n.work(step{
		to:      &f.Calc.Engagement,
		formula: "as measured, or from the mount", source: "common-practice",
		in: []Input{engaged},
		by: same,
	})
	n.work(step{
		to:      &f.Calc.Diameters,
		formula: "engaged / d", source: "common-practice",
		in: []Input{n.worked("engaged", &f.Calc.Engagement), n.diameter(&f.Thread)},
		by: two(quotient),
	})
	n.engagementNeeded(f, into)
}

// mountOf is the mount whose bolts a fastening is.
func (n *notebook) mountOf(f *document.Fastening) *document.Mount {
	for i := range n.d.Mounts {
		if n.d.Mounts[i].Path+".bolts" == f.Path {
			return &n.d.Mounts[i]
		}
	}
	return nil
}

// thumbFor is the row of the rule of thumb for a metal that has no row for the
// class. Steels have none: the thumb asks for less than the table does.
var thumbFor = map[string]string{
	"cast-iron": "cast-iron", "bronze": "bronze", "aluminium": "aluminium", "cast-aluminium": "aluminium",
}

// strongAs is the ISO 898-1 class that a class or grade of another standard is
// judged as: the next that is no weaker.
var strongAs = map[string]string{
	"5.6": "5.8", "9.8": "10.9", "A2-70": "8.8", "A4-70": "8.8", "A4-80": "8.8", "grade-2": "6.8", "grade-5": "8.8", "grade-8": "10.9",
}

// tappedAs is how the table of engagements names a tapped metal whose strength it
// tells apart.
var tappedAs = map[string]string{"heat-treated-steel": "steel-over-800"}

var errNoEngagement = errors.New("the table has no row for that metal and class: it is to be calculated")

func (n *notebook) engagementNeeded(f *document.Fastening, into Input) {
	class := n.said("class", &f.Class)
	s := step{
		to:      &f.Calc.Needed,
		formula: "diameters by tapped metal and class", source: "roloff-matek",
		note: "a dynamic load asks for a fifth more",
		in:   []Input{into, class},
		by:   same,
	}
	if into.Known && class.Known {
		row, fine, ok := engagementRow(into.Text, class.Text, f.Thread)
		if ok {
			s.source, s.clause, s.note = row.Source, row.Clause, row.Note
			s.in = append(s.in, tabled("n", row.Diameters, unit.Ratio, row.Source, row.Clause))
			s.by = func(x []float64) (float64, error) { return x[2] * fine, nil }
			if fine != 1 {
				s.formula += ", a quarter more for a fine thread"
			}
		} else {
			s.in, s.note = []Input{lacking("into a metal with a figure", into.Path), class}, errNoEngagement.Error()
		}
	}
	n.work(s)
}

// engagementRow finds the figure for a metal and class, and what a fine thread
// multiplies it by.
func engagementRow(metal, class string, t spec.Thread) (row tables.EngagementRow, fine float64, ok bool) {
	class, metal = cmp.Or(strongAs[class], class), cmp.Or(tappedAs[metal], metal)
	if row, ok = tables.Engagement("insert", metal, ""); ok {
		return row, 1, true
	}
	fine = 1
	if t.Given() && isFine(t.V) {
		fine, _ = tables.EngagementFactors()
	}
	if row, ok = tables.Engagement("class", metal, class); ok {
		if row.Set != "class" || row.Source != "roloff-matek" {
			fine = 1 // the factor is of that table alone
		}
		return row, fine, true
	}
	if row, ok = tables.Engagement("trial", metal, class); ok {
		return row, fine, true
	}
	if class == "12.9" {
		return row, 1, false
	}
	row, ok = tables.Engagement("thumb", thumbFor[metal], "")
	return row, 1, ok
}

// isFine reports whether a thread is finer than the coarse one of its size.
func isFine(t unit.Thread) bool {
	size, pitch, _ := strings.Cut(strings.TrimSuffix(t.Text, " LH"), "x")
	if t.System == unit.Metric && pitch != "" {
		row, ok := tables.MetricThread(strings.TrimPrefix(size, "M"))
		return ok && row.Coarse && t.Pitch < row.PitchesMM[0]/1000-1e-9
	}
	if size, _, ok := cutLast(t.Text, "-"); ok && t.System == unit.Unified {
		row, known := tables.UnifiedThread(size)
		return known && row.Coarse != 0 && t.TPI > row.Coarse
	}
	return false
}

func cutLast(s, sep string) (before, after string, found bool) {
	if i := strings.LastIndex(s, sep); i >= 0 {
		return s[:i], s[i+len(sep):], true
	}
	return s, "", false
}
