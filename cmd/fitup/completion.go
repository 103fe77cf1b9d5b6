package main

import (
	"io/fs"
	"path"
	"strings"

	"github.com/spf13/cobra"

	"fitup/policies"
	"fitup/policies/judge"
)

// ruleNames lists the ids of the rules and their areas, by their file names
// alone: completion must answer at once.
func ruleNames() []string {
	files, err := fs.Glob(policies.BuiltIn(), "rules/*/*.rego")
	if err != nil {
		panic(err) // the pattern is wrong
	}
	var names []string
	area := ""
	for _, file := range files {
		if strings.HasSuffix(file, "_test.rego") {
			continue
		}
		if in := path.Base(path.Dir(file)); in != area {
			area = in
			names = append(names, area)
		}
		names = append(names, area+"."+strings.TrimSuffix(path.Base(file), ".rego"))
	}
	return names
}

// allRuleNames adds the rules of the tool's own, which cannot be chosen.
func allRuleNames(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
	names := ruleNames()
	for _, r := range judge.Own() {
		names = append(names, r.ID)
	}
	return names, cobra.ShellCompDirectiveNoFileComp
}

// specFiles completes spec files and folders.
func specFiles(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
	return []string{"toml"}, cobra.ShellCompDirectiveFilterFileExt
}
