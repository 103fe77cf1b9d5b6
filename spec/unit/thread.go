package unit

import (
	"fmt"
	"math/big"
	"regexp"
	"strconv"
	"strings"

	"fitup/policies/tables"
)

// A ThreadSystem is the standard that a thread's form and sizes come from.
type ThreadSystem string

const (
	Metric  ThreadSystem = "metric"  // ISO 68-1, 60 degrees
	Unified ThreadSystem = "unified" // ASME B1.1, 60 degrees
	NPT     ThreadSystem = "NPT"     // ASME B1.20.1, 60 degrees, taper 1:16
	G       ThreadSystem = "G"       // ISO 228-1, 55 degrees, parallel
	R       ThreadSystem = "R"       // ISO 7-1, 55 degrees, taper 1:16
)

// A Thread is one thread designation. Lengths are nominal, in metres; a taper
// thread's major diameter is that at its gauge plane (R) or of its pipe (NPT).
type Thread struct {
	System ThreadSystem
	Major  float64
	Pitch  float64
	TPI    float64 // threads an inch; 0 for metric
	Taper  bool
	Left   bool   // left-hand
	Text   string // canonical: "M10x1.5", "7/16-20", "1/4-18 NPT", "G1/4"
}

func (t Thread) String() string { return t.Text }

// Equal reports whether a and b are the same thread. Classes of fit and series
// names (UNF, UNJF) make no difference to what screws into what.
func (t Thread) Equal(o Thread) bool {
	return t.System == o.System && t.Major == o.Major && t.Pitch == o.Pitch && t.Left == o.Left
}

var (
	metricForm  = regexp.MustCompile(`^M ?(\d{1,3}(?:\.\d{1,2})?)(?: ?[x×X] ?(\d{1,2}(?:\.\d{1,3})?))?$`)
	unifiedForm = regexp.MustCompile(`^(#?\d{1,2}|\d{1,2}/\d{1,3}|\d{1,2}[ -]\d{1,2}/\d{1,2}) ?- ?(\d{1,2}(?:\.5)?)(?: ?(UNC|UNF|UNEF|UNS|UN|UNJC|UNJF|UNJEF|UNJ))?(?:-[123][AB])?$`)
	pipeForm    = regexp.MustCompile(`^(\d(?:/\d{1,2})?|\d[ -]\d/\d)(?: ?- ?(\d{1,2}(?:\.5)?))? ?NPTF?$`)
	whitworth   = regexp.MustCompile(`^(G|Rc|R) ?(\d(?:/\d{1,2})?|\d[ -]\d/\d)(?: ?[AB])?$`)
	bareUnified = regexp.MustCompile(`^(?:UN[CF] ?)?(\d{1,2}/\d{1,2})(?: ?(UNC|UNF|UNEF|in))?$`)
)

// ParseThread reads a thread designation:
//
//	metric  = "M" diameter "x" pitch                         M10x1.5
//	unified = size "-" threads [ series ]                    7/16-20 UNF, 10-32
//	pipe    = size [ "-" threads ] "NPT" | "G" size | "R" size
//
// each with " LH" after it if it is left-handed. A size alone is refused, since
// every size is made in several pitches.
func ParseThread(text string) (Thread, error) {
	word := strings.TrimSpace(text)
	word, left := strings.CutSuffix(word, " LH")
	var t Thread
	var e *Error
	switch {
	case metricForm.MatchString(word):
		t, e = metricThread(text, metricForm.FindStringSubmatch(word))
	case unifiedForm.MatchString(word):
		t, e = unifiedThread(text, unifiedForm.FindStringSubmatch(word))
	case pipeForm.MatchString(word):
		m := pipeForm.FindStringSubmatch(word)
		t, e = pipeThread(text, NPT, m[1], m[2])
	case whitworth.MatchString(word):
		m := whitworth.FindStringSubmatch(word)
		t, e = pipeThread(text, ThreadSystem(m[1][:1]), m[2], "")
	default:
		e = noThread(text, word)
	}
	if e != nil {
		return Thread{}, e
	}
	if left {
		t.Left, t.Text = true, t.Text+" LH"
	}
	return t, nil
}

func metricThread(text string, m []string) (Thread, *Error) {
	if m[2] == "" {
		size, ok := tables.MetricThread(m[1])
		if !ok {
			return Thread{}, wholly(text, "a thread with no pitch", "write it like M10x1.5")
		}
		var pitches []string
		for i, p := range size.PitchesMM {
			name := fmt.Sprintf("M%sx%v", m[1], p)
			if i == 0 && size.Coarse {
				name += " (coarse)"
			}
			pitches = append(pitches, name)
		}
		return Thread{}, wholly(text, "M"+m[1]+" is made in several pitches", "write "+oneOf(pitches))
	}
	major, pitch := exact(m[1]+" /1000"), exact(m[2]+" /1000")
	if pitch.Sign() == 0 || new(big.Rat).Mul(pitch, big.NewRat(3, 1)).Cmp(major) > 0 {
		return Thread{}, wholly(text, "no thread has that pitch", "the diameter comes first, then the pitch, as M10x1.5")
	}
	return newThread(Metric, major, pitch, 0, "M"+tidy(m[1])+"x"+tidy(m[2])), nil
}

// tidy drops the noughts that say nothing: "1.50" and "1.5" are one pitch.
func tidy(decimal string) string {
	if strings.Contains(decimal, ".") {
		return strings.TrimRight(strings.TrimRight(decimal, "0"), ".")
	}
	return decimal
}

func unifiedThread(text string, m []string) (Thread, *Error) {
	size, threads, series := strings.TrimPrefix(m[1], "#"), exact(m[2]), strings.Replace(m[3], "UNJ", "UN", 1)
	if threads.Sign() == 0 {
		return Thread{}, wholly(text, "no threads an inch", "write it like 7/16-20")
	}
	inches, ok := fraction(size)
	if !ok {
		return Thread{}, wholly(text, "a fraction over nought", "write it like 7/16-20")
	}
	// A whole number before 24 threads an inch or more is a screw number:
	// 10-32 is number 10, 1-12 is one inch.
	if strings.HasPrefix(m[1], "#") || !strings.Contains(size, "/") && threads.Cmp(exact("24")) >= 0 {
		inches.Mul(inches, exact("0.013")).Add(inches, exact("0.060")) // ASME B1.1
	}
	if series == "UNC" || series == "UNF" || series == "UNEF" {
		if e := seriesDiffers(text, size, m[2], series); e != nil {
			return Thread{}, e
		}
	}
	size = strings.Replace(size, " ", "-", 1)
	major := new(big.Rat).Mul(inches, exact(inch))
	pitch := new(big.Rat).Quo(exact(inch), threads)
	tpi, _ := threads.Float64()
	return newThread(Unified, major, pitch, tpi, size+"-"+m[2]), nil
}

// seriesDiffers refuses a series name that contradicts the threads an inch.
func seriesDiffers(text, size, threads, series string) *Error {
	row, ok := tables.UnifiedThread(size)
	if !ok {
		return nil
	}
	tpi := map[string]float64{"UNC": row.Coarse, "UNF": row.Fine, "UNEF": row.ExtraFine}[series]
	if tpi == 0 || strconv.FormatFloat(tpi, 'g', -1, 64) == threads {
		return nil
	}
	return wholly(text, fmt.Sprintf("%s %s has %v threads an inch, not %s", size, series, tpi, threads),
		fmt.Sprintf("write %s-%v, or leave %s out", size, tpi, series))
}

// pipeThread looks a pipe size up: its name says nothing of its diameter.
func pipeThread(text string, system ThreadSystem, size, threads string) (Thread, *Error) {
	family := "G"
	if system == NPT {
		family = "NPT"
	}
	size = strings.Replace(size, " ", "-", 1)
	row, ok := tables.PipeThread(family, size)
	if !ok {
		return Thread{}, wholly(text, fmt.Sprintf("no size %s in the %s series", size, system),
			"the sizes are "+strings.Join(tables.PipeSizes(family), ", "))
	}
	tpi := strconv.FormatFloat(row.TPI, 'g', -1, 64)
	if threads != "" && threads != tpi {
		return Thread{}, wholly(text, fmt.Sprintf("%s NPT has %s threads an inch, not %s", size, tpi, threads),
			fmt.Sprintf("write %s-%s NPT", size, tpi))
	}
	canonical := string(system) + size
	if system == NPT {
		canonical = size + "-" + tpi + " NPT"
	}
	major := exact(strconv.FormatFloat(row.MajorMM, 'f', -1, 64) + " /1000")
	pitch := new(big.Rat).Quo(exact(inch), exact(tpi))
	t := newThread(system, major, pitch, row.TPI, canonical)
	t.Taper = system != G
	return t, nil
}

func newThread(system ThreadSystem, major, pitch *big.Rat, tpi float64, text string) Thread {
	t := Thread{System: system, TPI: tpi, Text: text}
	t.Major, _ = major.Float64()
	t.Pitch, _ = pitch.Float64()
	return t
}

// fraction reads "3", "7/16", "1-1/16" or "1 1/16".
func fraction(size string) (*big.Rat, bool) {
	value, at, e := number(size, 0, len(size))
	return value, e == nil && at == len(size)
}

func noThread(text, word string) *Error {
	if m := bareUnified.FindStringSubmatch(word); m != nil {
		if row, ok := tables.UnifiedThread(m[1]); ok {
			var ways []string
			for _, tpi := range []float64{row.Coarse, row.Fine, row.ExtraFine} {
				if tpi != 0 {
					ways = append(ways, fmt.Sprintf("%s-%v", m[1], tpi))
				}
			}
			return wholly(text, m[1]+" is made in several pitches", "write "+oneOf(ways))
		}
	}
	if strings.Contains(strings.ToUpper(word), "BSP") {
		e := wholly(text, word+" hides a choice", "write G and the size if it is parallel, R and the size if it tapers")
		e.HidesChoice = true
		return e
	}
	return wholly(text, said(word)+" is no thread", "write it like M10x1.5, 7/16-20, 1/4-18 NPT or G1/4")
}
