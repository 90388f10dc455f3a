package serve

import (
	"context"
	"crypto/rand"
	"errors"
	"log/slog"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"vivary/cmd/internal/builder"
	"vivary/cmd/internal/journal"
	"vivary/cmd/internal/keys"
	"vivary/cmd/internal/page"
	"vivary/compile"
	"vivary/plan"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// hourly is how long nothing is built at the most: a clock may jump, and what watches a
// folder may miss something.
const hourly = time.Hour

// anew is after how long it is tried once more to write what could not be written: no change
// of a plan tells that a disk has room.
const anew = time.Minute

// untilNext is how long it is until the next build that nothing causes but the time: a new
// day where the animals are, the day on which calendars say that the plan is refused.
func (s *Server) untilNext() time.Duration {
	now, wait := s.Clock(), hourly
	st := s.state.Load()
	if st == nil || st.house.Failed != "" {
		wait = anew
	}
	if st != nil {
		if loc := st.house.Result.Plan.Location; loc != nil {
			midnight := (civil.FromTime(now.In(loc)) + 1).At(0, loc)
			wait = min(wait, midnight.Sub(now)+2*time.Second)
		}
		if r := st.house.Refused; !r.IsZero() {
			if due := r.Add(s.NoticeAfter).Sub(now); due > 0 {
				wait = min(wait, due+time.Second)
			}
		}
	}
	return max(wait, time.Second)
}

// Rebuild reads the plan, builds where it is not refused, and serves what there is then. It
// says what went wrong in the log, and on the pages.
func (s *Server) Rebuild(ctx context.Context) {
	begun := time.Now()
	s.mu.Lock()
	shown := s.shown
	s.mu.Unlock()
	built, err := s.Builder.Build(s.Disk, s.Lock, true)
	if err != nil && (built == nil || built.Result == nil) {
		// Where only the calendars cannot be written, pages show the plan as it is.
		if r, e := s.Builder.Compile(s.Disk); e == nil {
			built = &builder.Built{Result: r}
		}
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	was := s.state.Load()
	now := &state{}
	switch {
	case was != nil && (built == nil || built.Result == nil || shown != s.shown):
		// It cannot be read now, or what was noted meanwhile is not in what was built: a tick
		// that is on the page stays there. Whoever showed it has asked for another build.
		now.house = s.houseOf(was.house.Result, was)
	case built != nil && built.Result != nil:
		now.house = s.houseOf(built.Result, was)
	default:
		s.Log.LogAttrs(ctx, slog.LevelError, "not built", slog.String("why", wording.Plain(err).Error()))
		s.ended("failed", nil)
		s.Measures.built("failed", time.Since(begun), nil)
		return
	}
	if err != nil { // nothing was written
		s.failed(ctx, "not built", err, now.house, was)
		now.house.Behind = built == nil || built.Result == nil
	}
	if err := s.complete(now, was); err != nil {
		s.failed(ctx, "not served", err, now.house, was)
		if was == nil {
			s.ended("failed", nil)
			s.Measures.built("failed", time.Since(begun), nil)
			return
		}
		now.ring, now.feeds = was.ring, was.feeds
		now.house.Calendars, now.house.Label = was.house.Calendars, was.house.Label
		now.hang()
	}
	s.state.Store(now)
	go func() {
		s.pages.Ready(now.house)
		collect()
	}()
	how := outcome(now)
	s.ended(how, now)
	s.Measures.built(how, time.Since(begun), now.house.Result)
	s.Log.LogAttrs(ctx, slog.LevelInfo, "built", slog.String("outcome", how), slog.Int("calendars", len(now.feeds)), slog.Int("findings", len(now.house.Result.Findings)), slog.Duration("took", time.Since(begun)))
}

// failed says in the log and on the pages that calendars cannot be written, or served, and
// since when. What failed first is what is said.
func (s *Server) failed(ctx context.Context, what string, err error, h *page.House, was *state) {
	why := wording.Plain(err).Error()
	s.Log.LogAttrs(ctx, slog.LevelError, what, slog.String("why", why))
	if h.Failed != "" {
		return
	}
	h.Failed, h.Since, h.Built = why, s.Clock(), time.Time{}
	if was == nil {
		return
	}
	h.Built = was.house.Built
	if was.house.Failed != "" {
		h.Since = was.house.Since
	}
}

func outcome(now *state) string {
	switch {
	case now.house.Failed != "":
		return "failed"
	case now.house.Result.Refused():
		return "refused"
	}
	return "good"
}

// houseOf is what pages show of a result.
func (s *Server) houseOf(r *compile.Result, was *state) *page.House {
	h := &page.House{Result: r, Base: s.Base, Built: s.Clock()}
	if !r.Refused() {
		h.Good = r
		return h
	}
	h.Refused, h.Built = s.lastEdit(r), time.Time{}
	if was != nil {
		h.Good, h.Built = was.house.Good, was.house.Built
		if !was.house.Refused.IsZero() {
			h.Refused = was.house.Refused
		}
	}
	return h
}

// lastEdit is when a plan was written last: a server that is started while it is refused
// does not know since when it is.
func (s *Server) lastEdit(r *compile.Result) time.Time {
	now, last := s.Clock(), time.Time{}
	for _, id := range r.Plan.Files.Files() {
		name := r.Plan.Files.Name(id)
		if !strings.HasSuffix(name, plan.PlanSuffix) {
			continue
		}
		if info, err := s.Disk.Stat(filepath.FromSlash(name)); err == nil && info.ModTime().After(last) && info.ModTime().Before(now) {
			last = info.ModTime()
		}
	}
	if last.IsZero() {
		return now
	}
	return last
}

// complete fills in a state what is read from files: keys and calendars.
func (s *Server) complete(now, was *state) error {
	r := now.house.Result
	names, err := files(s.Disk, s.Builder.Out)
	if err != nil {
		return err
	}
	var standing []string
	for _, name := range names {
		standing = append(standing, strings.TrimSuffix(name, ".ics"))
	}
	if now.ring, _, err = keys.Fill(s.Disk, s.Keys, keys.For(r.Plan, standing), rand.Reader); err != nil {
		return err
	}
	var before map[string]*stored
	if was != nil {
		before = was.feeds
	}
	now.feeds = load(s.Disk, s.Builder.Out, names, before, s.notice(now.house), func(file string) string { return s.source(now.ring, file) })
	now.house.Calendars = now.calendars(r)
	now.house.Label = func(enclosure string) string { return now.ring.Label(r.Plan, enclosure) }
	now.hang()
	return nil
}

// source is the address at which a calendar is served, "" where it is not known.
func (s *Server) source(ring *keys.Ring, file string) string {
	path := ring.Feed(strings.TrimSuffix(file, ".ics"))
	if s.Base == "" || path == "" {
		return ""
	}
	return s.Base + path
}

// notice is what the calendars say of a plan that is refused for long.
func (s *Server) notice(h *page.House) *notice {
	if h.Refused.IsZero() || s.Clock().Before(h.Refused.Add(s.NoticeAfter)) {
		return nil
	}
	loc := time.UTC
	switch {
	case h.Result.Plan.Location != nil:
		loc = h.Result.Plan.Location
	case h.Good != nil && h.Good.Plan.Location != nil:
		loc = h.Good.Plan.Location
	}
	return &notice{civil.FromTime(s.Clock().In(loc)), h.Refused.In(loc), s.NoticeAfter, h.Result.Plan.Title()}
}

// journaling writes what comes from pages.
type journaling struct{ journal.Journal }

func (j *journaling) open(s *Server) {
	j.Disk, j.Root, j.Lock, j.Stamped = s.Disk, s.Builder.Root, s.Lock, true
	j.Compile = s.Builder.Compile
}

// note writes lines for a visitor, into a log of the keeper's own, and shows at once what
// follows. The calendars are built behind it.
func (s *Server) note(ctx context.Context, v page.Visitor, lines []string) (journal.Outcome, error) {
	day, _, _ := strings.Cut(slices.Min(lines), " ")
	on, err := civil.Parse(day)
	if err != nil {
		return journal.Outcome{}, errors.New("a line has no day")
	}
	held, err := s.journal.Hold()
	if err != nil {
		s.Measures.noted("failed")
		return journal.Outcome{}, err
	}
	defer held.Release()
	out, err := held.Write(journal.LogName(on, v.Keeper), lines)
	switch {
	case err != nil:
		s.Measures.noted("failed")
		s.Log.LogAttrs(ctx, slog.LevelError, "not noted", slog.String("keeper", v.Keeper), slog.String("why", wording.Plain(err).Error()))
	case len(out.Written) > 0:
		s.Measures.noted("written")
		s.show(out.With)
		s.Log.LogAttrs(ctx, slog.LevelInfo, "noted", slog.String("keeper", v.Keeper), slog.Int("lines", len(out.Written)))
	default:
		s.Measures.noted("not needed")
		s.show(held.Now)
	}
	return out, err
}

// show puts a result on the pages, and asks for the calendars to be built.
func (s *Server) show(r *compile.Result) {
	s.mu.Lock()
	defer s.mu.Unlock()
	was := s.state.Load()
	if was == nil || r == was.house.Result {
		return
	}
	now := *was
	now.house = s.houseOf(r, was)
	now.house.Built, now.house.Calendars, now.house.Label = was.house.Built, was.house.Calendars, was.house.Label
	now.house.Failed, now.house.Since = was.house.Failed, was.house.Since
	s.state.Store(&now)
	s.shown++
	select {
	case s.kick <- struct{}{}:
	default: // somebody has asked already
	}
}
