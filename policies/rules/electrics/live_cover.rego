# METADATA
# title: Live pole with no cover
# description: |
#   A spanner that falls across a bare pole and the shell welds itself there,
#   with fuel lines open beside it. After a crash bent metal does the same.
# related_resources:
#   - ref: common-practice
#     description: the live pole of the battery and every power post are covered
# custom:
#   level: fault
#   subject: live_poles
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "nothing covers the live pole of {subject}"
#   fix: fit an insulating cover or boot that stays on by itself
#   rulebook: workshop
#   confidence: practice
package rules.electrics.live_cover

judges contains {"subject": pole.path, "needs": ["cover"]} if some pole in input.live_poles

findings contains {"subject": pole.path, "at": "cover", "figures": {}} if {
	some pole in input.live_poles
	"cover" in pole.none
}
