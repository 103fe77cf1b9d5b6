# METADATA
# title: Oil or water through the cockpit
# description: |
#   A hose that lets go in the cockpit scalds the driver and takes his sight.
#   The rules keep lines with coolant and lubricating oil out of it
#   altogether. A driveline's own hoses run from part to part of it and know no
#   cockpit.
# related_resources:
#   - ref: fia-253
#     description: art. 3.2, lines
#   - ref: fia-283
#     description: art. 3.2, lines
# custom:
#   level: danger
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} carries {service} through the cockpit"
#   figures:
#     service: {dimension: text}
#   fix: route it outside the cockpit
#   caution: nobody should sit beside it with the engine hot
#   rulebook: appendix-j
#   confidence: published
#   basis: hazard
package rules.lines.cabin_run

hot := {"coolant", "engine oil", "gearbox oil", "axle oil"}

judges contains {"subject": line.path, "needs": ["through"]} if {
	some line in input.lines
	not line.owner == "driveline"
	line.service in hot
}

judges contains {"subject": line.path, "needs": ["service", "through"]} if {
	some line in input.lines
	not line.owner == "driveline"
	not line.service
}

findings contains {"subject": line.path, "at": "through", "figures": {"service": line.service}} if {
	some line in input.lines
	not line.owner == "driveline"
	line.service in hot
	"cabin" in line.through
}
