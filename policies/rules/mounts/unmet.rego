# METADATA
# title: Driveline mount that no bracket meets
# description: |
#   A face that was made to carry weight or torque and is bolted to nothing
#   leaves its share to the others, and to the gearbox casing. The car's
#   brackets may be for another driveline.
# related_resources:
#   - ref: common-practice
#     description: each mount of the driveline is bolted to the car
# custom:
#   level: fault
#   subject: drive_mounts
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "no bracket of the car meets {subject}"
#   fix: make a bracket for it, or write which bracket of the car meets it
#   rulebook: workshop
#   confidence: practice
package rules.mounts.unmet

judges contains {"subject": mount.path, "needs": []} if some mount in input.drive_mounts

judges contains {"subject": mount.path, "needs": ["settled"]} if {
	some mount in input.drive_mounts
	not mount.light
	not mount.met_by
}

findings contains {"subject": mount.path, "figures": {}} if {
	some mount in input.drive_mounts
	mount.settled
	not mount.light
	not mount.met_by
}
