package compile_test

import (
	"flag"
	"fmt"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"

	"vivary/compile"
	"vivary/compile/feeds"
	"vivary/compile/ical"
	"vivary/compile/rounds"
	"vivary/internal/planned"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/civil"
)

// A story is what keepers expect on certain days, told from the plan and the log to
// the dated list that follows. Its comment says what was expected beforehand, and
// asks; the file want holds what the whole pipeline answers. Figures are the story's
// own: fixtures, in a species sheet of the collection.
//
// A question is a line of the comment:
//
//	now 2027-07-01, 2027-07-07 to 2027-07-24, with live, as entries
//
// The log is read as it stood on that day. With takes the files of that folder in
// place of those of the same name; as entries shows what a phone shows.
func TestStories(t *testing.T) {
	files, err := filepath.Glob("../testdata/stories/*.txtar")
	if err != nil || len(files) == 0 {
		t.Fatal("no stories", err)
	}
	update := flag.Lookup("update").Value.String() == "true"
	for _, file := range files {
		t.Run(strings.TrimSuffix(filepath.Base(file), ".txtar"), func(t *testing.T) {
			a, err := txtar.ParseFile(file)
			if err != nil {
				t.Fatal(err)
			}
			at := slices.IndexFunc(a.Files, func(f txtar.File) bool { return f.Name == "want" })
			if at < 0 {
				a.Files = append(a.Files, txtar.File{Name: "want"})
				at = len(a.Files) - 1
			}
			got := answers(t, a)
			switch {
			case update:
				a.Files[at].Data = []byte(got)
				if err := os.WriteFile(file, txtar.Format(a), 0o644); err != nil {
					t.Fatal(err)
				}
			case got != string(a.Files[at].Data):
				t.Errorf("got\n%s\nwant\n%s", got, a.Files[at].Data)
			}
		})
	}
}

var asked = regexp.MustCompile(`(?m)^now (\S+?)(?:, (\S+) to (\S+?))?(?:, with (\S+?))?(, as entries)?$`)

// question is one line of a story that asks.
type question struct {
	now, from, to civil.Date // to is the last day shown
	with          string
	entries       bool
}

func answers(t *testing.T, a *txtar.Archive) string {
	t.Helper()
	var b strings.Builder
	published := map[string][]byte{} // the last feeds, by variant and calendar
	for _, m := range asked.FindAllStringSubmatch(string(a.Comment), -1) {
		q := question{now: planned.Day(m[1]), with: m[4], entries: m[5] != ""}
		if m[2] == "" {
			q.from, q.to = 1, 0
		} else {
			q.from, q.to = planned.Day(m[2]), planned.Day(m[3])
		}
		b.WriteString(m[0] + "\n")
		answer(t, &b, a, q, published)
	}
	if b.Len() == 0 {
		t.Fatal("the story asks nothing")
	}
	return b.String()
}

func answer(t *testing.T, b *strings.Builder, a *txtar.Archive, q question, published map[string][]byte) {
	t.Helper()
	c, found := planned.Files(t, written(t, a, q))
	if finding.Refuses(found) {
		tellFindings(b, c, found)
		b.WriteString("  not understood\n")
		return
	}
	r := compile.Compile(c, found, q.now.At(12*60, c.Location))
	// A story's fixture states only the needs that the story is about.
	r.Findings = slices.DeleteFunc(r.Findings, func(f finding.Finding) bool { return f.Rule.ID == "need-unstated" })
	tellFindings(b, c, r.Findings)
	if r.Refused() {
		b.WriteString("  refused: the calendars stay as they were\n")
		return
	}
	all := feeds.Of(r)
	if !q.entries {
		tellRounds(b, r, q)
	}
	for _, f := range all {
		tellCalendar(t, b, r, f, q, len(all) > 1, published)
	}
}

var repeated = regexp.MustCompile(`^(\d+) x (.*)$`)

// written returns the files of a question. Of a file named "40 x boxes.care.hcl"
// there are forty, each with its number in place of {n}.
func written(t *testing.T, a *txtar.Archive, q question) map[string]string {
	t.Helper()
	out := map[string]string{}
	for _, f := range a.Files {
		folder, name := path.Split(f.Name)
		text := string(f.Data)
		switch {
		case f.Name == "want" || folder != "" && folder != q.with+"/":
			continue
		case folder == "" && out[name] != "":
			continue // one of the variant's stands for it
		case strings.HasSuffix(name, ".care.log"):
			var kept []string
			for line := range strings.Lines(text) {
				if day, _, _ := strings.Cut(line, " "); planned.Day(day) <= q.now {
					kept = append(kept, line)
				}
			}
			text = strings.Join(kept, "")
		}
		if m := repeated.FindStringSubmatch(name); m != nil {
			n, _ := strconv.Atoi(m[1])
			for i := range n {
				out[strconv.Itoa(i+1)+"-"+m[2]] = strings.ReplaceAll(text, "{n}", fmt.Sprintf("%03d", i+1))
			}
			continue
		}
		out[name] = text
	}
	return out
}

func tellFindings(b *strings.Builder, c *plan.Collection, found []finding.Finding) {
	for i := range found {
		f := &found[i]
		fmt.Fprintf(b, "  %s %s: %s", f.Severity, f.Rule.ID, f.Text)
		if f.Limit != "" {
			fmt.Fprintf(b, " (%s)", f.Limit)
		}
		if f.At.Written() {
			at := c.Files.Start(f.At)
			fmt.Fprintf(b, " [%s:%d]", path.Base(at.File), at.Line)
		}
		b.WriteByte('\n')
	}
}

// tellRounds lists the rounds of the days asked for, each with who does it.
func tellRounds(b *strings.Builder, r *compile.Result, q question) {
	walks := make([]*rounds.Round, len(r.Roster.Rounds))
	for k, round := range r.Roster.Rounds {
		picks := r.Roster.Picks(round, "")
		walks[k] = rounds.New(r.Roster, round, picks)
	}
	for d := q.from; d <= q.to; d++ {
		i, on := r.Horizon.Index(d)
		if !on {
			continue
		}
		for _, walk := range walks {
			tellSheet(b, r, walk.On(i), i)
		}
	}
}

func tellSheet(b *strings.Builder, r *compile.Result, s rounds.Sheet, day int) {
	if len(s.Lines) == 0 {
		return
	}
	at := s.Date.At(s.Round.Clock.V, r.Plan.Location)
	fmt.Fprintf(b, "  %s %s %s", s.Date.Weekday().String()[:3], at.Format("2006-01-02 15:04Z07:00"), s.Round.Name.V)
	if who, there := r.Roster.People.Doer(s.Round.Keeper.Or(r.Roster.People.Only), day); !there {
		b.WriteString(", NOBODY")
	} else if who != "" {
		b.WriteString(", " + who)
	}
	b.WriteByte('\n')
	for _, l := range s.Lines {
		b.WriteString(strings.TrimRight("    "+l, " ") + "\n")
	}
}

// tellCalendar lists the all-day entries of a calendar on the days asked for, of a
// keeper's calendar also the days of its rounds, and what became of the entries
// since the question before.
func tellCalendar(t *testing.T, b *strings.Builder, r *compile.Result, f feeds.Feed, q question, several bool, published map[string][]byte) {
	t.Helper()
	entries, err := f.Entries(nil)
	if err != nil {
		t.Fatal(err)
	}
	if several {
		fmt.Fprintf(b, "  calendar %s\n", f.Name)
	}
	var days []string
	for _, e := range entries {
		switch {
		case e.Date > q.to || e.Date+civil.Date(max(1, e.Days)) <= q.from:
		case e.AllDay:
			fmt.Fprintf(b, "  all day %s", e.Date)
			if e.Days > 1 {
				fmt.Fprintf(b, " to %s", e.Date+civil.Date(e.Days-1))
			}
			fmt.Fprintf(b, ": %s\n", e.Summary)
			for line := range strings.Lines(e.Description) {
				fmt.Fprintf(b, "    %s\n", strings.TrimSuffix(line, "\n"))
			}
		case q.entries:
			fmt.Fprintf(b, "  %s %s %s (%d min)\n", e.Date, e.At, e.Summary, e.Minutes)
			if e.RRule != "" {
				fmt.Fprintf(b, "    repeats %s, but not on %v\n", e.RRule, e.ExDates)
			}
			for line := range strings.Lines(e.Description) {
				fmt.Fprintf(b, "    %s\n", strings.TrimSuffix(line, "\n"))
			}
		default:
			days = append(days, e.Date.Short())
		}
	}
	if len(f.Plan.Keepers) > 0 && len(days) > 0 {
		fmt.Fprintf(b, "  rounds on %s\n", strings.Join(days, ", "))
	}
	key := q.with + "/" + f.Name
	last := published[key]
	var memory *ical.Memory
	if last != nil {
		if memory, err = ical.Remember(last); err != nil {
			t.Fatal(err)
		}
	}
	feed, err := f.Bytes(memory)
	if err != nil {
		t.Fatal(err)
	}
	if published[key] = feed; last != nil {
		tellChanges(b, last, feed, q)
	}
}

// tellChanges says what became of the entries of a feed, and names those that repeat,
// and of those that did not stay the same the ones on the days asked for.
func tellChanges(b *strings.Builder, before, after []byte, q question) {
	was, is := events(before), events(after)
	said := map[string][]string{}
	for uid, e := range was {
		switch now, there := is[uid]; {
		case !there:
			said["gone"] = append(said["gone"], e)
		case now != e:
			said["changed"] = append(said["changed"], now)
		default:
			said["kept to the byte"] = append(said["kept to the byte"], e)
		}
	}
	for uid, e := range is {
		if _, there := was[uid]; !there {
			said["new"] = append(said["new"], e)
		}
	}
	b.WriteString("  since the build before:")
	for i, what := range []string{"kept to the byte", "changed", "new", "gone"} {
		if i > 0 {
			b.WriteByte(',')
		}
		fmt.Fprintf(b, " %d %s", len(said[what]), what)
	}
	b.WriteByte('\n')
	for _, what := range []string{"kept to the byte", "changed", "new", "gone"} {
		var lines []string
		for _, e := range said[what] {
			start := property(e, "DTSTART")[:8]
			day, err := civil.Parse(start[:4] + "-" + start[4:6] + "-" + start[6:])
			again := property(e, "RRULE") != ""
			if err == nil && (again || what != "kept to the byte" && day >= q.from && day <= q.to) {
				lines = append(lines, fmt.Sprintf("    %s: %s %s\n", what, day, strings.ReplaceAll(property(e, "SUMMARY"), "\\,", ",")))
			}
		}
		slices.Sort(lines)
		b.WriteString(strings.Join(lines, ""))
	}
}

// events returns the entries of a feed by UID, unfolded (RFC 5545, 3.1).
func events(feed []byte) map[string]string {
	out := map[string]string{}
	for _, e := range strings.Split(strings.ReplaceAll(string(feed), "\r\n ", ""), "BEGIN:VEVENT\r\n")[1:] {
		e, _, _ = strings.Cut(e, "END:VEVENT\r\n")
		out[property(e, "UID")] = e
	}
	return out
}

func property(event, name string) string {
	for line := range strings.SplitSeq(event, "\r\n") {
		if rest, ok := strings.CutPrefix(line, name); ok && rest != "" && (rest[0] == ':' || rest[0] == ';') {
			return rest[strings.IndexByte(rest, ':')+1:]
		}
	}
	return ""
}
