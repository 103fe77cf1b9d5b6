# METADATA
# title: Low-pressure fuel hose on injection pressure
# description: |
#   Fuel hose of the types for carburettors, vents and returns is not made
#   for the pressure of an injection feed. It looks the same, holds for a
#   while, and then bursts or works off its tail, with several bar of petrol
#   behind it.
# related_resources:
#   - ref: sae-j30
#     description: "scope of the types: R6, R7, R8, R11 and R14 low pressure, R10 inside the tank"
# custom:
#   level: danger
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} feeds the injection through hose marked {standard}"
#   figures:
#     standard: {dimension: text}
#   fix: fit hose that its standard or maker names for injection pressure, with crimped or threaded ends
#   caution: do not switch the pump on; petrol under pressure finds a hot engine
#   rulebook: workshop
#   confidence: published
#   basis: hazard
package rules.fuel.hose_class

import data.lib.hoses

judges contains {"subject": line.path, "needs": ["kind.standard", "injected"]} if {
	some line in input.lines
	line.service == "fuel"
}

judges contains {"subject": line.path, "needs": ["service", "kind.standard"]} if {
	some line in input.lines
	not line.service
}

findings contains {
	"subject": line.path,
	"at": "kind.standard",
	"figures": {"standard": line.kind.standard},
} if {
	some line in input.lines
	line.injected
	hoses.low_pressure(line.kind.standard)
}
