package unit

import (
	"maps"
	"regexp"
	"slices"
	"strings"
)

// The patterns below are regular expressions for those who check a spec without
// reading it: JSON Schemas for editors. They take every spelling that is read
// here; of values that are refused for what they say, such as a length of
// nothing where there must be some, they take most. The syntax is what RE2 and
// ECMAScript have in common. None is anchored, and each may stand in a group.

const (
	numberPattern   = `(?:(?:\d+[ -])?\d+/\d+|\d+(?:\.\d+)?)`
	betweenPattern  = `[ ·⋅*-]*`
	positionPattern = `[+-]?` + numberPattern
)

// Pattern is the pattern of a value of d. A signed one may be below nought.
func (d Dimension) Pattern(signed bool) string {
	return sign(signed) + numberPattern + d.unitPattern()
}

// PositionPattern is the pattern of what ParsePosition reads.
func PositionPattern() string {
	return positionPattern + ` *, *` + positionPattern + ` *, *` + positionPattern + Length.unitPattern()
}

// RangePattern is the pattern of what ParseRange reads.
func RangePattern(d Dimension) string {
	return sign(true) + numberPattern + `(?:` + d.unitPattern() + `)? to ` + d.Pattern(true)
}

// AtPattern is the pattern of what ParseAt reads.
func AtPattern(d, at Dimension) string { return d.Pattern(true) + ` at ` + at.Pattern(true) }

// DatePattern is the pattern of what ParseDate reads.
func DatePattern() string {
	return `(?:19|[2-9]\d)\d\d(?:-(?:0[1-9]|1[0-2])(?:-(?:0[1-9]|[12]\d|3[01]))?)?`
}

// WirePattern is the pattern of what ParseWire reads.
func WirePattern() string { return `(?:\d{1,2}|[1-4]/0) ?AWG|` + Area.Pattern(false) }

// HidingPattern is the pattern of a value whose unit hides a choice: it is read,
// but nothing can be made of it.
func HidingPattern() string {
	return sign(true) + numberPattern + betweenPattern + `(?:` + strings.Join(patterns(slices.Sorted(maps.Keys(choices)), true), "|") + `)`
}

func sign(signed bool) string {
	if signed {
		return `[+-]?`
	}
	return `\+?`
}

func (d Dimension) unitPattern() string {
	var words []string
	for _, u := range kinds[d].units {
		words = append(append(words, u.symbol), u.aliases...)
	}
	return betweenPattern + `(?:` + strings.Join(patterns(words, false), "|") + `)`
}

// spellings maps a part of a unit onto a pattern for all that spell makes of it.
var spellings = strings.NewReplacer(
	" ", `[ ·⋅*-]+`, "/", ` ?/ ?`, "2", `\^?[2²]`, "3", `\^?[3³]`, "4", `\^?[4⁴]`,
	"u", `[uµμ]`, "ohm", `(?:ohm|[ΩΩ])`, "deg", `(?:deg|°)`, "°C", `(?:°?C)`, "°F", `(?:°?F)`, "C", `(?:°?C)`, "F", `(?:°?F)`,
)

// patterns turns words into patterns, of any case if folded.
func patterns(words []string, folded bool) []string {
	all := make([]string, len(words))
	for i, word := range words {
		word = regexp.QuoteMeta(word)
		if folded {
			word = letters.ReplaceAllStringFunc(word, func(l string) string { return "(?:" + l + "|" + strings.ToUpper(l) + ")" })
		}
		all[i] = spellings.Replace(word)
	}
	return all
}

var letters = regexp.MustCompile(`[a-z]`)
