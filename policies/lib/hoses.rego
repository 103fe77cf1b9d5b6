# METADATA
# title: What the marking of a hose says, and what flows through hoses
# description: |
#   SAE J30 is printed in many ways: SAE J30 R7, SAE 30R7, J30R9.
package lib.hoses

# fuel_hose tells whether a hose is marked as fuel hose.
fuel_hose(standard) if contains(standard, "J30")

fuel_hose(standard) if contains(standard, "30R")

# low_pressure tells whether it is marked with a type for carburettors, vents or
# returns, or for lying in fuel.
low_pressure(standard) if {
	fuel_hose(standard)
	some type in {"R6", "R7", "R8", "R10", "R11", "R14"}
	contains(standard, type)
}

# fluids are the services for which a liner matters.
fluids := {
	"fuel", "fuel vapour", "engine oil", "gearbox oil", "axle oil", "crankcase breath",
	"steering fluid", "coolant", "water", "charge air", "brake fluid", "clutch fluid",
}
