package tree

import (
	"bufio"
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"os/exec"
	"slices"
	"strconv"
	"strings"
	"sync"

	"fitup/spec/source"
)

// A Repository reads what git holds of a work tree: revisions and the index.
// It never touches the work tree, the index or a branch. Names go to git and
// come from it with a NUL between them, and texts are asked for by object id, so
// that no name can pass for an option, a pattern or an answer.
type Repository struct {
	root  string
	texts batch
}

// OpenRepository returns the repository whose work tree has its top at root.
// Close it after use.
func OpenRepository(root string) (*Repository, error) {
	if _, err := exec.LookPath("git"); err != nil {
		return nil, refusal{"git is not found; install it, or put it on the PATH", err}
	}
	r := &Repository{root: root}
	r.texts.start = func() *exec.Cmd { return r.command("cat-file", "--batch") }
	said, err := r.git("rev-parse", "--is-bare-repository", "--is-inside-work-tree", "--show-prefix")
	bare, rest, _ := strings.Cut(string(said), "\n")
	inside, prefix, _ := strings.Cut(rest, "\n")
	switch {
	case bare == "true":
		return nil, fmt.Errorf("%s is a bare repository, with no files of its own; clone it and work in the clone", root)
	case err != nil && strings.Contains(err.Error(), "not a git repository"):
		return nil, fmt.Errorf("%s is in no git repository; begin one with `git init`, or compare nothing", root)
	case err != nil:
		return nil, fmt.Errorf("%s: git cannot read it: %w", root, err)
	case inside != "true" || strings.TrimSuffix(prefix, "\n") != "":
		return nil, fmt.Errorf("%s is not the top of a work tree for git; unset GIT_DIR and GIT_WORK_TREE, or begin there", root)
	}
	return r, nil
}

// Close ends the process that texts are read from.
func (r *Repository) Close() error { return r.texts.close() }

// command is a call of git that writes nothing and runs no program that the
// repository's settings name.
func (r *Repository) command(args ...string) *exec.Cmd {
	cmd := exec.Command("git", append([]string{"-C", r.root, "-c", "core.fsmonitor=false"}, args...)...)
	cmd.Env = append(os.Environ(), "LC_ALL=C", "GIT_OPTIONAL_LOCKS=0", "GIT_TERMINAL_PROMPT=0")
	return cmd
}

// git returns what a call of git prints. Its error is git's own words.
func (r *Repository) git(args ...string) ([]byte, error) {
	cmd := r.command(args...)
	var wrong strings.Builder
	cmd.Stderr = &wrong
	out, err := cmd.Output()
	if err != nil {
		line, _, _ := strings.Cut(strings.TrimSpace(wrong.String()), "\n")
		if line = strings.TrimPrefix(line, "fatal: "); line != "" {
			err = refusal{line, err}
		}
	}
	return out, err
}

// Revision returns the files of a commit and the commit's id. A revision is
// named as git names it; A...B is the last commit that A and B share, and an
// end that is left out is HEAD.
func (r *Repository) Revision(rev string) (*Tree, string, error) {
	id, err := r.commit(rev)
	if err != nil {
		return nil, "", err
	}
	listed, err := r.git("ls-tree", "-r", "-z", "--full-tree", id)
	if err != nil {
		return nil, "", fmt.Errorf("%s: git cannot list it: %w", rev, err)
	}
	s, err := r.snapshot(listed, 2)
	return &Tree{FS: s, Name: rev, Root: r.root}, id, err
}

// Index returns the files as the next commit would hold them.
func (r *Repository) Index() (*Tree, error) {
	listed, err := r.git("ls-files", "--stage", "-z")
	if err != nil {
		return nil, fmt.Errorf("git cannot list the index: %w", err)
	}
	s, err := r.snapshot(listed, 1)
	return &Tree{FS: s, Name: "index", Root: r.root}, err
}

// commit finds the id of the commit that a revision means.
func (r *Repository) commit(rev string) (string, error) {
	from, to, parted := strings.Cut(rev, "...")
	if !parted || strings.Contains(to, "..") {
		return r.resolve(rev)
	}
	var ends [2]string
	for i, end := range []string{from, to} {
		if end == "" {
			end = "HEAD"
		}
		id, err := r.resolve(end)
		if err != nil {
			return "", err
		}
		ends[i] = id
	}
	base, err := r.git("merge-base", ends[0], ends[1])
	if id := strings.TrimSpace(string(base)); err == nil && id != "" {
		return id, nil
	}
	return "", fmt.Errorf("%s: the two share no commit; %s", rev, r.remedy("name one revision to compare with"))
}

func (r *Repository) resolve(rev string) (string, error) {
	switch {
	case rev == "" || strings.HasPrefix(rev, "-") || strings.ContainsAny(rev, "\x00\n"):
		return "", fmt.Errorf("%q is no revision; name a branch, a tag or a commit", rev)
	case strings.Contains(rev, ".."):
		return "", fmt.Errorf("%q is a range; name one revision, or write A...B for the last commit that two share", rev)
	}
	said, err := r.git("rev-parse", "--verify", "--quiet", rev+"^{commit}")
	if id := strings.TrimSpace(string(said)); err == nil && id != "" {
		return id, nil
	}
	if _, err := r.git("rev-parse", "--verify", "--quiet", "HEAD"); err != nil && (rev == "HEAD" || rev == "@") {
		return "", fmt.Errorf("%s: there is no commit yet; commit once, and compare with that", rev)
	}
	return "", fmt.Errorf("%s: git knows no such revision; %s", rev, r.remedy("`git fetch` it, or name a branch, a tag or a commit that `git log` shows"))
}

// remedy is what to do about a commit that is not there: in a shallow clone,
// which CI makes, history is cut off.
func (r *Repository) remedy(otherwise string) string {
	shallow, err := r.git("rev-parse", "--is-shallow-repository")
	if err == nil && strings.TrimSpace(string(shallow)) == "true" {
		return "this clone is shallow and lacks history: `git fetch --unshallow` (in CI: check out with the whole history), and fetch the branch by its name"
	}
	return otherwise
}

// A Change is a file that is not as it was. Was is "" if it is new, Is if it is
// gone; they differ if it was moved.
type Change struct{ Was, Is string }

// Changes lists the files that differ between a commit and the index, or the
// work tree, sorted by what they are called now. Files that git was told to
// ignore are not part of a change. A move that git was not told of, with `git
// add` or `git mv`, is a file gone and a new one.
func (r *Repository) Changes(commit string, staged bool) ([]Change, error) {
	// Not diff-index: it takes a file whose time alone has changed for one that differs.
	args := []string{"-c", "diff.autoRefreshIndex=true", "diff", "-z", "-M", "--name-status", "--no-ext-diff", "--no-textconv", "--no-relative", "--ignore-submodules=all"}
	if staged {
		args = append(args, "--cached")
	}
	listed, err := r.git(append(args, commit, "--")...)
	if err != nil {
		return nil, fmt.Errorf("git cannot compare with %s: %w", commit, err)
	}
	var all []Change
	for fields := nulFields(listed); len(fields) >= 2; {
		switch fields[0][0] {
		case 'R':
			if len(fields) < 3 {
				return nil, errors.New("git ended amid a list of changes")
			}
			all, fields = append(all, Change{fields[1], fields[2]}), fields[1:]
		case 'A':
			all = append(all, Change{"", fields[1]})
		case 'D':
			all = append(all, Change{fields[1], ""})
		default:
			all = append(all, Change{fields[1], fields[1]})
		}
		fields = fields[2:]
	}
	if !staged {
		listed, err := r.git("ls-files", "-z", "--others", "--exclude-standard")
		if err != nil {
			return nil, fmt.Errorf("git cannot list new files: %w", err)
		}
		for _, name := range nulFields(listed) {
			all = append(all, Change{"", name})
		}
	}
	slices.SortFunc(all, func(a, b Change) int {
		return strings.Compare(a.Is+"\x00"+a.Was, b.Is+"\x00"+b.Was)
	})
	return all, nil
}

func nulFields(listed []byte) []string {
	if len(listed) == 0 {
		return nil
	}
	return strings.Split(strings.TrimSuffix(string(listed), "\x00"), "\x00")
}

// A batch is a conversation with one `git cat-file --batch`, begun when the
// first text is asked for.
type batch struct {
	start func() *exec.Cmd

	mu     sync.Mutex // one question at a time
	cmd    *exec.Cmd
	in     io.WriteCloser
	out    *bufio.Reader
	broken error // the conversation can go on no more
}

// read returns the text of an object, or as much of it as shows that it is too
// large for a spec, and its whole size.
func (b *batch) read(id string) (text []byte, size int64, err error) {
	b.mu.Lock()
	defer b.mu.Unlock()
	if b.broken == nil && b.cmd == nil {
		b.broken = b.begin()
	}
	if b.broken != nil {
		return nil, 0, b.broken
	}
	text, size, err = b.ask(id)
	if _, missing := err.(missing); err != nil && !missing {
		b.broken = fmt.Errorf("git cat-file: %w", err)
		err = b.broken
	}
	return text, size, err
}

func (b *batch) begin() error {
	b.cmd = b.start()
	in, err := b.cmd.StdinPipe()
	if err != nil {
		return err
	}
	out, err := b.cmd.StdoutPipe()
	if err != nil {
		return err
	}
	b.in, b.out = in, bufio.NewReader(out)
	return b.cmd.Start()
}

// missing is an object that the repository should have.
type missing struct{ id string }

func (m missing) Error() string {
	return "git has not got object " + m.id + "; `git fetch` what the clone left out, or try `git fsck`"
}

func (b *batch) ask(id string) (text []byte, size int64, err error) {
	if _, err := io.WriteString(b.in, id+"\n"); err != nil {
		return nil, 0, err
	}
	head, err := b.out.ReadString('\n')
	if err != nil {
		return nil, 0, err
	}
	fields := strings.Fields(head)
	if len(fields) == 2 {
		return nil, 0, missing{id}
	}
	if len(fields) != 3 {
		return nil, 0, fmt.Errorf("unexpected answer %q", head)
	}
	if size, err = strconv.ParseInt(fields[2], 10, 64); err != nil {
		return nil, 0, err
	}
	text = make([]byte, min(size, source.MaxSize+1))
	if _, err := io.ReadFull(b.out, text); err != nil {
		return nil, 0, err
	}
	if _, err := io.CopyN(io.Discard, b.out, size-int64(len(text))); err != nil {
		return nil, 0, err
	}
	end, err := b.out.ReadByte()
	if err == nil && end != '\n' {
		err = fmt.Errorf("unexpected byte %q after a text", end)
	}
	return text, size, err
}

func (b *batch) close() error {
	b.mu.Lock()
	defer b.mu.Unlock()
	if b.cmd == nil || b.cmd.Process == nil {
		return nil
	}
	b.in.Close()
	err := b.cmd.Wait()
	b.cmd, b.broken = nil, os.ErrClosed
	return err
}

// snapshot makes a file system of a list whose entries are fields, a tab and a
// name: mode and, at place at, the object id. In the index a file in conflict
// has several entries, with a stage other than 0.
func (r *Repository) snapshot(listed []byte, at int) (*snapshot, error) {
	s := newSnapshot(&r.texts)
	for entry := range bytes.SplitSeq(bytes.TrimSuffix(listed, []byte{0}), []byte{0}) {
		if len(entry) == 0 {
			continue
		}
		about, name, ok := strings.Cut(string(entry), "\t")
		fields := strings.Fields(about)
		if !ok || len(fields) != 3 {
			return nil, fmt.Errorf("unexpected answer %q of git", entry)
		}
		if !belowRoot(name) {
			return nil, fmt.Errorf("git holds a file by the name %q, which leads elsewhere; try `git fsck`", name)
		}
		s.add(name, fields[0], fields[at], at == 1 && fields[2] != "0")
	}
	if name, found := s.mixed(); found {
		return nil, fmt.Errorf("git holds %q as a file and as a folder; try `git fsck`", name)
	}
	s.sort()
	return s, nil
}

// belowRoot reports whether a name from git is one of a file below the root: git
// itself refuses others, but not from a repository that was made to hold one. A
// name that is not UTF-8 is no other, though no file of that name can be read.
func belowRoot(name string) bool {
	name = strings.ToValidUTF8(name, "?")
	return fs.ValidPath(name) && name != "."
}
