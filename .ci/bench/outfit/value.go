package outfit

import (
	"math/rand/v2"
	"regexp"
	"strconv"
	"strings"
)

// quantity is a key with one number and its unit, in a line of its own or in an
// inline table.
var quantity = regexp.MustCompile(`(?m)([a-z-]+)( *= *)"(-?[0-9]+(?:\.[0-9]+)?) ((?:mm2?|m|kg|bar|C|L|N m|A|Ah|V|kW|L/min|runs|h)(?: of [a-z0-9-]+, [0-9-]+)?)"`)

// stretch says how far quantities differ from car to car, as factors. Whatever a
// rule sets a bound to goes to the good side only, so that the demo's variants are
// as sound as the demo.
var stretch = map[string][2]float64{
	"hose":          {1.00, 1.04}, // its length
	"tightest-bend": {1.00, 1.30},
	"clips":         {0.80, 1.00},
	"near":          {0.85, 1.00},
	"mass":          {0.98, 1.02},
	"sheds":         {1.00, 1.10},
	"capacity":      {1.00, 1.20},
	"length":        {0.98, 1.00}, // of wires, rods and shafts
}

// A knowledge is how likely an author writes "?" for a quantity, marks it as a guess,
// or leaves it out.
type knowledge struct{ asked, guessed, unsaid float64 }

// vary draws the quantities of a spec anew: some differ in value, some were never
// measured, some are guesses.
func vary(r *rand.Rand, spec string, k knowledge) string {
	return quantity.ReplaceAllStringFunc(spec, func(written string) string {
		m := quantity.FindStringSubmatch(written)
		key, equals, number, unit := m[1], m[2], m[3], m[4]
		factor := 1.0
		if bounds, ok := stretch[key]; ok {
			factor = bounds[0] + r.Float64()*(bounds[1]-bounds[0])
		}
		value := scaled(number, factor) + " " + unit
		switch luck := r.Float64(); {
		case key == "hose": // a phrase, which is known or not said
		case luck < k.asked:
			value = "?"
		case luck < k.asked+k.guessed:
			value = "~" + value
		}
		return key + equals + `"` + value + `"`
	})
}

// scaled multiplies a number, and keeps the decimals that it is written with.
func scaled(number string, factor float64) string {
	value, err := strconv.ParseFloat(number, 64)
	if err != nil || factor == 1 {
		return number
	}
	_, decimals, _ := strings.Cut(number, ".")
	return strconv.FormatFloat(value*factor, 'f', len(decimals), 64)
}

// forget leaves quantities out that have a line of their own.
func forget(r *rand.Rand, t text, likely float64) {
	for i := range t {
		var kept []entry
		for _, e := range t[i].entries {
			if own := quantity.FindString(e.text); own != "" && strings.HasPrefix(e.text, own) && r.Float64() < likely {
				continue
			}
			kept = append(kept, e)
		}
		t[i].entries = kept
	}
}
