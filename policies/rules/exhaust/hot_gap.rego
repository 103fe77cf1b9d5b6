# METADATA
# title: Soft part beside the exhaust without a shield
# description: |
#   Hoses, fuel parts and looms close to an exhaust or a turbocharger harden, crack and
#   then leak or short onto it. A shield or a sleeve makes up for the distance.
#   The figures are for buses; none for cars is known. A line of something that
#   burns, nearer than the lesser of them, is not waited for.
# related_resources:
#   - ref: illinois-92-441
#     description: "appendix F: fuel lines clear of the exhaust, or shielded"
#   - ref: comar-11.19.03.08
#     description: fuel tank and connections, or a heat baffle
#   - ref: common-practice
#     description: distance, shield or sleeve
# custom:
#   cases:
#     line:
#       level: fault
#       message: "{soft} runs {gap} from {hot}, and nothing shields it; even of diesel lines {least} is asked"
#     soft:
#       level: advice
#       message: "{soft} runs {gap} from {hot}, and nothing shields it; {least} is asked of buses"
#   subject: gaps
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     soft: {dimension: text}
#     hot: {dimension: text}
#     gap: {dimension: length, like: is}
#     least: {dimension: length, like: is}
#   fix: fit a shield with an air gap, or a heat sleeve, or move the part away
#   rulebook: workshop
#   confidence: practice
package rules.exhaust.hot_gap

import data.rules.exhaust.limits.hot_gap as limits

# They burn when they leak.
liquids := {
	"fuel", "fuel vapour", "engine oil", "gearbox oil", "axle oil",
	"brake fluid", "clutch fluid", "steering fluid",
}

judges contains {"subject": gap.path, "needs": ["is", "shield"]} if {
	some gap in input.gaps
	some hot in gap.between
	burns(hot)
	some soft in gap.between
	suffers(soft)
}

judges contains {"subject": gap.path, "needs": ["between"]} if {
	some gap in input.gaps
	not gap.between
}

findings contains {
	"subject": gap.path,
	"at": "is",
	"case": "line",
	"figures": {"soft": soft, "hot": hot, "gap": gap.is, "least": limits.line.value},
} if {
	some gap in input.gaps
	some hot in gap.between
	burns(hot)
	some soft in gap.between
	some line in input.lines
	line.path == soft
	line.service in liquids
	gap.is < limits.line.value
	"shield" in gap.none
}

findings contains {
	"subject": gap.path,
	"at": "is",
	"case": "soft",
	"figures": {"soft": soft, "hot": hot, "gap": gap.is, "least": limits.least.value},
} if {
	some gap in input.gaps
	some hot in gap.between
	burns(hot)
	some soft in gap.between
	suffers(soft)
	gap.is >= limits.line.value
	gap.is < limits.least.value
	"shield" in gap.none
}

findings contains {
	"subject": gap.path,
	"at": "is",
	"case": "soft",
	"figures": {"soft": soft, "hot": hot, "gap": gap.is, "least": limits.least.value},
} if {
	some gap in input.gaps
	some hot in gap.between
	burns(hot)
	some soft in gap.between
	suffers(soft)
	count({line.path | some line in input.lines; line.path in {soft}; line.service in liquids}) == 0
	gap.is < limits.least.value
	"shield" in gap.none
}

# Names of parts begin with the table that they stand in.
burns(name) if {
	some beginning in {"exhaust", "turbo", "driveline.exhaust", "driveline.turbo", "driveline.solids.turbo"}
	startswith(name, beginning)
}

suffers(name) if {
	some beginning in {"lines.", "fuel.", "plugs.", "pins.", "circuits.", "clutch.", "brakes.", "driveline.lines.", "driveline.circuits."}
	startswith(name, beginning)
}
