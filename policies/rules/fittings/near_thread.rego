# METADATA
# title: Two threads that nearly meet
# description: |
#   Some pairs of different threads start by hand. Then they bind and strip
#   when they are forced, or they run home and hold by the tips of the thread
#   only. Either way the union can let go under pressure after it felt tight.
# related_resources:
#   - ref: common-practice
#     description: M10x1 and 3/8-24 on brake unions, metric and unified ports side by side
#   - ref: asme-b1.1
#     description: thread dimensions
#   - ref: iso-261
#     description: thread dimensions
# custom:
#   cases:
#     brake:
#       level: danger
#       message: "{subject} meets {here} with {there}, which is near enough to start and is not the same ({effect})"
#     unsaid:
#       level: danger
#       message: "{subject} meets {here} with {there}, which is near enough to start and is not the same ({effect}); nobody says that it is not in the brakes"
#     other:
#       level: fault
#       message: "{subject} meets {here} with {there}, which is near enough to start and is not the same ({effect})"
#   subject: joints
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     here: {dimension: text}
#     there: {dimension: text}
#     effect: {dimension: text}
#   fix: change one half for the thread of the other; discard a port or union that was forced, and tag the odd ones
#   caution: do not drive, nor press the pedal hard, on a union that was made with this pair; the brakes can be lost at once
#   rulebook: workshop
#   confidence: practice
#   basis: hazard
package rules.fittings.near_thread

judges contains {
	"subject": joint.path,
	"needs": ["here.form", "there.form", "here.thread", "there.thread"],
} if {
	some joint in input.joints
	joint.way in {"thread", "not said"}
}

# Without the genders nobody can say which thread would have to enter the other.
judges contains {"subject": joint.path, "needs": ["here.gender", "there.gender"]} if {
	some joint in input.joints
	joint.way == "thread"
	joint.here.thread
	joint.there.thread
	not joint.calc.thread_match
}

findings contains {
	"subject": joint.path,
	"at": "here",
	"also": [joint.there.path],
	"case": "brake",
	"figures": {"here": joint.here.thread.text, "there": joint.there.thread.text, "effect": joint.calc.near_effect},
} if {
	some joint in input.joints
	joint.way == "thread"
	joint.calc.thread_match == "near"
	joint.service == "brake fluid"
}

# What runs through it may be brake fluid as long as nobody says.
findings contains {
	"subject": joint.path,
	"at": "here",
	"also": [joint.there.path],
	"case": "unsaid",
	"figures": {"here": joint.here.thread.text, "there": joint.there.thread.text, "effect": joint.calc.near_effect},
} if {
	some joint in input.joints
	joint.way == "thread"
	joint.calc.thread_match == "near"
	not joint.service
}

findings contains {
	"subject": joint.path,
	"at": "here",
	"also": [joint.there.path],
	"case": "other",
	"figures": {"here": joint.here.thread.text, "there": joint.there.thread.text, "effect": joint.calc.near_effect},
} if {
	some joint in input.joints
	joint.way == "thread"
	joint.calc.thread_match == "near"
	joint.service != "brake fluid"
}
