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

// complete offers words as the values of a flag.
func complete(cmd *cobra.Command, flag string, words ...string) {
	completeWith(cmd, flag, func(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
		return words, cobra.ShellCompDirectiveNoFileComp
	})
}

// completeWith is complete with what is looked up when it is wanted.
func completeWith(cmd *cobra.Command, flag string, look cobra.CompletionFunc) {
	if err := cmd.RegisterFlagCompletionFunc(flag, look); err != nil {
		panic(err) // the flag is not there: a mistake in this program
	}
}

// ruleList completes the last name of a list with commas.
func ruleList(_ *cobra.Command, _ []string, word string) ([]string, cobra.ShellCompDirective) {
	before := word[:strings.LastIndex(word, ",")+1]
	names := ruleNames()
	for i := range names {
		names[i] = before + names[i]
	}
	return names, cobra.ShellCompDirectiveNoFileComp
}

// allRuleNames adds the rules of the tool's own, which cannot be chosen.
func allRuleNames(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
	names := ruleNames()
	for _, r := range judge.Own() {
		names = append(names, r.ID)
	}
	return names, cobra.ShellCompDirectiveNoFileComp
}

// completeFiles completes flags that take spec files.
func completeFiles(cmd *cobra.Command, flags ...string) {
	for _, flag := range flags {
		if err := cmd.MarkFlagFilename(flag, "toml"); err != nil {
			panic(err) // the flag is not there: a mistake in this program
		}
	}
}

// completeFolders completes flags that take folders.
func completeFolders(cmd *cobra.Command, flags ...string) {
	for _, flag := range flags {
		if err := cmd.MarkFlagDirname(flag); err != nil {
			panic(err) // the flag is not there: a mistake in this program
		}
	}
}

// addCompletion adds the command that prints completion scripts. Left to itself
// it prints its help for a shell that it does not know.
func addCompletion(root *cobra.Command) {
	root.SetCompletionCommandGroupID(groupOther)
	root.InitDefaultCompletionCmd()
	cmd, _, err := root.Find([]string{"completion"})
	if err != nil {
		panic(err) // it has just been added
	}
	cmd.Use = "completion bash|zsh|fish|powershell"
	cmd.Short = "Print a script that completes commands, rules and files"
	cmd.Args = arguments(0, 1)
	cmd.RunE = func(cmd *cobra.Command, args []string) error {
		if len(args) > 0 {
			return callErrorf("%q is no shell that can be completed in; write bash, zsh, fish or powershell", args[0])
		}
		return cmd.Help()
	}
}

// specFiles completes spec files and folders.
func specFiles(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
	return []string{"toml"}, cobra.ShellCompDirectiveFilterFileExt
}
