package source

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/BurntSushi/toml"
	"github.com/google/go-cmp/cmp"
)

// told puts problems as "line:col-line:col path: message; want", one a line.
func told(f *File, problems []Problem) []string {
	var lines []string
	for _, p := range problems {
		at := f.Place(p.Span)
		lines = append(lines, fmt.Sprintf("%d:%d-%d:%d %s: %s; %s", at.Line, at.Column, at.EndLine, at.EndColumn, p.Path, p.Message, p.Want))
	}
	return lines
}

// TestTables holds what TOML 1.0 (sections Keys, Table, Inline Table, Array of
// Tables) calls invalid about names that meet twice, and what it allows beside
// it.
func TestTables(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"same key twice", "a = 1\nb = 2\na = 3", `3:1-3:2 a: "a" is already set, on line 1; each key once`},
		{"bare and quoted", "a = 1\n\"a\" = 3", `2:1-2:4 a: "a" is already set, on line 1; each key once`},
		{"same key in inline table", "t = {a = 1, a = 2}", `1:13-1:14 t.a: "a" is already set, on line 1; each key once`},
		{"same key in inline table in array", "t = [{a = 1, a = 2}]", `1:14-1:15 t.0.a: "a" is already set, on line 1; each key once`},
		{"same header twice", "[a]\nb = 1\n[a]\nc = 2", "3:2-3:3 a: [a] already has a header, on line 1; put its keys under that header, or give this table another name"},
		{"header over value", "a = 1\n[a]", `2:2-2:3 a: "a" is a value, set on line 1, and cannot hold keys; a value or a table under one name, not both`},
		{"header below value", "a = 1\n[a.b]", `2:2-2:3 a: "a" is a value, set on line 1, and cannot hold keys; a value or a table under one name, not both`},
		{"header below inline table", "a = {b = 1}\n[a.c]\nd = 2", `2:2-2:3 a: "a" is an inline table, closed on line 1; write all its keys inside the braces, or all below [a]`},
		{"header over inline table", "a = {b = 1}\n[a]", `2:2-2:3 a: "a" is an inline table, closed on line 1; write all its keys inside the braces, or all below [a]`},
		{"dotted key into inline table", "a = {b = 1}\na.c = 2", `2:1-2:2 a: "a" is an inline table, closed on line 1; write all its keys inside the braces, or all below [a]`},
		{"dotted key into inline table in inline table", "t = {a = {b = 1}, a.c = 2}", `1:19-1:20 t.a: "t.a" is an inline table, closed on line 1; write all its keys inside the braces, or all below [t.a]`},
		{"header below table in inline table", "a = {b.c = 1}\n[a.b.d]", `2:2-2:3 a: "a" is an inline table, closed on line 1; write all its keys inside the braces, or all below [a]`},
		{"dotted key into value", "a = 1\na.b = 2", `2:1-2:2 a: "a" is a value, set on line 1, and cannot hold keys; a value or a table under one name, not both`},
		{"dotted key into table of a header", "[a.b]\nc = 1\n[a]\nb.d = 2", `4:1-4:2 a.b: "a.b" has a header of its own, on line 1; write the key below that header`},
		{"dotted key into table named in a header", "[a.b.c]\nz = 9\n[a]\nb.c.t = 1", `4:1-4:2 a.b: "a.b" has a header of its own, on line 1; write the key below that header`},
		{"header over table of a dotted key", "[a]\nb.c = 1\n[a.b]", `3:4-3:5 a.b: "a.b" is already made by a dotted key, on line 2; write all its keys with dots, or all below [a.b]`},
		{"header over root table of a dotted key", "a.b = 1\n[a]", `2:2-2:3 a: "a" is already made by a dotted key, on line 1; write all its keys with dots, or all below [a]`},
		{"element of static array", "a = []\n[[a]]", `2:3-2:4 a: "a" is an array, closed on line 1; write all its elements inside the brackets`},
		{"header below static array", "a = [{b = 1}]\n[a.c]", `2:2-2:3 a: "a" is an array, closed on line 1; write all its elements inside the brackets`},
		{"element of table", "[a]\n[[a]]", `2:3-2:4 a: "a" is already a table, from line 1; [a.NAME] for a table below it`},
		{"element of table named in a header", "[a.b]\n[[a]]", `2:3-2:4 a: "a" is already a table, from line 1; [a.NAME] for a table below it`},
		{"header over array of tables", "[[a]]\n[a]", `2:2-2:3 a: "a" is already an array of tables, from line 1; [[a]]`},
		{"dotted key into array of tables", "[[a.b]]\n[a]\nb.c = 1", `3:1-3:2 a.b: "a.b" has a header of its own, on line 1; write the key below that header`},
		{"key over table", "[a.b]\n[a]\nb = 1", `3:1-3:2 a.b: "b" is already set, on line 1; each key once`},

		{"all at once", "a = 1\na = 2\n[t]\nx = {y = 1}\nx.z = 2\n[t]\nq = 1\nq = 2\n", `2:1-2:2 a: "a" is already set, on line 1; each key once
5:1-5:2 t.x: "t.x" is an inline table, closed on line 4; write all its keys inside the braces, or all below [t.x]
6:2-6:3 t: [t] already has a header, on line 3; put its keys under that header, or give this table another name
8:1-8:2 t.q: "q" is already set, on line 7; each key once`},

		{"parent after child", "[a.b]\nc = 1\n[a]\nd = 2", ""},
		{"header below table of a dotted key", "[a]\nb.c = 1\n[a.b.d]\ne = 2", ""},
		{"dotted keys apart", "a.b = 1\nc = 2\na.d = 3", ""},
		{"dotted keys in inline table", "a = {b.c = 1, b.d = 2}", ""},
		{"elements with tables of the same name", "[[a]]\n[a.b]\nc = 1\n[[a]]\n[a.b]\nc = 2\n[[a.d]]\n[[a.d]]", ""},
		{"same name in two tables", "a = 1\n[b]\na = 2\n[c]\na = 3", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			f, problems := Parse("car.toml", []byte(c.text))
			if diff := cmp.Diff(c.want, strings.Join(told(f, problems), "\n")); diff != "" {
				t.Error(diff)
			}
			if (f.Root == nil) != (c.want != "") {
				t.Errorf("Root is %v", f.Root)
			}
		})
	}
}

func TestSyntax(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"unclosed string", "a = 1\nb = \"x \\\" y\nc = 2", `2:5-2:12 : the string is not closed; a " at its end, on the same line`},
		{"unclosed string at the end", `b = "x`, `1:5-1:7 : the string is not closed; a " at its end, on the same line`},
		{"unclosed literal", "b = 'x\n", `1:5-1:7 : the string is not closed; a ' at its end, on the same line`},
		{"unclosed long string", "b = \"\"\"x \\\"\"\" y\nz", `1:5-1:16 : the string is not closed; """ at its end`},
		{"unclosed long literal", "b = ''''x\nz", `1:5-1:10 : the string is not closed; ''' at its end`},
		{"no value", "a = \nb = 1", `1:1-1:4 : there is no value after the =; NAME = "value"`},
		{"no value before line end of two bytes", "a =\r\nb = 1\r\n", `1:1-1:4 : there is no value after the =; NAME = "value"`},
		{"no value at the end", "a =", `1:3-1:4 : there is no value after the =; NAME = "value"`},
		{"no value before comment", "a = # 1", `1:5-1:6 : there is no value before the comment; NAME = "value"  # comment`},
		{"bare word", "a = steel # x", `1:5-1:10 : text stands without quotes; "text" in straight quotes`},
		{"quotes of a word processor", "a = “steel”", `1:5-1:12 : text stands without quotes; "text" in straight quotes`},
		{"bare word that begins as a keyword", "a = titanium", `1:5-1:13 : text stands without quotes; "text" in straight quotes`},
		{"unit without blank", "bore = 10.5mm", `1:8-1:14 : text stands without quotes; "text" in straight quotes`},
		{"unit after blank", "bore = 10 mm", `1:11-1:13 : something follows on the same line; one NAME = VALUE a line, and a figure with its unit in quotes, "12 mm"`},
		{"no equals sign", "[a]\n  bore\nb = 1", `2:3-2:7 : there is no = after the name; NAME = "value"`},
		{"colon", "bore: 1", `1:5-1:6 : there is no = after the name; NAME = "value"`},
		{"header not closed", "[lines.a\nb = 1", `1:1-1:9 : the table header is not closed; a ] after its name`},
		{"double header not closed", "[[lines]\nb = 1", `1:8-1:9 : the table header is not closed; ]] after its name`},
		{"key begins wrong", "é = 1", `1:1-1:2 : a name cannot begin here; write names with letters, digits and hyphens`},
		{"array not closed", "x = 1\n# c\n\na = [1,\n 2", `4:1-4:8 : the array is not closed; a ] after its last element`},
		{"array without comma", "a = [1 2]", "1:8-1:9 : a comma or ] is missing before this; a comma between two elements, a ] after the last"},
		{"array with two commas", "a = [1,,2]", "1:8-1:9 : there is no value before the comma; one comma between two elements"},
		{"inline table not closed", "a = {b = 1", "1:1-1:11 : the inline table is not closed; a } after its last key"},
		{"inline table without comma", "a = {b = 1 c = 2}", "1:12-1:13 : a comma or } is missing before this; a comma between two keys, a } after the last"},
		{"inline table with two commas", "a = {b = 1,, c = 2}", "1:12-1:13 : there is no key before the comma; one comma between two keys"},
		{"inline table without value", "a = {b = }", "1:10-1:11 : there is no value before the }; {NAME = \"value\"}"},
		{"inline table with comma at the end", "a = {b = 1, }", "1:11-1:12 a: a comma before } is one too many; no comma after the last key"},
		{"inline table over several lines", "[t]\na = {b = 1,\n  c = 2}\nd = {e = 1 # x, }\n}", `2:5-2:12 t.a: an inline table cannot run over several lines; all of it on one line, or its keys below [t.a]
4:5-4:18 t.d: an inline table cannot run over several lines; all of it on one line, or its keys below [t.d]`},
		{"long string in inline table", "a = {b = \"\"\"x\ny\"\"\", c = [\n1,\n]}", ""},
		{"escape", `a = "C:\dir"`, `1:8-1:10 : a backslash in "quotes" begins an escape, and this is none; text in 'single quotes', where a backslash is a backslash`},
		{"leading zero", "a = 007", "1:5-1:8 : a number cannot begin with 0; text in quotes, if it is a label"},
		{"point at the end", "a = 1.", "1:5-1:7 : the number ends in its decimal point; a digit after the point"},
		{"control character", "a = \"\x01\"", "1:6-1:7 : a control character stands here; printable text"},
		{"control character in a comment", "# \x00", "1:3-1:4 : a control character stands here; printable text"},
		{"carriage return alone", "# a\rb = 1", "1:4-1:5 : a carriage return stands here without a line feed; line ends of one kind"},
		{"escape that is cut short", `a = "\u00`, `1:6-1:10 : a backslash in "quotes" begins an escape, and this is none; \u and four digits of 0-9 and A-F`},
		{"escape with other letters", `a = "\u00zz"`, `1:10-1:11 : a backslash in "quotes" begins an escape, and this is none; \u and four digits of 0-9 and A-F`},
		{"escape of no character", `a = "\uD800"`, `1:6-1:12 : a backslash in "quotes" begins an escape, and this is none; the character itself`},
		{"four quotes too many", `a = """x"""""""`, "1:9-1:16 : more quotes follow than close the string; \"\"\" or ''' at its end"},
		{"number too large", "a = 1\nb = [9223372036854775808, 1e999]", `2:6-2:25 b.0: the number 9223372036854775808 is too large; text in quotes, if it is a label
2:27-2:32 b.1: 1e999 is not a number; a number such as 12.5`},
		{"no such date", "a = 2027-02-30\nb = 2027-13", `1:5-1:15 a: there is no date or time 2027-02-30; a date such as 2027-05-31, or text in quotes
2:5-2:12 b: there is no date or time 2027-13; a date such as 2027-05-31, or text in quotes`},
		{"what is before a syntax error is told", "a = 1\na = 2\nb = \nc = 1\nc = 2", `2:1-2:2 a: "a" is already set, on line 1; each key once
3:1-3:4 : there is no value after the =; NAME = "value"`},
	} {
		t.Run(c.name, func(t *testing.T) {
			f, problems := Parse("car.toml", []byte(c.text))
			if diff := cmp.Diff(c.want, strings.Join(told(f, problems), "\n")); diff != "" {
				t.Error(diff)
			}
		})
	}
}

func TestNames(t *testing.T) {
	const letters = "write names with letters, digits and hyphens"
	long := strings.Repeat("n", MaxName)
	for _, c := range []struct{ name, text, want string }{
		{"longest", long + " = 1\n'" + long[1:] + "' = 1", ""},
		{"too long", long + "n = 1", "1:1-1:50 : the name is too long; names of at most 48 characters"},
		{"empty", `"" = 1`, "1:1-1:3 : the name is empty; " + letters},
		{"blank", "[t]\n\"a b\" = 1", `2:1-2:6 t: "a b" is not a name; ` + letters},
		{"dot", "[lines.'a.b']", `1:8-1:13 : "a.b" is not a name; ` + letters},
		{"hash", "t = {'a#b' = 1}", `1:6-1:11 t: "a#b" is not a name; ` + letters},
		{"accent", `"é" = 1`, `1:1-1:4 : "é" is not a name; ` + letters},
		{"escape to a plain letter", `"\u0061" = 1`, ""},
		{"keys under a refused header are checked", "['']\na = 1\na = 2", "1:2-1:4 : the name is empty; " + letters + "\n" + `3:1-3:2 a: "a" is already set, on line 2; each key once`},
		{"values under a refused key are checked", "'' = {b = 1, b = 2}", "1:1-1:3 : the name is empty; " + letters + "\n" + `1:14-1:15 b: "b" is already set, on line 1; each key once`},
	} {
		t.Run(c.name, func(t *testing.T) {
			f, problems := Parse("car.toml", []byte(c.text))
			if diff := cmp.Diff(c.want, strings.Join(told(f, problems), "\n")); diff != "" {
				t.Error(diff)
			}
		})
	}
}

// TestLimits tries each limit at its edge and one past it.
func TestLimits(t *testing.T) {
	nested := func(open, inner, close string, n int) string {
		return "a = " + strings.Repeat(open, n) + inner + strings.Repeat(close, n)
	}
	parts := func(n int) string { return strings.Repeat("a.", n-1) + "a" }
	const deeper = "this is nested more than 16 levels deep; named tables, each under a header of its own"
	const tooMany = "the file has more than 20000 keys and array elements; fewer entries, or several files"
	for _, c := range []struct{ name, text, want string }{
		{"arrays at the limit", nested("[", "1", "]", 15), ""},
		{"arrays too deep", nested("[", "1", "]", 16), "1:21-1:22 a" + strings.Repeat(".0", 16) + ": " + deeper},
		{"inline tables at the limit", nested("{a=", "1", "}", 15), ""},
		{"inline tables too deep", nested("{a=", "1", "}", 16), "1:51-1:52 a" + strings.Repeat(".a", 16) + ": " + deeper},
		{"header and keys at the limit", "[" + parts(8) + "]\n" + parts(8) + " = 1", ""},
		{"header and keys too deep", "[" + parts(8) + "]\n" + parts(7) + " = {b.c = 1}", "2:20-2:21 " + parts(15) + ".b.c: " + deeper},
		{"keys below arrays of tables too deep", elements(8) + "b = 1", "9:1-9:2 " + strings.Repeat("a.0.", 8) + "b: " + deeper},
		{"parts of a key", parts(9) + " = 1", "1:1-1:18 : the key has 9 names; at most 8 names with dots between them"},
		{"parts of a header", "[" + parts(9) + "]", "1:2-1:19 : the key has 9 names; at most 8 names with dots between them"},
		{"parts of a key in an inline table", "t = {" + parts(9) + " = 1}", "1:6-1:23 t: the key has 9 names; at most 8 names with dots between them"},
		{"string at the limit", `a = "` + strings.Repeat("x", MaxString) + `"`, ""},
		{"string too long", `a = "` + strings.Repeat("x", MaxString+1) + `"`, "1:5-1:4104 a: the string is too long; at most 4096 bytes"},
		{"entries at the limit", "a = [" + strings.Repeat("1,", MaxEntries-1) + "]", ""},
		{"too many elements", "a = [" + strings.Repeat("1,", MaxEntries) + "]", "1:40004-1:40005 : " + tooMany},
		{"too many keys", numbered(MaxEntries + 5), "20001:1-20001:7 : " + tooMany},
		{"too many keys in an inline table", "t = {" + strings.TrimSuffix(strings.ReplaceAll(numbered(MaxEntries), "\n", ","), ",") + "}", "1:219995-1:220001 : " + tooMany},
	} {
		t.Run(c.name, func(t *testing.T) {
			f, problems := Parse("car.toml", []byte(c.text))
			if diff := cmp.Diff(c.want, strings.Join(told(f, problems), "\n")); diff != "" {
				t.Error(diff)
			}
		})
	}
}

// elements opens n arrays of tables, each within the one before.
func elements(n int) string {
	var b strings.Builder
	for i := range n {
		fmt.Fprintf(&b, "[[%sa]]\n", strings.Repeat("a.", i))
	}
	return b.String()
}

// numbered holds n keys, one a line.
func numbered(n int) string {
	var b strings.Builder
	for i := range n {
		fmt.Fprintf(&b, "k%05d = %d\n", i, i%10)
	}
	return b.String()
}

// TestHostile holds texts that cost a careless reader gigabytes, minutes or
// its stack. Each has to be refused, with one problem.
func TestHostile(t *testing.T) {
	const deep = 10000
	for _, c := range []struct{ name, text, want string }{
		{"10 MB", strings.Repeat("# ten bytes\n", 10<<20/12), "the file is larger than 1024 KiB"},
		{"one byte too large", strings.Repeat("#", MaxSize+1), "the file is larger than 1024 KiB"},
		{"arrays", "a = " + strings.Repeat("[", deep) + strings.Repeat("]", deep), "this is nested more than 16 levels deep"},
		{"arrays beyond the parser", "a = " + strings.Repeat("[", deep+1), "this is nested more than 16 levels deep"},
		{"a mebibyte of brackets", "a = " + strings.Repeat("[", MaxSize-4), "this is nested more than 16 levels deep"},
		{"inline tables", "a = " + strings.Repeat("{a=", deep) + "1" + strings.Repeat("}", deep), "this is nested more than 16 levels deep"},
		{"inline tables left open", "a = " + strings.Repeat("{a=", deep), "there is no value after the ="},
		{"dotted key", strings.Repeat("a.", deep-1) + "a = 1", "the key has 10000 names"},
		{"header", "[" + strings.Repeat("a.", deep-1) + "a]", "the key has 10000 names"},
		{"long lines of escapes", `a = "` + strings.Repeat(`\"`, 500000), "the string is not closed"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, problems := Parse("car.toml", []byte(c.text))
			if len(problems) != 1 || problems[0].Message != c.want {
				t.Errorf("got %d problems, the first %.200q; want one, %q", len(problems), fmt.Sprint(problems), c.want)
			}
		})
	}
}

func TestEncoding(t *testing.T) {
	for _, c := range []struct {
		name, text, want string
		bom              bool
	}{
		{"mark", "\xef\xbb\xbfa = 1\na = 2", `2:1-2:2 a: "a" is already set, on line 1; each key once`, true},
		{"mark and nothing else", "\xef\xbb\xbf", "", true},
		{"second mark", "\xef\xbb\xbf\xef\xbb\xbfa = 1", "1:1-1:2 : a name cannot begin here; write names with letters, digits and hyphens", true},
		{"line ends of two bytes", "a = 1\r\na = 2\r\n", `2:1-2:2 a: "a" is already set, on line 1; each key once`, false},
		{"stray byte", "a = 1\nb = \"é\xff\"", "2:7-2:8 : byte 0xff is not UTF-8 text; a file saved as UTF-8", false},
		{"cut character", "a = \"\xe2\x82", "1:6-1:7 : byte 0xe2 is not UTF-8 text; a file saved as UTF-8", false},
		{"stray byte after a real replacement character", "# \uFFFD \x80", "1:5-1:5 : byte 0x80 is not UTF-8 text; a file saved as UTF-8", false},
		{"UTF-16", "\xff\xfea\x00", "1:1-1:2 : byte 0xff is not UTF-8 text; a file saved as UTF-8", false},
		{"empty", "", "", false},
	} {
		t.Run(c.name, func(t *testing.T) {
			f, problems := Parse("car.toml", []byte(c.text))
			if diff := cmp.Diff(c.want, strings.Join(told(f, problems), "\n")); diff != "" {
				t.Error(diff)
			}
			if f.BOM != c.bom {
				t.Errorf("BOM = %v", f.BOM)
			}
		})
	}
	f, _ := Parse("car.toml", []byte("a = 1\r\n# é\xff\r\n"))
	if diff := cmp.Diff([]string{"", "a = 1", "# é\uFFFD", "", ""}, []string{f.Line(0), f.Line(1), f.Line(2), f.Line(3), f.Line(4)}); diff != "" {
		t.Error(diff)
	}
}

const spec = `# a car
title = "öl, naïve"
[car]
name = 'hill'
wheels = 2.5

[lines.fuel-feed]
hose = "ptfe-8 700 mm, rated"
from = ["driveline.fuel-in", "female 37-flare 90deg"] # end
ends = { a.b = "x\ty", c = [ [1, 2], {d = true} , # note, [
  [], ] }
long = """
two
lines"""

[[stop]]
on = 2027-05-31
[[stop]]
on = 2028-05-31
[stop.where]
at = "öre here"
`

// TestFind looks each path up and says what text it stands for.
func TestFind(t *testing.T) {
	f, problems := Parse("car.toml", []byte(spec))
	if len(problems) > 0 {
		t.Fatal(told(f, problems))
	}
	const ends = `{ a.b = "x\ty", c = [ [1, 2], {d = true} , # note, [` + "\n  [], ] }"
	for _, c := range []struct{ path, key, text string }{
		{"title", "title", `"öl, naïve"`},
		{"title#naïve", "", "naïve"},
		{"title#öl", "", "öl"},
		{"title#absent", "", `"öl, naïve"`},
		{"car", "car", "[car]"},
		{"car.name", "name", "'hill'"},
		{"car.name#hill", "", "hill"},
		{"car.name.deeper.still", "", "'hill'"},
		{"car.wheels", "wheels", "2.5"},
		{"car.wheels#2", "", "2.5"},
		{"car.absent", "", "[car]"},
		{"car.absent#word", "", "[car]"},
		{"lines", "lines", "lines"},
		{"lines.other", "", "lines"},
		{"lines.fuel-feed", "fuel-feed", "[lines.fuel-feed]"},
		{"lines.fuel-feed.calc.velocity", "", "[lines.fuel-feed]"},
		{"lines.fuel-feed.hose", "hose", `"ptfe-8 700 mm, rated"`},
		{"lines.fuel-feed.hose#mm", "", "mm"},
		{"lines.fuel-feed.hose#rate", "", "rate"},
		{"lines.fuel-feed.hose#", "", `"ptfe-8 700 mm, rated"`},
		{"lines.fuel-feed.from", "from", `["driveline.fuel-in", "female 37-flare 90deg"]`},
		{"lines.fuel-feed.from.1", "", `"female 37-flare 90deg"`},
		{"lines.fuel-feed.from.1#90deg", "", "90deg"},
		{"lines.fuel-feed.from.2", "", `["driveline.fuel-in", "female 37-flare 90deg"]`},
		{"lines.fuel-feed.from.01", "", `["driveline.fuel-in", "female 37-flare 90deg"]`},
		{"lines.fuel-feed.from.-1", "", `["driveline.fuel-in", "female 37-flare 90deg"]`},
		{"lines.fuel-feed.ends", "ends", ends},
		{"lines.fuel-feed.ends.a", "a", "a"},
		{"lines.fuel-feed.ends.a.b", "b", `"x\ty"`},
		{"lines.fuel-feed.ends.a.b#y", "", `"x\ty"`},
		{"lines.fuel-feed.ends.c", "c", ends[strings.Index(ends, "[ ["):strings.LastIndex(ends, " }")]},
		{"lines.fuel-feed.ends.c.0", "", "[1, 2]"},
		{"lines.fuel-feed.ends.c.0.1", "", "2"},
		{"lines.fuel-feed.ends.c.1", "", "{d = true}"},
		{"lines.fuel-feed.ends.c.1.d", "d", "true"},
		{"lines.fuel-feed.ends.c.2", "", "[]"},
		{"lines.fuel-feed.long", "long", "\"\"\"\ntwo\nlines\"\"\""},
		{"lines.fuel-feed.long#two", "", "\"\"\"\ntwo\nlines\"\"\""},
		{"stop", "stop", "[[stop]]"},
		{"stop.1", "stop", "[[stop]]"},
		{"stop.1.on", "on", "2028-05-31"},
		{"stop.1.where.at#here", "", "here"},
		{"absent.path", "", ""},
		{"", "", ""},
		{"#word", "", ""},
		{"..", "", ""},
	} {
		s := f.Find(c.path)
		if got := string(f.Text[s.Start:s.End]); got != c.text {
			t.Errorf("Find(%q) is %q, want %q", c.path, got, c.text)
		}
		key, ok := f.Key(c.path)
		if got := string(f.Text[key.Start:key.End]); got != c.key || ok != (c.key != "") {
			t.Errorf("Key(%q) is %q, %v; want %q", c.path, got, ok, c.key)
		}
	}
	for _, c := range []struct {
		path string
		want Place
	}{
		{"title#naïve", Place{2, 14, 2, 19}},
		{"stop.1.where.at#here", Place{21, 11, 21, 15}},
		{"lines.fuel-feed.ends", Place{10, 8, 11, 10}},
		{"absent", Place{1, 1, 1, 1}},
	} {
		if diff := cmp.Diff(c.want, f.Place(f.Find(c.path))); diff != "" {
			t.Errorf("%s: %s", c.path, diff)
		}
	}
}

func TestWord(t *testing.T) {
	f, _ := Parse("car.toml", []byte(`a = "2 x M10"
b = "tab\there"
c = 'öl "x"'
d = [1]
e = ""`))
	for _, c := range []struct {
		path       string
		start, end int
		want       string
	}{
		{"a", 4, 7, "M10"},
		{"a", 0, 7, "2 x M10"},
		{"a", 7, 7, ""},
		{"a", 5, 8, `"2 x M10"`},
		{"a", -1, 2, `"2 x M10"`},
		{"a", 3, 2, `"2 x M10"`},
		{"b", 0, 3, `"tab\there"`},
		{"c", 4, 7, `"x"`},
		{"d", 0, 1, "[1]"},
		{"e", 0, 0, ""},
		{"absent", 0, 0, ""},
	} {
		s := f.Word(c.path, c.start, c.end)
		if got := string(f.Text[s.Start:s.End]); got != c.want {
			t.Errorf("Word(%q, %d, %d) is %q, want %q", c.path, c.start, c.end, got, c.want)
		}
	}
}

// TestPlaceAgainstCounting holds the index against counting from the start.
func TestPlaceAgainstCounting(t *testing.T) {
	text := "# " + strings.Repeat("é", 700) + "\n# " + strings.Repeat("ab€", 900) + "\r\n\n#\U0001F527" + strings.Repeat("x", 1500) + "y"
	f, problems := Parse("car.toml", []byte(text))
	if len(problems) > 0 {
		t.Fatal(told(f, problems))
	}
	line, column := 1, 1
	for at, r := range text {
		if got, want := f.Place(Span{at, at}), (Place{line, column, line, column}); got != want {
			t.Fatalf("offset %d: %v, want %v", at, got, want)
		}
		if column++; r == '\n' {
			line, column = line+1, 1
		}
	}
	if got, want := f.Place(Span{-5, len(text) + 5}), (Place{1, 1, line, column}); got != want {
		t.Errorf("outside the text: %v, want %v", got, want)
	}
}

// paths lists every key path of a decoded value, elements by number.
func paths(prefix string, v any) []string {
	var all []string
	each := func(step string, v any) {
		all = append(all, join(prefix, step))
		all = append(all, paths(join(prefix, step), v)...)
	}
	switch v := v.(type) {
	case map[string]any:
		for _, k := range slices.Sorted(maps.Keys(v)) {
			each(k, v[k])
		}
	case []any:
		for i, e := range v {
			each(strconv.Itoa(i), e)
		}
	case []map[string]any:
		for i, e := range v {
			each(strconv.Itoa(i), e)
		}
	}
	return all
}

// nodePaths lists every key path of the walk.
func nodePaths(prefix string, n *node) []string {
	var all []string
	each := func(step string, n *node) {
		all = append(all, join(prefix, step))
		all = append(all, nodePaths(join(prefix, step), n)...)
	}
	for _, k := range slices.Sorted(maps.Keys(n.children)) {
		each(k, n.children[k])
	}
	for i, e := range n.elements {
		each(strconv.Itoa(i), e)
	}
	return all
}

// TestAgreement holds the walk's paths against the decoder's, which reads the
// text by itself.
func TestAgreement(t *testing.T) {
	for _, text := range []string{
		spec,
		strings.ReplaceAll(spec, "\n", "\r\n"),
		"a.b.c = 1\na.b.d = [{x.y = 1}, {x.y = 2}]\n[a.z]\n[q.r.s]\n[q]\nt = {}",
		elements(5) + "[a.a.b]\nc = 1\n[[a.a]]\n[a.a.b]\nc = 2",
		"a = +inf\nb = -nan\nc = 0x1F\nd = 1_000\ne = 07:32:00\nf = 2027-05-31 07:32:00Z\n'1' = 2\n",
	} {
		f, problems := Parse("car.toml", []byte(text))
		if len(problems) > 0 {
			t.Fatal(told(f, problems))
		}
		var alone map[string]any
		if _, err := toml.Decode(text, &alone); err != nil {
			t.Fatal(err)
		}
		if diff := cmp.Diff(paths("", alone), nodePaths("", f.root)); diff != "" {
			t.Error(diff)
		}
		for _, p := range paths("", f.Root) {
			if f.Find(p) == (Span{}) {
				t.Errorf("%s has no place", p)
			}
		}
	}
}

func BenchmarkParse(b *testing.B) {
	for _, keys := range []int{1000, 10000} {
		text := []byte(numbered(keys))
		b.Run(strconv.Itoa(keys), func(b *testing.B) {
			b.SetBytes(int64(len(text)))
			for b.Loop() {
				f, problems := Parse("car.toml", text)
				if len(problems) > 0 {
					b.Fatal(problems)
				}
				for i := range keys {
					f.Place(f.Find(fmt.Sprintf("k%05d", i)))
				}
			}
		})
	}
}

// FuzzParse checks that no text makes Parse panic, that the decoder refuses
// nothing that the walk passed, that both see the same keys, and that every
// place is within the text.
func FuzzParse(f *testing.F) {
	for _, text := range []string{
		spec, "a = [", "a = {b=1}\n[a.c]", "[[a]]\n[a.b]\n[[a]]", "\xef\xbb\xbfa=1", "a = \"\xff", "a = '''x", `a = "\u00e9"`,
		"a = {b = 1, # c\n}", "a = [1, # ]\n2]", "a=2027-05-31", "a = \"\"\"\"x\"\"\"\"\"", "a = [{}, [], {b.c = {}}]", "['a' . \"b\"]",
	} {
		f.Add([]byte(text), "lines.fuel-feed.from.0#word")
	}
	f.Fuzz(func(t *testing.T, text []byte, path string) {
		file, problems := Parse("car.toml", text)
		within := func(what string, s Span) {
			if s.Start < 0 || s.Start > s.End || s.End > len(file.Text) {
				t.Errorf("%s is %v in a text of %d bytes", what, s, len(file.Text))
			}
			if p := file.Place(s); p.Line < 1 || p.Column < 1 || p.EndLine < p.Line || p.EndLine == p.Line && p.EndColumn < p.Column {
				t.Errorf("%s is at %v", what, p)
			}
		}
		for i, p := range problems {
			within("problem "+p.Message, p.Span)
			if p.Message == "" || i > 0 && problems[i-1].Span.Start > p.Span.Start {
				t.Errorf("problem %d of %v", i, problems)
			}
		}
		within(path, file.Find(path))
		for _, p := range nodePaths("", file.root) {
			within(p, file.Find(p))
			within(p, file.Find(p+"#"+path))
		}
		if len(problems) > 0 {
			if file.Root != nil {
				t.Error("decoded in spite of problems")
			}
			for _, p := range problems {
				if strings.HasPrefix(p.Message, "this cannot be decoded: ") {
					t.Error(p.Message)
				}
			}
			return
		}
		if diff := cmp.Diff(paths("", file.Root), nodePaths("", file.root)); diff != "" {
			t.Error(diff)
		}
	})
}
