# METADATA
# title: Main switch too small for its current
# description: |
#   Contacts that carry more than they are made for weld together, and a welded
#   switch does not open.
# related_resources:
#   - ref: small-engine-manual
#     description: separate ratings for steady and for cranking current
#   - ref: common-practice
#     description: the greater of the alternator's output and the loads steady, the starter's current for cranking
# custom:
#   cases:
#     steady: {level: fault, message: "the main switch carries {rated} steadily; alternator or loads ask for {asked}"}
#     cranking: {level: fault, message: "the main switch carries {rated} while cranking; the starter takes {asked}"}
#   subject: electrics
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     rated: {dimension: current, like: isolator.steady}
#     asked: {dimension: current, like: engine.alternator}
#   fix: fit a switch rated for both, or take the starter cable through a contactor that the switch opens
#   rulebook: workshop
#   confidence: practice
package rules.electrics.isolator_rating

judges contains {
	"subject": electric.path,
	"needs": ["isolator.steady", "calc.isolated", "isolator.cranking", "engine.cranking"],
} if {
	some electric in input.electrics
}

findings contains {
	"subject": electric.path,
	"at": "isolator.steady",
	"case": "steady",
	"figures": {"rated": electric.isolator.steady, "asked": electric.calc.isolated},
} if {
	some electric in input.electrics
	electric.isolator.steady < electric.calc.isolated
}

findings contains {
	"subject": electric.path,
	"at": "isolator.cranking",
	"case": "cranking",
	"figures": {"rated": electric.isolator.cranking, "asked": electric.engine.cranking},
} if {
	some electric in input.electrics
	electric.isolator.cranking < electric.engine.cranking
}
