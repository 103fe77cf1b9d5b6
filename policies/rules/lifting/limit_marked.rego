# METADATA
# title: Lifting gear without its limit on it
# description: |
#   What an eye, a bracket or a sling holds has to be read from it, not
#   guessed from its thread or its look: tables for one thread differ by two
#   or three times.
# related_resources:
#   - ref: 29-cfr-1926.251
#     description: "(a)(4): lifting accessories are marked with what they hold"
# custom:
#   level: advice
#   subject: gear
#   stages: [hoisting, hanging]
#   message: "{subject} does not carry its limit"
#   fix: use gear that is stamped or tagged, or have the bracket proved and stamped
#   rulebook: workshop
#   confidence: published
package rules.lifting.limit_marked

judges contains {"subject": thing.path, "needs": ["marked"]} if {
	some thing in input.gear
	thing.kind in {"lift point", "sling"}
}

findings contains {"subject": thing.path, "at": "marked", "figures": {}} if {
	some thing in input.gear
	thing.kind in {"lift point", "sling"}
	thing.marked == false
}
