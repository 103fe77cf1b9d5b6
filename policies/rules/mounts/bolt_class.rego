# METADATA
# title: Soft bolts in a mount
# description: |
#   Mount bolts take the weight of the driveline, and in the lowest gear its
#   multiplied torque. A soft bolt stretches under them, and the joint works
#   loose. Mounts of boxes and brackets do not count.
# related_resources:
#   - ref: iso-898-1
#     description: table 3, proof stress by property class
#   - ref: common-practice
#     description: class 8.8 or grade 5 and better where a bolt carries weight
# custom:
#   cases:
#     soft: {level: fault, message: "{subject} is held by bolts of class {class}, below half the strength of 8.8"}
#     middling: {level: advice, message: "{subject} is held by bolts of class {class}, below 8.8"}
#   subject: mounts
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     class: {dimension: text}
#   fix: fit bolts of class 8.8 or 10.9, or grade 5 or 8, and their torque
#   rulebook: workshop
#   confidence: practice
package rules.mounts.bolt_class

soft := {"4.6", "4.8", "5.6"}

middling := {"5.8", "6.8", "A2-70", "A4-70", "A4-80", "grade-2"}

judges contains {"subject": mount.path, "needs": ["bolts.class"]} if {
	some mount in input.mounts
	not mount.there.light
}

findings contains {
	"subject": mount.path,
	"at": "bolts.class",
	"case": "soft",
	"figures": {"class": mount.bolts.class},
} if {
	some mount in input.mounts
	not mount.there.light
	mount.bolts.class in soft
}

findings contains {
	"subject": mount.path,
	"at": "bolts.class",
	"case": "middling",
	"figures": {"class": mount.bolts.class},
} if {
	some mount in input.mounts
	not mount.there.light
	mount.bolts.class in middling
}
