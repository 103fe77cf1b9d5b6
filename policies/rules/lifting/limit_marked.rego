# METADATA
# title: Lift point without its limit on it
# description: |
#   What a lifting eye or bracket holds has to be read from it, not guessed from
#   its thread: tables for one thread differ by two or three times.
# related_resources:
#   - ref: 29-cfr-1926.251
#     description: "(a)(4): lifting accessories are marked with what they hold"
# custom:
#   level: advice
#   subject: lift_points
#   stages: [hoisting, hanging]
#   message: "{subject} does not carry its limit"
#   figures: {}
#   fix: use an eye that is stamped, or have the bracket proved and stamped
#   rulebook: workshop
#   confidence: published
package rules.lifting.limit_marked

judges contains {"subject": point.path, "needs": ["marked"]} if some point in input.lift_points

findings contains {"subject": point.path, "at": "marked", "figures": {}} if {
	some point in input.lift_points
	point.marked == false
}
