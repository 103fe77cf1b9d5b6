// Package nearest guesses which word a writer meant.
package nearest

import (
	"slices"
	"strings"

	"github.com/agnivade/levenshtein"
)

// longest bounds, in bytes, the words that are looked at, so that a hostile one
// costs nothing.
const longest = 64

// To returns the candidate that word was most likely meant to be, or "" when
// none is close. Case counts for nothing; a third of the letters may differ, and
// always one. Two neighbours exchanged count as one. Of equally near candidates the
// first is taken.
func To(word string, candidates []string) string {
	if len(word) > longest {
		return ""
	}
	word = strings.ToLower(word)
	best, least := "", 1+max(1, len([]rune(word))/3)
	for _, c := range candidates {
		if d := distance(word, strings.ToLower(c)); d < least {
			best, least = c, d
		}
	}
	return best
}

func distance(a, b string) int {
	if exchanged([]rune(a), []rune(b)) {
		return 1
	}
	return levenshtein.ComputeDistance(a, b)
}

// exchanged reports whether the words differ in the order of two neighbours only.
func exchanged(a, b []rune) bool {
	if len(a) != len(b) {
		return false
	}
	i := 0
	for i < len(a) && a[i] == b[i] {
		i++
	}
	return i+1 < len(a) && a[i] == b[i+1] && a[i+1] == b[i] && slices.Equal(a[i+2:], b[i+2:])
}
