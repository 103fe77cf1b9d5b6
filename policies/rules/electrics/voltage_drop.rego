# METADATA
# title: Too much voltage lost in the wire
# description: |
#   What is lost on the way is missing at the pump, the coil or the starter. A
#   return through the chassis counts nothing; one by wire counts as much as the
#   way out.
# related_resources:
#   - ref: vehicle-electrician-journal
#     description: allowed drops by purpose, 12 V
# custom:
#   level: fault
#   subject: circuits
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} loses {drop} at its load; {most} is allowed"
#   figures:
#     drop: {dimension: voltage}
#     most: {dimension: voltage}
#   fix: fit a thicker or a shorter wire
#   rulebook: workshop
#   confidence: published
package rules.electrics.voltage_drop

import data.rules.electrics.limits.voltage_drop as limits

judges contains {"subject": circuit.path, "needs": ["purpose", "calc.drop"]} if {
	some circuit in input.circuits
	not circuit.purpose == "earth"
	not circuit.purpose == "data"
	not circuit.purpose == "lights"
	not circuit.purpose == "other"
}

findings contains {
	"subject": circuit.path,
	"at": "wire",
	"figures": {"drop": circuit.calc.drop, "most": allowed(circuit.purpose)},
} if {
	some circuit in input.circuits
	circuit.calc.drop > allowed(circuit.purpose)
}

allowed("starter") := limits.starter.value

allowed("charging") := limits.charging.value

allowed(purpose) := limits.feed.value if purpose in feeds

feeds := {"engine computer", "ignition", "fuel pump", "fan", "wipers"}
