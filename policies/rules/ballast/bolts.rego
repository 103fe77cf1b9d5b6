# METADATA
# title: Ballast on one bolt, or on bare sheet
# description: |
#   A piece on one bolt turns about it and works loose; on bare sheet the head
#   pulls through. Two bolts and a plate behind each are usual; the rulebook
#   of the event may ask for more by mass.
# related_resources:
#   - ref: common-practice
#     description: at least two bolts for each piece, with plates behind the sheet
# custom:
#   cases:
#     few:
#       level: advice
#       message: "{subject} is held by {bolts} bolt"
#     sheet:
#       level: advice
#       message: "{subject} has no plate behind the sheet that it is bolted to"
#   subject: ballast
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     bolts: {dimension: number}
#   fix: use at least two bolts for each piece, with a plate behind the sheet, and look in the rulebook for size and class
#   rulebook: workshop
#   confidence: practice
package rules.ballast.bolts

judges contains {"subject": piece.path, "needs": ["bolts.count", "plate"]} if some piece in input.ballast

findings contains {"subject": piece.path, "at": "bolts", "case": "few", "figures": {"bolts": piece.bolts.count}} if {
	some piece in input.ballast
	piece.bolts.count == 1
}

findings contains {"subject": piece.path, "at": "plate", "case": "sheet", "figures": {}} if {
	some piece in input.ballast
	"plate" in piece.none
}
