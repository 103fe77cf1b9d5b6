# METADATA
# title: Critical fastening that nothing locks
# description: |
#   Clamp load alone holds until the first shock or heat cycle that takes some of
#   it away. Where somebody is hurt if a bolt backs out, something else should
#   keep it: wire, a tab, a pin, a locking nut or thread lock.
# related_resources:
#   - ref: common-practice
#     description: critical fastenings are positively locked
# custom:
#   level: advice
#   subject: fastenings
#   stages: [joined, filled, first_start, event]
#   message: "nothing locks {subject}, which holds {holds}"
#   figures:
#     holds: {dimension: text}
#   fix: wire it, or fit a tab washer, a locking nut or thread lock that suits the heat there
#   rulebook: workshop
#   confidence: practice
package rules.fasteners.locking

import data.lib.wheels

# A spring washer does not keep a hard joint from loosening.
loose := {"unlocked", "spring-washer"}

turns := {"nut", "castle-nut", "anchor-nut", "rivet-nut"}

judges contains {"subject": fastening.path, "needs": ["lock|nut"]} if {
	some fastening in input.fastenings
	fastening.critical
	lockable(fastening.holds)
}

judges contains {"subject": fastening.path, "needs": ["lock"]} if {
	some fastening in input.fastenings
	fastening.critical
	fastening.nut in turns
	lockable(fastening.holds)
}

judges contains {"subject": fastening.path, "needs": ["lock"]} if {
	some fastening in input.fastenings
	fastening.critical
	"nut" in fastening.none
	lockable(fastening.holds)
}

judges contains {"subject": fastening.path, "needs": ["holds"]} if {
	some fastening in input.fastenings
	fastening.critical
	not fastening.holds
}

findings contains {"subject": fastening.path, "at": "lock", "figures": {"holds": fastening.holds}} if {
	some fastening in input.fastenings
	fastening.critical
	lockable(fastening.holds)
	fastening.lock in loose
	not fastening.nut
}

findings contains {"subject": fastening.path, "at": "lock", "figures": {"holds": fastening.holds}} if {
	some fastening in input.fastenings
	fastening.critical
	lockable(fastening.holds)
	fastening.lock in loose
	fastening.nut in turns
}

findings contains {"subject": fastening.path, "at": "lock", "figures": {"holds": fastening.holds}} if {
	some fastening in input.fastenings
	fastening.critical
	lockable(fastening.holds)
	"lock" in fastening.none
	not fastening.nut
}

findings contains {"subject": fastening.path, "at": "lock", "figures": {"holds": fastening.holds}} if {
	some fastening in input.fastenings
	fastening.critical
	lockable(fastening.holds)
	"lock" in fastening.none
	fastening.nut in turns
}

# Wheel nuts are held by their cones and their torque, and come off every day.
lockable(holds) if not wheels.road(holds)
