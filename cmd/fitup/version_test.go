package main

import (
	"runtime/debug"
	"testing"
)

func TestCommit(t *testing.T) {
	revision := debug.BuildSetting{Key: "vcs.revision", Value: "f00d"}
	for want, settings := range map[string][]debug.BuildSetting{
		"":                           {{Key: "vcs.modified", Value: "true"}, {Key: "GOOS", Value: "linux"}},
		", commit f00d":              {{Key: "GOOS", Value: "linux"}, revision, {Key: "vcs.modified", Value: "false"}},
		", commit f00d with changes": {revision, {Key: "vcs.modified", Value: "true"}},
	} {
		if got := commit(&debug.BuildInfo{Settings: settings}); got != want {
			t.Errorf("%v: %q, want %q", settings, got, want)
		}
	}
}
