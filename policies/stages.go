package policies

import (
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
)

// pureChecks are the stages of the compiler that only check. The built-in rules
// pass them in this package's tests.
var pureChecks = []ast.StageID{
	ast.StageCheckUnusedImports, ast.StageCheckKeywordOverrides, ast.StageCheckDuplicateImports,
	ast.StageCheckVoidCalls, ast.StageCheckRuleConflicts, ast.StageCheckUndefinedFuncs,
	ast.StageCheckSafetyRuleHeads, ast.StageCheckRecursion, ast.StageCheckTypes,
	ast.StageCheckUnsafeBuiltins, ast.StageCheckDeprecatedBuiltins, ast.StageBuildRequiredCapabilities,
	ast.StageSetGraph, // of rules that call one another, for the checks
}

// unusedStages are those that change nothing in the built-in rules: they put no
// condition before what it needs, and use neither templates, `print`, `with` nor
// their own METADATA. TestUnusedStages holds them to that.
var unusedStages = []ast.StageID{
	ast.StageRewriteTemplateStrings, ast.StageRewritePrintCalls, ast.StageParseMetadataBlocks, ast.StageSetAnnotationSet,
	ast.StageRewriteRegoMetadataCalls, ast.StageRewriteWithValues, ast.StageCheckSafetyRuleBodies,
	ast.StageRewriteTestRulesForTracing, ast.StageBuildComprehensionIndices,
}

// newCompiler makes the compiler for modules. It leaves stages out, which is nearly
// half of its work, only where all of them are built in.
func newCompiler(modules []module) *ast.Compiler {
	c := ast.NewCompiler().WithCapabilities(capabilities())
	if slices.ContainsFunc(modules, func(m module) bool { return m.entry != nil && m.entry.area == ownArea }) {
		return c
	}
	return c.WithSkipStages(pureChecks...).WithSkipStages(unusedStages...).WithSkipStages(ast.StageRewriteEquals).
		WithStageAfterID(ast.StageRewriteRefsInHead, ast.CompilerStageDefinition{Name: "unify_equals", Stage: unifyEquals})
}

// unifyEquals is the compiler's stage that turns each == into =, without its copy of
// every rule.
func unifyEquals(c *ast.Compiler) *ast.Error {
	equal, unify := ast.Equal.Ref(), ast.NewTerm(ast.Equality.Ref())
	for _, m := range c.Modules {
		ast.WalkExprs(m, func(x *ast.Expr) bool {
			if x.IsCall() && len(x.Operands()) == 2 && x.Operator().Equal(equal) {
				x.SetOperator(unify)
			}
			return false
		})
	}
	return nil
}
