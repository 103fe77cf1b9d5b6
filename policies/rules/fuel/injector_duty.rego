# METADATA
# title: Injectors open too long
# description: |
#   An injector that stands open for most of each turn has no time left to
#   shut: flow is no longer in proportion, and the last cylinder runs lean.
#   What counts is the pressure across it, rail less manifold, and the fuel
#   that is in the tank.
# related_resources:
#   - ref: fuel-sizing-manuals
#     description: duty of 80 to 85 % at full power
# custom:
#   level: fault
#   subject: fuel
#   stages: [joined, filled, first_start, event]
#   message: "the injectors would have to stand open {duty} of the time at full power; {most} is the most"
#   figures:
#     duty: {dimension: ratio, unit: "%"}
#     most: {dimension: ratio, unit: "%"}
#   fix: fit larger injectors and a map for them, raise the base pressure, or lower power or the share of alcohol
#   rulebook: workshop
#   confidence: practice
package rules.fuel.injector_duty

import data.rules.fuel.limits.injector_duty as limits

# A carburettor has no duty.
judges contains {"subject": fuel.path, "needs": ["calc.injector_duty"]} if {
	some fuel in input.fuel
	not fuel.engine.none
}

judges contains {"subject": fuel.path, "needs": ["calc.injector_duty"]} if {
	some fuel in input.fuel
	none := fuel.engine.none
	not "injectors" in none
}

findings contains {
	"subject": fuel.path,
	"also": [fuel.engine.path],
	"figures": {"duty": fuel.calc.injector_duty, "most": limits.duty.value},
} if {
	some fuel in input.fuel
	fuel.calc.injector_duty > limits.duty.value
}
