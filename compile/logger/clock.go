package logger

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"time"
)

// days since 1970 of a civil date, by Howard Hinnant's formula.
func daysOf(y, m, d int32) int64 {
	if m <= 2 {
		y--
	}
	era := int64(y) / 400
	yoe := int64(y) - era*400
	mp := (int64(m) + 9) % 12
	doy := (153*mp+2)/5 + int64(d) - 1
	return era*146097 + yoe*365 + yoe/4 - yoe/100 + doy - 719468
}

// local is the stamp as seconds since 1970, as if it were UTC.
func (st *stamp) local(o Order) (int64, bool) {
	y, m, d, ok := st.day(o)
	return daysOf(y, m, d)*86400 + int64(st.sec), ok
}

// order decides in which order days, months and years stand: by a number that can be no month,
// else by the order of the whole file. It fills in the times of all lines.
func (r *reader) order(rows []row, s *Series) error {
	sh := &r.shape
	if sh.Stamps == "epoch s" || sh.Stamps == "epoch ms" || sh.Stamps == "spreadsheet days" {
		return nil
	}
	first := &rows[0].st
	candidates := []Order{DayFirst, MonthFirst}
	switch {
	case first.order != OrderUnknown:
		sh.Order, sh.How = first.order, "as it is written"
	case r.Order != OrderUnknown:
		sh.Order, sh.How = r.Order, "as asked for"
	case first.dotted && !first.twoDigit:
		sh.Order, sh.How = DayFirst, "as days with points are written"
	}
	if first.twoDigit {
		candidates = append(candidates, YearFirst)
	}
	if sh.Order == OrderUnknown {
		if err := r.weigh(rows, candidates); err != nil {
			return err
		}
	}
	kept := rows[:0]
	for i := range rows {
		x := rows[i]
		at, ok := x.st.local(sh.Order)
		if !ok {
			s.Passed++
			s.problem(int(x.line), "there is no such day with "+orderWords[sh.Order])
			continue
		}
		if x.at = at; x.st.zoned {
			x.at -= int64(x.st.offset)
		}
		kept = append(kept, x)
	}
	clear(rows[len(kept):])
	if len(kept) < len(rows)/2 {
		return fmt.Errorf("%d of %d days are none with %s: say how they are written with --dates", len(rows)-len(kept), len(rows), orderWords[sh.Order])
	}
	for i := len(kept); i < len(rows); i++ {
		rows[i].line = -1
	}
	return nil
}

var orderWords = [...]string{"", "the day first", "the month first", "the year first"}

// weigh takes the order in which every day is one; of several the one in which time does not
// fall back.
func (r *reader) weigh(rows []row, candidates []Order) error {
	type tried struct {
		o        Order
		no, back int // lines that are no day; times that time falls back
		forth    int
		leaps    int // times that it is ten days later at once
		far      bool
	}
	var all []tried
	for _, o := range candidates {
		t := tried{o: o}
		last := int64(math.MinInt64)
		for i := range rows {
			at, ok := rows[i].st.local(o)
			if !ok {
				t.no++
				continue
			}
			if y, _, _, _ := rows[i].st.day(o); y < 2005 {
				t.far = true
			}
			switch {
			case last != math.MinInt64 && at < last-3600:
				t.back++
			case last != math.MinInt64 && at > last:
				t.forth++
			}
			if last != math.MinInt64 && max(at-last, last-at) > 10*86400 {
				t.leaps++
			}
			last = at
		}
		if t.back > t.forth {
			t.back, t.forth = t.forth, t.back // the newest first
		}
		all = append(all, t)
	}
	few := len(rows) / 1000
	fits := slices.DeleteFunc(slices.Clone(all), func(t tried) bool { return t.no > few || t.far })
	switch {
	case len(fits) == 0:
		worst := slices.MinFunc(all, func(a, b tried) int { return a.no - b.no })
		return &Ask{fmt.Sprintf("days are written now with the day first and now with the month: %d of %d lines are no day even with %s. Say how with --dates", worst.no, len(rows), orderWords[worst.o])}
	case len(fits) == 1:
		r.shape.Order, r.shape.How = fits[0].o, "since a number is no month otherwise"
		return nil
	}
	odd := func(t tried) int { return t.back + t.leaps }
	slices.SortStableFunc(fits, func(a, b tried) int { return odd(a) - odd(b) })
	if a, b := odd(fits[0]), odd(fits[1]); a == 0 && b > 0 || b > 3*a+3 {
		r.shape.Order, r.shape.How = fits[0].o, "since time would fall back or leap otherwise"
		return nil
	}
	return &Ask{"days such as " + written(&rows[0].st) + " can be read in two ways, and nothing in the file decides: say --dates day-first or --dates month-first"}
}

func written(st *stamp) string {
	return fmt.Sprintf("%02d/%02d/%02d", st.a, st.b, st.c)
}

// instants makes the samples: local times become instants in the order of the file.
func (r *reader) instants(rows []row, s *Series) error {
	for len(rows) > 0 && rows[len(rows)-1].line < 0 {
		rows = rows[:len(rows)-1]
	}
	up, down := 0, 0
	for i := 1; i < len(rows); i++ {
		switch d := rows[i].at - rows[i-1].at; {
		case d > 0:
			up++
		case d < 0:
			down++
		}
	}
	if down > up {
		slices.Reverse(rows)
		r.shape.Reversed = true
	}
	absolute := r.shape.Stamps == "UTC" || r.shape.Stamps == "epoch s" || r.shape.Stamps == "epoch ms"
	c := clock{loc: r.Zone, still: notStill}
	s.Samples = make([]Sample, 0, len(rows))
	for i := range rows {
		x := &rows[i]
		at := x.at
		if !absolute && !x.st.zoned {
			at = c.instant(x.at, s)
			if c.still != notStill {
				zone := "UTC"
				if h := c.still / 3600; c.still%3600 == 0 && h != 0 {
					zone = fmt.Sprintf("Etc/GMT%+d", -h)
				}
				return &Ask{fmt.Sprintf("line %d: the clock of the logger was not changed in spring with the others: it shows an hour before %s that there was not. If it is never changed, say so with --zone %s", x.line, clockWords(at, r.Zone), zone)}
			}
		}
		n := len(s.Samples)
		if n > 0 && at <= s.Samples[n-1].At {
			last := &s.Samples[n-1]
			s.Passed++
			switch {
			case at == last.At && same(last.Heat, x.heat) && same(last.Damp, x.damp):
				s.Passed-- // the same line twice
			case at == last.At:
				s.problem(int(x.line), "a second reading of the same time: the first is taken")
			default:
				s.problem(int(x.line), "the clock goes back from "+clockWords(last.At, r.Zone)+" to "+clockWords(at, r.Zone)+", and no change of the clocks is near: lines are passed over until it is later than before")
			}
			continue
		}
		if n > 0 && at-s.Samples[n-1].At > 400*86400 {
			if n < len(rows)/2 { // set once somebody saw that it was wrong
				s.problem(int(x.line), "the clock jumps from "+clockWords(s.Samples[n-1].At, r.Zone)+" to "+clockWords(at, r.Zone)+": it was set here, and what stands before is left out")
				s.Passed += n
				s.Samples = s.Samples[:0]
			} else {
				s.problem(int(x.line), "the clock jumps from "+clockWords(s.Samples[n-1].At, r.Zone)+" to "+clockWords(at, r.Zone)+": the line is passed over")
				s.Passed++
				continue
			}
		}
		s.Samples = append(s.Samples, Sample{at, x.heat, x.damp})
	}
	s.Rows = len(rows)
	return nil
}

func same(a, b float64) bool { return a == b || None(a) && None(b) }

func clockWords(at int64, loc *time.Location) string {
	return time.Unix(at, 0).In(loc).Format("2 Jan 2006 15:04:05")
}

// clock turns local times into instants, in the order of a file. An hour that comes twice is
// told by time that does not rise. Some loggers are changed by hand, hours late: what they
// showed meanwhile is put right once they are.
type clock struct {
	loc           *time.Location
	from, until   int64 // the instants between which the offset stays as it is
	offset        int64
	lastRaw       int64
	second, shift int64 // the instant at which an hour came for the second time, 0 for not yet; by how much
	tried         int64 // the change for which it was tried whether it was made late
	begun         bool
	still         int64 // the offset at which it stays in spring; notStill where it is not seen to
}

const notStill = math.MinInt64

// near is how many seconds around a change of the clocks a fall of up to an hour is that change.
const near = 36 * 3600

// at returns the offset at an instant, and between which instants it holds.
func (c *clock) at(instant int64) int64 {
	if instant < c.from || instant >= c.until || !c.begun {
		t := time.Unix(instant, 0).In(c.loc)
		_, off := t.Zone()
		start, end := t.ZoneBounds()
		c.from, c.until, c.offset, c.begun = math.MinInt64, math.MaxInt64, int64(off), true
		if !start.IsZero() {
			c.from = start.Unix()
		}
		if !end.IsZero() {
			c.until = end.Unix()
		}
	}
	return c.offset
}

// instant returns the instant of a local time.
func (c *clock) instant(local int64, s *Series) int64 {
	at := c.plain(local)
	if n := len(s.Samples); n > 0 && at <= s.Samples[n-1].At {
		late := at + c.shift
		switch {
		case c.second != 0 && late > s.Samples[n-1].At && late-c.second < 2*3600 && local-late == c.at(late):
			s.Repeated++ // on in an hour that comes for the second time
			at = late
		case local <= c.lastRaw && c.lastRaw-local <= 3600:
			at = c.repeated(local, at, s)
		case local > c.lastRaw && c.at(at-2*3600) < c.at(at+2*3600):
			c.still = c.at(at - 2*3600) // it showed an hour that there is not, and goes on
		}
	}
	c.lastRaw = local
	return at
}

// plain is the first of the instants that a local time may be; within an hour that is left out
// it is as if the clock had not been changed yet.
func (c *clock) plain(local int64) int64 {
	if c.begun && local-c.offset >= c.from+14*3600 && local-c.offset < c.until-14*3600 {
		return local - c.offset
	}
	before, after := c.at(local-86400), c.at(local+86400)
	early, late := local-before, local-after
	if before == after {
		c.at(local - before)
		return local - before
	}
	if before > after { // an hour comes twice: the first
		if c.at(early) == before {
			return early
		}
		return late
	}
	if c.at(late) == after {
		return late
	}
	return early
}

// repeated is the instant of a time that does not rise, near a change of the clocks.
func (c *clock) repeated(local, at int64, s *Series) int64 {
	before, after := c.at(at-near), c.at(at+near)
	n := len(s.Samples)
	if before == after {
		return at
	}
	if before > after { // autumn
		late := local - after
		if late > s.Samples[n-1].At && late-s.Samples[n-1].At <= 2*3600 {
			s.Repeated++
			c.second, c.shift = late, before-after
			return late
		}
		// Changed late by hand: what it showed since the change was an hour ahead.
		c.at(at + near)
		change := c.from
		if change == c.tried { // once a change
			return at
		}
		c.tried = change
		k := n
		for k > 0 && s.Samples[k-1].At >= change+(before-after) {
			k--
			s.Samples[k].At -= before - after
		}
		if late > s.Samples[n-1].At && k < n {
			s.Repeated++
			return late
		}
		for ; k < n; k++ { // it was something else
			s.Samples[k].At += before - after
		}
		return at
	}
	s.Repeated++ // spring: forward, and an hour later back; what it showed between was ahead
	k := n
	for k > 0 && s.Samples[k-1].At >= at {
		k--
	}
	s.Samples = slices.Delete(s.Samples, k, n)
	return at
}

// String says how the file was read, for a keeper.
func (sh *Shape) String() string {
	column := func(i int) string {
		out := strconv.Itoa(i)
		if i-1 < len(sh.Headings) && sh.Headings[i-1] != "" {
			out += " " + strconv.Quote(sh.Headings[i-1])
		}
		return out
	}
	out := "time in column " + column(sh.Time)
	if sh.Clock > 0 {
		out = "day in column " + column(sh.Time) + ", time of day in " + column(sh.Clock)
	}
	if sh.Stamps != "local" {
		out += " (" + sh.Stamps + ")"
	}
	if sh.Order != OrderUnknown && sh.Order != YearFirst {
		out += ", " + orderWords[sh.Order] + ", " + sh.How
	}
	if sh.Heat > 0 {
		out += "; temperature in " + column(sh.Heat) + ", °" + string(sh.Degrees) + " " + sh.DegreesBy
	}
	if sh.Damp > 0 {
		out += "; humidity in " + column(sh.Damp)
		if sh.Part {
			out += ", as parts of 1"
		}
	}
	if sh.Guess != "" {
		out += ", " + sh.Guess
	}
	if sh.Reversed {
		out += "; the newest stood first"
	}
	for i, o := range sh.Others {
		if i == 0 {
			out += "; not used: "
		} else {
			out += ", "
		}
		out += column(o)
	}
	return out
}
