package main

import "testing"

func TestGrowthRows(t *testing.T) {
	rows := growthRows([]grown{
		{cars: 100, told: 3000, perCar: 0.050, peak: 100 << 20},
		{cars: 200, told: 6000, perCar: 0.060, peak: 112 << 20},
		{cars: 400, told: 15288, perCar: 0.054, peak: 124 << 20},
	})
	want := []row{
		{part: "c", what: "100 cars: 3000 findings and cannot-tells", figure: "50.0 ms a car, at most 100 MiB"},
		{part: "c", what: "200 cars: 6000 findings and cannot-tells", figure: "60.0 ms a car, at most 112 MiB"},
		{part: "c", what: "400 cars: 15288 findings and cannot-tells", figure: "54.0 ms a car, at most 124 MiB"},
		{"c", "time a car, the most of these by the least", "1.20", "at most 1.15", true},
		{"c", "memory that grows from 100 to 400 cars, a finding or cannot-tell", "2.0 KiB", "at most 4.0 KiB", false},
	}
	for i, r := range rows {
		if r != want[i] {
			t.Errorf("%+v, want %+v", r, want[i])
		}
	}
}
