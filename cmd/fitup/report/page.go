package report

import (
	"fmt"
	"io"
	"regexp"
	"strings"
	"unicode"
	"unicode/utf8"
)

// A page is text for a reader, laid out in columns. Whatever is put on it is
// escaped, save what has type ink.
type page struct {
	strings.Builder
	width  int
	colour bool
	to     io.Writer // takes what is on the page when it is full; nil for a page of any length
	err    error     // of to
}

// pageful is how many bytes a page holds that is handed on.
const pageful = 64 << 10

// ink is text of our own making that may hold colour.
type ink string

// Colours, as SGR parameters of ECMA-48. They are those that can be read on a dark
// and on a light ground; yellow, cyan and what is faint cannot.
const (
	bold    = "1"
	red     = "1;31"
	magenta = "1;35"
)

func (p *page) paint(colour, text string) ink {
	text = Plain(text)
	if !p.colour || colour == "" || text == "" {
		return ink(text)
	}
	return ink("\x1b[" + colour + "m" + text + "\x1b[0m")
}

// sprintf is fmt.Sprintf, with its texts escaped.
func sprintf(format string, args ...any) string {
	safe := make([]any, len(args))
	for i, arg := range args {
		switch arg := arg.(type) {
		case string:
			safe[i] = Plain(arg)
		case ink:
			safe[i] = string(arg)
		case int, int64, float64, bool:
			safe[i] = arg
		default:
			safe[i] = Plain(fmt.Sprint(arg))
		}
	}
	return fmt.Sprintf(format, safe...)
}

// line writes one line as it is.
func (p *page) line(format string, args ...any) {
	p.WriteString(strings.TrimRight(sprintf(format, args...), " "))
	p.WriteByte('\n')
	p.turn()
}

// turn hands a full page on, save its last bytes, which a gap looks at.
func (p *page) turn() {
	if p.to == nil || p.Len() < pageful || p.err != nil {
		return
	}
	text := p.String()
	end := len(text) - len("\n\n")
	p.Reset()
	p.WriteString(text[end:])
	_, p.err = io.WriteString(p.to, text[:end])
}

// end hands on what is left.
func (p *page) end() error {
	if p.err == nil {
		_, p.err = io.WriteString(p.to, p.String())
	}
	return p.err
}

// gap writes an empty line, unless there is nothing above it or one already.
func (p *page) gap() {
	if s := p.String(); s != "" && !strings.HasSuffix(s, "\n\n") {
		p.WriteByte('\n')
	}
}

// para writes a paragraph that begins after indent columns and is broken at the
// width of the page; lines after the first begin after hang columns more.
func (p *page) para(indent, hang int, format string, args ...any) {
	column, first := indent, true
	p.WriteString(strings.Repeat(" ", indent))
	for _, word := range strings.Fields(sprintf(format, args...)) {
		switch {
		case first:
		case column+1+columns(word) > p.width:
			column = indent + hang
			p.WriteString("\n" + strings.Repeat(" ", column))
		default:
			column++
			p.WriteByte(' ')
		}
		first = false
		p.WriteString(word)
		column += columns(word)
	}
	p.WriteByte('\n')
	p.turn()
}

// item writes a paragraph that begins with a label and hangs under its text.
func (p *page) item(indent int, label, format string, args ...any) {
	colour := ""
	if label == "caution:" {
		colour = red
	}
	p.para(indent, columns(label)+1, "%s %s", p.paint(colour, label), ink(sprintf(format, args...)))
}

var sgr = regexp.MustCompile("\x1b\\[[0-9;]*m")

// columns is how many columns a text takes.
func columns(text string) int { return utf8.RuneCountInString(sgr.ReplaceAllString(text, "")) }

// Plain writes out every character that could move the cursor, hide text or turn
// its direction, so that a spec cannot forge a report.
func Plain(text string) string {
	if strings.IndexFunc(text, forges) < 0 && utf8.ValidString(text) {
		return text
	}
	var b strings.Builder
	for _, r := range text {
		switch {
		case r == '\t':
			b.WriteByte(' ')
		case r == utf8.RuneError || !forges(r):
			b.WriteRune(r)
		case r < 0x100:
			fmt.Fprintf(&b, `\x%02x`, r)
		default:
			fmt.Fprintf(&b, `\u%04x`, r)
		}
	}
	return b.String()
}

func forges(r rune) bool {
	return unicode.IsControl(r) || unicode.In(r, unicode.Cf, unicode.Zl, unicode.Zp)
}

// count words a number of things: "1 danger", "no dangers".
func count(n int, one, many string) string {
	switch n {
	case 0:
		return "no " + many
	case 1:
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}
