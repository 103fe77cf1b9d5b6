# METADATA
# title: Stand set outside its range
# description: |
#   Above its range a stand stands on its last tooth or on nothing; below it
#   something has been put under the car that was not written down.
# related_resources:
#   - ref: common-practice
#     description: a stand is used within the heights that its maker gives
# custom:
#   level: fault
#   subject: stands
#   stages: [raised, hoisting, out_raised]
#   message: "{subject} is set to {height}; its kind goes from {lowest} to {highest}"
#   figures:
#     height: {dimension: length, like: height}
#     lowest: {dimension: length, like: kind.height}
#     highest: {dimension: length, like: kind.height}
#   fix: take a stand whose range holds this height, or raise the car less
#   rulebook: workshop
#   confidence: practice
package rules.support.stand_height

judges contains {"subject": stand.path, "needs": ["height", "kind.height"]} if some stand in input.stands

findings contains {
	"subject": stand.path,
	"at": "height",
	"figures": {"height": stand.height, "lowest": stand.kind.height[0], "highest": stand.kind.height[1]},
} if {
	some stand in input.stands
	stand.height < stand.kind.height[0]
}

findings contains {
	"subject": stand.path,
	"at": "height",
	"figures": {"height": stand.height, "lowest": stand.kind.height[0], "highest": stand.kind.height[1]},
} if {
	some stand in input.stands
	stand.height > stand.kind.height[1]
}
