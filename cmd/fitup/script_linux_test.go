package main

import (
	"runtime"

	"github.com/rogpeppe/go-internal/testscript"
	"golang.org/x/sys/unix"
)

func init() { scriptCommands["humble"] = humble }

// humble takes from root, for the programs that the rest of a script runs, the right
// to read and write what its permissions refuse. The thread that it is taken from
// ends with the script.
func humble(ts *testscript.TestScript, _ bool, _ []string) {
	runtime.LockOSThread()
	for _, right := range []uintptr{unix.CAP_DAC_OVERRIDE, unix.CAP_DAC_READ_SEARCH} {
		ts.Check(unix.Prctl(unix.PR_CAPBSET_DROP, right, 0, 0, 0))
	}
}
