package nearest

import (
	"strings"
	"testing"
)

func TestTo(t *testing.T) {
	words := []string{"bore", "bend", "burst", "lines"}
	for _, test := range []struct{ word, want string }{
		{"boer", "bore"},                 // two neighbours exchanged
		{"broe", "bore"},                 // and at the front
		{"eorb", ""},                     // two that are not neighbours
		{"bor", "bore"},                  // one missing
		{"BURST", "burst"},               // case aside
		{"lnies", "lines"},               // exchanged, within
		{"lxnxs", ""},                    // two of five: a third of five is one
		{"line", "lines"},                // one missing
		{"x", ""},                        // a short word is near nothing
		{"bxnd", "bend"},                 // one wrong
		{"bure", "bore"},                 // the first of equally near ones
		{strings.Repeat("bore", 20), ""}, // too long to look at
	} {
		if got := To(test.word, words); got != test.want {
			t.Errorf("To(%.20q) = %q, want %q", test.word, got, test.want)
		}
	}
}
