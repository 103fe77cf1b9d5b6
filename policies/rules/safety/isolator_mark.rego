# METADATA
# title: Main switch that a marshal cannot find
# description: |
#   The handle outside is marked so that somebody who has never seen the car
#   finds it in smoke: a red spark in a blue triangle with a white edge.
# related_resources:
#   - ref: fia-253
#     description: "art. 13: red spark in a white-edged blue triangle, base of at least 12 cm"
# custom:
#   level: fault
#   subject: electrics
#   stages: [event]
#   message: nothing marks the main switch outside
#   fix: put the sign beside the outside handle
#   rulebook: appendix-j
#   confidence: published
package rules.safety.isolator_mark

judges contains {"subject": electric.path, "needs": ["isolator.marked"]} if some electric in input.electrics

findings contains {"subject": electric.path, "at": "isolator.marked", "figures": {}} if {
	some electric in input.electrics
	"marked" in electric.isolator.none
}
