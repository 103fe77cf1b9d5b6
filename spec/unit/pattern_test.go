package unit

import (
	"errors"
	"regexp"
	"slices"
	"strings"
	"testing"
)

func whole(pattern string) *regexp.Regexp { return regexp.MustCompile("^ *(?:" + pattern + ") *$") }

// TestPatterns writes every unit, in several spellings, in every dimension: the
// patterns take what is read and nothing whose unit is another's or nobody's.
func TestPatterns(t *testing.T) {
	var words []string
	for _, d := range Dimensions() {
		for _, u := range kinds[d].units {
			words = append(append(words, u.symbol), u.aliases...)
		}
	}
	for word := range choices {
		words = append(words, word, strings.ToUpper(word))
	}
	spelled := strings.NewReplacer("2", "²", "3", "^3", "u", "µ", "ohm", "Ω", "deg", "°", " ", "·")
	for _, word := range slices.Clone(words) {
		words = append(words, spelled.Replace(word), strings.ReplaceAll(word, "/", " / "), word+"x")
	}
	slices.Sort(words)
	words = slices.Compact(words)
	hiding := whole(HidingPattern())
	taken := 0
	for _, d := range Dimensions() {
		signed, unsigned := whole(d.Pattern(true)), whole(d.Pattern(false))
		check := func(text string, err error, pattern *regexp.Regexp) {
			t.Helper()
			if hides(err) != hiding.MatchString(text) || (err == nil) != pattern.MatchString(text) {
				t.Errorf("%s as %s: %v; its pattern: %v, that of a hidden choice: %v", text, d.name(), err, pattern.MatchString(text), hiding.MatchString(text))
			}
			if err == nil {
				taken++
			}
		}
		for _, word := range words {
			for _, text := range []string{"1 " + word, "-0 " + word, " 3 1/2  " + word + " "} {
				_, err := Parse(text, d)
				check(text, err, signed)
			}
			if _, ok := d.find(spell(word)); !ok {
				continue
			}
			for _, text := range []string{"12.50·" + word, "3-1/2-" + word, "+7/16 " + word, "-0 " + word, word} {
				_, err := Parse(text, d)
				check(text, err, signed)
				if strings.HasPrefix(text, "-") {
					err = errors.New("below nought")
				}
				check(text, err, unsigned)
			}
			for _, text := range []string{"1 to 2 " + word, "1 " + word + " to 2 " + word, "1 " + word + " to x"} {
				_, err := ParseRange(text, d)
				check(text, err, whole(RangePattern(d)))
			}
			for _, text := range []string{"1 " + word + " at 2 rpm", "1 " + word + " at 2", "1 at 2 rpm x"} {
				_, err := ParseAt(text, d, RotationalSpeed)
				check(text, err, whole(AtPattern(d, RotationalSpeed)))
			}
		}
	}
	if taken == 0 {
		t.Error("nothing is read")
	}
}

func hides(err error) bool {
	e, ok := errors.AsType[*Error](err)
	return ok && e.HidesChoice
}

func TestFormPatterns(t *testing.T) {
	position, wire, date := whole(PositionPattern()), whole(WirePattern()), whole(DatePattern())
	for _, text := range []string{
		"-391, 216, 277 mm", "0,0,0 m", "1/2, -1 1/4, 3 in", " 1 , 2 , 3 ft ",
		"1, 2 mm", "1, 2, 3", "1 mm, 2, 3 mm", "1, 2, three mm", "1, 2, 3, 4 mm", "1, 2, 3 kg",
	} {
		if _, err := ParsePosition(text); (err == nil) != position.MatchString(text) {
			t.Errorf("%s: %v, its pattern: %v", text, err, position.MatchString(text))
		}
	}
	for _, text := range []string{"18 AWG", "2/0AWG", "5/0 AWG", "2.5 mm2", "2.5 mm", "-1 mm2", "thick", "18 SWG"} {
		if _, err := ParseWire(text); (err == nil) != wire.MatchString(text) {
			t.Errorf("%s: %v, its pattern: %v", text, err, wire.MatchString(text))
		}
	}
	for _, text := range []string{
		"2022", "2022-06", "2022-06-15", "1900", "1899", "2022-13", "2022-00", "2022-06-32", "22-06", "June 2022", "2022-6",
	} {
		if _, err := ParseDate(text); (err == nil) != date.MatchString(text) {
			t.Errorf("%s: %v, its pattern: %v", text, err, date.MatchString(text))
		}
	}
}
