# METADATA
# title: Fuel line not earthed
# description: |
#   Fuel that flows charges what it flows through. Metal parts that rubber or
#   plastic keeps apart from the shell gather the charge until it jumps.
# related_resources:
#   - ref: fia-253
#     description: art. 3.1, metal parts of fuel lines
# custom:
#   level: fault
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} has metal parts that are not earthed to the shell"
#   fix: earth the metal parts of the line to the shell
#   rulebook: appendix-j
#   confidence: published
package rules.fuel.line_bonded

judges contains {"subject": line.path, "needs": ["bonded"]} if {
	some line in input.lines
	line.service == "fuel"
}

judges contains {"subject": line.path, "needs": ["service", "bonded"]} if {
	some line in input.lines
	not line.service
}

findings contains {"subject": line.path, "at": "bonded", "figures": {}} if {
	some line in input.lines
	line.service == "fuel"
	line.bonded == false
}
