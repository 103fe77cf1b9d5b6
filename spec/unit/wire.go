package unit

import (
	"math"
	"regexp"
	"strconv"
	"strings"
)

// A Wire is a conductor size.
type Wire struct {
	Area float64 // m²
	AWG  string  // "18", "2/0"; empty if the size is metric
	Text string  // canonical: "2.5 mm2", "18 AWG"
}

func (w Wire) String() string { return w.Text }

var awgForm = regexp.MustCompile(`^(\d{1,2}|[1-4]/0) ?AWG$`)

// ParseWire reads a conductor size: an area ("2.5 mm2") or an American gauge
// ("18 AWG", "2/0 AWG"; 40 to 4/0). A gauge's area is that of the solid wire of
// ASTM B258, d = 0.127 mm × 92^((36-n)/39).
func ParseWire(text string) (Wire, error) {
	word := strings.TrimSpace(text)
	if m := awgForm.FindStringSubmatch(word); m != nil {
		gauge := m[1]
		n, err := strconv.Atoi(gauge)
		if err != nil { // "2/0" is gauge -1
			n = 1 - int(gauge[0]-'0')
		}
		if n == 0 {
			gauge = "1/0"
		}
		if n > 40 {
			return Wire{}, wholly(text, "no wire is so thin", "a gauge from 40 to 4/0 AWG is due")
		}
		d := 0.127e-3 * math.Pow(92, float64(36-n)/39)
		return Wire{Area: math.Pi / 4 * d * d, AWG: gauge, Text: gauge + " AWG"}, nil
	}
	if strings.Contains(strings.ToUpper(word), "AWG") {
		return Wire{}, wholly(text, said(word)+" is no wire size", "write it like 18 AWG or 2/0 AWG")
	}
	q, err := ParsePositive(text, Area)
	if err != nil {
		e := err.(*Error)
		if !e.HidesChoice {
			e.Want = "write it like 2.5 mm2 or 18 AWG"
		}
		return Wire{}, e
	}
	return Wire{Area: q.SI, Text: q.Text}, nil
}
