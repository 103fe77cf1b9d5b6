# METADATA
# title: Shaft flange that does not fit its mate
# description: |
#   A shaft was made for one gearbox and one axle. Holes that nearly agree are
#   forced or filed, the pilot then does not centre, and the shaft runs out.
# related_resources:
#   - ref: common-practice
#     description: number of holes, bolt circle and pilot agree
# custom:
#   cases:
#     count:
#       level: fault
#       message: "{subject} has {here} holes; what it is bolted to has {there}"
#     circle:
#       level: fault
#       message: "{subject} is drilled on a {this} circle; what it is bolted to on {that}"
#     pilot:
#       level: fault
#       message: "{subject} has a pilot of {this}; what it is bolted to has {that}"
#   subject: flanges
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     here: {dimension: number}
#     there: {dimension: number}
#     this: {dimension: length, like: holes.circle}
#     that: {dimension: length, like: holes.circle}
#   fix: fit a flange of the right pattern or an adaptor that is turned with its own pilot; do not open up the holes
#   rulebook: workshop
#   confidence: practice
package rules.driveline.flange_holes

import data.rules.driveline.limits.flange_holes as limits

judges contains {
	"subject": flange.path,
	"needs": [
		"holes.count", "port.holes.count", "holes.circle", "port.holes.circle", "holes.pilot", "port.holes.pilot",
	],
} if {
	some flange in input.flanges
}

findings contains {
	"subject": flange.path,
	"at": "holes.count",
	"also": [flange.port.path],
	"case": "count",
	"figures": {"here": flange.holes.count, "there": flange.port.holes.count},
} if {
	some flange in input.flanges
	flange.holes.count != flange.port.holes.count
}

findings contains {
	"subject": flange.path,
	"at": "holes.circle",
	"also": [flange.port.path],
	"case": "circle",
	"figures": {"this": flange.holes.circle, "that": flange.port.holes.circle},
} if {
	some flange in input.flanges
	differ(flange.holes.circle, flange.port.holes.circle, limits.circle.value)
}

findings contains {
	"subject": flange.path,
	"at": "holes.pilot",
	"also": [flange.port.path],
	"case": "pilot",
	"figures": {"this": flange.holes.pilot, "that": flange.port.holes.pilot},
} if {
	some flange in input.flanges
	differ(flange.holes.pilot, flange.port.holes.pilot, limits.pilot.value)
}

differ(one, other, most) if one > other + most

differ(one, other, most) if other > one + most
