package sheet

import (
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/google/go-cmp/cmp"
	"golang.org/x/net/html"
)

// FuzzPage puts any text in every place of a sheet where a stranger's may stand. It
// stays text: the page has the elements of a harmless word, with the same
// attributes.
func FuzzPage(f *testing.F) {
	for _, text := range []string{
		"word", "</style>", `"`, "'", "`", "<", "&", "<!--", "-->", "]]>", "{{.}}", "javascript:x", "url(x)", "//", "\\", "\x00", "\u202e", "\ufeff", "\xf0\x9f",
	} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		if strings.TrimSpace(text) == "" || len(text) > 1000 {
			t.Skip("no text, or more than a spec holds in one")
		}
		page, err := HTML(filled(text))
		if err != nil {
			t.Fatal(err)
		}
		if !utf8.Valid(page) {
			t.Error("the page is not UTF-8")
		}
		if diff := cmp.Diff(skeleton(parsed(t, filled("word"))), skeleton(parsed(t, filled(text)))); diff != "" {
			t.Errorf("the page is not that of a word (-word +text):\n%s", diff)
		}
	})
}

// skeleton lists the elements of a page with the names of their attributes.
func skeleton(root *html.Node) (all []string) {
	for n := range root.Descendants() {
		switch n.Type {
		case html.CommentNode:
			all = append(all, "comment")
		case html.ElementNode:
			element := n.Data
			for _, a := range n.Attr {
				if a.Key != "data-of" { // left out where nothing can be printed
					element += " " + a.Key
				}
			}
			all = append(all, element)
		}
	}
	return all
}
