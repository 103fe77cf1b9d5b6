package workings

import (
	"slices"

	"fitup/policies/tables"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/unit"
)

// UsualBore is what an adaptor is usually drilled to: the narrower of its ends.
// The second result is false where the table lacks one of them.
func UsualBore(a *spec.Adaptor) (tables.FittingBoreRow, bool) {
	var least tables.FittingBoreRow
	for i, end := range []spec.End{a.One, a.Other} {
		h := document.HalfOf(end)
		size := h.Size
		switch {
		case h.Dash != nil:
			size = unit.Dash(*h.Dash).String()
		case h.Thread != nil:
			size = h.Thread.Text
		}
		row, known := tables.FittingBore(h.Form.V, size)
		if !known {
			return tables.FittingBoreRow{}, false
		}
		if i == 0 || row.Bore < least.Bore {
			least = row
		}
	}
	return least, true
}

// passages are the bores of the adaptors at both ends of a line, each in the order
// of the flow. One whose bore is not said is taken to be drilled as is usual.
func (n *notebook) passages(l *document.Line) (from, to []Input) {
	bores := func(end *document.LineEnd) []Input {
		var all []Input
		if end != nil {
			for _, a := range end.Adaptors {
				all = append(all, n.adaptorBore(a, end.Path))
			}
		}
		return all
	}
	from, to = bores(l.From), bores(l.To)
	slices.Reverse(from) // they stand from the line to the port
	return from, to
}

func (n *notebook) adaptorBore(a *spec.Adaptor, end string) Input {
	said := lacking("d_a", end) // a standard form is in no file
	if a.Path != "" {
		said = n.said("d_a", &a.Bore)
	}
	if row, usual := UsualBore(a); usual && !said.Known {
		return tabled("d_a", row.Bore, unit.Length, row.Source, row.Clause)
	}
	return said
}

// adaptorLoss is the loss coefficient of all adaptors of a line, on the velocity in
// its hose.
func (n *notebook) adaptorLoss(l *document.Line) Input {
	bore := n.said("d", &l.Kind.Bore)
	loss := tabled("K_a", 0, unit.Ratio, "crane-tp-410", "sudden contraction and expansion")
	from, to := n.passages(l)
	for _, chain := range [][]Input{from, to} {
		var bores []float64
		for _, in := range chain {
			loss.Known, loss.Guess = loss.Known && in.Known, loss.Guess || in.Guess
			loss.missing = append(loss.missing, in.missing...)
			bores = append(bores, in.Value)
		}
		if !loss.Known || !bore.Known {
			continue
		}
		k, err := ChainLoss(bore.Value, bores...)
		if err != nil {
			loss.Known = false
			continue
		}
		loss.Value += k
	}
	return loss
}

// adaptorLength is what the adaptors at both ends of a line add to it, as far as it
// is known: what is not known adds nothing, so that no hose is told to reach by it.
func (n *notebook) adaptorLength(l *document.Line) []Input {
	var all []Input
	for _, end := range []*document.LineEnd{l.From, l.To} {
		for _, a := range end.Adaptors {
			if a.Path != "" && a.Adds.Given() {
				all = append(all, n.said("L_a", &a.Adds))
			}
		}
	}
	return all
}
