// Readers of the forms that fitup writes, by other people: see readers_test.go.
module fitup/ci/readers

go 1.26.0

require (
	github.com/arran4/golang-ical v0.3.4
	github.com/joshdk/go-junit v1.0.0
	github.com/yuin/goldmark v1.8.7
)
