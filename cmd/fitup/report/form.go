package report

// A Form is one way to print data of a type.
type Form[T any] struct {
	Name, About string
	Print       func(T, Style) ([]byte, error)
}

// A Style is how a form is laid out. Forms for machines need none of it.
type Style struct {
	Width  int                      // columns
	Whole  bool                     // the first line of a finding is never broken, for editors that follow it
	Colour bool                     // with colours, for a terminal
	All    bool                     // nothing is left out for brevity
	Shown  func(file string) string // how a file is called from where the reader is
}
