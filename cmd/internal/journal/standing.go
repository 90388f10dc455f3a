package journal

import (
	"fmt"
	"slices"
	"strings"

	"vivary/compile"
	"vivary/plan"
	"vivary/schema"
)

// standing returns, by the new lines that say what stands already, where that is: in the same
// words, or in others without a note or a time of their own.
func (t *trial) standing(h *Held) map[string]string {
	out := map[string]string{}
	for i := range h.Now.Plan.Log {
		e := &h.Now.Plan.Log[i]
		if line := h.Now.Plan.Files.Of(e.At); slices.Contains(t.lines, line) {
			out[line] = where(e, h.Now)
		}
	}
	log := t.after.Plan.Log
	for i := range log {
		e := &log[i]
		if !t.is(e) {
			continue
		}
		for k := range log {
			if o := &log[k]; o.Date == e.Date && !t.is(o) && (repeats(e, o) || h.journal.Stamped && t.sameTurn(e, o)) {
				out[t.after.Plan.Files.Of(e.At)] = where(o, t.after)
			}
		}
	}
	return out
}

func where(e *plan.Event, r *compile.Result) string {
	at := r.Plan.Files.Start(e.At)
	return fmt.Sprintf("%s:%d", at.File, at.Line)
}

// repeats reports whether a line says of a day no more than another does.
func repeats(e, o *plan.Event) bool {
	return e.Word != schema.WordRemark && saysNoMore(e, o) && (!e.Clock.Set() || e.Clock.V == o.Clock.V && o.Clock.Set())
}

// saysNoMore reports whether a line says no more than another, whatever their times.
func saysNoMore(e, o *plan.Event) bool {
	args := func(a, b plan.Written[string]) bool { return strings.EqualFold(a.V, b.V) }
	return e.Word == o.Word && e.Enclosure.V == o.Enclosure.V && e.Keeper.V == o.Keeper.V && e.Deadline.V == o.Deadline.V && e.Group.V == o.Group.V &&
		e.Number.V == o.Number.V && e.Sexes == o.Sexes && slices.EqualFunc(e.Args, o.Args, args) && (e.Note == "" || e.Note == o.Note)
}

// inRounds are the words for what comes up in a round, and is so once in it, however often it
// is said. A second death or moult may be that of another animal.
var inRounds = []*schema.LogWord{schema.WordDone, schema.WordSkipped, schema.WordFed, schema.WordRefused, schema.WordSeen}

// sameTurn reports whether a line, whose time nobody typed, says of one and the same round no
// more than another does. A meal without what was given is the one of which that is told.
func (t *trial) sameTurn(e, o *plan.Event) bool {
	if !slices.Contains(inRounds, e.Word) {
		return false
	}
	line := e
	if e.Word == schema.WordFed && !e.Number.Set() && len(e.Args) == 0 {
		told := *e
		told.Number, told.Args = o.Number, o.Args
		e = &told
	}
	return saysNoMore(e, o) && (t.after.Roster == nil || t.after.Roster.SameTurn(line, o))
}
