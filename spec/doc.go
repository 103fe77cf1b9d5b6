// Package spec says what a car, a driveline and a shop file may hold, and
// loads them from TOML.
//
// The types are the vocabulary: one struct a table, one field a key, with the
// key in the `spec` tag and its meaning in the `doc` tag, from which the JSON
// Schema for editors is made. Four rules shape them.
//
// Each half of a joint is described only by its owner. A joint has no table of
// its own; the car's half names its mate, and a checker can see the two
// disagree.
//
// Every value is in one of four states: left out, "?" (it matters and nobody
// measured it), "none" (looked, there is none), or given, perhaps as a guess
// ("~12 kg"). See State.
//
// What a builder says in one breath is one string, a bench phrase, and may
// always be written out as a table instead. A phrase is read by turning it into
// that table, so the two cannot drift apart.
//
// A physical value is a string with its unit; inside it is SI.
package spec
