# METADATA
# title: Main switch that leaves something running
# description: |
#   After a crash the marshal pulls one handle. If the engine runs on from its
#   alternator, or a pump or an ignition feed stays live, fuel and sparks stay too.
#   A fire system is exempt: it has to work with the switch open.
# related_resources:
#   - ref: fia-253
#     description: "art. 13: all circuits are cut and the engine stops"
# custom:
#   cases:
#     absent: {level: danger, message: "{subject} has no main switch"}
#     runs_on: {level: danger, message: "the engine runs on when the main switch of {subject} is opened"}
#     uncut: {level: danger, message: "the main switch of {subject} does not cut {circuits}"}
#   subject: electrics
#   stages: [event]
#   figures:
#     circuits: {dimension: text}
#   fix: wire the switch so that it cuts battery, alternator and every feed, and try it with the engine running
#   caution: do not run the car in an event until one pull stops the engine and leaves it dead
#   rulebook: appendix-j
#   confidence: published
#   basis: hazard
package rules.safety.isolator

judges contains {"subject": electric.path, "needs": ["isolator.stops_engine", "unkilled"]} if {
	some electric in input.electrics
}

findings contains {"subject": electric.path, "at": "isolator", "case": "absent", "figures": {}} if {
	some electric in input.electrics
	"isolator" in electric.none
}

findings contains {
	"subject": electric.path,
	"at": "isolator.stops_engine",
	"case": "runs_on",
	"figures": {},
} if {
	some electric in input.electrics
	electric.isolator.stops_engine == false
}

findings contains {
	"subject": electric.path,
	"at": "isolator.kills",
	"case": "uncut",
	"figures": {"circuits": concat(", ", electric.unkilled)},
} if {
	some electric in input.electrics
	some _ in electric.unkilled
}
