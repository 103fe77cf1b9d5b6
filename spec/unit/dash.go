package unit

import (
	"regexp"
	"strconv"
	"strings"

	"fitup/policies/tables"
)

// A Dash is a fitting size in sixteenths of an inch of tube outside diameter.
// It says nothing of a hose's bore.
type Dash int

var dashForm = regexp.MustCompile(`^-0?([1-9]\d?)$`)

// ParseDash reads a dash size: a minus sign and the number of sixteenths, as
// "-8" or "-08". Sizes that no fitting is made in are refused.
func ParseDash(text string) (Dash, error) {
	word := strings.TrimSpace(text)
	m := dashForm.FindStringSubmatch(word)
	if m == nil {
		want := "a dash size is due, like -6 or -8"
		if n := lastNumber.FindString(word); n != "" && n != "0" {
			want = "did you mean -" + strings.TrimLeft(n, "0") + "? " + want
		}
		return 0, wholly(text, said(word)+" is no dash size", want)
	}
	n, _ := strconv.Atoi(m[1])
	var below, above int
	for _, size := range tables.DashSizes() {
		switch {
		case size == n:
			return Dash(n), nil
		case size < n:
			below = size
		case above == 0:
			above = size
		}
	}
	var near []string
	if below != 0 {
		near = append(near, Dash(below).String())
	}
	if above != 0 {
		near = append(near, Dash(above).String())
	}
	return 0, wholly(text, "no fitting is made in size "+word, "the sizes beside it are "+strings.Join(near, " and "))
}

var lastNumber = regexp.MustCompile(`\d{1,2}$`)

func (d Dash) String() string { return "-" + strconv.Itoa(int(d)) }

// TubeOD returns the tube outside diameter in metres.
func (d Dash) TubeOD() float64 {
	f, _ := exact(strconv.Itoa(int(d)) + " /16" + inch).Float64()
	return f
}
