package fleet

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"time"

	"preflash/parser"
)

// What git is asked, and how, so that nothing in a repository can make it run
// or wait:
//
// git works in a new, empty repository of our own, and is told where the
// objects of the real one are (GIT_OBJECT_DIRECTORY, git(1)). So it never reads
// a configuration, an attribute, an index, a hook or a working tree of anybody
// else's: no filter, monitor, pager, text conversion, credential helper or
// included file is known to it, by whatever name. Branches and tags are files
// that we read ourselves. It is asked two things: which commit a name is
// (cat-file), and what is in its tree (ls-tree). It fetches nothing, replaces
// no object and takes no lock. What is left that could stop it, such as a FIFO
// among the objects, ends with the time limit.

// repository is the one that the nearest .git gives.
type repository struct {
	top     string // the folder that holds .git, free of links
	own     string // its git folder: HEAD
	common  string // the git folder shared by all working trees: refs, objects
	sha256  bool
	scratch string // our own empty repository

	ctx  context.Context
	stop context.CancelFunc
}

// gitLimit is how long git may take for all questions about one repository.
var gitLimit = 10 * time.Second // a variable for the test that waits for it

const (
	maxGitFile   = 64 << 20 // bytes of a packed-refs file
	maxGitAnswer = 256 << 20
	maxSymrefs   = 5 // as git has it
)

// openRepository finds the repository that holds a folder, which is free of
// links. Close takes away what it made.
func openRepository(dir string) (*repository, error) {
	top := parser.RepositoryOf(dir)
	if top == "" {
		return nil, fmt.Errorf("--changed-since needs a git repository, and %s lies in none",
			filepath.ToSlash(dir))
	}
	r := &repository{top: top}
	if err := r.locate(); err != nil {
		return nil, fmt.Errorf("the git repository of %s: %w", filepath.ToSlash(top), err)
	}
	head, err := r.ref("HEAD")
	if err == nil && head == "" {
		err = errors.New("its HEAD names no commit yet; make one first")
	}
	if err != nil {
		return nil, fmt.Errorf("the git repository of %s: %w", filepath.ToSlash(top), err)
	}
	r.sha256 = len(head) == 64
	r.ctx, r.stop = context.WithTimeout(context.Background(), gitLimit)
	if err := r.makeScratch(head); err != nil {
		r.Close()
		return nil, err
	}
	return r, nil
}

// Close ends the time limit and takes away what was made.
func (r *repository) Close() {
	r.stop()
	_ = os.RemoveAll(r.scratch) // an empty folder left in the temporary one does no harm
}

// locate finds the git folders, and refuses those of another owner: who owns
// them could make git read what it is not meant to.
func (r *repository) locate() error {
	r.own = filepath.Join(r.top, ".git")
	info, err := os.Stat(r.own)
	if err != nil {
		return err
	}
	if !info.IsDir() {
		text, err := readGitFile(r.own, 4096)
		if err != nil {
			return err
		}
		target, ok := strings.CutPrefix(text, "gitdir: ")
		if !ok {
			return errors.New("its file .git names no folder (gitdir: …)")
		}
		r.own = within(r.top, target)
	}
	r.common = r.own
	if text, err := readGitFile(filepath.Join(r.own, "commondir"), 4096); err == nil {
		r.common = within(r.own, text)
	}
	gitEntry, objects := filepath.Join(r.top, ".git"), filepath.Join(r.common, "objects")
	for _, name := range []string{gitEntry, r.own, r.common, objects} {
		if err := ownedByUser(name); err != nil {
			return err
		}
	}
	return nil
}

// within gives a path that is written in a folder.
func within(dir, name string) string {
	if name = filepath.FromSlash(name); filepath.IsAbs(name) {
		return name
	}
	return filepath.Join(dir, name)
}

var errOwner = errors.New("it belongs to another user, so git is not asked about it; run preflash as its " +
	"owner, or change the owner (chown)")

// readGitFile reads a small file of git's own, without its line end.
func readGitFile(name string, most int64) (string, error) {
	file, err := os.OpenFile(name, os.O_RDONLY|syscall.O_NONBLOCK, 0)
	if err != nil {
		return "", err
	}
	defer file.Close()
	info, err := file.Stat()
	switch {
	case err != nil:
		return "", err
	case !info.Mode().IsRegular():
		return "", fmt.Errorf("its %s is no regular file", filepath.Base(name))
	case info.Size() > most:
		return "", fmt.Errorf("its %s is larger than %d bytes", filepath.Base(name), most)
	}
	text, err := io.ReadAll(io.LimitReader(file, most))
	return strings.TrimRight(string(text), "\r\n"), err
}

// ref gives the hash that a ref of this full name holds; "" where there is
// none.
func (r *repository) ref(name string) (string, error) {
	for range maxSymrefs {
		if !filepath.IsLocal(filepath.FromSlash(name)) {
			return "", nil
		}
		dir := r.common
		if !strings.HasPrefix(name, "refs/") || strings.HasPrefix(name, "refs/bisect/") ||
			strings.HasPrefix(name, "refs/worktree/") || strings.HasPrefix(name, "refs/rewritten/") {
			dir = r.own // gitrepository-layout(5): what each working tree has for itself
		}
		text, err := readGitFile(filepath.Join(dir, filepath.FromSlash(name)), 4096)
		if err != nil {
			return r.packedRef(name)
		}
		target, symbolic := strings.CutPrefix(text, "ref:")
		if !symbolic {
			// FETCH_HEAD says more
			if text, _, _ = strings.Cut(strings.TrimSpace(text), "\t"); !isHash(text) {
				return "", nil
			}
			return text, nil
		}
		if name = strings.TrimSpace(target); name == "refs/heads/.invalid" {
			return "", errors.New("its branches are kept in a reftable, which is not read; git refs " +
				"migrate --ref-format=files makes files of them")
		}
	}
	return "", nil
}

// packedRef looks a ref up among those that git has put into one file.
func (r *repository) packedRef(name string) (string, error) {
	text, err := readGitFile(filepath.Join(r.common, "packed-refs"), maxGitFile)
	if err != nil && !errors.Is(err, os.ErrNotExist) {
		return "", err
	}
	for line := range strings.Lines(text) {
		if hash, ref, ok := strings.Cut(strings.TrimRight(line, "\r\n"), " "); ok &&
			ref == name && isHash(hash) {
			return hash, nil
		}
	}
	return "", nil
}

// isHash reports whether text is a whole hash of either format.
func isHash(text string) bool {
	return (len(text) == 40 || len(text) == 64) && strings.Trim(text, "0123456789abcdef") == ""
}

// makeScratch makes the empty repository that git works in.
func (r *repository) makeScratch(head string) (err error) {
	if r.scratch, err = os.MkdirTemp("", "preflash-git-"); err != nil {
		return err
	}
	config := "[core]\n\trepositoryformatversion = 0\n\tbare = true\n"
	if r.sha256 {
		config = "[core]\n\trepositoryformatversion = 1\n\tbare = true\n[extensions]\n\tobjectFormat = " +
			"sha256\n"
	}
	for _, folder := range []string{"refs", "objects"} {
		if err := os.Mkdir(filepath.Join(r.scratch, folder), 0o700); err != nil {
			return err
		}
	}
	for name, text := range map[string]string{"config": config, "HEAD": head + "\n"} {
		if err := os.WriteFile(filepath.Join(r.scratch, name), []byte(text), 0o600); err != nil {
			return err
		}
	}
	return nil
}

// commit gives the hash of the commit that a revision names (gitrevisions(7)):
// a hash, a branch or a tag, with ~ and ^ behind it.
func (r *repository) commit(rev string) (string, error) {
	unknown := fmt.Errorf("--changed-since %q names no revision that this repository holds; name a branch, "+
		"a tag or a commit, and fetch it where this is a clone that lacks it%s", rev, r.remedy())
	name, rest := rev, ""
	if n := strings.IndexAny(rev, "~^"); n >= 0 {
		name, rest = rev[:n], rev[n:]
	}
	if name == "@" {
		name = "HEAD"
	}
	if name == "" || strings.ContainsAny(rev, " \t\r\n\x00:") || name[0] == '-' ||
		strings.Contains(name, "@{") {
		return "", unknown
	}
	hash := name
	for _, place := range []string{"*", "refs/*", "refs/tags/*", "refs/heads/*", "refs/remotes/*",
		"refs/remotes/*/HEAD"} {
		found, err := r.ref(strings.Replace(place, "*", name, 1))
		if err != nil {
			return "", err
		}
		if found != "" {
			hash = found
			break
		}
	}
	answer, err := r.ask(hash+rest+"^{commit}\n", "cat-file", "--batch-check=%(objectname) %(objecttype)")
	if err != nil {
		return "", err
	}
	hash, kind, _ := strings.Cut(strings.TrimRight(answer, "\n"), " ")
	if kind != "commit" || !isHash(hash) {
		return "", unknown
	}
	return hash, nil
}

// remedy says how a clone gets what it lacks.
func (r *repository) remedy() string {
	if _, err := os.Stat(filepath.Join(r.common, "shallow")); err == nil {
		return ": it is shallow, and git fetch --unshallow brings the rest (in CI, let the checkout take " +
			"the whole history, depth 0)"
	}
	return ""
}

// entry is what a commit holds under a path.
type entry struct {
	mode string
	hash string
}

// Modes of entries (git-fast-import(1)).
const (
	modeFile       = "100644"
	modeExecutable = "100755"
	modeLink       = "120000"
	modeSubmodule  = "160000"
	modeFolder     = "040000"
)

// snapshot is all that a commit holds.
type snapshot struct {
	entries map[string]entry
	folders map[string][]string // names in each, "" for the top
}

// snapshot lists what a commit holds.
func (r *repository) snapshot(commit string) (*snapshot, error) {
	list, err := r.ask("", "ls-tree", "-r", "-t", "-z", "--full-tree", commit)
	if err != nil {
		return nil, fmt.Errorf("%w%s", err, r.remedy())
	}
	s := &snapshot{make(map[string]entry), make(map[string][]string)}
	for line := range strings.SplitSeq(list, "\x00") {
		if line == "" {
			continue
		}
		about, name, named := strings.Cut(line, "\t")
		fields := strings.Fields(about)
		if !named || len(fields) != 3 {
			return nil, fmt.Errorf("git ls-tree answers %q, which is not what git-ls-tree(1) says", line)
		}
		s.entries[name] = entry{fields[0], fields[2]}
		dir, base := "", name
		if n := strings.LastIndexByte(name, '/'); n >= 0 {
			dir, base = name[:n], name[n+1:]
		}
		s.folders[dir] = append(s.folders[dir], base)
	}
	return s, nil
}

// ask has git answer one question.
func (r *repository) ask(input string, args ...string) (string, error) {
	args = append([]string{"--git-dir=" + r.scratch, "--no-replace-objects", "--no-optional-locks"}, args...)
	cmd := exec.CommandContext(r.ctx, "git", args...)
	cmd.Dir = r.scratch
	cmd.Env = gitEnvironment(filepath.Join(r.common, "objects"))
	cmd.Stdin = strings.NewReader(input)
	stdout, stderr := &limited{most: maxGitAnswer}, &limited{most: 4096}
	cmd.Stdout, cmd.Stderr = stdout, stderr
	ownGroup(cmd)
	cmd.WaitDelay = time.Second
	err := cmd.Run()
	switch {
	case errors.Is(err, exec.ErrNotFound):
		return "", errors.New("--changed-since needs git, which is not installed")
	case r.ctx.Err() != nil:
		return "", fmt.Errorf("git did not answer within %s and was stopped; what it waits for is in %s",
			gitLimit, filepath.ToSlash(r.common))
	case stdout.over:
		return "", fmt.Errorf("git answers with more than %d MiB, which no repository of configurations "+
			"needs", maxGitAnswer>>20)
	case err != nil:
		return "", fmt.Errorf("git %s in %s: %s", args[3], filepath.ToSlash(r.top),
			firstLine(stderr.String()))
	}
	return stdout.String(), nil
}

// gitEnvironment is that of the user, without what steers git.
func gitEnvironment(objects string) []string {
	var list []string
	for _, v := range os.Environ() {
		if len(v) < 4 || !strings.EqualFold(v[:4], "GIT_") {
			list = append(list, v)
		}
	}
	return append(list,
		"GIT_OBJECT_DIRECTORY="+objects,
		"GIT_CONFIG_NOSYSTEM=1", "GIT_CONFIG_GLOBAL="+os.DevNull, "GIT_ATTR_NOSYSTEM=1",
		"GIT_NO_REPLACE_OBJECTS=1", "GIT_NO_LAZY_FETCH=1", "GIT_ALLOW_PROTOCOL=", "GIT_OPTIONAL_LOCKS=0",
		"GIT_TERMINAL_PROMPT=0", "GIT_PAGER=", "LC_ALL=C")
}

// limited keeps so many bytes of what is written, and passes over the rest.
type limited struct {
	bytes.Buffer
	most int
	over bool
}

func (l *limited) Write(p []byte) (int, error) {
	if l.Len()+len(p) > l.most {
		l.over = true
		l.Buffer.Write(p[:l.most-l.Len()])
		return len(p), nil
	}
	return l.Buffer.Write(p)
}

func firstLine(s string) string {
	line, _, _ := strings.Cut(s, "\n")
	return strings.TrimRight(line, "\r")
}
