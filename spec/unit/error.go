package unit

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// An Error says what is wrong with a written value, where, and what would be
// right. Start and End are the byte span of the offending word within Text.
type Error struct {
	Text       string
	Start, End int
	Problem    string
	Want       string

	// HidesChoice marks a word that means two things in the trade ("hp",
	// "gallon", "ton"). Such a value is unknown, not nonsense: the caller may
	// go on without it.
	HidesChoice bool
}

func (e *Error) Error() string {
	if e.Want == "" {
		return e.Problem
	}
	return e.Problem + ": " + e.Want
}

// fault spans text[start:end], less the white space at its ends.
func fault(text string, start, end int, problem, want string) *Error {
	start, end = trim(text, start, end)
	return &Error{Text: text, Start: start, End: end, Problem: problem, Want: want}
}

// wholly spans all of text.
func wholly(text, problem, want string) *Error {
	return fault(text, 0, len(text), problem, want)
}

// trim narrows a span by the white space at its ends. An empty span keeps its
// start, so that an error about something missing still has a place.
func trim(text string, start, end int) (int, int) {
	for start < end && isSpace(text[start]) {
		start++
	}
	for end > start && isSpace(text[end-1]) {
		end--
	}
	return start, end
}

func isSpace(c byte) bool { return c == ' ' || c == '\t' }

// longest bounds, in bytes, the words that are said again in a message.
const longest = 32

// said quotes a word for a message, cut short if it is long.
func said(word string) string {
	if len(word) > longest {
		word = strings.ToValidUTF8(word[:longest], "") + "..."
	}
	return strconv.Quote(word)
}

// oneOf lists choices in prose: "mm, cm or in".
func oneOf(choices []string) string {
	choices = slices.DeleteFunc(slices.Clone(choices), func(s string) bool { return s == "" })
	switch n := len(choices); n {
	case 0:
		return "no unit"
	case 1:
		return choices[0]
	default:
		return fmt.Sprintf("%s or %s", strings.Join(choices[:n-1], ", "), choices[n-1])
	}
}
