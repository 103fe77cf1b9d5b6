package workings

import (
	"fmt"

	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/unit"
)

// lives works out the share of each life that is used, by the limit nearest its
// end.
func (n *notebook) lives() {
	for i := range n.d.Life {
		l := &n.d.Life[i]
		lasts := n.said("lasts", &l.Lasts)
		s := step{
			to:      &l.Calc.Share,
			formula: "share = used / life, of the limit nearest its end", source: "common-practice",
			in: []Input{lasts},
		}
		nearest, left := 0.0, ""
		var refused error
		for _, limit := range l.Lasts.V {
			in, used, err := n.used(l, limit)
			s.in = append(s.in, in...)
			if err == nil {
				err = positive("life", limit.SI)
			}
			if err != nil {
				refused = err
				continue
			}
			if share := used / limit.SI; left == "" || share > nearest {
				nearest, left = share, leftOf(limit, used)
			}
		}
		if left == "" && refused == nil {
			refused = fmt.Errorf("no limit of its life is given")
		}
		s.by = always(nearest, refused)
		n.work(s)
		if l.Calc.Share.Known {
			l.Calc.Left = left
		}
	}
}

// used is how much of one limit is used, on the clock of the item's own file, in
// the unit of the limit's dimension.
func (n *notebook) used(l *document.LifeItem, limit spec.Span) (in []Input, used float64, err error) {
	now := Input{}
	switch limit.Dimension {
	case unit.Age:
		months, err := n.monthsSince(l.Fitted.V.First())
		return []Input{n.said("fitted", &l.Fitted)}, months, err
	case unit.Count:
		now = n.said("runs now", &l.Clock.Runs)
	default:
		now = n.said("time now", &l.Clock.Hours)
	}
	fitted := n.said("when fitted", &l.At)
	if l.At.Given() {
		stood := false
		for _, at := range l.At.V {
			if at.Dimension == limit.Dimension {
				fitted.Value, fitted.Dimension, fitted.Unit, stood = at.SI, at.Dimension, at.Unit, true
			}
		}
		if !stood {
			fitted = lacking("when fitted", fitted.Path)
		}
	}
	in = []Input{now, fitted}
	if now.Known && fitted.Known && now.Value < fitted.Value {
		err = &RangeError{"clock", now.Value, fmt.Sprintf("at least the %.6g that it stood at when the part was fitted", fitted.Value)}
	}
	return in, now.Value - fitted.Value, err
}

// leftOf puts what is left of a limit in its own unit, and less than two years in
// months.
func leftOf(limit spec.Span, used float64) string {
	left, over, in := limit.SI-used, "", limit.Unit
	if left < 0 {
		left, over = -left, " over"
	}
	if limit.Dimension == unit.Age && left < 24 {
		in = "months"
	}
	return unit.Format(left, limit.Dimension, in) + over
}
