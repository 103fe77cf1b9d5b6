# METADATA
# title: Fastenings that hold a road wheel
# description: |
#   Told by what they are said to hold. A steering wheel, a flywheel and a wheel
#   bearing are none.
package lib.wheels

# road tells whether the words say that a road wheel is held.
road(holds) if {
	some words in {"road wheel", "front wheel", "rear wheel", "wheel nut", "wheel stud", "wheel bolt"}
	contains(lower(holds), words)
}
