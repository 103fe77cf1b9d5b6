# METADATA
# title: Throttle with nothing outside to shut it
# description: |
#   When the spring inside a throttle body breaks or its spindle sticks the
#   engine runs on at full power. The rules ask for springs outside that shut
#   it by themselves; a throttle motor as a car maker built it is accepted.
# related_resources:
#   - ref: motorsport-uk-ncr
#     description: "chapter 7 appendix 2 art. 8: positive closure by external springs, unless an original electronic throttle"
# custom:
#   level: danger
#   subject: engines
#   stages: [joined, filled, first_start, event]
#   message: nothing outside the throttle body shuts the throttle
#   fix: fit a return spring on each spindle or on the last link, and try that it shuts with the cable off
#   caution: do not run the engine under load until the throttle shuts by itself
#   rulebook: national
#   confidence: published
#   basis: hazard
package rules.tune.throttle_closes

judges contains {"subject": engine.path, "needs": ["throttle_closes"]} if some engine in input.engines

findings contains {"subject": engine.path, "at": "throttle_closes", "figures": {}} if {
	some engine in input.engines
	engine.throttle_closes == "internal spring"
}
