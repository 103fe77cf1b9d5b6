// Package nearest guesses which word a writer meant.
package nearest

import (
	"strings"

	"github.com/agnivade/levenshtein"
)

// longest bounds, in bytes, the words that are looked at, so that a hostile one
// costs nothing.
const longest = 64

// To returns the candidate that word was most likely meant to be, or "" when
// none is close. Case counts for nothing; a third of the letters may differ, and
// always one. Of equally near candidates the first is taken.
func To(word string, candidates []string) string {
	if len(word) > longest {
		return ""
	}
	best, least := "", 1+max(1, len([]rune(word))/3)
	for _, c := range candidates {
		if d := levenshtein.ComputeDistance(strings.ToLower(word), strings.ToLower(c)); d < least {
			best, least = c, d
		}
	}
	return best
}
