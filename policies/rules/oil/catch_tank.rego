# METADATA
# title: Catch tank that is closed, or still full
# description: |
#   A catch tank that vents nowhere puts the crankcase or the coolant under
#   pressure, and seals and hoses give way. One that was not emptied after the
#   last event runs over in this one.
# related_resources:
#   - ref: common-practice
#     description: a catch tank vents to the air and is emptied before each event
# custom:
#   cases:
#     closed:
#       level: fault
#       message: "{subject} vents nowhere"
#     full:
#       level: advice
#       message: "{subject} has not been emptied"
#   subject: catch_tanks
#   stages: [joined, filled, first_start, event]
#   fix: give it a vent with a filter, led where it can drip on nothing hot; empty it before each event
#   rulebook: workshop
#   confidence: practice
package rules.oil.catch_tank

judges contains {"subject": tank.path, "needs": ["vents"]} if some tank in input.catch_tanks

judges contains {"subject": tank.path, "needs": ["emptied"]} if {
	some tank in input.catch_tanks
	tank.kind == "oil"
}

findings contains {"subject": tank.path, "at": "vents", "case": "closed", "figures": {}} if {
	some tank in input.catch_tanks
	"vents" in tank.none
}

findings contains {"subject": tank.path, "at": "emptied", "case": "full", "figures": {}} if {
	some tank in input.catch_tanks
	"emptied" in tank.none
}
