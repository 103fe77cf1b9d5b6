# METADATA
# title: Dolly without saddles for this driveline
# description: |
#   Saddles fit one housing. Another driveline stands on its sump, or on
#   whatever is lowest, and rolls.
# related_resources:
#   - ref: common-practice
#     description: a dolly carries the drivelines that it was built for
# custom:
#   level: fault
#   subject: support
#   stages: [hoisting]
#   message: "dolly {dolly} has no saddles for {driveline}"
#   figures:
#     dolly: {dimension: text}
#     driveline: {dimension: text}
#   fix: use the dolly that was built for it, or make saddles and try them with the hook still tight
#   rulebook: workshop
#   confidence: practice
package rules.dolly.saddle

judges contains {"subject": support.path, "needs": ["carrier.carries", "driveline"]} if {
	some support in input.support
	support.dolly
}

judges contains {"subject": support.path, "needs": ["dolly"]} if some support in input.support

findings contains {
	"subject": support.path,
	"at": "dolly",
	"figures": {"dolly": support.dolly, "driveline": support.driveline},
} if {
	some support in input.support
	support.carrier.carries
	count({name | some name in support.carrier.carries; name == support.driveline}) == 0
}
