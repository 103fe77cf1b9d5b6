# METADATA
# title: Release travel that does not fit the clutch
# description: |
#   The master cylinder stays with the car and the slave travels with the
#   driveline. With too much fluid for it a concentric slave, which has no
#   stop of its own, is pushed off its seal; with too little the plates never
#   part and the gears suffer.
# related_resources:
#   - ref: common-practice
#     description: swept volume of the master against the area and travel of the slave
# custom:
#   cases:
#     over:
#       level: fault
#       message: "the pedal moves the slave by {travel}; it may go {limit}"
#     under:
#       level: fault
#       message: "the pedal moves the slave by {travel}; the plates part at {limit}"
#   subject: clutch
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     travel: {dimension: length, like: slave.travel_max}
#     limit: {dimension: length, like: slave.travel_max}
#   fix: set the pedal stop, or fit the master bore that gives the travel; prove it at the fork or bearing before the driveline goes in
#   rulebook: workshop
#   confidence: practice
package rules.clutch.release_travel

judges contains {
	"subject": clutch.path,
	"needs": ["calc.full_travel", "slave.travel_max", "slave.frees_at"],
} if {
	some clutch in input.clutch
	not clutch.none
}

# A cable has no master cylinder; its travel is set at the pedal.
judges contains {
	"subject": clutch.path,
	"needs": ["calc.full_travel", "slave.travel_max", "slave.frees_at"],
} if {
	some clutch in input.clutch
	none := clutch.none
	not "master" in none
}

findings contains {
	"subject": clutch.path,
	"at": "master.stop",
	"case": "over",
	"figures": {"travel": clutch.calc.full_travel, "limit": clutch.slave.travel_max},
} if {
	some clutch in input.clutch
	clutch.calc.full_travel > clutch.slave.travel_max
}

findings contains {
	"subject": clutch.path,
	"at": "master.stop",
	"case": "under",
	"figures": {"travel": clutch.calc.full_travel, "limit": clutch.slave.frees_at},
} if {
	some clutch in input.clutch
	clutch.calc.full_travel < clutch.slave.frees_at
}
