package sheet

import (
	"bytes"
	"reflect"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"golang.org/x/net/html"

	"fitup/cmd/fitup/report"
	"fitup/cmd/fitup/report/sheet/drawing"
	"fitup/policies"
	"fitup/policies/judge"
	"fitup/spec/document"
	"fitup/spec/swap"
)

// filled is a sheet with everything on it, of which every text is the same.
func filled(text string) *Sheet {
	s := &Sheet{Check: &report.Check{}, Work: &report.Swap{}, Due: &judge.Due{}}
	fill(reflect.ValueOf(s).Elem(), text, map[reflect.Type]bool{})
	for i, level := range []policies.Level{policies.LevelDanger, policies.LevelFault, policies.LevelAdvice} {
		if i > 0 {
			s.Check.Findings = append(s.Check.Findings, s.Check.Findings[0])
		}
		s.Check.Findings[i].Level = level
	}
	s.Check.Change = nil
	s.Check.Waived[0].Level = policies.LevelDanger
	s.Work.Report = s.Check.Report
	s.Work.Change.Appears[0].Level = policies.LevelDanger
	s.Work.Figured[0].Level, s.Work.Figured[0].Path = policies.LevelFault, text+" on the way"
	s.Work.Fit.Interfaces[0].Verdict = swap.Missing
	s.Work.Withheld, s.Work.Parts = nil, nil
	for _, plan := range []*swap.Plan{s.Work.Out, s.Work.Vacate, s.Work.In} {
		plan.Remove[0].Hold, plan.Refit[0].Hold = true, true
	}
	d := drawing.Drawing{Name: "one", Title: text, Text: []string{text}, Size: drawing.Point{X: 100, Y: 50}}
	d.Marks = []drawing.Mark{drawing.Group{Of: text, Marks: []drawing.Mark{drawing.Text{Lines: []string{text}}}}}
	s.Standing, s.Parting, s.Circuits = []drawing.Drawing{d}, []drawing.Drawing{d}, []drawing.Drawing{d}
	s.All = true
	return s
}

// fill sets every text below a value, with one element in each list.
func fill(v reflect.Value, text string, above map[reflect.Type]bool) {
	if !v.CanSet() || above[v.Type()] {
		return
	}
	switch v.Kind() {
	case reflect.String:
		if v.Type() == reflect.TypeFor[string]() {
			v.SetString(text)
		}
	case reflect.Bool:
		v.SetBool(true)
	case reflect.Slice:
		v.Set(reflect.MakeSlice(v.Type(), 1, 1))
		fill(v.Index(0), text, above)
	case reflect.Pointer:
		if v.Type() == reflect.TypeFor[*document.Document]() {
			v.Set(reflect.ValueOf(&document.Document{}))
			return
		}
		if v.IsNil() {
			v.Set(reflect.New(v.Type().Elem()))
		}
		fill(v.Elem(), text, above)
	case reflect.Struct:
		if v.Type() == reflect.TypeFor[time.Time]() {
			return
		}
		above[v.Type()] = true
		for i := range v.NumField() {
			fill(v.Field(i), text, above)
		}
		delete(above, v.Type())
	}
}

func parsed(t *testing.T, s *Sheet) *html.Node {
	t.Helper()
	page, err := HTML(s)
	if err != nil {
		t.Fatal(err)
	}
	root, err := html.Parse(bytes.NewReader(page))
	if err != nil {
		t.Fatal(err)
	}
	return root
}

// shape lists the elements of a page with their attributes, and how often a text
// is read in it. Attributes that hold a text count as read.
func shape(root *html.Node, text string) (elements []string, read int) {
	for n := range root.Descendants() {
		if n.Type == html.CommentNode {
			elements = append(elements, "comment")
		}
		if n.Type == html.TextNode && n.Parent.Data != "style" {
			read += strings.Count(n.Data, text)
		}
		if n.Type != html.ElementNode {
			continue
		}
		element := n.Data
		for _, a := range n.Attr {
			value := a.Val
			if times := strings.Count(value, text); times > 0 {
				read += times
				value = strings.ReplaceAll(value, text, "TEXT")
			}
			if n.Namespace == "svg" && a.Key == "textLength" {
				value = "" // longer texts are
			}
			element += " " + a.Key + "=" + value
		}
		elements = append(elements, element)
	}
	return elements, read
}

// Whatever stands in a spec is text on the sheet: it changes neither an element nor
// an attribute.
func TestHostileTextIsText(t *testing.T) {
	const tame = "a tame text"
	want, times := shape(parsed(t, filled(tame)), tame)
	if times < 100 {
		t.Fatalf("a text in every place is read %d times only", times)
	}
	for _, hostile := range []string{
		"</style><script>alert(1)</script>",
		`"><img src=x onerror=alert(1)>`,
		`' onmouseover='alert(1)`,
		"javascript:alert(1)",
		"</svg></title></textarea><iframe src=//example.org>",
		"<!-- --><![CDATA[ ]]>&lt;&#60;&amp;",
		"{{.Style}} {{template \"page.tmpl\"}}",
		"expression(alert(1)); } * { display: none",
		"http://example.org/a?b=c#d",
	} {
		got, read := shape(parsed(t, filled(hostile)), hostile)
		if diff := cmp.Diff(want, got); diff != "" {
			t.Errorf("%s changes the page (-tame +hostile):\n%s", hostile, diff)
		}
		if read != times {
			t.Errorf("%s is read %d times, a tame text %d times", hostile, read, times)
		}
	}
}

// What turns or hides the text around it is written out, on page and drawing.
func TestHiddenCharactersAreWrittenOut(t *testing.T) {
	hidden := "a\u202eb\u2066c\u200bd\x1be\u00adf"
	s := filled(hidden)
	page, err := HTML(s)
	if err != nil {
		t.Fatal(err)
	}
	file, err := SVG(s.Circuits[0])
	if err != nil {
		t.Fatal(err)
	}
	for _, text := range []string{string(page), string(file)} {
		if i := strings.IndexFunc(text, func(r rune) bool { return r != '\n' && report.Plain(string(r)) != string(r) }); i >= 0 {
			t.Errorf("a hidden character is left in %q", text[max(0, i-30):i+10])
		}
		if !strings.Contains(text, `a\u202eb\u2066c\u200bd`) {
			t.Error("the hidden characters are not written out")
		}
	}
}

// The page carries its policy, asks for nothing and runs nothing.
func TestSelfContained(t *testing.T) {
	const policy = "default-src 'none'; style-src 'unsafe-inline'"
	allowed := strings.Fields("article b body caption code dd details dl dt div figcaption figure footer h1 h2 h3 h4 head header html i input label li main meta nav ol p section span strong style summary table tbody td th thead title tr ul a " +
		"svg desc defs pattern path circle g text")
	var policies []string
	ids := map[string]bool{}
	var links []string
	for n := range parsed(t, filled("text")).Descendants() {
		if n.Type != html.ElementNode {
			continue
		}
		if !slices.Contains(allowed, n.Data) {
			t.Errorf("an element %s is on the page", n.Data)
		}
		for _, a := range n.Attr {
			switch {
			case a.Key == "id":
				ids[a.Val] = true
			case a.Key == "href" && strings.HasPrefix(a.Val, "#"), a.Key == "for":
				links = append(links, strings.TrimPrefix(a.Val, "#"))
			case a.Key == "content" && strings.Contains(a.Val, "-src"):
				policies = append(policies, a.Val)
			case a.Key == "href" || a.Key == "src" || strings.HasPrefix(a.Key, "on") || strings.Contains(a.Val, "//") && a.Key != "xmlns":
				t.Errorf("%s has %s=%q", n.Data, a.Key, a.Val)
			}
		}
		if n.Data == "style" && (strings.Contains(n.FirstChild.Data, "@import") || strings.Contains(n.FirstChild.Data, "url(")) {
			t.Error("the style sheet asks for something")
		}
	}
	if diff := cmp.Diff([]string{policy}, policies); diff != "" {
		t.Errorf("policy of the page (-want +got):\n%s", diff)
	}
	for _, id := range links {
		if !ids[id] {
			t.Errorf("nothing has the id %q", id)
		}
	}
}

// Headings go down one level at a time, so that a reader who hears the page finds
// the way.
func TestHeadingsInOrder(t *testing.T) {
	level := 0
	for n := range parsed(t, filled("text")).Descendants() {
		if n.Type != html.ElementNode || len(n.Data) != 2 || n.Data[0] != 'h' || n.Data[1] < '1' || n.Data[1] > '6' {
			continue
		}
		is := int(n.Data[1] - '0')
		if is > level+1 {
			t.Errorf("a heading of level %d follows one of level %d", is, level)
		}
		level = is
	}
}
