package main

import (
	"fmt"
	"runtime"
	"runtime/debug"

	"github.com/spf13/cobra"
)

// version is that of the module, as the build recorded it: the tag that was
// built, or one that Go makes of the last tag and the commit.
func version() string {
	if info, ok := debug.ReadBuildInfo(); ok && info.Main.Version != "" {
		return info.Main.Version
	}
	return "(devel)"
}

// commit says from which commit a build is, if the build recorded it.
func commit(info *debug.BuildInfo) string {
	var revision, changed string
	for _, s := range info.Settings {
		switch {
		case s.Key == "vcs.revision":
			revision = ", commit " + s.Value
		case s.Key == "vcs.modified" && s.Value == "true":
			changed = " with changes"
		}
	}
	if revision == "" {
		return ""
	}
	return revision + changed
}

func newVersion() *cobra.Command {
	return &cobra.Command{
		Use:     "version",
		Short:   "Print the version",
		Long:    "Version prints the version of fitup, the version of Go that built it, what it runs\non and, if the build recorded it, the commit.",
		Example: "  fitup version",
		Args:    arguments(0, 0),
		RunE: func(cmd *cobra.Command, _ []string) error {
			_, err := fmt.Fprintln(cmd.OutOrStdout(), versionLine())
			return err
		},
	}
}

// versionLine is what somebody who reports a fault is asked for.
func versionLine() string {
	of := ""
	if info, ok := debug.ReadBuildInfo(); ok {
		of = commit(info)
	}
	return fmt.Sprintf("fitup %s %s %s/%s%s", version(), runtime.Version(), runtime.GOOS, runtime.GOARCH, of)
}
