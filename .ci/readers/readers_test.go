// Package readers reads fitup's reports back with other people's readers. What
// it reads are the golden files of cmd/fitup/report, which hold what specs full
// of markup and control characters make of each form.
package readers

import (
	"bytes"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	ics "github.com/arran4/golang-ical"
	"github.com/joshdk/go-junit"
	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/extension"
	"github.com/yuin/goldmark/text"
)

func golden(t *testing.T, pattern string) map[string][]byte {
	t.Helper()
	names, err := filepath.Glob("../../cmd/fitup/report/testdata/" + pattern)
	if err != nil || len(names) == 0 {
		t.Fatalf("no golden file %s: %v", pattern, err)
	}
	all := map[string][]byte{}
	for _, name := range names {
		content, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		all[filepath.Base(name)] = content
	}
	return all
}

var heading = regexp.MustCompile(`^(fitup: .*|Errors|Dangers|Faults|Advice|Mended|Gone, but not mended|How this is judged has changed|` +
	`Waived dangers|What to measure, most wanted first|Unclear|Taken away from this judgement)$`)

// TestMarkdown reads summaries as GitHub Flavored Markdown: headings, lists and
// code are fitup's, and nothing else is markup.
func TestMarkdown(t *testing.T) {
	for name, content := range golden(t, "*.md") {
		forged := false
		document := goldmark.New(goldmark.WithExtensions(extension.GFM)).Parser().Parse(text.NewReader(content))
		err := ast.Walk(document, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
			if !entering {
				return ast.WalkContinue, nil
			}
			switch n := n.(type) {
			case *ast.Document, *ast.Paragraph, *ast.TextBlock, *ast.List, *ast.ListItem, *ast.CodeSpan:
			case *ast.Emphasis:
				if n.Level != 2 || n.Parent().Kind() != ast.KindParagraph {
					t.Errorf("%s: emphasis that is not ours", name)
				}
			case *ast.Heading:
				if got := string(n.Lines().Value(content)); !heading.MatchString(got) {
					t.Errorf("%s: heading %q", name, got)
				}
			case *ast.Text:
				got := string(n.Value(content))
				forged = forged || strings.Contains(got, "forged")
				if n.Parent().Kind() != ast.KindCodeSpan && strings.ContainsAny(got, "@#") {
					t.Errorf("%s: a mention or a number that GitHub would look up: %q", name, got)
				}
			default:
				t.Errorf("%s: %s in it", name, n.Kind())
			}
			return ast.WalkContinue, nil
		})
		if err != nil {
			t.Error(err)
		}
		if !forged && name != "calm.md" {
			t.Errorf("%s: what was forged should be there, as text", name)
		}
	}
}

// TestJUnit reads test reports, and compares the sums written with those counted.
func TestJUnit(t *testing.T) {
	for name, content := range golden(t, "*.junit.xml") {
		suites, err := junit.Ingest(content)
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		var sum junit.Totals
		for _, s := range suites {
			sum.Tests += s.Totals.Tests
			sum.Failed += s.Totals.Failed
			sum.Error += s.Totals.Error
			sum.Skipped += s.Totals.Skipped
			for _, one := range s.Tests {
				if one.Name == "" || one.Classname == "" {
					t.Errorf("%s: a case without a name: %+v", name, one)
				}
			}
		}
		for attribute, counted := range map[string]int{"tests": sum.Tests, "failures": sum.Failed, "errors": sum.Error, "skipped": sum.Skipped} {
			m := regexp.MustCompile(`<testsuites [^>]*\b` + attribute + `="(\d+)"`).FindSubmatch(content)
			if m == nil || string(m[1]) != strconv.Itoa(counted) {
				t.Errorf("%s: %s: counted %d, written %q", name, attribute, counted, m)
			}
		}
	}
}

// TestCalendar reads last days.
func TestCalendar(t *testing.T) {
	for name, content := range golden(t, "*.ics") {
		calendar, err := ics.ParseCalendar(bytes.NewReader(content))
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		events := calendar.Events()
		if len(events) != 4 {
			t.Errorf("%s: %d events, want 4", name, len(events))
		}
		seen := map[string]bool{}
		for _, e := range events {
			if seen[e.Id()] || !strings.HasSuffix(e.Id(), "@fitup") {
				t.Errorf("%s: UID %q", name, e.Id())
			}
			seen[e.Id()] = true
			if day, err := e.GetAllDayStartAt(); err != nil || day.Year() < 2026 || day.Year() > 2027 {
				t.Errorf("%s: on %v: %v", name, day, err)
			}
			if _, err := e.GetDtStampTime(); err != nil {
				t.Errorf("%s: %v", name, err)
			}
		}
		if got := ics.FromText(events[0].GetProperty(ics.ComponentPropertySummary).Value); !strings.Contains(got, "forged") {
			t.Errorf("%s: the first event is %q", name, got)
		}
	}
}
