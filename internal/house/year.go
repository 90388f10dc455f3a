package house

import (
	"slices"

	"vivary/plan"
	"vivary/schema/civil"
)

// Pass lets some days go by, and then what happens on the last of them happens and is
// written down. A test builds after it: what the log knows is then the truth.
func (w *World) Pass(days int) {
	for range days {
		w.Today++
		for _, b := range w.Boxes {
			for _, l := range slices.Clone(b.Lots) {
				w.due(b, l)
			}
		}
	}
	for _, b := range w.Boxes {
		for _, l := range slices.Clone(b.Lots) {
			w.happen(b, l, days)
		}
	}
	if w.chance(60*days) && !w.Careful {
		w.slip()
	}
	w.sort()
}

func (w *World) sort() {
	slices.SortStableFunc(w.Log, func(a, b Line) int { return int(a.Date - b.Date) })
}

// due is what comes of what was before: births, first moults, moults that were seen to
// come. It is written down on the day on which it is seen.
func (w *World) due(b *Box, l *Lot) {
	switch {
	case l.Out > 0 && w.Today >= l.next:
		w.found(b, l)
	case l.Count == 0:
	case l.Block == "" && l.Stage == "newborn" && w.Today >= l.next:
		w.firstMoult(b, l)
	case l.In(Mated, w.Today) && b.Kind().Carry[1] > 0 && w.Today >= l.States[Mated].From+civil.Date(l.matedFor):
		w.birth(b, l)
	case l.In(Mated, w.Today) && b.Kind().Carry[1] > 0 && w.Today == l.States[Mated].From+civil.Date(l.matedFor-12) && w.chance(500):
		if w.say(b, l, "late") {
			l.begin(Late, w.Today+1, Open)
		}
	case l.In(Premoult, w.Today) && w.Today >= l.next:
		w.moult(b, l)
	case l.In(Premoult, w.Today) && w.Today == l.next-1 && w.chance(300):
		if w.say(b, l, "hanging") { // on its back: the same state
			l.begin(Moulting, w.Today, l.next)
		}
	case l.In(Sac, w.Today) && w.Today >= l.next && b.Kind().Sits[1] > 0:
		l.end(Sac, w.Today)
		w.bear(b, l, "hatched")
	case l.In(Sac, w.Today) && w.Today >= l.next && w.say(b, l, "sac-taken"):
		l.end(Sac, w.Today)
	}
}

// say writes a line if the program knows its words.
func (w *World) say(b *Box, l *Lot, word string, rest ...any) bool {
	w.write(b, l, word, rest...)
	last := w.Log[len(w.Log)-1]
	if _, found := plan.ParseLogLine(1, last.Date.String()+" "+last.Text); len(found) > 0 {
		w.Log = w.Log[:len(w.Log)-1]
		return false
	}
	return true
}

func (w *World) birth(b *Box, l *Lot) {
	for _, s := range []State{Mated, Near, Late} {
		l.end(s, w.Today)
	}
	w.bear(b, l, "born")
}

// bear is young on her, born or hatched.
func (w *World) bear(b *Box, l *Lot, word string) {
	k := b.Kind()
	n := w.between(k.Young[0], k.Young[1])
	w.write(b, l, word, n)
	w.Came += n
	brood := &Lot{Stage: "newborn", Instar: 1, Count: n, Mother: l, next: w.Today + civil.Date(w.between(k.OnHer[0], k.OnHer[1]))}
	brood.begin(Newborn, w.Today, Open)
	l.begin(Birth, w.Today, w.Today+2)
	l.begin(Brood, w.Today+2, Open)
	b.Lots = append(b.Lots, brood)
}

// firstMoult is written down in most cases. Where it is not, nobody can know of it for
// weeks, and then it is supposed.
func (w *World) firstMoult(b *Box, l *Lot) {
	l.Stage, l.Instar = "young", 2
	born := l.States[Newborn].From
	if l.Mother != nil {
		l.Mother.end(Brood, w.Today)
		l.Mother.begin(Round, w.Today, Open)
		if !b.Kind().Alone {
			l.Mother.begin(Round, w.Today, w.Today+28) // then they hunt alone (N11: four to five weeks)
		}
	}
	if w.chance(850) {
		w.write(b, l.Mother, "first_moult")
		l.end(Newborn, w.Today)
		l.begin(Soft, w.Today, w.Today+3)
	} else {
		l.States[Newborn] = Span{born, born + 31}
	}
	l.next = w.Today + civil.Date(w.between(4, 13)) // when they are taken out
	if !b.Kind().Alone {
		l.next += civil.Date(w.between(20, 200))
	}
}

func (w *World) moult(b *Box, l *Lot) {
	k := b.Kind()
	l.end(Premoult, w.Today)
	before := l.Stage
	if l.Instar > 0 && k.Stage != nil {
		l.Instar = min(l.Instar+1, len(k.Stage))
		l.Stage = k.Stage[l.Instar-1]
	}
	l.Refusals = 0
	l.end(Paused, w.Today)
	l.begin(Soft, w.Today, w.Today+civil.Date(min(k.Soft[before], k.Soft[l.Stage])))
	w.write(b, l, "moult")
}

// happen is what comes by chance to a lot in so many days.
func (w *World) happen(b *Box, l *Lot, days int) {
	k := b.Kind()
	often := func(perMille int) bool { return w.chance(perMille * days) }
	calm := len(l.States) == 0 || !slices.ContainsFunc(Fasts, func(s State) bool { return l.In(s, w.Today) })
	switch {
	case l.Count == 0:
		if l.Block == "one" && b.free() && often(4) {
			w.arrive(b, l)
		}
	case l.Block == "":
		w.takenOut(b, l)
	case b.Rests:
		if often(8) && calm {
			w.write(b, l, "fed")
		}
	case l.In(Birth, w.Today) || l.In(Brood, w.Today):
	case often(1) && l.Count == 1 && !b.nursing(l):
		w.leave(b, l)
	case l.Block == "one" && often(1):
		w.move(b, l)
	case calm && l.Block == "one" && l.Refusals == 0 && often(1):
		w.escape(b, l)
	case calm && k.Prey && l.Count == 1 && (l.Stage != "adult" || k.Grown) && often(9):
		l.begin(Premoult, w.Today, Open)
		l.next = w.Today + civil.Date(w.between(5, 25))
		if !w.chance(700) {
			w.moult(b, l)
		} else {
			w.write(b, l, "premoult")
		}
	case k.Prey && !l.In(Soft, w.Today) && !l.In(Moulting, w.Today) && often(8):
		w.refuse(b, l)
	case calm && k.Prey && often(8):
		l.Refusals = 0
		w.write(b, l, "fed")
	case l.Count > 2 && often(10):
		w.write(b, l, "counted", l.Count-w.rng.IntN(2))
	case l.Block == "colony" && often(2):
		w.write(b, l, "gravid?")
		l.begin(Mated, w.Today+1, w.Today+60)
		l.begin(Near, w.Today+1, w.Today+60)
	case l.Block == "colony" && l.In(Mated, w.Today) && often(20) && w.say(b, l, "not-gravid"):
		l.end(Mated, w.Today)
		l.end(Near, w.Today)
	case calm && l.Female && (b.Template == "redknee" && often(1) || k.Sits[1] > 0 && !b.nursing(l) && often(6)) && w.say(b, l, "laid"):
		l.begin(Sac, w.Today, Open)
		l.next = w.Today + civil.Date(w.between(35, 42))
		if k.Sits[1] > 0 {
			l.next = w.Today + civil.Date(w.between(k.Sits[0], k.Sits[1]))
		}
	case k.Prey && often(1) && w.say(b, l, "ill"), k.Prey && often(1) && w.say(b, l, "treated", 5), often(1) && w.say(b, l, "recovered"):
	case calm && l.Female && k.Carry[1] > 0 && !l.In(Mated, w.Today) && !b.nursing(l) && often(3):
		w.mate(b, l, w.between(k.Carry[0], k.Carry[1]))
	case often(1):
		w.write(b, nil, "mites")
	}
}

// mate is a mating that was seen, so many days before the birth.
func (w *World) mate(b *Box, l *Lot, days int) {
	const quiet = 60 // days before the earliest birth from which nobody digs
	l.matedFor = days
	w.write(b, l, "mated")
	l.begin(Mated, w.Today+1, Open)
	l.begin(Near, w.Today+civil.Date(b.Kind().Soonest-quiet), Open)
}

// refuse is a meal that was not taken. After the second, meals may wait for a while.
func (w *World) refuse(b *Box, l *Lot) {
	w.write(b, l, "refused")
	l.Refusals++
	if p := Pause[l.Stage]; p > 0 && l.Refusals >= 2 {
		l.begin(Paused, w.Today, w.Today+civil.Date(p+1))
	}
}

// arrive is one that came.
func (w *World) arrive(b *Box, l *Lot) {
	l.Count, l.Stage, l.Instar, l.States, l.Refusals = 1, l.planned.Stage, l.planned.Instar, nil, 0
	w.Came++
	w.write(b, l, "arrived", 1)
	l.begin(Settling, w.Today, w.Today+2)
}

// escape is one that is not in its box. It is searched for until it is found.
func (w *World) escape(b *Box, l *Lot) {
	w.write(b, l, "escaped")
	l.Count, l.Out = l.Count-1, l.Out+1
	l.next = w.Today + civil.Date(w.between(1, 20))
	w.Loose++
}

func (w *World) found(b *Box, l *Lot) {
	w.write(b, l, "found")
	l.Count, l.Out = l.Count+l.Out, 0
	w.Loose--
}

// leave is a death or a sale.
func (w *World) leave(b *Box, l *Lot) {
	word := "died"
	if w.chance(400) {
		word = "moved"
	}
	w.write(b, l, word, 1)
	l.Count--
	w.Went++
	l.States, l.Refusals = nil, 0
}

// move takes one to an empty box of the same kind, or now and then to the colony.
func (w *World) move(b *Box, l *Lot) {
	for _, to := range w.Boxes {
		there := to.Lots[0]
		switch {
		case to == b || to.Kind().Species != b.Kind().Species:
		case there.Block == "one" && to.free() || there.Block == "colony" && len(to.Lots) == 1 && w.chance(150):
			w.write(b, l, "moved", to.Name)
			if there.Block == "one" {
				l.planned, there.planned = there.planned, l.planned
				b.Lots[0], to.Lots[0] = there, l
				return
			}
			guest := *l
			guest.Block = "" // no block of the plan holds it
			to.Lots = append(to.Lots, &guest)
			l.Count, l.States = 0, nil
			return
		}
	}
}

// takenOut are young that leave their mother: to an empty box, or to where nobody has
// written.
func (w *World) takenOut(b *Box, l *Lot) {
	if l.Mother == nil || l.Stage == "newborn" || w.Today < l.next {
		return
	}
	n := l.Count
	if !b.Kind().Alone {
		n = w.between(1, l.Count)
	}
	for _, to := range w.Boxes {
		there := to.Lots[0]
		if there.Block == "one" && to.Kind().Species == b.Kind().Species && to.free() && there.planned.Stage == "young" && w.say(b, l.Mother, "separated", n, to.Name) {
			there.Count, there.Stage, there.Instar, there.States = n, "young", 2, nil
			w.part(b, l, n)
			return
		}
	}
	w.write(b, l.Mother, "separated", n)
	if b.Lost == 0 {
		b.Lost = w.Today
	}
	if n == l.Count {
		w.peace(l.Mother)
	}
	l.Mother, l.next = nil, Open // they are counted where they were
}

// peace is a mother's time after her young were taken out: she eats live prey from the
// third day, and all else is as usual from the fourteenth (common practice, no source).
func (w *World) peace(l *Lot) {
	l.end(Round, w.Today)
	l.begin(Parted, w.Today, w.Today+3)
	l.begin(After, w.Today, w.Today+14)
}

// part takes some of a brood away; with the last of them her time of peace begins.
func (w *World) part(b *Box, l *Lot, n int) {
	if l.Count -= n; l.Count > 0 {
		l.next = w.Today + civil.Date(w.between(20, 90))
		return
	}
	w.peace(l.Mother)
	b.Lots = slices.DeleteFunc(b.Lots, func(x *Lot) bool { return x == l })
}

// slip is a line that cannot be so. It changes nothing.
func (w *World) slip() {
	b := w.Boxes[w.rng.IntN(len(w.Boxes))]
	l := b.Lots[0]
	switch w.rng.IntN(6) {
	case 0:
		w.write(b, l, "died", 30)
	case 1:
		if n := len(w.Log); n > 0 {
			w.Log = append(w.Log, w.Log[n-1])
		}
	case 2:
		w.write(b, nil, "done", "watr")
	case 3:
		w.write(b, l, "moved", "nowhere")
	case 4:
		w.write(b, l, "pondered")
	case 5:
		w.write(b, l, "counted", 900)
	}
	w.Log[len(w.Log)-1].Slip = true
}
