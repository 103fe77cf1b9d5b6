package drawing

import (
	"strings"
	"unicode"
)

const (
	// Lettering is the usual size of letters in mm: capitals are then 3 mm high.
	Lettering = 4.2
	// Heading is the size of a drawing's few headings, mm.
	Heading = 5.6

	leading = 1.2 // from line to line, in sizes
)

// widths are those of the printable ASCII characters from the space on, in
// thousandths of the size, in the sans serif that PDF readers (ISO 32000) and the
// fonts made to its measures share.
var widths = [...]float64{
	278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278,
	556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556,
	1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778,
	667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556,
	333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556,
	556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584,
}

// Width is the width in mm of a line of text. The browser is told it and fits the
// line to it, whatever font it has: what does not overlap here overlaps nowhere.
func Width(line string, size float64) float64 {
	sum := 0.0
	for _, r := range line {
		switch {
		case r >= ' ' && r <= '~':
			sum += widths[r-' ']
		case unicode.In(r, unicode.Mn, unicode.Cf, unicode.Cc):
		case r < 0x2000:
			sum += 620
		default: // signs, and scripts with letters as wide as high
			sum += 1000
		}
	}
	return sum / 1000 * size
}

// Wrap breaks text into lines no wider than a width in mm: between words; within a
// word that is wider alone after its hyphens, or anywhere. It gives at most so many
// lines; what is left then is shown by an ellipsis.
func Wrap(text string, width, size float64, most int) []string {
	var lines []string
	line := ""
	for _, word := range strings.Fields(text) {
		if line != "" {
			line += " "
		}
		parts := []string{word}
		if Width(word, size) > width {
			parts = strings.SplitAfter(word, "-")
		}
		for _, part := range parts {
			if Width(line+part, size) <= width {
				line += part
				continue
			}
			if line = strings.TrimSuffix(line, " "); line != "" {
				lines = append(lines, line)
			}
			for Width(part, size) > width {
				head := fitting(part, width, size)
				lines, part = append(lines, head), part[len(head):]
			}
			line = part
		}
	}
	if line != "" {
		lines = append(lines, line)
	}
	if len(lines) > most {
		last := lines[most-1]
		for last != "" && Width(last+"…", size) > width {
			last = last[:len(last)-len(lastRune(last))]
		}
		lines = append(lines[:most-1], last+"…")
	}
	return lines
}

// fitting is as much of the beginning of a word as a width takes, one character at
// least.
func fitting(word string, width, size float64) string {
	end := 0
	for i, r := range word {
		next := i + len(string(r))
		if end > 0 && Width(word[:next], size) > width {
			break
		}
		end = next
	}
	return word[:end]
}

func lastRune(s string) string {
	r := []rune(s)
	return string(r[len(r)-1])
}

// wrapped wraps each of several lines.
func wrapped(lines []string, width float64) []string {
	var out []string
	for _, line := range lines {
		out = append(out, Wrap(line, width, Lettering, 3)...)
	}
	return out
}
