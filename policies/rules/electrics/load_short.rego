# METADATA
# title: Circuit reckoned for less than it feeds
# description: |
#   Wire, fuse and voltage drop are chosen for the load that is written with a
#   circuit. Where the pump, fan or plug at its end draws more, all three are
#   wrong.
# related_resources:
#   - ref: common-practice
#     description: the load of a circuit against what stands with the thing it feeds
# custom:
#   level: fault
#   subject: circuits
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} is reckoned for {load}; the {feeds} at its end draws {draws}"
#   figures:
#     load: {dimension: current, like: load}
#     draws: {dimension: current, like: load}
#     feeds: {dimension: text}
#   fix: write the true load, then look again at wire and fuse
#   rulebook: workshop
#   confidence: practice
package rules.electrics.load_short

judges contains {"subject": circuit.path, "needs": ["load", "calc.draws"]} if {
	some circuit in input.circuits
	circuit.feeds
}

# Of what other circuits feed no current is written, as long as they say what it is.
judges contains {"subject": circuit.path, "needs": ["to.port"]} if some circuit in input.circuits

findings contains {
	"subject": circuit.path,
	"at": "load",
	"figures": {"load": circuit.load, "feeds": circuit.feeds, "draws": circuit.calc.draws},
} if {
	some circuit in input.circuits
	circuit.load < circuit.calc.draws
}
