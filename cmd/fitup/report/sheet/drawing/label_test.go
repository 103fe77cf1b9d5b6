package drawing

import (
	"testing"
)

func TestBoxIsCrossed(t *testing.T) {
	b := Box{Point{10, 10}, Point{20, 14}}
	for _, c := range []struct {
		name     string
		from, to Point
		want     bool
	}{
		{"through", Point{0, 12}, Point{30, 12}, true},
		{"through, upright", Point{15, 0}, Point{15, 30}, true},
		{"a corner", Point{8, 13}, Point{12, 17}, false},
		{"over a corner", Point{9, 12}, Point{12, 16}, true},
		{"ends before", Point{0, 12}, Point{9, 12}, false},
		{"begins within", Point{15, 12}, Point{30, 30}, true},
		{"beside", Point{0, 15}, Point{30, 15}, false},
		{"along the edge", Point{0, 10}, Point{30, 10}, false},
	} {
		if got := b.crosses(c.from, c.to); got != c.want {
			t.Errorf("%s: %v", c.name, got)
		}
		if got := b.crosses(c.to, c.from); got != c.want {
			t.Errorf("%s, from the other end: %v", c.name, got)
		}
	}
}

func TestLabelFindsItsRoom(t *testing.T) {
	frame, at := Box{Max: Point{100, 60}}, Point{50, 30}
	width := Width("word", Lettering)
	for _, c := range []struct {
		name  string
		taken []Box
		away  Point
		led   bool
		holds func(Text) bool // where it must come to
	}{
		{"free, to the right", nil, Point{10, 0}, false, func(t Text) bool { return t.At.X > at.X && t.Box().Middle().Y == at.Y }},
		{"free, above", nil, Point{0, -10}, false, func(t Text) bool { return t.Box().Max.Y < at.Y }},
		{"the right is taken", []Box{{Point{50, 0}, Point{100, 60}}}, Point{10, 0}, false, func(t Text) bool { return t.Box().Max.X < at.X }},
		{"all near is taken", []Box{Around(at, 60, 40)}, Point{}, true, func(t Text) bool { return frame.Holds(t.Box()) }},
		{"all is taken", []Box{frame}, Point{}, true, func(t Text) bool { return t.At.Y > 60 && t.Box().Width() == width }},
	} {
		p := plate{frame: frame, taken: c.taken}
		marks := p.letter([]label{{of: "it", at: at, away: c.away, lines: []string{"word"}}})[0].(Group).Marks
		text := marks[len(marks)-1].(Text)
		if !c.holds(text) {
			t.Errorf("%s: it came to %v", c.name, text.Box())
		}
		if led := len(marks) == 2; led != c.led {
			t.Errorf("%s: led to its point: %v", c.name, led)
		}
		if !p.frame.Holds(text.Box()) {
			t.Errorf("%s: the plate did not grow: %v", c.name, p.frame)
		}
		for _, b := range c.taken {
			if b.Meets(text.Box()) {
				t.Errorf("%s: it lies on %v", c.name, b)
			}
		}
	}
}
