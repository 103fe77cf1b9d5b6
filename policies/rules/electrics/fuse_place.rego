# METADATA
# title: Fuse far from the supply
# description: |
#   The wire between battery and fuse is guarded by nothing. The nearer the fuse
#   sits, the less of it there is to chafe. The figure comes from the rules for
#   boats; none for cars is known.
# related_resources:
#   - ref: 33-cfr-183.455
#     description: "(b): place of the protection"
#   - ref: common-practice
#     description: the fuse sits at the supply
# custom:
#   level: fault
#   subject: circuits
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} runs {unfused} before its fuse; {most} is the most, sheathed all the way"
#   figures:
#     unfused: {dimension: length, like: unfused}
#     most: {dimension: length, like: unfused}
#   fix: move the fuse towards the supply
#   rulebook: workshop
#   confidence: practice
package rules.electrics.fuse_place

import data.rules.electrics.limits.fuse_place as limits

# A starter cable, an earth and a charging cable have no fuse to place, and a
# channel of a power module is one.
judges contains {"subject": circuit.path, "needs": ["purpose", "unfused"]} if {
	some circuit in input.circuits
	not circuit.purpose == "starter"
	not circuit.purpose == "earth"
	not circuit.purpose == "charging"
	supply(circuit.from.port)
}

judges contains {"subject": circuit.path, "needs": ["purpose", "from.port"]} if {
	some circuit in input.circuits
	not circuit.purpose == "starter"
	not circuit.purpose == "earth"
	not circuit.purpose == "charging"
	not circuit.from.port
}

findings contains {
	"subject": circuit.path,
	"at": "unfused",
	"figures": {"unfused": circuit.unfused, "most": limits.unfused.value},
} if {
	some circuit in input.circuits
	circuit.purpose != "starter"
	circuit.purpose != "earth"
	circuit.purpose != "charging"
	supply(circuit.from.port)
	circuit.unfused > limits.unfused.value
}

supply(port) if not startswith(port, "electrics.modules.")
