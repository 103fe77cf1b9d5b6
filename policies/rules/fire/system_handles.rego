# METADATA
# title: Fire system that only the driver can set off
# description: |
#   A driver who is out cold pulls nothing. A second trigger outside, beside
#   the main switch, is for the marshal.
# related_resources:
#   - ref: fia-253
#     description: "art. 7.2: worked by the belted driver and from outside, beside the circuit breaker"
# custom:
#   level: fault
#   subject: fire_systems
#   stages: [event]
#   message: "{subject} can only be set off from the cockpit"
#   fix: fit a second pull outside, beside that of the main switch, and mark it with a red E
#   rulebook: appendix-j
#   confidence: published
package rules.fire.system_handles

judges contains {"subject": system.path, "needs": ["handles"]} if some system in input.fire_systems

findings contains {"subject": system.path, "at": "handles", "figures": {}} if {
	some system in input.fire_systems
	system.handles == ["cockpit"]
}
