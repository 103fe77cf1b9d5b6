# METADATA
# title: Towing eye hard to see
# description: |
#   The eye is looked for in gravel and smoke, in a hurry. It is painted, or a
#   painted arrow shows where it is.
# related_resources:
#   - ref: fia-253
#     description: "art. 10: painted yellow, red or orange"
#   - ref: dmsb-handbook
#     description: "art. 26.1: the colour, or an arrow of that colour"
# custom:
#   level: fault
#   subject: tow_eyes
#   stages: [event]
#   message: "{subject} is {colour}, and nothing marks it"
#   figures:
#     colour: {dimension: text}
#   fix: paint it yellow, red or orange, or mark it with an arrow in that colour
#   rulebook: appendix-j
#   confidence: published
package rules.recovery.eye_colour

judges contains {"subject": eye.path, "needs": ["colour|marked"]} if some eye in input.tow_eyes

# Where nothing marks it the colour has to do, and where the colour does not a mark
# has to.
judges contains {"subject": eye.path, "needs": ["colour"]} if {
	some eye in input.tow_eyes
	"marked" in eye.none
}

judges contains {"subject": eye.path, "needs": ["marked"]} if {
	some eye in input.tow_eyes
	dull(eye.colour)
}

findings contains {"subject": eye.path, "at": "colour", "figures": {"colour": eye.colour}} if {
	some eye in input.tow_eyes
	"marked" in eye.none
	dull(eye.colour)
}

dull(colour) if {
	colour != "yellow"
	colour != "red"
	colour != "orange"
}
