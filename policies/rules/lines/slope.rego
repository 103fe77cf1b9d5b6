# METADATA
# title: Drain or bleed that does not run one way
# description: |
#   Oil leaves a turbocharger by its own weight only: a low spot in the drain
#   fills, the oil backs up and goes past the seals. In a bleed it is the
#   other way round: a low spot holds water, a high one air.
# related_resources:
#   - ref: common-practice
#     description: a drain falls all the way, a bleed climbs all the way
# custom:
#   cases:
#     drain:
#       level: fault
#       message: "{subject} drains by its own fall and runs {runs}"
#     bleed:
#       level: advice
#       message: "{subject} bleeds upwards and runs {runs}"
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     runs: {dimension: text}
#   fix: route it so that it runs one way from end to end, with wide bends
#   rulebook: workshop
#   confidence: practice
package rules.lines.slope

# Only a drain or a bleed says how it runs; the drain of a turbocharger has to.
judges contains {"subject": line.path, "needs": ["falls"]} if {
	some line in input.lines
	line.service == "engine oil"
	startswith(line.from.port.name, "turbo.")
}

judges contains {"subject": line.path, "needs": []} if some line in input.lines

findings contains {"subject": line.path, "at": "falls", "case": "drain", "figures": {"runs": line.falls}} if {
	some line in input.lines
	line.falls != "all the way"
}

findings contains {"subject": line.path, "at": "climbs", "case": "bleed", "figures": {"runs": line.climbs}} if {
	some line in input.lines
	line.climbs != "all the way"
}
