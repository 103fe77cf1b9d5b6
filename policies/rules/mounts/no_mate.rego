# METADATA
# title: Bracket with nothing to bolt to
# description: |
#   A bracket of the car looks for a face that this driveline does not have.
#   The place that was to carry weight or torque carries nothing.
# related_resources:
#   - ref: common-practice
#     description: both halves of each mount are there before the driveline goes in
# custom:
#   level: fault
#   subject: mounts
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} meets {mate}, which the driveline does not have"
#   figures:
#     mate: {dimension: path}
#   fix: name the driveline's own mount, or make a bracket for it
#   rulebook: workshop
#   confidence: practice
package rules.mounts.no_mate

judges contains {"subject": mount.path, "needs": ["meets"]} if some mount in input.mounts

findings contains {
	"subject": mount.path,
	"at": "meets",
	"figures": {"mate": mate},
} if {
	some mount in input.mounts
	mate := mount.meets
	"there" in mount.none
}
