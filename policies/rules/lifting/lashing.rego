# METADATA
# title: Lashing strap used as a sling
# description: |
#   A ratchet lashing is rated for what it holds down, with another margin than a
#   sling, and its hooks and ratchet open when a load swings.
# related_resources:
#   - ref: en-12195-2
#     description: lashings are for load restraint; their instructions bar other use
#   - ref: common-practice
#     description: nothing is lifted on a load-restraint strap
# custom:
#   level: danger
#   subject: support
#   stages: [hoisting]
#   message: "the driveline is to hang on {sling}, a lashing strap"
#   figures:
#     sling: {dimension: text}
#   fix: lift with a chain or webbing sling that carries its limit and number
#   caution: do not lift anything on a lashing strap
#   rulebook: workshop
#   confidence: practice
#   basis: hazard
#   waivable: false
package rules.lifting.lashing

judges contains {"subject": support.path, "needs": ["sling", "tackle.kind"]} if some support in input.support

findings contains {"subject": support.path, "at": "sling", "figures": {"sling": support.sling}} if {
	some support in input.support
	support.tackle.kind == "lashing strap"
}
