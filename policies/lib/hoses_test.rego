package lib.hoses_test

import data.lib.hoses

marked := {
	"SAE J30 R6": "low pressure",
	"SAE 30R7": "low pressure",
	"SAE J30 R9": "fuel",
	"SAE 100R14": "none",
	"SAE 100 R6": "none",
	"FMVSS 106": "none",
}

test_fuel_hose if {
	{s | some s, kind in marked; kind != "none"} == {s | some s, _ in marked; hoses.fuel_hose(s)}
}

test_low_pressure if {
	{s | some s, kind in marked; kind == "low pressure"} == {s | some s, _ in marked; hoses.low_pressure(s)}
}
