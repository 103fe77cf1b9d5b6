# METADATA
# title: Hose below the burst pressure of the rules
# description: |
#   The rules ask for a least burst pressure of hoses that carry fuel and
#   lubricating oil, proved hot. Vents and fillers are another class; joints
#   to injectors and a cooler in the return are exempt.
# related_resources:
#   - ref: fia-253-2015
#     description: art. 3.2, fuel and oil lines, and its exemptions
#   - ref: fia-283
#     description: art. 3.2
# custom:
#   cases:
#     fuel:
#       level: danger
#       message: "{subject} carries fuel in a hose that bursts at {burst}; the rules ask for {least}"
#     oil:
#       level: danger
#       message: "{subject} carries oil in a hose that bursts at {burst}; the rules ask for {least}"
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     burst: {dimension: pressure, like: kind.burst}
#     least: {dimension: pressure, like: kind.burst}
#   fix: fit a hose whose maker states the burst pressure of the rules, at their temperature
#   caution: a hose that bursts feeds a fire; do not run it
#   rulebook: appendix-j
#   confidence: published
#   basis: threshold
package rules.lines.burst_pressure

import data.rules.lines.limits.burst_pressure as limits

judges contains {"subject": line.path, "needs": ["kind.burst"]} if {
	some line in input.lines
	line.service in {"fuel", "engine oil"}
	not line.kind.liner == "metal"
}

judges contains {"subject": line.path, "needs": ["service", "kind.burst"]} if {
	some line in input.lines
	not line.service
	not line.kind.liner == "metal"
}

findings contains {
	"subject": line.path,
	"at": "kind.burst",
	"case": "fuel",
	"figures": {"burst": line.kind.burst, "least": limits.fuel.value},
} if {
	some line in input.lines
	line.service == "fuel"
	not line.kind.liner == "metal"
	line.kind.burst < limits.fuel.value
}

findings contains {
	"subject": line.path,
	"at": "kind.burst",
	"case": "oil",
	"figures": {"burst": line.kind.burst, "least": limits.oil.value},
} if {
	some line in input.lines
	line.service == "engine oil"
	not line.kind.liner == "metal"
	line.kind.burst < limits.oil.value
}
