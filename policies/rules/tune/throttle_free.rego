# METADATA
# title: Throttle that nothing shuts
# description: |
#   A carburettor that lies round may open by itself, and a cable that sticks or
#   frays holds what it opened. With no spring at all the engine runs away as soon
#   as it fires, in the workshop or on the line.
# related_resources:
#   - ref: common-practice
#     description: a throttle shuts by itself when the pedal is let go
# custom:
#   level: danger
#   subject: engines
#   stages: [joined, filled, first_start, event]
#   message: nothing shuts the throttle when the pedal is let go
#   fix: fit a return spring on each spindle or on the last link, and try that it shuts with the cable off
#   caution: do not start the engine until the throttle shuts by itself
#   rulebook: workshop
#   confidence: practice
#   basis: hazard
package rules.tune.throttle_free

judges contains {"subject": engine.path, "needs": ["throttle_closes"]} if some engine in input.engines

# A diesel may have no throttle to shut.
findings contains {"subject": engine.path, "at": "throttle_closes", "figures": {}} if {
	some engine in input.engines
	none := engine.none
	"throttle_closes" in none
	not "throttle" in none
}
