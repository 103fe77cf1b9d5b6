# METADATA
# title: Car without papers
# description: |
#   Log book or passport, and the class that was entered, are asked for before
#   anybody looks at the car. Another driveline may have changed capacity,
#   class and what the papers have to say.
# related_resources:
#   - ref: common-practice
#     description: log book or passport and class entered
# custom:
#   level: fault
#   subject: cars
#   stages: [event]
#   message: "{subject} has neither log book nor passport"
#   fix: bring log book or passport up to date for the driveline that is in the car, and enter the class that follows
#   rulebook: workshop
#   confidence: practice
package rules.event.papers

judges contains {"subject": car.path, "needs": ["papers"]} if some car in input.cars

findings contains {"subject": car.path, "at": "papers", "figures": {}} if {
	some car in input.cars
	"papers" in car.none
}
