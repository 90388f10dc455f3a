package readings

import (
	"time"

	"vivary/compile/measure"
	"vivary/compile/picture"
	"vivary/schema/civil"
)

// Track is the report to be drawn: all of it, or the week that begins on a day.
func (r *Report) Track(week civil.Date) *picture.Track {
	loc := r.Result.Now.Location()
	first, last := r.Span()
	t := &picture.Track{Title: r.plan().Shown() + ": " + first.Format("Mon 2 Jan 2006") + " to " + last.Format("Mon 2 Jan 2006"), From: first.Unix(), Until: last.Unix(), Zone: loc}
	if week != 0 {
		t.From, t.Until = week.At(0, loc).Unix(), (week+7).At(0, loc).Unix()
		t.Title = r.plan().Shown() + ": the week from " + week.Words()
	}
	for _, j := range r.Files {
		for _, v := range []*Judged{j.Heat, j.Damp} {
			if v != nil && len(v.values(j).at) > 1 {
				t.Panels = append(t.Panels, r.panel(j, v, t.From, t.Until))
			}
		}
	}
	return t
}

func (j *Judged) values(of *Judgement) *values {
	if j.Damp {
		return &of.damp
	}
	return &of.heat
}

// panel is one value of one file.
func (r *Report) panel(j *Judgement, v *Judged, from, until int64) picture.Panel {
	x := v.values(j)
	u := r.unit(v.Damp)
	p := picture.Panel{Heading: j.Place + ": temperature, " + u.String(), Unit: u, At: x.at, V: x.v, Gap: x.gap}
	if v.Damp {
		p.Heading = j.Place + ": humidity, %"
	}
	for _, l := range v.Verdicts {
		day := l.Day
		switch l.Level {
		case measure.Harm:
			p.Hard = &day
		case measure.Unusual:
			p.Soft = &day
		case measure.Aim:
			p.AimWords = "aimed for: " + r.limit(l.Limit)
			p.Aim = aims(l.Limit, from, until, x.loc, r.Day)
			p.Band = banded(p.Aim, from, until)
		}
	}
	return p
}

// aims are what is aimed for over a time: days and nights that are alike are one.
func aims(l *measure.Limit, from, until int64, loc *time.Location, d Daylight) (all []picture.Stretch) {
	for _, s := range stretches(from, until, loc, d) {
		a := l.At(s.on, s.night)
		next := picture.Stretch{From: s.from, Until: s.until, Low: a.Low, High: a.High}
		if n := len(all); n > 0 && all[n-1].Low == next.Low && all[n-1].High == next.High {
			all[n-1].Until = next.Until
			continue
		}
		all = append(all, next)
	}
	return all
}

// banded puts days and nights together where there are too many for a picture.
func banded(all []picture.Stretch, from, until int64) (out []picture.Stretch) {
	const many = 62 * 86400
	if until-from <= many {
		return all
	}
	for i := 0; i < len(all); i += 2 {
		s := all[i]
		if i+1 < len(all) {
			o := all[i+1]
			s.Until, s.Low, s.High = o.Until, min(s.Low, o.Low), max(s.High, o.High)
		}
		if n := len(out); n > 0 && out[n-1].Low == s.Low && out[n-1].High == s.High {
			out[n-1].Until = s.Until
			continue
		}
		out = append(out, s)
	}
	return out
}
