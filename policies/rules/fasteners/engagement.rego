# METADATA
# title: Too little thread engaged
# description: |
#   A bolt with too few turns in a soft metal tears the thread out before the
#   bolt itself is at its load, often at the next tightening. How deep it has to
#   go depends on the metal, the bolt's class and the pitch.
# related_resources:
#   - ref: roloff-matek
#     description: least engagement by tapped metal and class
#   - ref: common-practice
#     description: two diameters where the textbook has no figure for cast aluminium
# custom:
#   level: fault
#   subject: fastenings
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} has {engaged} diameters of thread engaged in {metal}; it asks for {needed}"
#   figures:
#     engaged: {dimension: number}
#     needed: {dimension: number}
#     metal: {dimension: text}
#   fix: fit longer bolts if the hole is deep enough; else a thread insert or a nut
#   rulebook: workshop
#   confidence: practice
package rules.fasteners.engagement

# A plug on a sealing washer is held by its seal, and a special fastener by its
# maker's word.
judges contains {"subject": fastening.path, "needs": ["calc.engagement_diameters", "calc.engagement_needed"]} if {
	some fastening in input.fastenings
	fastening.tapped
	not fastening.nut
	not fastening.washer
	not fastening.what
	not fastening.class == "special"
}

judges contains {"subject": fastening.path, "needs": ["tapped"]} if {
	some fastening in input.fastenings
	"nut" in fastening.none
	not fastening.washer
	not fastening.what
	not fastening.class == "special"
	not fastening.head == "quarter-turn"
	not fastening.head == "press-stud"
	not fastening.head == "rivet"
}

# Neither nut nor tapped metal: nobody knows what it screws into.
judges contains {"subject": fastening.path, "needs": ["nut|tapped"]} if {
	some fastening in input.fastenings
	not fastening.nut
	not fastening.washer
	not fastening.what
	not fastening.class == "special"
	not fastening.head == "quarter-turn"
	not fastening.head == "press-stud"
	not fastening.head == "rivet"
}

findings contains {
	"subject": fastening.path,
	"at": "engaged",
	"figures": {
		"engaged": fastening.calc.engagement_diameters,
		"needed": fastening.calc.engagement_needed,
		"metal": fastening.tapped,
	},
} if {
	some fastening in input.fastenings
	not fastening.nut
	not fastening.washer
	not fastening.what
	not fastening.class == "special"
	fastening.calc.engagement_diameters < fastening.calc.engagement_needed
}
