package feeds

import (
	"bytes"
	"encoding/binary"
	"slices"

	"vivary/compile"
	"vivary/compile/horizon"
	"vivary/compile/ical"
	"vivary/compile/identity"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema/civil"
)

// toldBack is for how many days before today a feed says what it showed; the days are
// counted from the beginning of a month, or an endless feed would change every day.
const toldBack = 31

// told says what the feed shows of what the proof counts on. A care in several rounds is
// told of by round, and as a whole: which rounds those are may change.
func (f *Feed) told(reach civil.Date) []ical.Told {
	h := f.r.Horizon
	from := month(f.r.Today - toldBack)
	until := month(min(f.r.Today+Days, reach))
	lo, hi := int(from-h.From), min(int(until-h.From), h.Days)
	byDays := map[string]*ical.Told{}
	var keys []string
	for _, p := range f.picks {
		if p.Entry.Once != nil || p.Entry.Kind.Needs == nil || p.Entry.Kind.Needs.PerMeal {
			continue
		}
		cut := within(p.Days, lo, hi, h)
		key := keyOf(cut)
		if byDays[key] == nil {
			byDays[key] = &ical.Told{From: from, Days: bools(cut, lo, hi)}
			keys = append(keys, key)
		}
		byDays[key].IDs = append(byDays[key].IDs, toldID(f.r.Plan.About.Name.V, p.Entry.ID.String()))
		if p.Entry.ID.Round != "" {
			byDays[key].IDs = append(byDays[key].IDs, toldID(f.r.Plan.About.Name.V, p.Entry.ID.Told()))
		}
	}
	out := make([]ical.Told, len(keys))
	for i, key := range keys {
		out[i] = *byDays[key]
		slices.Sort(out[i].IDs)
		out[i].IDs = slices.Compact(out[i].IDs)
	}
	// A care in several rounds, as a whole, is in several.
	slices.SortFunc(out, func(a, b ical.Told) int { return slices.Compare(a.IDs, b.IDs) })
	return out
}

// here says how many live in the enclosures that the feed shows. Of the others it says
// nothing: whoever reads it need not know of them.
func (f *Feed) here() (out []ical.Here) {
	shown := map[*life.Enclosure]bool{}
	for _, p := range f.picks {
		shown[p.Entry.Life] = true
	}
	for _, l := range f.r.Lives {
		if shown[l] {
			out = append(out, f.r.Here(l))
		}
	}
	return out
}

// Head is what the beginning of a feed tells of what it showed and of the animals that lived
// there, as far as its first component.
type Head struct {
	ours  bool
	told  []ical.Told
	known compile.Known
}

// ReadHead reads the beginning of a file; of what is no feed of ours it tells nothing.
func ReadHead(text []byte) *Head {
	h := &Head{ours: ical.Ours(text)}
	if !h.ours {
		return h
	}
	h.known.Salt, h.known.Here, h.known.Made = ical.ReadHere(text)
	if bytes.HasPrefix(text, []byte("BEGIN:VCALENDAR\r\n")) {
		h.told = ical.ReadTold(text)
	}
	return h
}

// ReadHeads reads the beginnings of several.
func ReadHeads(texts [][]byte) []*Head {
	out := make([]*Head, len(texts))
	for i, text := range texts {
		out[i] = ReadHead(text)
	}
	return out
}

// KnownOf returns what feeds told of the animals. Those of another collection count only
// where there are none of this one and all that is in the folder is this one's: it had
// another name then.
func KnownOf(c *plan.Collection, heads []*Head, own bool) []compile.Known {
	var mine, others []compile.Known
	salt := compile.Salt(c)
	for _, h := range heads {
		switch {
		case len(h.known.Here) == 0:
		case h.known.Salt == salt:
			mine = append(mine, h.known)
		default:
			others = append(others, h.known)
		}
	}
	if len(mine) > 0 || !own {
		return mine
	}
	return others
}

// month returns the first day of a day's month.
func month(d civil.Date) civil.Date {
	y, m, _ := d.YMD()
	return civil.Must(y, m, 1)
}

func within(days horizon.Days, lo, hi int, h horizon.Horizon) horizon.Days {
	out := h.New()
	out.AddRun(lo, hi, h.Days)
	out.Keep(days)
	return out
}

func keyOf(days horizon.Days) string {
	b := make([]byte, 0, 8*len(days))
	for _, w := range days {
		b = binary.LittleEndian.AppendUint64(b, w)
	}
	return string(b)
}

func bools(days horizon.Days, lo, hi int) []bool {
	out := make([]bool, hi-lo)
	for i := days.Next(lo); i >= 0 && i < hi; i = days.Next(i + 1) {
		out[i-lo] = true
	}
	return out
}

func toldID(collection, identity string) string { return ical.Short(collection, "told", identity) }

// Told is what the last published feeds of a collection showed.
type Told struct {
	collection string
	of         map[string][]*ical.Told // by id; several where care is shared by calendars
}

// ToldBy is what feeds of a collection showed. It returns nil where they say nothing.
func ToldBy(collection string, heads []*Head) roster.Told {
	t := &Told{collection: collection, of: map[string][]*ical.Told{}}
	for _, h := range heads {
		for i := range h.told {
			for _, id := range h.told[i].IDs {
				t.of[id] = append(t.of[id], &h.told[i])
			}
		}
	}
	if len(t.of) == 0 {
		return nil
	}
	return t
}

// Same reports whether others told the same of a care.
func (t *Told) Same(others roster.Told, id identity.Identity) bool {
	o, ok := others.(*Told)
	if !ok || o.collection != t.collection {
		return false
	}
	for _, name := range []string{id.String(), id.Told()} {
		key := toldID(t.collection, name)
		if !slices.EqualFunc(t.of[key], o.of[key], func(a, b *ical.Told) bool {
			return a == b || a.From == b.From && slices.Equal(a.Days, b.Days)
		}) {
			return false
		}
		if id.Round == "" {
			break // the two are one
		}
	}
	return true
}

// Days returns the days on which a care was shown in its round, or where that was
// another then in whichever it was, and from which until which that
// is known.
func (t *Told) Days(id identity.Identity) (on func(civil.Date) bool, from, until civil.Date, ok bool) {
	all := t.of[toldID(t.collection, id.String())]
	if len(all) == 0 {
		all = t.of[toldID(t.collection, id.Told())]
	}
	if len(all) == 0 {
		return nil, 0, 0, false
	}
	from, until = all[0].From, all[0].From+civil.Date(len(all[0].Days))
	for _, x := range all[1:] {
		from, until = max(from, x.From), min(until, x.From+civil.Date(len(x.Days)))
	}
	return func(d civil.Date) bool {
		return slices.ContainsFunc(all, func(x *ical.Told) bool { return x.Days[d-x.From] })
	}, from, until, true
}
