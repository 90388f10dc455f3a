package revision

import (
	"bytes"
	"cmp"
	"errors"
	"slices"
	"strconv"
	"strings"
)

// Lines are some of a file, from the first to the last, from 1.
type Lines struct{ First, Last int }

// Written says in which revision a stretch of lines came to be as it is: the last one that
// wrote one of them.
type Written struct {
	Commit
	Open    bool // they are not committed yet, and Commit is empty
	Earlier bool // or before it: the clone ends there
}

// around is how many lines beside those that are asked about git looks at: a line that was
// moved with its block is known again, one alone is too short for that.
const around = 12

// Blame says who wrote lines of a file below the folder, which stands there now with that
// text. Lines that were only moved in the file count as written before. Revisions are passed
// over that the configuration says to pass over (blame.ignoreRevsFile).
func (r *Repo) Blame(name string, text []byte, asked []Lines) ([]Written, error) {
	ids, err := r.blamed(name, text, asked)
	var failed *failure
	if errors.As(err, &failed) && failed.says("no such path", "no such ref", "bad revision", "cannot stat path") {
		if _, ignored := r.git("check-ignore", "-q", "--", name); ignored == nil {
			return nil, ErrNoRepo // it is left out of git on purpose
		}
		return slices.Repeat([]Written{{Open: true}}, len(asked)), nil
	}
	if err != nil {
		return nil, err
	}
	var all []string
	for _, id := range ids {
		if !isZero(id) && !slices.Contains(all, id) {
			all = append(all, id)
		}
	}
	commits, err := r.commits(all)
	if err != nil {
		return nil, err
	}
	out := make([]Written, len(asked))
	for i, l := range asked {
		var each []Written
		for n := l.First; n <= l.Last; n++ {
			if id := ids[n]; id != "" {
				each = append(each, Written{Commit: commits[id], Open: isZero(id)})
			}
		}
		out[i] = Latest(each)
		out[i].Earlier = r.shallow && out[i].ID != "" && r.cutAt(out[i].ID)
	}
	return out, nil
}

func isZero(id string) bool { return strings.Trim(id, "0") == "" }

// commits are those of some ids.
func (r *Repo) commits(ids []string) (map[string]Commit, error) {
	out := map[string]Commit{}
	if len(ids) == 0 {
		return out, nil
	}
	said, err := r.gitOf([]byte(strings.Join(ids, "\n")+"\n"), "rev-list", "--no-walk", "--encoding=UTF-8", format, "--stdin")
	if err != nil {
		return nil, err
	}
	for _, c := range commitsOf(said) {
		out[c.ID] = c
	}
	return out, nil
}

// blamed returns the id of the revision of each line that was looked at.
func (r *Repo) blamed(name string, text []byte, asked []Lines) (map[int]string, error) {
	filters, err := r.noFilters()
	if err != nil {
		return nil, err
	}
	lines := bytes.Count(text, []byte{'\n'})
	if len(text) > 0 && text[len(text)-1] != '\n' {
		lines++
	}
	args := append(filters, "blame", "--porcelain", "--no-progress", "--no-textconv", "-M", "--contents", "-")
	for _, l := range asked {
		if l.First < 1 || l.Last < l.First || l.Last > lines {
			return nil, errors.New("these lines are not in the file")
		}
		args = append(args, "-L", strconv.Itoa(max(1, l.First-around))+","+strconv.Itoa(min(lines, l.Last+around)))
	}
	said, err := r.gitOf(text, append(args, "--", name)...)
	if err != nil {
		return nil, err
	}
	ids := map[int]string{}
	for line := range strings.Lines(said) {
		part := strings.Fields(line)
		if line[0] == '\t' || len(part) < 3 || len(part[0]) < 40 {
			continue // the line itself, or what is known of its revision
		}
		if n, err := strconv.Atoi(part[2]); err == nil && strings.Trim(part[0], "0123456789abcdef") == "" {
			ids[n] = part[0]
		}
	}
	return ids, nil
}

// noFilters turns off the programs that a configuration runs over a file before git compares
// it: what they would make of it is not known then.
func (r *Repo) noFilters() (flags []string, err error) {
	said, err := r.git("config", "-z", "--name-only", "--get-regexp", `^filter\.`)
	var failed *failure
	if errors.As(err, &failed) && failed.words == "" {
		return nil, nil // there are none
	}
	if err != nil {
		return nil, err
	}
	for name := range strings.SplitSeq(strings.TrimSuffix(said, "\x00"), "\x00") {
		name = name[:strings.LastIndexByte(name, '.')+1]
		if strings.Contains(name, "=") {
			return nil, errors.New("a filter has a name that cannot be turned off")
		}
		if name != "filter." {
			flags = append(flags, "-c", name+"clean=", "-c", name+"process=", "-c", name+"required=false")
		}
	}
	return flags, nil
}

// Latest is what is known of several stretches together: the last that was written of them.
// Revisions that became what they are in one moment, since they were put on others, are told
// apart by when they were written.
func Latest(all []Written) (last Written) {
	for _, w := range all {
		switch {
		case last.Open, !w.Open && w.ID == "":
		case w.Open, last.ID == "", cmp.Or(w.landed.Compare(last.landed), w.When.Compare(last.When)) > 0:
			last = w
		}
	}
	return last
}
