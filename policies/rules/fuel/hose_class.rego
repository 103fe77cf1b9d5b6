# METADATA
# title: Low-pressure fuel hose on injection pressure
# description: |
#   Fuel hose of the types for carburettors, vents and returns is not made
#   for the pressure of an injection feed. It looks the same, holds for a
#   while, and then bursts or works off its tail, with several bar of petrol
#   behind it.
# related_resources:
#   - ref: sae-j30
#     description: "scope of the types: R6, R7, R8, R11 and R14 low pressure, R10 inside the tank"
# custom:
#   level: danger
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} feeds the injection through hose marked {standard}"
#   figures:
#     standard: {dimension: text}
#   fix: fit hose that its standard or maker names for injection pressure, with crimped or threaded ends
#   caution: do not switch the pump on; petrol under pressure finds a hot engine
#   rulebook: workshop
#   confidence: published
#   basis: hazard
package rules.fuel.hose_class

types := {"R6", "R7", "R8", "R10", "R11", "R14"}

judges contains {"subject": line.path, "needs": ["kind.standard", "to.port.name"]} if {
	some line in input.lines
	line.service == "fuel"
	not line.pumped_by == "suction"
	not line.pumped_by == "gravity"
}

judges contains {"subject": line.path, "needs": ["service", "kind.standard", "to.port.name"]} if {
	some line in input.lines
	not line.service
}

findings contains {
	"subject": line.path,
	"at": "kind.standard",
	"figures": {"standard": line.kind.standard},
} if {
	some engine in input.engines
	engine.injectors
	some line in input.lines
	line.service == "fuel"
	not line.pumped_by == "suction"
	not line.pumped_by == "gravity"
	low_pressure(line.kind.standard)
	feeds(line.to.port.name)
}

low_pressure(standard) if {
	contains(standard, "30")
	some type in types
	contains(standard, type)
}

# A line back to the tank is under no pressure to speak of.
feeds(port) if {
	not startswith(port, "fuel.cell.")
	not startswith(port, "fuel.surge-pot.")
}
