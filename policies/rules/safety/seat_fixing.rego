# METADATA
# title: Seat on too few or too thin bolts
# description: |
#   In a crash the seat with the driver in it pulls at its fixings with many
#   times their weight. The rules ask for four points, and for bolts of eight
#   millimetres at least, on plates.
# related_resources:
#   - ref: fia-253
#     description: "art. 16: four fixing points, bolts of at least 8 mm"
#   - ref: motorsport-uk-ncr
#     description: chapter 7 appendix 7 art. 2
# custom:
#   cases:
#     few:
#       level: danger
#       message: "the seat is held by {count} bolts; four are asked"
#     thin:
#       level: danger
#       message: "the seat is held by {bolt} bolts; {least} is the least"
#   subject: cars
#   stages: [event]
#   figures:
#     count: {dimension: number}
#     bolt: {dimension: text}
#     least: {dimension: length}
#   fix: fix the seat at four points with bolts of at least M8, class 8.8, and plates of the size that the rules ask
#   caution: do not drive the car with this seat mounting
#   rulebook: appendix-j
#   confidence: published
#   basis: threshold
#   waivable: false
package rules.safety.seat_fixing

import data.rules.safety.limits.seat_fixing as limits

judges contains {"subject": car.path, "needs": ["safety.seat.fixing.count", "safety.seat.fixing.thread"]} if some car in input.cars

findings contains {
	"subject": car.path,
	"at": "safety.seat.fixing",
	"case": "few",
	"figures": {"count": car.safety.seat.fixing.count},
} if {
	some car in input.cars
	car.safety.seat.fixing.count < 4
}

findings contains {
	"subject": car.path,
	"at": "safety.seat.fixing",
	"case": "thin",
	"figures": {"bolt": car.safety.seat.fixing.thread.text, "least": limits.bolt.value},
} if {
	some car in input.cars
	car.safety.seat.fixing.thread.major < limits.bolt.value
}
