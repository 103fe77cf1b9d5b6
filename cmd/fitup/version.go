package main

import (
	"fmt"
	"runtime"
	"runtime/debug"

	"github.com/spf13/cobra"
)

// version is that of the module, as the build recorded it.
func version() string {
	if info, ok := debug.ReadBuildInfo(); ok && info.Main.Version != "" {
		return info.Main.Version
	}
	return "(devel)"
}

func newVersion() *cobra.Command {
	return &cobra.Command{
		Use:     "version",
		Short:   "Print the version",
		Long:    "Version prints the version of fitup, the version of Go that built it, and what it runs on.",
		Example: "  fitup version",
		Args:    arguments(0, 0),
		Run: func(cmd *cobra.Command, _ []string) {
			fmt.Fprintf(cmd.OutOrStdout(), "fitup %s %s %s/%s\n", version(), runtime.Version(), runtime.GOOS, runtime.GOARCH)
		},
	}
}
