# METADATA
# title: Fuse that lets a wire burn
# description: |
#   A fuse guards the wire, not the load. Where it carries more than the wire can
#   as it is laid, a short heats the loom until something else opens the circuit.
#   In a bundle or a hot bay a wire carries far less than in free air. The starter
#   cable and earths are left out.
# related_resources:
#   - ref: faa-ac-43.13-1b
#     description: paragraph 11-48, the device opens before the wire is at its rating; table 11-9 for bundles
#   - ref: 33-cfr-183.425
#     description: table 5, wires laid singly
# custom:
#   cases:
#     over: {level: danger, message: "{subject} is fused at {fuse}; its wire as it is laid carries {ampacity}"}
#     bare: {level: fault, message: "{subject} has no fuse"}
#   subject: circuits
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     fuse: {dimension: current, like: fuse}
#     ampacity: {dimension: current, like: fuse}
#   fix: fit a smaller fuse that still carries the load, or a thicker wire
#   caution: do not connect the battery before the fuse suits the wire
#   rulebook: workshop
#   confidence: published
#   basis: threshold
package rules.electrics.protects_wire

judges contains {"subject": circuit.path, "needs": ["purpose", "calc.protection|fuse", "calc.ampacity"]} if {
	some circuit in input.circuits
	not circuit.purpose == "starter"
	not circuit.purpose == "earth"
}

findings contains {
	"subject": circuit.path,
	"at": "fuse",
	"case": "over",
	"figures": {"fuse": circuit.calc.protection, "ampacity": circuit.calc.ampacity},
} if {
	some circuit in input.circuits
	circuit.purpose != "starter"
	circuit.purpose != "earth"
	circuit.calc.protection > circuit.calc.ampacity
}

# Many a sound car charges its battery through an unfused cable.
findings contains {"subject": circuit.path, "at": "fuse", "case": "bare", "figures": {}} if {
	some circuit in input.circuits
	circuit.purpose != "starter"
	circuit.purpose != "earth"
	circuit.purpose != "charging"
	"fuse" in circuit.none
	not circuit.calc.protection
}
