package policies

import (
	"errors"
	"fmt"
	"maps"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
)

// What one answer may hold. In a value of Rego one part may stand in many places
// and takes no room in the second: forty lines can describe more than any memory
// holds, which shows when the answer is written out.
const (
	mostAnswers    = 1 << 20  // values, each counted where it stands
	mostAnswerText = 16 << 20 // bytes of text
)

// What the findings of one rule in one document may come to. A spec that is within
// its own bounds has fewer parts, and a builder reads no longer message.
const (
	mostFindings    = 10_000
	mostFindingText = 4096 // bytes in the texts of one
)

var errAnswer = errors.New("the answer is too large: a rule says which subjects it judged and found, each with a few figures")

// writtenOut is an answer as plain data, if it is of a size to be written out.
func writtenOut(answer *ast.Term, _ *rego.EvalContext) (any, error) {
	left := budget{values: mostAnswers, text: mostAnswerText}
	if !left.spend(answer) {
		return nil, errAnswer
	}
	return ast.JSON(answer.Value)
}

// A budget is what may still be spent on values and text.
type budget struct{ values, text int }

// spend takes a value with all that it holds from the budget, and reports whether
// it was enough.
func (b *budget) spend(t *ast.Term) bool {
	b.values--
	switch v := t.Value.(type) {
	case ast.String:
		b.text -= len(v)
	case ast.Number:
		b.text -= len(v)
	case *ast.Array:
		v.Until(func(e *ast.Term) bool { return !b.spend(e) })
	case ast.Set:
		v.Until(func(e *ast.Term) bool { return !b.spend(e) })
	case ast.Object:
		v.Until(func(key, value *ast.Term) bool { return !b.spend(key) || !b.spend(value) })
	}
	return b.values >= 0 && b.text >= 0
}

// checkSize holds a finding to the length of what can be read.
func (f Finding) checkSize() error {
	size := len(f.Subject) + len(f.At) + len(f.Case)
	for _, path := range f.Also {
		size += len(path)
	}
	for name, value := range f.Figures {
		text, _ := value.(string)
		size += len(name) + len(text)
	}
	if size > mostFindingText {
		return fmt.Errorf("its texts have %d bytes; the most is %d", size, mostFindingText)
	}
	return nil
}

// withoutFloods takes out the findings of each rule that has more than there can
// be, and makes that a fault of the rule.
func (e *Engine) withoutFloods(findings []Finding, faults *[]Fault) []Finding {
	counts := map[string]int{}
	for _, f := range findings {
		counts[f.Rule]++
	}
	for _, id := range slices.Sorted(maps.Keys(counts)) {
		if n := counts[id]; n > mostFindings {
			*faults = append(*faults, Fault{id, fmt.Sprintf("%s: %d findings in one document; the most is %d", e.byID[id].file, n, mostFindings)})
		}
	}
	return slices.DeleteFunc(findings, func(f Finding) bool { return counts[f.Rule] > mostFindings })
}

// short is the beginning of a text that may be long, to be told in a fault.
func short(text string) string {
	const most = 200
	if len(text) <= most {
		return text
	}
	return strings.ToValidUTF8(text[:most], "") + "..."
}
