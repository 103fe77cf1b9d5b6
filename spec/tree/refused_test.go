//go:build unix

package tree

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// TestRefused holds what a folder may hold that no spec can be.
func TestRefused(t *testing.T) {
	away := folder(t, map[string]string{"secret.toml": "secret", "more/secret.toml": "secret"})
	root := folder(t, map[string]string{
		".git/HEAD":        "",
		"sub/out.toml":     "-> ../../" + filepath.Base(away) + "/secret.toml",
		"sub/up":           "-> ../..",
		"sub/through.toml": "-> up/secret.toml",
		"absolute.toml":    "-> " + away + "/secret.toml",
		"round.toml":       "-> around.toml",
		"around.toml":      "-> round.toml",
		"dangling.toml":    "-> absent.toml",
		"dangling":         "-> absent",
		"folder.toml/x.md": "",
		"device.toml":      "-> /dev/zero",
		"good.toml":        "good",
		"closed.toml":      "closed",
		"closed/in.toml":   "closed",
	})
	if err := syscall.Mkfifo(filepath.Join(root, "pipe.toml"), 0o644); err != nil {
		t.Fatal(err)
	}
	tr, _, err := Open(root)
	if err != nil {
		t.Fatal(err)
	}
	const leads = " leads out of the root; use a link that stays inside it, or the file itself"
	const absolute = " leads to an absolute path; use a relative link that stays inside the root, or the file itself"
	want := map[string]string{
		"absolute.toml":    "absolute.toml: the link absolute.toml" + absolute,
		"around.toml":      "around.toml: it goes through more than 40 links; let one lead straight to the file",
		"dangling.toml":    "dangling.toml: there is no such file or folder",
		"device.toml":      "device.toml: the link device.toml" + absolute,
		"folder.toml":      "folder.toml: this is a folder; a spec is a regular file",
		"pipe.toml":        "pipe.toml: this is a named pipe; a spec is a regular file",
		"round.toml":       "round.toml: it goes through more than 40 links; let one lead straight to the file",
		"sub/out.toml":     "sub/out.toml: the link sub/out.toml" + leads,
		"sub/through.toml": "sub/through.toml: the link sub/up" + leads,
	}
	for name, text := range want {
		if got, err := tr.Read(name); message(err) != text || got != nil {
			t.Errorf("Read(%q) is %q, %q; want %q", name, got, message(err), text)
		}
	}
	if _, err := tr.Specs("sub/up", nil); message(err) != "sub/up: the link sub/up"+leads {
		t.Error(err)
	}

	names, err := tr.Specs(".", []string{"closed.toml", "closed"})
	if diff := cmp.Diff([]string{"good.toml"}, names); diff != "" {
		t.Error(diff)
	}
	var all []string
	for _, name := range []string{"absolute.toml", "around.toml", "dangling.toml", "device.toml", "folder.toml", "pipe.toml", "round.toml", "sub/out.toml", "sub/through.toml"} {
		all = append(all, want[name])
	}
	if diff := cmp.Diff(strings.Join(all, "\n"), message(err)); diff != "" {
		t.Error(diff)
	}

	t.Run("permission", func(t *testing.T) {
		if os.Geteuid() == 0 {
			t.Skip("nothing is closed to root")
		}
		for _, name := range []string{"closed.toml", "closed"} {
			at := filepath.Join(root, name)
			if err := os.Chmod(at, 0); err != nil {
				t.Fatal(err)
			}
			t.Cleanup(func() { os.Chmod(at, 0o755) })
		}
		const permit = ": reading it is not permitted; give yourself the right to read it"
		if _, err := tr.Read("closed.toml"); message(err) != "closed.toml"+permit || !errors.Is(err, fs.ErrPermission) {
			t.Error(err)
		}
		if _, err := tr.Specs("closed", nil); message(err) != "closed"+permit {
			t.Error(err)
		}
	})
}
