# METADATA
# title: Two threads that do not meet
# description: |
#   Two halves with different threads cannot be joined without an adaptor,
#   and a union that is forced into another thread strips. It is cheaper to
#   learn it before the driveline is out than with the lines hanging in the
#   bay.
# related_resources:
#   - ref: asme-b1.1
#     description: a thread is its form, diameter and pitch; all three must agree
#   - ref: iso-261
#     description: the same for metric threads
# custom:
#   level: fault
#   subject: joints
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} joins {here} to {there}: two different threads"
#   figures:
#     here: {dimension: text}
#     there: {dimension: text}
#   fix: fit an adaptor from the one thread to the other, or change one half
#   rulebook: workshop
#   confidence: published
package rules.fittings.thread_differs

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
	"figures": {"here": joint.here.thread.text, "there": joint.there.thread.text},
} if {
	some joint in input.joints
	joint.way == "thread"
	joint.calc.thread_match == "apart"
}
