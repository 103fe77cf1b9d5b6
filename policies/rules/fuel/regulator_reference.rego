# METADATA
# title: Regulator that is not what the map reckons with
# description: |
#   Injectors pass fuel by the difference between rail and manifold. On a
#   boosted engine a regulator that does not follow the manifold gives less
#   and less as boost rises; one with another base than the map was made with
#   is wrong everywhere. A map that reckons with a constant rail has no pressure over
#   the manifold to go by; write none for it. A pump with no regulator at all puts
#   its relief pressure on the float valves, and fuel runs over a hot engine.
# related_resources:
#   - ref: common-practice
#     description: rail pressure over manifold pressure is what an injector works at
# custom:
#   cases:
#     fixed:
#       level: fault
#       message: "the map reckons with {wanted} over the manifold, and the fuel regulator does not follow it (the engine is {induction})"
#     base:
#       level: fault
#       message: "the fuel regulator holds {base}; the map was made with {wanted}"
#     asked:
#       level: fault
#       message: "the fuel regulator holds {base}; the driveline asks for {wanted}"
#     free:
#       level: fault
#       message: "nothing holds the pump back but its own valve at {base}; the carburettors are set up for {wanted}"
#   subject: fuel
#   stages: [joined, filled, first_start, event]
#   figures:
#     base: {dimension: pressure, like: regulator.base}
#     wanted: {dimension: pressure, like: regulator.base}
#     induction: {dimension: text}
#   fix: fit a regulator where there is none; connect its reference to the manifold and set the base with it off, or have the map made for what is fitted
#   rulebook: workshop
#   confidence: practice
package rules.fuel.regulator_reference

import data.rules.fuel.limits.regulator_reference as limits

boosted := {"turbocharged", "supercharged"}

# What the driveline asks for does not stand in for a map that nobody has read.
judges contains {"subject": fuel.path, "needs": ["regulator.base", "tune.base_fuel_pressure"]} if some fuel in input.fuel

judges contains {"subject": fuel.path, "needs": ["needs.fuel_pressure"]} if {
	some fuel in input.fuel
	"base_fuel_pressure" in fuel.tune.none
}

# A pump that the engine computer slows down needs no regulator; carburettors have none.
judges contains {"subject": fuel.path, "needs": ["calc.rail_pressure"]} if {
	some fuel in input.fuel
	"regulator" in fuel.none
	"injectors" in fuel.engine.none
}

judges contains {"subject": fuel.path, "needs": ["regulator.follows_manifold"]} if {
	some fuel in input.fuel
	fuel.engine.induction in boosted
}

judges contains {"subject": fuel.path, "needs": ["engine.induction", "regulator.follows_manifold"]} if {
	some fuel in input.fuel
	not fuel.engine.induction
}

findings contains {
	"subject": fuel.path,
	"at": "regulator.follows_manifold",
	"case": "fixed",
	"figures": {"induction": fuel.engine.induction, "wanted": wanted},
} if {
	some fuel in input.fuel
	fuel.engine.induction in boosted
	fuel.regulator.follows_manifold == false
	wanted := fuel.tune.base_fuel_pressure
}

findings contains {
	"subject": fuel.path,
	"at": "regulator.base",
	"case": "base",
	"figures": {"base": fuel.regulator.base, "wanted": fuel.tune.base_fuel_pressure},
} if {
	some fuel in input.fuel
	differ(fuel.regulator.base, fuel.tune.base_fuel_pressure)
}

findings contains {
	"subject": fuel.path,
	"at": "regulator",
	"case": "free",
	"figures": {"base": fuel.calc.rail_pressure, "wanted": fuel.tune.base_fuel_pressure},
} if {
	some fuel in input.fuel
	"regulator" in fuel.none
	"injectors" in fuel.engine.none
	fuel.calc.rail_pressure > fuel.tune.base_fuel_pressure + limits.base_off.value
}

# Where the map does not say, the driveline may.
findings contains {
	"subject": fuel.path,
	"at": "regulator.base",
	"case": "asked",
	"figures": {"base": fuel.regulator.base, "wanted": fuel.needs.fuel_pressure},
} if {
	some fuel in input.fuel
	not fuel.tune.base_fuel_pressure
	differ(fuel.regulator.base, fuel.needs.fuel_pressure)
}

differ(one, other) if one > other + limits.base_off.value

differ(one, other) if other > one + limits.base_off.value
