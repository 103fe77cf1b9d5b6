package policies

import (
	"strings"
	"testing"

	"fitup/spec/unit"
)

const wholeLimit = `limits:
  worn:
    left:
      value: 0.0254
      unit: m
      written: 1 in
      looser: down
      why: it tears
      source: sae-j514
      clause: table 1
`

func TestReadLimits(t *testing.T) {
	l, err := readLimits("data.yaml", []byte(wholeLimit))
	if err != nil {
		t.Fatal(err)
	}
	if got := l["worn"]["left"]; got.Value != 0.0254 || got.Dimension() != unit.Length {
		t.Errorf("limit %+v", got)
	}
	tests := map[string]struct {
		swap []string
		want string
	}{
		"unknown key":        {[]string{"why:", "wy:"}, "data.yaml:8: unknown key wy"},
		"no why":             {[]string{"it tears", ""}, "data.yaml: limits.worn.left.why: missing"},
		"no looser":          {[]string{"      looser: down\n", ""}, "limits.worn.left.looser: missing"},
		"unknown looser":     {[]string{"down", "left"}, `limits.worn.left.looser: "left" is none of up, down`},
		"unknown source":     {[]string{"sae-j514", "sae-j999"}, `limits.worn.left.source: no source "sae-j999"`},
		"unknown unit":       {[]string{"unit: m", "unit: in"}, `limits.worn.left.unit: "in" is no SI unit`},
		"written another":    {[]string{"1 in", "2 in"}, `limits.worn.left.written: "2 in" is not 0.0254 m`},
		"other dimension":    {[]string{"1 in", "1 kg"}, `limits.worn.left.written: "1 kg" is not 0.0254 m`},
		"value not a number": {[]string{"0.0254", "thin"}, "data.yaml:4: cannot unmarshal"},
	}
	for name, test := range tests {
		t.Run(name, func(t *testing.T) {
			_, err := readLimits("data.yaml", []byte(replaced(t, wholeLimit, test.swap...)))
			if err == nil || !strings.Contains(err.Error(), test.want) {
				t.Errorf("error %v\nwant  %s", err, test.want)
			}
		})
	}
}

// TestLimitDimension tells dimensions apart that share an SI unit.
func TestLimitDimension(t *testing.T) {
	for written, want := range map[string]struct {
		value float64
		unit  string
		d     unit.Dimension
	}{
		"2 bar":          {200000, "Pa", unit.Pressure},
		"2 bar absolute": {200000, "Pa", unit.AbsolutePressure},
		"80 °C":          {353.15, "K", unit.Temperature},
		"1.5":            {1.5, "1", unit.Ratio},
		"150 %":          {1.5, "1", unit.Ratio},
		"3 runs":         {3, "1", unit.Count},
	} {
		got, err := Limit{Value: want.value, Unit: want.unit, Written: written}.findDimension()
		if err != nil || got != want.d {
			t.Errorf("%s: %s, %v; want %s", written, got, err, want.d)
		}
	}
}
