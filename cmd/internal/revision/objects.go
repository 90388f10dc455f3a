package revision

import (
	"bufio"
	"bytes"
	"errors"
	"fmt"
	"io"
	"os/exec"
	"slices"
	"strconv"
	"strings"

	"vivary/plan"
)

// The kinds of an entry of a tree, as git writes them.
const (
	folderMode = "40000"
	linkMode   = "120000"
	moduleMode = "160000" // another repository
)

// entry is what a tree says of one name.
type entry struct{ name, mode, id string }

// listing is a tree of git: what stands in a folder, by name.
type listing []entry

func (l listing) find(name string) (entry, bool) {
	i, found := slices.BinarySearchFunc(l, name, func(e entry, name string) int { return strings.Compare(e.name, name) })
	if !found {
		return entry{}, false
	}
	return l[i], true
}

// blob is the contents of a file.
type blob struct {
	text []byte // nil where it is larger than what is read
	size int64
}

// store keeps what was read, by the ids of git, which are sums over the contents.
type store struct {
	folders map[string]listing
	files   map[string]blob
	size    int
}

// maxKept bounds what is kept from one revision to the next, in bytes. Beyond it all is
// begun anew.
const maxKept = 2 * plan.MaxBytes

// maxFolder bounds one tree, in bytes: so large is one with all the entries that are looked
// through, under long names.
const maxFolder = 64 << 20

func (s *store) begin() {
	if s.folders == nil || s.size > maxKept {
		*s = store{map[string]listing{}, map[string]blob{}, 0}
	}
}

// batch reads objects, by a process that is begun when the first is asked for.
type batch struct {
	r     *Repo
	run   *exec.Cmd
	in    io.WriteCloser
	out   *bufio.Reader
	words bounded
}

func (b *batch) start() (err error) {
	b.words.Reset()
	b.run = b.r.command("cat-file", "--batch")
	b.run.Stderr = &b.words
	if b.in, err = b.run.StdinPipe(); err != nil {
		return err
	}
	out, err := b.run.StdoutPipe()
	if err != nil {
		return err
	}
	b.out = bufio.NewReaderSize(out, 64<<10)
	if err = b.run.Start(); err != nil {
		b.run = nil
	}
	return err
}

// end ends the process. What it says then is of no interest, but where it gave up.
func (b *batch) end() error {
	if b.run == nil {
		return nil
	}
	_ = b.in.Close()
	err := b.run.Wait()
	b.run = nil
	return err
}

// object returns the contents of one. Of one that is larger than most only the size is read.
func (b *batch) object(id, kind string, most int64) (blob, error) {
	if b.run == nil {
		if err := b.start(); err != nil {
			return blob{}, b.r.failed(err, "")
		}
	}
	if _, err := io.WriteString(b.in, id+"\n"); err != nil {
		return blob{}, b.broken(id)
	}
	head, err := b.out.ReadString('\n')
	if err != nil {
		return blob{}, b.broken(id)
	}
	part := strings.Fields(head)
	if len(part) != 3 {
		return blob{}, b.r.missing(id)
	}
	size, err := strconv.ParseInt(part[2], 10, 64)
	if err != nil || part[1] != kind {
		return blob{}, fmt.Errorf("git says of the object %s what is not understood: %q", id, strings.TrimSpace(head))
	}
	if size > most {
		_ = b.run.Process.Kill() // or it would write all of it
		_ = b.end()
		return blob{size: size}, nil
	}
	text := make([]byte, size+1)
	if _, err := io.ReadFull(b.out, text); err != nil {
		return blob{}, b.broken(id)
	}
	return blob{text[:size:size], size}, nil
}

// broken says why the process has ended.
func (b *batch) broken(id string) error {
	err := b.end()
	if err == nil {
		err = errors.New("it ended before it was done")
	}
	if b.r.ctx.Err() == nil && b.r.partial() {
		return b.r.missing(id)
	}
	return b.r.failed(err, b.words.String())
}

// partial reports whether the clone leaves objects where it came from.
func (r *Repo) partial() bool {
	said, err := r.git("config", "--type=bool", "--get-regexp", `^remote\..*\.promisor$`)
	return err == nil && strings.Contains(said, " true")
}

func (r *Repo) missing(id string) error {
	if r.partial() {
		return errors.New("this is a partial clone, and what the files held at that revision is not on this machine: git fetch --refetch --no-filter brings it")
	}
	return fmt.Errorf("the repository has lost the object %s: git fsck says what is missing", id)
}

// folder returns what stands in a folder.
func (b *batch) folder(id string) (listing, error) {
	s := &b.r.kept
	if l, have := s.folders[id]; have {
		return l, nil
	}
	read, err := b.object(id, "tree", maxFolder)
	if err != nil {
		return nil, err
	}
	if read.size > maxFolder {
		return nil, errors.New("a folder of that revision holds more files than are looked through")
	}
	l, err := listingOf(read.text, len(id)/2)
	if err != nil {
		return nil, err
	}
	s.folders[id] = l
	s.size += len(read.text)
	return l, nil
}

// file returns the contents of a file, or of a link.
func (b *batch) file(id string) (blob, error) {
	s := &b.r.kept
	if f, have := s.files[id]; have {
		return f, nil
	}
	f, err := b.object(id, "blob", plan.MaxFile)
	if err != nil {
		return blob{}, err
	}
	s.files[id] = f
	s.size += len(f.text)
	return f, nil
}

// listingOf reads a tree: of each entry the mode, a blank, the name, a zero and the id, of so
// many bytes. Names that no folder can have are left out, as git itself leaves them out of a
// work tree.
func listingOf(text []byte, width int) (out listing, err error) {
	for len(text) > 0 {
		mode, rest, ok := bytes.Cut(text, []byte{' '})
		name, rest, also := bytes.Cut(rest, []byte{0})
		if !ok || !also || len(rest) < width {
			return nil, errors.New("the repository has a folder that cannot be read: git fsck says what is wrong")
		}
		e := entry{string(name), strings.TrimLeft(string(mode), "0"), fmt.Sprintf("%x", rest[:width])}
		if e.name != "" && e.name != "." && e.name != ".." && !strings.ContainsRune(e.name, '/') {
			out = append(out, e)
		}
		text = rest[width:]
	}
	slices.SortFunc(out, func(a, b entry) int { return strings.Compare(a.name, b.name) })
	return out, nil
}
