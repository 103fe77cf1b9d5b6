# METADATA
# title: Driveline that tips its dolly
# description: |
#   Castors swing inwards when a dolly is pushed the other way, and what it
#   stands on shrinks by their trail. With its centre of mass outside that,
#   the whole goes over as soon as the hook lets go.
# related_resources:
#   - ref: hewitt-conceptual-physics
#     description: "chapter 8, stability: a thing tips once its centre of gravity is past its base of support"
# custom:
#   level: danger
#   subject: support
#   stages: [hoisting]
#   message: "on dolly {dolly} the centre of mass lies {outside} outside the castors, all turned inwards"
#   figures:
#     dolly: {dimension: text}
#     outside: {dimension: length}
#   fix: set the driveline further in, or widen the dolly
#   caution: do not let the hook go while the driveline stands on this dolly
#   rulebook: workshop
#   confidence: published
#   basis: threshold
#   waivable: false
package rules.dolly.tips

judges contains {"subject": support.path, "needs": ["calc.dolly_margin"]} if {
	some support in input.support
	support.dolly
}

judges contains {"subject": support.path, "needs": ["dolly"]} if some support in input.support

findings contains {
	"subject": support.path,
	"at": "dolly",
	"figures": {"dolly": support.dolly, "outside": abs(support.calc.dolly_margin)},
} if {
	some support in input.support
	support.calc.dolly_margin < 0
}
