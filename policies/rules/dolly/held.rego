# METADATA
# title: Driveline loose on its dolly
# description: |
#   A driveline that merely sits on a dolly slides off on a ramp or at a kerb.
#   It is strapped down before the hook lets it go, and stays so in the van.
# related_resources:
#   - ref: common-practice
#     description: the driveline is strapped down before the hoist lets it go
# custom:
#   level: fault
#   subject: support
#   stages: [hoisting]
#   message: "nothing straps the driveline to dolly {dolly}"
#   figures:
#     dolly: {dimension: text}
#   fix: put at least two straps over the driveline, each to the frame of the dolly
#   rulebook: workshop
#   confidence: practice
package rules.dolly.held

judges contains {"subject": support.path, "needs": ["carrier.straps"]} if {
	some support in input.support
	support.dolly
}

judges contains {"subject": support.path, "needs": ["dolly"]} if some support in input.support

findings contains {"subject": support.path, "at": "carrier.straps", "figures": {"dolly": support.dolly}} if {
	some support in input.support
	"straps" in support.carrier.none
}

findings contains {"subject": support.path, "at": "carrier.straps", "figures": {"dolly": support.dolly}} if {
	some support in input.support
	support.carrier.straps == 0
}
