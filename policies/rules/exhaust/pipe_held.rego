# METADATA
# title: Exhaust that hangs on its joint
# description: |
#   A pipe that nothing holds hangs on the joint before it, and with it on the
#   turbocharger or the header. Hot metal has a fraction of its strength; the
#   flange cracks or the band lets go.
# related_resources:
#   - ref: common-practice
#     description: each piece of the exhaust has a support of its own
# custom:
#   level: fault
#   subject: exhaust_pipes
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "nothing holds {subject} but its joint"
#   fix: hang each piece from the chassis, with some give for the engine to rock and the pipe to grow
#   rulebook: workshop
#   confidence: practice
package rules.exhaust.pipe_held

judges contains {"subject": pipe.path, "needs": ["held"]} if some pipe in input.exhaust_pipes

findings contains {"subject": pipe.path, "at": "held", "figures": {}} if {
	some pipe in input.exhaust_pipes
	"held" in pipe.none
}
