# METADATA
# title: Car too low for the driveline to leave
# description: |
#   A driveline that goes out downwards needs its own height and that of the
#   dolly beneath the lowest thing on its way. Found out half way, the car has
#   to be raised with its weight hanging in it.
# related_resources:
#   - ref: common-practice
#     description: height of the saddles needed against the height set
# custom:
#   level: fault
#   subject: support
#   stages: [raised, hoisting]
#   message: "the saddles stand {set} high; for the driveline to go out below they have to stand {needed}"
#   figures:
#     needed: {dimension: length, like: saddle_height}
#     set: {dimension: length, like: saddle_height}
#   fix: set the stands higher before anything is undone, or use a lower dolly
#   rulebook: workshop
#   confidence: practice
package rules.support.room_below

judges contains {"subject": support.path, "needs": ["saddle_height", "calc.saddle_needed"]} if {
	some support in input.support
	"down" in support.fit.leaves
}

judges contains {"subject": support.path, "needs": ["fit.leaves"]} if some support in input.support

findings contains {
	"subject": support.path,
	"at": "saddle_height",
	"figures": {"needed": support.calc.saddle_needed, "set": support.saddle_height},
} if {
	some support in input.support
	support.saddle_height < support.calc.saddle_needed
}
