package drawing

import (
	"slices"
)

// graphs draws margin and loads over the share of the driveline's weight that the
// hook has taken.
func (s *sideView) graphs() {
	taken := s.layout.Taken
	top := s.plate.frame.Max.Y + headings
	if len(taken) == 0 {
		missing := unique(slices.Concat(s.layout.In.Missing, s.layout.Hanging.Missing, missingOf(s.layout.Supports)))
		if len(missing) == 0 {
			missing = []string{"support.stands"}
		}
		text := Text{Tone: Unknown, Lines: Wrap("? margin and loads while the hoist takes the weight: "+measure(missing), PaperWidth-2*laneLeft, Lettering, 6), At: Point{laneLeft, top}}
		s.add(Group{"measure the range", []Mark{text}})
		s.plate.frame.Max.Y = text.Box().Max.Y
		s.say("How margin and loads change while the hoist takes the weight is not known: %s.", measure(missing))
		return
	}
	margin, sure := line{of: "margin", look: Look{Pen: Wide}, name: "margin"}, line{of: "margin left", look: Look{Pen: Dashed}, name: "at least"}
	loads := make([]line, len(s.layout.Supports))
	for i, p := range s.layout.Supports {
		loads[i] = line{of: "load " + p.Name, look: Look{Pen: []Pen{Wide, Dashed, Centre, Phantom}[i%4], Tone: Support}, name: p.Name}
	}
	for _, t := range taken {
		share := 100 * t.Taken
		margin.points = append(margin.points, Point{share, in(s.length(), t.Margin)})
		if t.Left.Known {
			sure.points = append(sure.points, Point{share, in(s.length(), t.Left.Value)})
		}
		for i := range t.Loads {
			loads[i].points = append(loads[i].points, Point{share, in(s.mass(), t.Loads[i])})
		}
	}
	const width, height = 48, 38
	bottom := s.chart(chart{
		title: "Margin, " + s.length(), box: Box{Point{20, top + 6}, Point{20 + width, top + 6 + height}}, right: 92, lines: []line{margin, sure}, floor: "tips below 0",
	})
	bottom = max(bottom, s.chart(chart{
		title: "Load on each support, " + s.mass(), box: Box{Point{102, top + 6}, Point{102 + width, top + 6 + height}}, right: PaperWidth - 1, lines: loads,
	}))
	s.plate.frame.Max.Y = bottom
	first, last := taken[0], taken[len(taken)-1]
	s.say("While the hook takes the driveline's weight the margin goes from %s to %s.", s.metres(first.Margin), s.metres(last.Margin))
	if first.Loads == nil || last.Loads == nil {
		return
	}
	from, to := s.shares(first.Loads, s.layout.In.Mass), s.shares(last.Loads, s.layout.Hanging.Mass)
	for i := range loads {
		s.say("The load on %s goes from %s to %s.", loads[i].name, from[i], to[i])
	}
}

// chart draws a chart and returns how far down it reaches.
func (s *scene) chart(c chart) float64 {
	marks, bottom := c.draw()
	s.out.Marks = append(s.out.Marks, marks...)
	return bottom
}
