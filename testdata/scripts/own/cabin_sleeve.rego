# METADATA
# title: Bare hose beside the driver
# description: |
#   A hose that lets go in the cabin lets go on the driver.
# related_resources:
#   - ref: common-practice
#     description: this workshop's own
# custom:
#   level: danger
#   subject: lines
#   stages: [out_stored, joined, event]
#   message: "{subject} goes through the {through} without a sleeve"
#   figures:
#     through: {dimension: text}
#   fix: put a sleeve over it, or go outside
#   caution: nobody sits in the car while this line is under pressure
#   rulebook: workshop
#   confidence: practice
#   basis: hazard
package rules.own.cabin_sleeve

judges contains {"subject": line.path, "needs": ["through", "sleeve"]} if some line in input.lines

findings contains {"subject": line.path, "at": "through", "figures": {"through": place}} if {
	some line in input.lines
	some place in line.through
	place == "cabin"
	"sleeve" in line.none
}
