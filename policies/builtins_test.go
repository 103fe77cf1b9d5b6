package policies

import (
	"fmt"
	"runtime"
	"slices"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/topdown"
	"github.com/open-policy-agent/opa/v1/types"
)

// refused are the functions of OPA that no rule may call, by the reason why.
var refused = map[string]string{
	"network":     "http.send net.lookup_ip_addr providers.aws.sign_req",
	"environment": "opa.runtime rego.metadata.chain rego.metadata.rule rego.parse_module",
	"clock":       "time.now_ns uuid.parse time.add_date time.clock time.date time.diff time.format time.parse_duration_ns time.parse_ns time.parse_rfc3339_ns time.weekday",
	"chance":      "rand.intn uuid.rfc4122",
	"tokens": `io.jwt.decode io.jwt.decode_verify io.jwt.encode_sign io.jwt.encode_sign_raw io.jwt.verify_eddsa io.jwt.verify_es256
		io.jwt.verify_es384 io.jwt.verify_es512 io.jwt.verify_hs256 io.jwt.verify_hs384 io.jwt.verify_hs512 io.jwt.verify_ps256
		io.jwt.verify_ps384 io.jwt.verify_ps512 io.jwt.verify_rs256 io.jwt.verify_rs384 io.jwt.verify_rs512`,
	"cryptography": `crypto.hmac.equal crypto.hmac.md5 crypto.hmac.sha1 crypto.hmac.sha256 crypto.hmac.sha512 crypto.md5 crypto.parse_private_keys
		crypto.sha1 crypto.sha256 crypto.x509.parse_and_verify_certificates crypto.x509.parse_and_verify_certificates_with_options
		crypto.x509.parse_certificate_request crypto.x509.parse_certificates crypto.x509.parse_keypair crypto.x509.parse_rsa_private_key`,
	"output": "internal.print internal.test_case print trace",
	"much out of little": `array.flatten bits.lsh format_int graph.reachable graph.reachable_paths json.patch net.cidr_expand numbers.range
		numbers.range_step object.union_n replace sprintf strings.render_template strings.replace_n internal.template_string walk`,
	"patterns, which may take for ever": `glob.match glob.quote_meta re_match regex.find_all_string_submatch_n regex.find_n regex.globs_match
		regex.is_valid regex.match regex.replace regex.split regex.template_match`,
	"texts in other languages": `base64.decode base64.encode base64.is_valid base64url.decode base64url.encode base64url.encode_no_pad
		graphql.is_valid graphql.parse graphql.parse_and_verify graphql.parse_query graphql.parse_schema graphql.schema_is_valid
		hex.decode hex.encode json.is_valid json.marshal json.marshal_with_options json.match_schema json.unmarshal json.verify_schema
		semver.compare semver.is_valid units.parse units.parse_bytes uri.is_valid uri.parse urlquery.decode urlquery.decode_object
		urlquery.encode urlquery.encode_object yaml.is_valid yaml.marshal yaml.unmarshal`,
	"engineering, which is not for rules": "bits.and bits.negate bits.or bits.rsh bits.xor ceil div floor max min product rem round sum to_number",
	"nothing in a spec is like it":        "net.cidr_contains net.cidr_contains_matches net.cidr_intersects net.cidr_is_valid net.cidr_merge net.cidr_overlap",
	"deprecated":                          "all any cast_array cast_boolean cast_null cast_object cast_set cast_string set_diff",
	"no rule needs it": `and array.reverse endswith indexof indexof_n internal.member_3 intersection is_array is_boolean is_null is_number is_object is_set
		is_string json.filter json.remove object.filter object.remove object.subset or sort strings.any_prefix_match
		strings.any_suffix_match strings.count strings.reverse strings.split_n substring trim trim_left trim_prefix trim_right
		trim_space trim_suffix type_name union upper`,
}

// TestEveryBuiltinIsDecided fails when OPA has a function that nobody decided on.
func TestEveryBuiltinIsDecided(t *testing.T) {
	decided := map[string]string{}
	decide := func(name, how string) {
		if before, ok := decided[name]; ok {
			t.Errorf("%s is decided twice: %s, %s", name, before, how)
		}
		decided[name] = how
	}
	for _, name := range builtins {
		decide(name, "allowed")
	}
	for reason, names := range refused {
		for _, name := range strings.Fields(names) {
			decide(name, reason)
		}
	}
	for _, b := range ast.Builtins {
		if _, ok := decided[b.Name]; !ok {
			t.Errorf("%s is neither allowed nor refused", b.Name)
		}
		delete(decided, b.Name)
	}
	for name, how := range decided {
		t.Errorf("%s (%s) is no function of OPA", name, how)
	}
}

// TestRefusedBuiltins shows of every function that is refused that a rule which
// calls it is left out, with file and line and the name of the function.
func TestRefusedBuiltins(t *testing.T) {
	infix := map[string]string{"bits.or": "bits.or(1, 1)", "or": "{1} | {2}", "and": "{1} & {2}", "div": "1 / 2", "rem": "1 % 2", "internal.member_3": "1, 2 in [1]"}
	shared, err := loadShared()
	if err != nil {
		t.Fatal(err)
	}
	e := &Engine{timeout: time.Minute}
	for reason, names := range refused {
		for _, name := range strings.Fields(names) {
			call, ok := infix[name]
			if !ok {
				call = name + "(" + strings.Repeat("1, ", ast.BuiltinMap[name].Decl.Arity()) + ")"
				call = strings.Replace(call, ", )", ")", 1)
			}
			text := ownRule("failing", "\nreached := "+call+"\n")
			folder := Folder{"bench", fstest.MapFS{"failing.rego": {Data: []byte(text)}}}
			list, err := ownFiles(folder)
			if err != nil {
				t.Fatal(err)
			}
			m := list[0].load()
			if m.err == nil {
				m.err = e.checkOwn(m, "failing", shared, nil)
			}
			line := 1 + strings.Count(text[:strings.Index(text, "\nreached")+1], "\n")
			if m.err == nil || !strings.HasPrefix(m.err.Error(), fmt.Sprintf("bench/failing.rego:%d: ", line)) || !strings.Contains(m.err.Error(), strings.TrimSuffix(name, "_3")) {
				t.Errorf("%s: %s: error %v", reason, name, m.err)
			}
		}
	}
}

// TestLargestArguments calls every allowed function with the largest that a rule
// could have got hold of. It answers or refuses, soon and in little memory.
func TestLargestArguments(t *testing.T) {
	const (
		mostTime   = 5 * time.Second
		mostMemory = 128 << 20
	)
	for _, name := range builtins {
		f := topdown.GetBuiltin(name)
		if f == nil { // the evaluator itself unifies
			if name != "eq" && name != "assign" {
				t.Errorf("%s cannot be called", name)
			}
			continue
		}
		var operands []*ast.Term
		for i, operand := range ast.BuiltinMap[name].Decl.NamedFuncArgs().Args {
			operands = append(operands, largest(operand, i))
		}
		var before, after runtime.MemStats
		runtime.ReadMemStats(&before)
		start := time.Now()
		err := f(topdown.BuiltinContext{}, operands, func(*ast.Term) error { return nil })
		took := time.Since(start)
		runtime.ReadMemStats(&after)
		if size := after.TotalAlloc - before.TotalAlloc; took > mostTime || size > mostMemory {
			t.Errorf("%s took %v and %d MiB: %v", name, took, size>>20, err)
		}
		if _, bounded := bounds[name]; bounded && err == nil {
			t.Errorf("%s is bounded, and did the largest", name)
		}
	}
}

// largest is a value of a type, as large as rules can make one.
func largest(typ types.Type, seed int) *ast.Term {
	if named, ok := typ.(*types.NamedType); ok {
		typ = named.Type
	}
	switch typ := typ.(type) {
	case types.String:
		return ast.StringTerm(strings.Repeat(string(rune('a'+seed)), mostText))
	case types.Number:
		return ast.NewTerm(ast.Number(strings.Repeat("9", mostDigits)))
	case *types.Array:
		return ast.NewTerm(largestArray(seed))
	case *types.Set:
		return ast.NewTerm(largestSet(seed))
	case *types.Object:
		return largestObject(seed)
	case types.Any:
		for _, each := range typ { // whichever grows most
			if _, text := each.(*types.Array); text {
				return ast.ArrayTerm(slices.Repeat([]*ast.Term{ast.StringTerm(strings.Repeat("a", mostText))}, mostItems)...)
			}
		}
		if len(typ) > 0 {
			return largest(typ[0], seed)
		}
		return largestObject(seed)
	}
	return ast.BooleanTerm(true)
}

func largestArray(seed int) *ast.Array {
	terms := make([]*ast.Term, mostItems)
	for i := range terms {
		terms[i] = ast.IntNumberTerm(i + seed)
	}
	return ast.NewArray(terms...)
}

func largestSet(seed int) ast.Set {
	set := ast.NewSet()
	largestArray(seed * mostItems).Foreach(set.Add)
	return set
}

// largestObject holds one part twice at each of thirty levels.
func largestObject(seed int) *ast.Term {
	part := ast.ObjectTerm(ast.Item(ast.StringTerm("seed"), ast.IntNumberTerm(seed)))
	for range 30 {
		part = ast.ObjectTerm(ast.Item(ast.StringTerm("a"), part), ast.Item(ast.StringTerm("b"), part))
	}
	return part
}
