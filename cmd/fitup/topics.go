package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"fitup/policies/config"
)

// newHelp prints the help of a command, or a topic.
func newHelp() *cobra.Command {
	return &cobra.Command{
		Use:     "help [COMMAND|TOPIC]",
		Short:   "Print the help of a command, or a topic",
		Long:    "Help prints the help of a command, or one of the topics that `fitup help` lists.",
		Example: "  fitup help check\n  fitup help exit-codes",
		ValidArgsFunction: func(cmd *cobra.Command, args []string, _ string) ([]string, cobra.ShellCompDirective) {
			var all []string
			if of, rest, err := cmd.Root().Find(args); err == nil && len(rest) == 0 {
				for _, each := range of.Commands() {
					if each.IsAvailableCommand() || each.IsAdditionalHelpTopicCommand() {
						all = append(all, cobra.CompletionWithDesc(each.Name(), each.Short))
					}
				}
			}
			return all, cobra.ShellCompDirectiveNoFileComp
		},
		RunE: func(cmd *cobra.Command, args []string) error {
			of, rest, err := cmd.Root().Find(args)
			if err != nil || len(rest) > 0 {
				return unknownCommand(of, rest)
			}
			return of.Help()
		},
	}
}

// Commands without Run are topics of `fitup help`.

func newHelpExitCodes() *cobra.Command {
	return &cobra.Command{
		Use:   "exit-codes",
		Short: "What the exit codes mean",
		Long: `The exit code is the same in every format. The highest that applies is given.

  0   nothing at or above the fail level
  1   findings at or above the fail level; with --strict also what could not be
      told
  2   a spec or the call is wrong: an error in a file, a flag or a path that is
      not right, no spec found, the name of no rule
  3   the tool itself failed: a rule is broken, also one of your own; the report
      could not be printed
  130 ended by Ctrl-C: no file is left half written

An error in one file does not stop the others from being judged: the report
shows both, and the code is 2. The fail level is fault unless --fail-on or the
configuration says otherwise.`,
	}
}

func newHelpConfig() *cobra.Command {
	var keys strings.Builder
	names, docs := config.Keys()
	for i, name := range names {
		fmt.Fprintf(&keys, "  %s\n      %s\n", name, docs[i])
	}
	return &cobra.Command{
		Use:   "config",
		Short: "What .fitup.toml may say",
		Long: `fitup check reads one configuration: the nearest .fitup.toml from the path that
is judged upward, as far as the top of the repository. Files are never merged.
--config FILE takes another, --config none takes none. Its keys are:

` + keys.String() + `
An unknown key is an error. Whatever the file takes away from the judgement is
told at the end of every report.

  fail-on = "fault"
  exclude = ["old-*"]
  rules   = ["rules"]
  skip    = ["service"]

  [limits.lines.support_spacing]
  free_run = "20 in"`,
	}
}

func newHelpBaseline() *cobra.Command {
	return &cobra.Command{
		Use:   "baseline",
		Short: "How to take fitup up on an old fleet",
		Long: `A baseline is a file that lists the findings that were there when you began, so
that what is new stands out. Make it once, commit it, and judge with it:

  fitup check cars --baseline cars/old.txt --write-baseline
  fitup check cars --baseline cars/old.txt

It covers a finding by rule, case, file and subject, so that it stays covered
when the file is edited elsewhere. It never covers a danger. It holds until one
day for the whole file, six months on unless you write another; after it all that
it covered is in force again. A line that covers nothing any more is told of.

Where the file is there, --write-baseline takes out the lines of what has been
mended, and never adds one: what is new is mended, or waived with a reason. Lines
of cars that the call was not about are left alone.

The file is made of lines, sorted, so that changes merge: remarks that begin with
#, one line

  until 2027-03-31

and one line for each finding.`,
	}
}
