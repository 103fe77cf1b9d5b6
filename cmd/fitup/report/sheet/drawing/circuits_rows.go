package drawing

// rows gives every part of a circuit its row: how many lines away from the
// driveline it is, upwards through the car, downwards within the driveline. Parts
// that no line leads to from the driveline are counted from where the fluid ends.
// A line then joins parts of one row or of two rows that are neighbours.
func (c *circuit) rows() []int {
	rows, known := make([]int, len(c.parts)), make([]bool, len(c.parts))
	var first []int
	for i, p := range c.parts {
		if p.kind == base || p.kind == moved && c.meetsCar(i) {
			first, known[i] = append(first, i), true
		}
	}
	c.reach(first, rows, known, 1, func(i int) bool { return !c.parts[i].kind.leaves() })
	c.reach(first, rows, known, -1, func(i int) bool { return c.parts[i].kind.leaves() })
	for i := range c.parts {
		if !known[i] {
			c.fromSinks(i, rows, known)
		}
	}
	return rows
}

// reach counts rows from some parts on, by way of parts that a test admits.
func (c *circuit) reach(from, rows []int, known []bool, step int, admits func(part int) bool) {
	for queue := append([]int(nil), from...); len(queue) > 0; queue = queue[1:] {
		for _, next := range c.beside(queue[0]) {
			if !known[next] && admits(next) {
				known[next], rows[next] = true, rows[queue[0]]+step
				queue = append(queue, next)
			}
		}
	}
}

// fromSinks counts the rows of what hangs together with a part, upwards from the
// parts that nothing flows out of; if there are none, from that part.
func (c *circuit) fromSinks(part int, rows []int, known []bool) {
	together := map[int]bool{part: true}
	var members []int
	for queue := []int{part}; len(queue) > 0; queue = queue[1:] {
		members = append(members, queue[0])
		for _, next := range c.beside(queue[0]) {
			if !together[next] {
				together[next] = true
				queue = append(queue, next)
			}
		}
	}
	var sinks []int
	for _, i := range members {
		if !c.gives(i) {
			sinks = append(sinks, i)
		}
	}
	if len(sinks) == 0 {
		sinks = []int{part}
	}
	for _, i := range sinks {
		known[i] = true
	}
	c.reach(sinks, rows, known, 1, func(int) bool { return true })
}

// beside lists what a part is joined to, in the order of the lines.
func (c *circuit) beside(part int) []int {
	var all []int
	for _, l := range c.lines {
		switch part {
		case l.from.part:
			all = append(all, l.to.part)
		case l.to.part:
			all = append(all, l.from.part)
		}
	}
	return all
}

// gives tells whether anything flows out of a part.
func (c *circuit) gives(part int) bool {
	for _, l := range c.lines {
		if l.from.part == part {
			return true
		}
	}
	return false
}

// meetsCar tells whether a line leads from a part of the driveline to the car.
func (c *circuit) meetsCar(part int) bool {
	for _, next := range c.beside(part) {
		if !c.parts[next].kind.leaves() {
			return true
		}
	}
	return false
}

// rowBetween is the row of lettering of a line between two rows of parts. A line
// between parts of one row is a loop: above them, and below them on the driveline's
// side of the boundary.
func rowBetween(a, b int, leaves bool) (row int, loop bool) {
	switch {
	case a != b:
		return a + b, false
	case leaves:
		return 2*a - 1, true
	}
	return 2*a + 1, true
}
