# METADATA
# title: Two-post lift without a prop
# description: |
#   A car sits on the four arms of a two-post lift by its balance alone. When a
#   heavy unit comes out at one end, the other end goes down.
# related_resources:
#   - ref: hse-sim-03-2010-2
#     description: the car is propped or strapped before a heavy part comes out
# custom:
#   level: fault
#   subject: support
#   stages: [hoisting, out_raised]
#   message: "the car is on a two-post lift and nothing props it while the driveline comes out"
#   figures: {}
#   fix: put a prop under the heavy end, or strap the car to the arms, before the driveline is lifted
#   rulebook: workshop
#   confidence: published
package rules.support.lift_prop

judges contains {"subject": support.path, "needs": ["held_by"]} if some support in input.support

judges contains {"subject": support.path, "needs": ["prop"]} if {
	some support in input.support
	some held in support.held_by
	contains(lower(held), "two-post")
}

findings contains {"subject": support.path, "at": "prop", "figures": {}} if {
	some support in input.support
	some held in support.held_by
	contains(lower(held), "two-post")
	"prop" in support.none
}
