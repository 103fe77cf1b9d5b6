package report

import "io"

// A Form is one way to print data of a type. What may be as large as a fleet is
// written as it is made.
type Form[T any] struct {
	Name, About string
	Print       func(io.Writer, T, Style) error
}

// whole prints with a function that makes the whole text: one of bounded size.
func whole[T any](text func(T, Style) ([]byte, error)) func(io.Writer, T, Style) error {
	return func(w io.Writer, data T, s Style) error {
		made, err := text(data, s)
		if err == nil {
			_, err = w.Write(made)
		}
		return err
	}
}

// A Style is how a form is laid out. Forms for machines need none of it.
type Style struct {
	Width  int                      // columns
	Whole  bool                     // the first line of a finding is never broken, for editors that follow it
	Colour bool                     // with colours, for a terminal
	All    bool                     // nothing is left out for brevity
	Shown  func(file string) string // how a file is called from where the reader is
}
