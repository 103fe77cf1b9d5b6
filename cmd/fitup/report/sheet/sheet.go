// Package sheet lays out the bench sheet: what was found, in what order the work
// goes, and the drawings and figures for it, as one page for paper, a phone or a
// screen. It needs no network and no script.
package sheet

import (
	"bytes"
	"embed"
	"html/template"
	"sync"

	"fitup/cmd/fitup/report"
	"fitup/cmd/fitup/report/sheet/drawing"
	"fitup/policies/judge"
	"fitup/spec/document"
	"fitup/spec/workings"
)

// A Sheet is what a bench sheet is made from.
type Sheet struct {
	Title     string        // "Squall", or what moves from where into what
	Files     []string      // the specs that it is about
	Revision  string        // of git, and which of the files differ from it
	Check     *report.Check // what was found; in a swap, after it
	Work      *report.Swap  // how a driveline comes out and goes in; nil if none can
	NoWork    string        // why there is no order of work; "" if there is one
	Due       *judge.Due    // what runs out
	Notebooks []Notebook
	All       bool // workings: all, not only those that the sheet rests on
	Shop      Shop

	Standing []drawing.Drawing // how each car stands, and the driveline hangs
	Parting  []drawing.Drawing // where each car is parted
	Circuits []drawing.Drawing
}

// A Composed is the document of a car, with or without its driveline.
type Composed struct {
	*document.Document
	Prefix map[string]string // by file: what its key paths begin with in the document
}

// A Notebook is the workings of a car.
type Notebook struct {
	Composed
	Of    string // what the car is called
	Trace workings.Trace
}

// A Shop is what somebody who works there has to know of it.
type Shop struct {
	Company      bool   // somebody else is there
	Extinguisher string // where it is; "" if that is not said
}

// Drawings are all drawings of the sheet, in its order.
func (s *Sheet) Drawings() []drawing.Drawing {
	var all []drawing.Drawing
	for _, some := range [][]drawing.Drawing{s.Standing, s.Parting, s.Circuits} {
		all = append(all, some...)
	}
	return all
}

//go:embed *.tmpl
var templates embed.FS

//go:embed sheet.css
var styleSheet string

// layout is the page. Everything from a spec goes through the contextual escaping
// of html/template; only drawings, which have been through it, are put in as they
// are. It is parsed when it is first wanted, not by commands that have no use for it.
var layout = sync.OnceValue(func() *template.Template {
	return template.Must(template.New("page.tmpl").Funcs(template.FuncMap{"inline": inline}).ParseFS(templates, "*.tmpl"))
})

// HTML writes the sheet.
func HTML(s *Sheet) ([]byte, error) {
	var page bytes.Buffer
	if err := layout().Execute(&page, viewOf(s)); err != nil {
		return nil, err
	}
	return plain(page.Bytes()), nil
}

// SVG writes one drawing as a file of its own.
func SVG(d drawing.Drawing) ([]byte, error) {
	var file bytes.Buffer
	if err := d.SVG(&file, true); err != nil {
		return nil, err
	}
	return plain(file.Bytes()), nil
}

// inline is a drawing as an element of the page.
func inline(d drawing.Drawing) (template.HTML, error) {
	var element bytes.Buffer
	err := d.SVG(&element, false)
	return template.HTML(element.String()), err
}

// plain writes out every character that could hide text or turn its direction. It
// is the last thing done, so that nothing can be forgotten.
func plain(text []byte) []byte {
	lines := bytes.Split(text, []byte("\n"))
	for i, line := range lines {
		lines[i] = []byte(report.Plain(string(line)))
	}
	return bytes.Join(lines, []byte("\n"))
}
