package tables_test

import (
	"math"
	"testing"

	"fitup/policies/tables"
)

// TestElastic holds the metric figures to the inch ones that the textbook prints
// beside them; a million pounds an inch squared is 6.894757 GPa, a pound a cubic
// inch 27679.9 kg/m3.
func TestElastic(t *testing.T) {
	for metal, inch := range map[string]struct{ mpsi, weight float64 }{
		"steel": {30.0, 0.282}, "stainless": {27.6, 0.280}, "aluminium": {10.4, 0.098}, "titanium": {16.5, 0.160},
	} {
		row, ok := tables.Elastic(metal)
		if !ok || math.Abs(row.Modulus/(inch.mpsi*6.894757e9)-1) > 0.003 || math.Abs(row.Density/(inch.weight*27679.9)-1) > 0.0005 {
			t.Errorf("%s: %+v", metal, row)
		}
	}
	if _, ok := tables.Elastic("carbon"); ok {
		t.Error("carbon goes by its lay-up")
	}
}

func TestNutFactor(t *testing.T) {
	for threads, want := range map[string]float64{"dry": 0.20, "oiled": 0.18, "anti-seize": 0.12} {
		if row, ok := tables.NutFactor(threads); !ok || row.Factor != want || row.Confidence != "published" {
			t.Errorf("%s: %+v", threads, row)
		}
	}
	if _, ok := tables.NutFactor("waxed"); ok {
		t.Error("a nut factor for wax")
	}
}
