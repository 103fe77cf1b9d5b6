# METADATA
# title: Castor over its rating
# description: |
#   A castor carries what the driveline's centre of mass puts on it, not an
#   equal share. On a floor that is not flat one castor hangs free and two
#   others take its part. A castor that breaks tips the dolly.
# related_resources:
#   - ref: statics
#     description: reactions of three or four supports under the centre of mass
#   - ref: 29-cfr-1926.251
#     description: "(a)(2): not loaded beyond the rated load"
# custom:
#   cases:
#     flat:
#       level: danger
#       message: "{subject} carries {load}; it is rated for {rated}"
#       caution: do not set the driveline down on this dolly
#     uneven:
#       level: fault
#       message: "{subject} carries up to {load} on a floor that is not flat; it is rated for {rated}"
#   subject: castors
#   stages: [hoisting]
#   figures:
#     load: {dimension: mass, like: rated}
#     rated: {dimension: mass, like: rated}
#   fix: use castors rated for the load, or set the driveline so that its centre of mass lies nearer the middle
#   rulebook: workshop
#   confidence: published
#   basis: threshold
#   waivable: false
package rules.dolly.castor_load

judges contains {"subject": castor.path, "needs": ["rated", "calc.load", "calc.rocking"]} if some castor in input.castors

findings contains {
	"subject": castor.path,
	"at": "rated",
	"case": "flat",
	"figures": {"load": castor.calc.load, "rated": castor.rated},
} if {
	some castor in input.castors
	castor.calc.load > castor.rated
}

findings contains {
	"subject": castor.path,
	"at": "rated",
	"case": "uneven",
	"figures": {"load": castor.calc.rocking, "rated": castor.rated},
} if {
	some castor in input.castors
	castor.calc.load <= castor.rated
	castor.calc.rocking > castor.rated
}
