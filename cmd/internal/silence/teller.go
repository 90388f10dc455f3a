package silence

import (
	"context"
	"errors"
	"log/slog"
	"strings"
	"time"

	"github.com/spf13/afero"

	"vivary/schema/wording"
)

// Letter is a mail to one person.
type Letter struct {
	To, Subject, Text string
}

// Sender sends a letter. The error is ErrUnreachable where none can be sent now, whoever it
// is to, and ErrRefused where this one will not be taken later either.
type Sender interface {
	Send(context.Context, Letter) error
	// By names the server and who asks it: what one refuses another may take.
	By() string
}

var (
	// ErrUnreachable says that no mail can be sent now.
	ErrUnreachable = errors.New("no mail can be sent now")
	// ErrRefused says that a mail server refuses a letter for good.
	ErrRefused = errors.New("the mail server refuses it for good")
)

// Teller tells people of causes, and remembers whom it told.
type Teller struct {
	memory memory
	log    *slog.Logger
	// unwritten is how many times in a row it could not be written who was told.
	unwritten int
}

// stubborn is how many looks in a row it may not be written who was told, until that is told
// all the same: an hour, so that a program that begins again and again sends little.
const stubborn = 12

// NewTeller returns one that remembers in a file.
func NewTeller(disk afero.Fs, path string, log *slog.Logger) *Teller {
	return &Teller{memory: memory{disk: disk, path: path}, log: log}
}

// Tell tells each person of each cause of which they were not told yet. What could not be
// sent is not remembered, and is sent when it is asked for again; what is refused for good is
// not tried again that day with that server. It is remembered first and sent then: where it cannot be written nothing is sent at first, since it would be sent again
// and again. Where that lasts it is remembered by this process alone: a disk that is full is one
// of the things to be told of.
func (t *Teller) Tell(ctx context.Context, by Sender, people []Person, causes []Cause) {
	if len(causes) == 0 {
		return
	}
	if err := t.memory.read(); err != nil {
		t.say(ctx, slog.LevelError, "nobody told: it cannot be read who was told already", "", "", err)
		return
	}
	for _, c := range causes {
		for _, p := range people {
			if t.memory.knows(c, p, by.By()) {
				continue
			}
			if !t.tell(ctx, by, c, p) {
				return
			}
		}
	}
}

// tell reports whether it is worth while to go on.
func (t *Teller) tell(ctx context.Context, by Sender, c Cause, p Person) bool {
	letter := letterOf(c, p, t.memory.since(c, p) < c.Day, t.memory.since(c, p).Short())
	undo, err := t.memory.put(c, p)
	switch {
	case err == nil:
		t.unwritten = 0
	case t.unwritten < stubborn:
		t.unwritten++
		t.say(ctx, slog.LevelError, "nobody told: it cannot be written who was told", c.Name, p.Keeper, err)
		return false
	default:
		t.say(ctx, slog.LevelError, "it cannot be written who is told, who may be told again after a restart", c.Name, p.Keeper, err)
		undo = t.memory.hold(c, p)
	}
	if err = by.Send(ctx, letter); err == nil {
		t.log.LogAttrs(ctx, slog.LevelInfo, "told", slog.String("cause", c.Name), slog.String("day", c.Day.String()), slog.String("keeper", p.Keeper))
		return true
	}
	what, kept := "not told, tried again later", undo
	if errors.Is(err, ErrRefused) {
		what = "not told, and not tried again for this day"
		kept = func() error { return t.memory.refused(c, p, by.By()) }
	}
	t.say(ctx, slog.LevelError, what, c.Name, p.Keeper, err)
	if err := kept(); err != nil {
		t.say(ctx, slog.LevelError, "it cannot be written that somebody was not told", c.Name, p.Keeper, err)
		return false
	}
	return !errors.Is(err, ErrUnreachable)
}

// Unbuilt returns since when nothing is built, where this process knows of some time, zero for
// none: a process before this one may have seen it begin. It is kept for the next one.
func (t *Teller) Unbuilt(ctx context.Context, since, now time.Time) time.Time {
	if err := t.memory.read(); err != nil {
		t.say(ctx, slog.LevelError, "it cannot be read since when nothing is built", "", "", err)
		return since
	}
	was := t.memory.bad
	if !since.IsZero() && !was.IsZero() && was.Before(since) && !was.After(now) {
		return was
	}
	if t.memory.bad = since.Truncate(time.Second); t.memory.bad.Equal(was) {
		return since
	}
	if err := t.memory.write(); err != nil {
		t.memory.bad = was
		t.say(ctx, slog.LevelError, "it cannot be written since when nothing is built", "", "", err)
	}
	return since
}

func (t *Teller) say(ctx context.Context, level slog.Level, what, cause, keeper string, err error) {
	t.log.LogAttrs(ctx, level, what, slog.String("cause", cause), slog.String("keeper", keeper), slog.String("why", wording.Plain(err).Error()))
}

// letterOf words a cause for one person.
func letterOf(c Cause, p Person, again bool, since string) Letter {
	parts := append([]string{}, c.Lines...)
	if again {
		parts = append(parts, "You are told of this each day since "+since+".")
	}
	if p.Page != "" {
		parts = append(parts, "Your page, for you alone: "+p.Page)
	}
	parts = append(parts, "This is sent once a day while it lasts, by vivary serve.")
	return Letter{p.Address, wording.Line(c.Subject), strings.Join(parts, "\n\n") + "\n"}
}
