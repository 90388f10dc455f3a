package serve

import (
	"context"
	"errors"
	"io/fs"
	"log/slog"
	"time"

	"vivary/cmd/internal/keys"
	"vivary/cmd/internal/silence"
	"vivary/compile"
	"vivary/plan"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// every is how often it is looked whether somebody has to be told of something.
const every = 5 * time.Minute

// tell tells people by mail of what nobody saw to, until the context ends. It waits for no
// build, and none waits for it.
func (s *Server) tell(ctx context.Context) {
	tick := time.NewTicker(every)
	defer tick.Stop()
	for {
		s.lookRound(ctx)
		select {
		case <-ctx.Done():
			return
		case <-tick.C:
		}
	}
}

// lookRound tells people of what is to be told now. The file of keys is read anew, since it
// says who is written to also while nothing can be built.
func (s *Server) lookRound(ctx context.Context) {
	wrong := func(err error) {
		s.Log.LogAttrs(ctx, slog.LevelError, "nobody can be told", slog.String("why", wording.Plain(err).Error()))
	}
	ring, err := keys.Read(s.Disk, s.Keys)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return
	case err != nil:
		wrong(err)
		return
	case ring.Mail == nil:
		return
	}
	post, err := silence.NewPost(*ring.Mail)
	if err != nil {
		wrong(errors.New("the mail block of " + s.Keys + ": " + err.Error()))
		return
	}
	sight, known := s.sight()
	if known {
		sight.Since = s.teller.Unbuilt(ctx, sight.Since, sight.Now)
	}
	sight.UrgentAt = post.UrgentClock()
	causes := silence.Causes(sight)
	if len(causes) == 0 {
		return
	}
	day := civil.FromTime(sight.Now.In(silence.Zone(sight.Result)))
	s.teller.Tell(ctx, post, silence.People(sight.Result, ring, s.Base, day), causes)
}

// sight is what is looked at now. known says whether a build has ended, well or not.
func (s *Server) sight() (out silence.Sight, known bool) {
	s.mu.Lock()
	defer s.mu.Unlock()
	out = silence.Sight{Now: s.Clock(), Since: s.bad, After: s.NoticeAfter}
	now := s.state.Load()
	if now == nil {
		out.Result, out.Why = &compile.Result{Plan: &plan.Collection{}}, "The folder cannot be read since the server was started."
	} else {
		out.Result = now.house.Result
		switch {
		case now.house.Failed != "":
			out.Why = "Why: " + now.house.Failed + "."
		case out.Result.Refused():
			out.Why = "The plan has a mistake."
		}
	}
	if out.Since.IsZero() && out.Now.Sub(s.good) >= s.NoticeAfter+hourly { // it is built each hour
		out.Since, out.Why = s.good, "The build does not come to its end; it may wait for another program that builds the same folder."
	}
	return out, now != nil || !s.bad.IsZero()
}

// ended remembers how a build ended, and when. s.mu is held.
func (s *Server) ended(how string, now *state) {
	if how == "good" {
		s.good, s.bad = s.Clock(), time.Time{}
		return
	}
	if !s.bad.IsZero() {
		return
	}
	s.bad = s.Clock()
	if now != nil && !now.house.Refused.IsZero() {
		s.bad = now.house.Refused
	}
}
