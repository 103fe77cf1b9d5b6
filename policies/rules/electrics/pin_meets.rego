# METADATA
# title: Connector pin that does not meet its like
# description: |
#   A loom that fits its plug may still feed the wrong pin. Two outputs on one pin
#   burn a driver; an input that nothing feeds reads nonsense.
# related_resources:
#   - ref: common-practice
#     description: each pin gives what the other half's pin takes
# custom:
#   cases:
#     unlike: {level: fault, message: "{subject} carries {here} on this half and {there} on the other"}
#     clash: {level: fault, message: "both halves of {subject} give: {here} and {there}"}
#     idle: {level: fault, message: "both halves of {subject} take: {here} and {there}"}
#     unfed: {level: fault, message: "{subject} takes {here}, and the other half has no such pin"}
#   subject: pins
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     here: {dimension: text}
#     there: {dimension: text}
#   fix: make an adaptor loom, or move the pin in the half that the car keeps
#   rulebook: workshop
#   confidence: practice
package rules.electrics.pin_meets

judges contains {"subject": pin.path, "needs": ["here.gives|here.takes|here.both", "there.gives|there.takes|there.both"]} if {
	some pin in input.pins
	pin.here
	pin.there
}

judges contains {"subject": pin.path, "needs": ["here.gives|here.takes|here.both", "there.gives|there.takes|there.both"]} if {
	some pin in input.pins
	pin.asked
}

# A connector that both halves describe lacks a pin on one of them.
judges contains {"subject": pin.path, "needs": ["here.gives|here.takes|here.both"]} if {
	some pin in input.pins
	not pin.there
}

judges contains {"subject": pin.path, "needs": ["there.gives|there.takes|there.both"]} if {
	some pin in input.pins
	not pin.here
}

findings contains {"subject": pin.path, "case": "unlike", "figures": {"here": pin.here.gives, "there": pin.there.takes}} if {
	some pin in input.pins
	pin.here.gives != pin.there.takes
}

findings contains {"subject": pin.path, "case": "unlike", "figures": {"here": pin.here.takes, "there": pin.there.gives}} if {
	some pin in input.pins
	pin.here.takes != pin.there.gives
}

findings contains {"subject": pin.path, "case": "unlike", "figures": {"here": pin.here.both, "there": pin.there.both}} if {
	some pin in input.pins
	pin.here.both != pin.there.both
}

findings contains {"subject": pin.path, "case": "clash", "figures": {"here": here, "there": there}} if {
	some pin in input.pins
	here := pin.here.gives
	there := pin.there.gives
}

findings contains {"subject": pin.path, "case": "idle", "figures": {"here": here, "there": there}} if {
	some pin in input.pins
	here := pin.here.takes
	there := pin.there.takes
}

# A pin that is written "?" is there.
findings contains {"subject": pin.path, "case": "unfed", "figures": {"here": taken}} if {
	some pin in input.pins
	not pin.there
	not pin.asked
	taken := pin.here.takes
}

findings contains {"subject": pin.path, "case": "unfed", "figures": {"here": taken}} if {
	some pin in input.pins
	not pin.here
	not pin.asked
	taken := pin.there.takes
}
