# METADATA
# title: Open breather without a catch tank
# description: |
#   An engine that breathes into the open throws oil mist, and in a long
#   corner oil, on the track, the tyres and the exhaust.
# related_resources:
#   - ref: common-practice
#     description: an open breather is led to a catch tank
# custom:
#   level: fault
#   subject: oil
#   stages: [joined, filled, first_start, event]
#   message: the engine breathes into the open and there is no catch tank
#   fix: lead the breather to a vented catch tank, or back to the intake through a separator
#   rulebook: workshop
#   confidence: practice
package rules.oil.breather

judges contains {"subject": oil.path, "needs": ["engine.breather"]} if some oil in input.oil

judges contains {"subject": oil.path, "needs": ["catch_tank"]} if {
	some oil in input.oil
	oil.engine.breather == "open"
}

findings contains {"subject": oil.path, "at": "catch_tank", "figures": {}} if {
	some oil in input.oil
	oil.engine.breather == "open"
	"catch_tank" in oil.none
}
