package source

import (
	"bytes"
	"errors"
	"fmt"
	"strings"

	"github.com/pelletier/go-toml/v2/unstable"
)

// A reading puts a syntax error of the parser into the words of somebody who
// wrote the text.
type reading struct {
	says    string // what the parser's message holds
	message string
	want    string
	place   func(text []byte, at Span, last int) Span // a better place than the parser's; may be nil
}

const notEscape = `a backslash in "quotes" begins an escape, and this is none`

// readings are tried in order.
var readings = []reading{
	{"unterminated basic string", "the string is not closed", `a " at its end, on the same line`, fromQuote(`"`)},
	{"basic strings cannot have new lines", "the string is not closed", `a " at its end, on the same line`, fromQuote(`"`)},
	{"unterminated literal string", "the string is not closed", `a ' at its end, on the same line`, fromQuote(`'`)},
	{"literal strings cannot have new lines", "the string is not closed", `a ' at its end, on the same line`, fromQuote(`'`)},
	{"multiline basic string not terminated", "the string is not closed", `""" at its end`, fromQuote(`"""`)},
	{"multiline literal string not terminated", "the string is not closed", `''' at its end`, fromQuote(`'''`)},
	{"expected value, not end of input", "there is no value after the =", `NAME = "value"`, nil},
	{"unexpected character U+000A at start of value", "there is no value after the =", `NAME = "value"`, lineBefore},
	{"unexpected character U+000D at start of value", "there is no value after the =", `NAME = "value"`, lineBefore},
	{"unexpected character U+0023", "there is no value before the comment", `NAME = "value"  # comment`, nil},
	{"unexpected character U+002C", "there is no value before the comma", "a value on either side of the comma", nil},
	{"unexpected character U+007D", "there is no value before the }", `{NAME = "value"}`, nil},
	{"unexpected character", "text stands without quotes", `"text" in straight quotes`, restOfWord},
	{"expected keyword", "text stands without quotes", `"text" in straight quotes`, restOfWord},
	{"strings must be quoted", "text stands without quotes", `"text" in straight quotes`, wholeWord},
	{"expected newline", "something follows on the same line", `one NAME = VALUE a line, and a figure with its unit in quotes, "12 mm"`, restOfWord},
	{"expected '=' after key", "there is no = after the name", `NAME = "value"`, lineBefore},
	{"expected ']' to close table name", "the table header is not closed", "a ] after its name", lineBefore},
	{"expected ']]' to close array table name", "the table header is not closed", "]] after its name", lineBefore},
	{"expected key but reached end of input", "there is no name here", `NAME = "value"`, nil},
	{"invalid character at start of key", "a name cannot begin here", "write names with letters, digits and hyphens", nil},
	{"array is incomplete", "the array is not closed", "a ] after its last element", expression},
	{"expected ',' or ']' after array value", "a comma or ] is missing before this", "a comma between two elements, a ] after the last", nil},
	{"expected value but got", "there is no value before the comma", "one comma between two elements", nil},
	{"inline table is incomplete", "the inline table is not closed", "a } after its last key", expression},
	{"unexpected comma in inline table", "there is no key before the comma", "one comma between two keys", nil},
	{"expected ',' or '}' after inline table key-value", "a comma or } is missing before this", "a comma between two keys, a } after the last", nil},
	{"invalid escape character", notEscape, `text in 'single quotes', where a backslash is a backslash`, nil},
	{"need a character after", notEscape, `text in 'single quotes', where a backslash is a backslash`, nil},
	{"unicode escape sequence", notEscape, `\u and four digits of 0-9 and A-F`, nil},
	{"not a valid unicode code point", notEscape, `the character itself`, nil},
	{"control character", "a control character stands here", "printable text", nil},
	{"carriage return", "a carriage return stands here without a line feed", "line ends of one kind", nil},
	{"too many quotes at the end", "more quotes follow than close the string", `""" or ''' at its end`, nil},
	{"integers cannot have leading zeroes", "a number cannot begin with 0", "text in quotes, if it is a label", wholeWord},
	{"decimal point must be followed by a digit", "the number ends in its decimal point", "a digit after the point", wholeWord},
	{"arrays and inline tables are nested", fmt.Sprintf("this is nested more than %d levels deep", MaxDepth), "named tables, each under a header of its own", nil},
}

// syntaxProblem puts the parser's error into words and finds its place; last
// is where the last readable expression ended.
func syntaxProblem(text []byte, last int, err error) Problem {
	p := Problem{Message: "this cannot be read: " + err.Error()}
	perr, ok := errors.AsType[*unstable.ParserError](err)
	if !ok {
		return p
	}
	// As the parser does it: the highlight is cut from the text, so its
	// capacity tells where it begins.
	start := min(max(cap(text)-cap(perr.Highlight), 0), len(text))
	p.Span = Span{start, min(start+len(perr.Highlight), len(text))}
	for _, r := range readings {
		if strings.Contains(perr.Message, r.says) {
			p.Message, p.Want = r.message, r.want
			if r.place != nil {
				p.Span = r.place(text, p.Span, last)
			}
			break
		}
	}
	return p
}

// fromQuote places an unclosed string at the quote that opens it: the last one
// that no backslash escapes, as any later one would have closed it.
func fromQuote(quote string) func([]byte, Span, int) Span {
	return func(text []byte, at Span, _ int) Span {
		open := bytes.LastIndex(text[:at.End], []byte(quote))
		for open > 0 && quote[0] == '"' {
			slashes := open - len(bytes.TrimRight(text[:open], `\`))
			if slashes%2 == 0 {
				break
			}
			open = bytes.LastIndex(text[:open], []byte(quote))
		}
		for len(quote) == 3 && open > 0 && text[open-1] == quote[0] {
			open--
		}
		return firstLine(text, Span{max(open, 0), at.End})
	}
}

// lineBefore places what is missing at the end of a line, or of the text, on
// the text of that line, as a line end shows nothing to point at.
func lineBefore(text []byte, at Span, _ int) Span {
	if at.End > at.Start && text[at.Start] != '\n' && text[at.Start] != '\r' && at.End < len(text) {
		return at
	}
	begin := bytes.LastIndexByte(text[:at.Start], '\n') + 1
	end := len(bytes.TrimRight(text[:at.End], " \t\r\n"))
	begin += len(text[begin:at.End]) - len(bytes.TrimLeft(text[begin:at.End], " \t"))
	return Span{min(begin, end), end}
}

// expression places an error on the first line of the expression that could
// not be read, after blank lines, comments and the rest of the line before.
func expression(text []byte, at Span, last int) Span {
	start := last
	for start < at.Start {
		switch text[start] {
		case ' ', '\t', '\r', '\n':
			start++
		case '#':
			i := bytes.IndexByte(text[start:], '\n')
			if i < 0 {
				return at
			}
			start += i
		default:
			return firstLine(text, Span{start, at.End})
		}
	}
	return at
}

const wordEnds = " \t\r\n,]}#="

// restOfWord reaches to the end of the word that begins at a place.
func restOfWord(text []byte, at Span, _ int) Span {
	if i := bytes.IndexAny(text[at.Start:], wordEnds); i > 0 {
		return Span{at.Start, at.Start + i}
	} else if i < 0 {
		return Span{at.Start, len(text)}
	}
	return at
}

// wholeWord reaches from the start to the end of the word at a place.
func wholeWord(text []byte, at Span, last int) Span {
	at.Start = bytes.LastIndexAny(text[:at.Start], wordEnds+"[{") + 1
	return restOfWord(text, at, last)
}
