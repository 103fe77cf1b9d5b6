# METADATA
# title: Torque outside the band for its bolt
# description: |
#   Too little leaves a joint that slips and loosens; too much stretches the bolt
#   or tears a soft thread. Even in the band the clamp load scatters by a
#   quarter or more, so a witness mark and a second look still count.
# related_resources:
#   - ref: machine-maker-torque
#     description: coarse threads in steel
#   - ref: machine-maker-cast-aluminium
#     description: coarse threads in cast aluminium
#   - ref: vdi-2230
#     description: fine threads, by friction
#   - ref: common-practice
#     description: four fifths in tapped aluminium; a band for unknown friction
# custom:
#   cases:
#     low: {level: fault, message: "{subject} is tightened to {torque}; its thread and class ask for {least} or more"}
#     high: {level: fault, message: "{subject} is tightened to {torque}; its thread, class and metal take {most}"}
#   subject: fastenings
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     torque: {dimension: torque, like: torque}
#     least: {dimension: torque, like: torque}
#     most: {dimension: torque, like: torque}
#   fix: take the maker's figure where there is one, and write whose it is in torque-by; else a torque in the band
#   rulebook: workshop
#   confidence: practice
package rules.fasteners.torque_band

# A maker's own figure wins over any table. A special fastener and a plug on a
# sealing washer have none.
judges contains {"subject": fastening.path, "needs": ["torque", "calc.torque_least", "calc.torque_most"]} if {
	some fastening in input.fastenings
	not fastening.torque_by
	not fastening.washer
	not fastening.what
	not fastening.class == "special"
	not fastening.head == "quarter-turn"
	not fastening.head == "press-stud"
	not fastening.head == "rivet"
}

findings contains {
	"subject": fastening.path,
	"at": "torque",
	"case": "low",
	"figures": {"torque": fastening.torque, "least": fastening.calc.torque_least},
} if {
	some fastening in input.fastenings
	not fastening.torque_by
	not fastening.washer
	not fastening.what
	not fastening.class == "special"
	fastening.torque < fastening.calc.torque_least
}

findings contains {
	"subject": fastening.path,
	"at": "torque",
	"case": "high",
	"figures": {"torque": fastening.torque, "most": fastening.calc.torque_most},
} if {
	some fastening in input.fastenings
	not fastening.torque_by
	not fastening.washer
	not fastening.what
	not fastening.class == "special"
	fastening.torque > fastening.calc.torque_most
}
