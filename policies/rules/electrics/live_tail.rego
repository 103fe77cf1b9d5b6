# METADATA
# title: Live cable end in an empty bay
# description: |
#   Where the driveline was, its feeds end in the air. A live starter cable that
#   touches metal gives the whole battery in one spark, beside open fuel lines.
# related_resources:
#   - ref: common-practice
#     description: cable ends left in a car are dead or insulated
# custom:
#   level: danger
#   subject: circuits
#   stages: [out_raised, out_stored]
#   message: "the end of {subject} hangs in the bay, and nothing insulates it or makes it dead"
#   figures: {}
#   fix: take off the battery's earth, or cap the end and tie it back
#   caution: take the battery's earth off before the end is touched
#   rulebook: workshop
#   confidence: practice
#   basis: hazard
package rules.electrics.live_tail

judges contains {"subject": circuit.path, "needs": ["purpose", "tail_when_out"]} if {
	some circuit in input.circuits
	circuit.boundary
	not circuit.dead_when_isolated
	not circuit.purpose == "earth"
	not circuit.purpose == "data"
}

# A wire of which one end is not written may end in the bay.
judges contains {"subject": circuit.path, "needs": ["from.port"]} if {
	some circuit in input.circuits
	not circuit.from.port
	not circuit.dead_when_isolated
	not circuit.purpose == "earth"
	not circuit.purpose == "data"
}

judges contains {"subject": circuit.path, "needs": ["to.port"]} if {
	some circuit in input.circuits
	not circuit.to.port
	not circuit.dead_when_isolated
	not circuit.purpose == "earth"
	not circuit.purpose == "data"
}

findings contains {"subject": circuit.path, "at": "tail_when_out", "figures": {}} if {
	some circuit in input.circuits
	circuit.boundary
	not circuit.dead_when_isolated
	circuit.purpose != "earth"
	circuit.purpose != "data"
	"tail_when_out" in circuit.none
}
