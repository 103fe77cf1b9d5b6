# METADATA
# title: Brake hose of no standard, or of another trade
# description: |
#   Brake hose is made and proved to a standard of its own, and marked with
#   it. Fuel and oil hose of the same size swells under the pedal and bursts
#   far lower.
# related_resources:
#   - ref: 49-cfr-571.106
#     description: "S5.3: burst, expansion and marking of brake hose"
#   - ref: sae-j30
#     description: "scope: fuel and oil hose"
# custom:
#   cases:
#     fuel_hose:
#       level: fault
#       message: "{subject} carries brake fluid in hose marked {standard}"
#     unmarked:
#       level: fault
#       message: "{subject} carries brake fluid in {kind}, which bears no standard"
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     standard: {dimension: text}
#     kind: {dimension: text}
#   fix: fit hose marked with a brake hose standard, with ends crimped by its maker
#   rulebook: workshop
#   confidence: published
package rules.brakes.hose_standard

import data.lib.hoses

judges contains {"subject": line.path, "needs": ["kind.standard"]} if {
	some line in input.lines
	line.service == "brake fluid"
	not line.kind.liner == "metal"
}

judges contains {"subject": line.path, "needs": ["service", "kind.standard"]} if {
	some line in input.lines
	not line.service
}

findings contains {
	"subject": line.path,
	"at": "kind.standard",
	"case": "fuel_hose",
	"figures": {"standard": line.kind.standard},
} if {
	some line in input.lines
	line.service == "brake fluid"
	not line.kind.liner == "metal"
	hoses.fuel_hose(line.kind.standard)
}

findings contains {
	"subject": line.path,
	"at": "kind.standard",
	"case": "unmarked",
	"figures": {"kind": line.hose.kind},
} if {
	some line in input.lines
	line.service == "brake fluid"
	not line.kind.liner == "metal"
	"standard" in line.kind.none
}
