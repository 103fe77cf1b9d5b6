// Package workings holds the engineering behind the judgements: one file a
// discipline, each function one formula with its source.
//
// Every function takes and returns SI values (metre, kilogram, second, newton,
// pascal, watt, kelvin, radian, ohm, volt, ampere) and refuses input that the
// formula does not hold for with a [RangeError]. No function returns NaN or an
// infinity: what cannot be worked out is an error, so that "cannot tell" never
// turns into a number.
//
// The word after "Source:" in a comment is a key of policies/tables/sources,
// where the full citation lives. The published cases that each formula is held
// to are in testdata/published.
//
// The files whose names begin with derive_ apply the formulas to a document:
// [Derive] fills in every figure and writes down how, as a [Trace]. A derivation
// is a step: which figure, by what formula, from which inputs. Whether the figure
// is known, rests on a guess, or wants something written first follows from the
// inputs, so that no derivation has to say it.
package workings
