package drawing

import "slices"

// flagged is where the flags of a circuit stand.
type flagged struct {
	lines [][]Flag
	parts [][]Flag
	whole []Flag // about its system, but none of the above
}

// place deals flags to what they are about: to lines, with the ports that they meet
// and the hose that they are of; what is about none of them to parts; what is about
// none of those to the circuit as a whole. A line that cannot be followed gets a flag
// of its own.
func (c *circuit) place(flags []Flag) flagged {
	taken := map[Flag]bool{}
	take := func(left []Flag, paths ...string) []Flag {
		var found []Flag
		for _, path := range paths {
			for _, f := range under(left, path) {
				if !slices.ContainsFunc(found, f.looksLike) {
					found = append(found, f)
				}
				taken[f] = true
			}
		}
		return found
	}
	left := func() []Flag { return slices.DeleteFunc(slices.Clone(flags), func(f Flag) bool { return taken[f] }) }
	placed := flagged{lines: make([][]Flag, len(c.lines)), parts: make([][]Flag, len(c.parts))}
	for i, l := range c.lines {
		placed.lines[i] = take(flags, l.path, l.from.meets, l.to.meets, l.hose)
		for _, end := range []circuitEnd{l.from, l.to} {
			unclear := Flag{Subject: end.path, Says: end.lacks}
			if end.lacks != "" && !slices.ContainsFunc(placed.lines[i], unclear.looksLike) {
				placed.lines[i] = append(placed.lines[i], unclear)
			}
		}
	}
	rest := left()
	for i, p := range c.parts {
		if p.kind != base { // it is in every circuit: what is about this one stands at its ports
			placed.parts[i] = take(rest, p.path)
		}
	}
	placed.whole = take(left(), c.system())
	return placed
}

// all are the flags that stand anywhere, in the order of the drawing.
func (f flagged) all() []Flag {
	return slices.Concat(slices.Concat(f.lines...), slices.Concat(f.parts...), f.whole)
}

// looksLike tells whether a flag would be drawn as another is.
func (f Flag) looksLike(other Flag) bool { return f.Level == other.Level && f.Sign == other.Sign }
