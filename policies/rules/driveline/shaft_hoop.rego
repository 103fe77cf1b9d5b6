# METADATA
# title: Open propshaft without a hoop
# description: |
#   When the front joint lets go the shaft drops, digs in and lifts the car,
#   or comes through the floor. A hoop near the front joint catches it. Drag-
#   strip rules ask for one by speed and tyre; elsewhere it is good sense.
# related_resources:
#   - ref: nhra-general
#     description: section 2:4, driveshaft loop near the front joint
# custom:
#   level: danger
#   subject: shafts
#   stages: [event]
#   message: "{subject} has no hoop"
#   fix: fit a hoop all round the shaft within 150 mm of the front joint, on structure
#   caution: do not run the car; a shaft that drops turns it over
#   rulebook: drag-strip
#   confidence: published
#   basis: hazard
package rules.driveline.shaft_hoop

judges contains {"subject": shaft.path, "needs": ["hoops"]} if some shaft in input.shafts

findings contains {"subject": shaft.path, "at": "hoops", "figures": {}} if {
	some shaft in input.shafts
	"hoops" in shaft.none
}
