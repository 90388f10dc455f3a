package assist

import (
	"slices"
	"strings"

	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// logLine is a line of a log as far as it is typed before the cursor.
type logLine struct {
	words    []string // those that are complete
	from, to int      // of the word in which the cursor is
	typed    string
	noted    bool // the cursor stands in the note, in a remark, or behind it

	next      next
	enclosure string
	life      *life.Enclosure // nil where there is none of that name, or the plan is not understood
	group     string
	word      *schema.LogWord
	care      bool     // the word said which care
	args      []string // what stands behind the word
}

// next is what stands next in a line.
type next uint8

const (
	aDay          next = iota
	aHead              // a time, by, or the enclosure
	aBy                // by, or the enclosure
	aWriter            // the keeper behind by
	aPlace             // the enclosure
	aKeeper            // the keeper of whom the line is
	aKeeperWord        // what is said of them
	aDeadline          // the date of the house of which the line is
	aDeadlineWord      // what is said of it
	aSubject           // the animals, or the word
	aWord              // the word
	anAfter            // what stands behind the word
	nothing
)

// logLine cuts the line of a byte into words, and goes along them to where the cursor stands.
func (p *Page) logLine(at int) *logLine {
	l := &logLine{from: at, to: at}
	start := lineStart(p.Text, at)
	before := string(p.Text[start:at])
	if strings.HasPrefix(strings.TrimSpace(before), "#") || strings.Contains(before, `"`) {
		l.noted = true
		return l
	}
	l.from = start + strings.LastIndexAny(before, " \t") + 1
	l.typed = string(p.Text[l.from:at])
	end := lineEnd(p.Text, at)
	for l.to < end && !strings.ContainsRune(" \t\"", rune(p.Text[l.to])) {
		l.to++
	}
	l.words = strings.Fields(string(p.Text[start:l.from]))
	p.along(l, l.words)
	return l
}

// along goes along the words before the enclosure, and that.
func (p *Page) along(l *logLine, words []string) {
	if len(words) == 0 {
		return
	}
	words, l.next = words[1:], aHead
	if len(words) > 0 && strings.Contains(words[0], ":") {
		words, l.next = words[1:], aBy
	}
	if len(words) > 0 && words[0] == "by" {
		words, l.next = words[1:], aWriter
		if len(words) > 0 {
			words, l.next = words[1:], aPlace
		}
	}
	if len(words) == 0 {
		return
	}
	if words[0] == schema.LogKeeper && p.Result.Plan.Enclosure(schema.LogKeeper) == nil {
		l.args, l.next = words[1:], min(aKeeper+next(len(words)-1), aKeeperWord)
		if len(words) > 2 && words[2] != schema.WordWithdrawn.Name || len(words) > 3 {
			l.next = nothing
		}
		return
	}
	if words[0] == schema.LogDeadline && p.Result.Plan.Enclosure(schema.LogDeadline) == nil {
		l.args, l.next = words[1:], min(aDeadline+next(len(words)-1), aDeadlineWord)
		if len(words) > 2 && words[2] != schema.WordWithdrawn.Name || len(words) > 3 {
			l.next = nothing
		}
		return
	}
	l.enclosure, l.next = words[0], aSubject
	l.life = p.life(l.enclosure)
	p.behind(l, words[1:])
}

// behind goes on behind the enclosure.
func (p *Page) behind(l *logLine, words []string) {
	if len(words) > 0 && p.isGroup(l, words[0]) {
		l.group, words, l.next = words[0], words[1:], aWord
	}
	if len(words) == 0 {
		return
	}
	l.next = nothing
	if s, n := schema.Spelled(words); s != nil && s.Word != nil {
		l.next, l.word, l.care, l.args = anAfter, s.Word, s.Care != nil, words[n:]
	}
}

// completeLog offers what may stand next in a line of a log.
func (p *Page) completeLog(at int) []Offer {
	l := p.logLine(at)
	o := &offers{page: p, from: l.from, to: l.to, typed: l.typed}
	switch {
	case l.noted:
	case l.next == aDay:
		p.logDates(o)
	case l.next == aHead, l.next == aBy:
		p.heads(o, l.next == aBy)
		p.places(o)
	case l.next == aWriter, l.next == aKeeper:
		p.people(o)
	case l.next == aPlace:
		p.places(o)
	case l.next == aKeeperWord:
		without(o, schema.KeeperWords, len(l.args) > 1)
	case l.next == aDeadline:
		p.deadlines(o)
	case l.next == aDeadlineWord:
		without(o, schema.DeadlineWords, len(l.args) > 1)
	case l.next == aSubject:
		p.groups(o, l)
		p.logWords(o, l)
	case l.next == aWord:
		p.logWords(o, l)
	case l.next == anAfter:
		p.after(o, l)
	}
	return o.best()
}

// life returns what is known of the animals of an enclosure, or nil.
func (p *Page) life(name string) *life.Enclosure {
	for _, l := range p.Result.Lives {
		if l.Plan.Name.V == name {
			return l
		}
	}
	return nil
}

// isGroup reports whether a word names animals: those that live there, or whatever is no word
// of the log and stands where animals do.
func (p *Page) isGroup(l *logLine, name string) bool {
	if l.life != nil && slices.ContainsFunc(l.life.Groups, func(g *life.Group) bool { return g.Animals.Name.V == name }) {
		return true
	}
	s, _ := schema.Spelled([]string{name})
	return s == nil
}

// put offers a word, with a blank behind it where the line goes on.
func (o *offers) put(x offer, goesOn bool) {
	text := x.Label
	if goesOn && (o.to >= len(o.page.Text) || o.page.Text[o.to] != ' ') {
		text += " "
	}
	o.add(x, text)
}

func (p *Page) logDates(o *offers) {
	for i, d := range near(p.Result.Today, lately) {
		o.put(offer{Offer: Offer{Label: d.date.String(), Detail: d.words, Kind: KindValue}, also: []string{d.words}, usual: -i}, true)
	}
}

// heads offers what may stand between the day and the enclosure.
func (p *Page) heads(o *offers, timed bool) {
	if !timed {
		now := civil.Clock(p.Result.Now.Hour()*60 + p.Result.Now.Minute())
		o.put(offer{Offer: Offer{Label: now.String(), Detail: "the time, where it is known", Kind: KindValue}, usual: -2}, true)
	}
	o.put(offer{Offer: Offer{Label: "by", Detail: "the keeper who wrote it", Kind: KindLogWord}, usual: -1}, true)
	o.put(offer{Offer: Offer{Label: schema.LogKeeper, Detail: "a line about one of the people", Kind: KindLogWord}, usual: -1}, true)
	if len(p.Result.Plan.Deadlines) > 0 {
		o.put(offer{Offer: Offer{Label: schema.LogDeadline, Detail: "a line about a date of the house", Kind: KindLogWord}, usual: -1}, true)
	}
}

func (p *Page) people(o *offers) {
	for _, k := range p.Result.Plan.Keepers {
		o.put(offer{Offer: Offer{Label: k.Name.V, Detail: k.Shown(), Kind: KindName}}, true)
	}
}

// places offers enclosures and racks: those first of which something is asked today.
func (p *Page) places(o *offers) {
	lives := p.Result.Lives
	for i, e := range p.Result.Plan.Enclosures {
		usual := 0
		if i < len(lives) && len(p.asks(lives[i], "")) > 0 {
			usual = 1
		}
		o.put(offer{Offer: Offer{Label: e.Name.V, Detail: shownOf(e), Kind: KindName}, also: []string{e.Shown()}, usual: usual}, true)
	}
	for _, x := range p.Result.Plan.Stores {
		o.put(offer{Offer: Offer{Label: x.Name.V, Detail: x.Kind().Name + " of feeder animals", Kind: KindName}, also: []string{x.Shown()}}, true)
	}
	for _, k := range p.Result.Plan.Racks {
		o.put(offer{Offer: Offer{Label: k.Name.V, Detail: "rack: what was done, skipped or measured there", Kind: KindName}, also: []string{k.Shown()}}, true)
	}
}

// deadlines offers the dates of the house.
func (p *Page) deadlines(o *offers) {
	for _, d := range p.Result.Plan.Deadlines {
		o.put(offer{Offer: Offer{Label: d.Name.V, Detail: d.Shown(), Kind: KindName}}, true)
	}
}

// without offers the words of lines about no enclosure: what is taken back, behind the word for
// that.
func without(o *offers, words []*schema.LogWord, back bool) {
	for _, w := range words {
		o.put(offer{Offer: Offer{Label: w.Name, Detail: w.Doc, Kind: KindLogWord}}, false)
	}
	if w := schema.WordWithdrawn; !back {
		o.put(offer{Offer: Offer{Label: w.Name, Detail: w.Doc, Kind: KindLogWord}}, true)
	}
}

// groups offers the animals of the enclosure: first where they must be named, since there are
// several.
func (p *Page) groups(o *offers, l *logLine) {
	if l.life == nil {
		if e := p.Result.Plan.Enclosure(l.enclosure); e != nil {
			for _, a := range e.Animals {
				o.put(offer{Offer: Offer{Label: a.Name.V, Detail: a.Stage.V, Kind: KindName}}, true)
			}
		}
		return
	}
	living := 0
	for _, g := range l.life.Groups {
		if g.Count(p.Result.Today) > 0 {
			living++
		}
	}
	for _, g := range l.life.Groups {
		n := g.Count(p.Result.Today)
		x := offer{Offer: Offer{Label: g.Animals.Name.V, Detail: strings.TrimSuffix(wording.Count(n, "animal", "animals")+", "+g.Stage(p.Result.Today), ", "), Kind: KindName}}
		switch {
		case n == 0:
			x.usual = -1
		case living > 1:
			x.usual = mustName
			if len(p.asks(l.life, g.Animals.Name.V)) > 0 {
				x.usual++
			}
		}
		o.put(x, true)
	}
}

// logWords offers the words of the log: what is asked now, what would end a state of the
// animals, what is often written here, and all others in the order in which the schema has them.
func (p *Page) logWords(o *offers, l *logLine) {
	usual := p.usualWords(l)
	also := spelledAlso()
	for _, w := range schema.LogWords {
		x := offer{Offer: Offer{Label: w.Name, Detail: w.Doc, Doc: aboutWord(w), Kind: KindLogWord}, also: also[w], usual: usual[w]}
		if _, rack := p.rackOf(l); rack && !plan.OfRack(w) {
			continue
		}
		if p.Result.Plan.Store(l.enclosure) != nil && !plan.OfStore(w) {
			continue
		}
		o.put(x, w.After == schema.AfterCare || w.After == schema.AfterMeasure || w.After == schema.AfterTest || w.After == schema.AfterWord)
	}
}

func (p *Page) rackOf(l *logLine) (*plan.Rack, bool) {
	k := p.Result.Plan.Rack(l.enclosure)
	return k, k != nil && p.Result.Plan.Enclosure(l.enclosure) == nil
}

// spelledAlso are the other words for each word of the log.
func spelledAlso() map[*schema.LogWord][]string {
	all := map[*schema.LogWord][]string{}
	for i := range schema.Spellings {
		if s := &schema.Spellings[i]; s.Word != nil && s.Text != s.Word.Name {
			all[s.Word] = append(all[s.Word], s.Text)
		}
	}
	return all
}

// How usual a word is, by why.
const (
	askedNow   = 1 << 20 // a question stands that it answers
	askedHere  = 1 << 18 // one of others in the enclosure does
	endsState  = 1 << 16 // a state lasts until it is logged
	mostOfLogs = 1 << 12
	mustName   = 1 << 29 // the line has to say which animals
)

// usualWords says how usual each word is in a line about the animals.
func (p *Page) usualWords(l *logLine) map[*schema.LogWord]int {
	usual := map[*schema.LogWord]int{}
	for i := range p.Result.Plan.Log {
		usual[p.Result.Plan.Log[i].Word] = min(usual[p.Result.Plan.Log[i].Word]+1, mostOfLogs)
	}
	if l.life == nil {
		return usual
	}
	for _, w := range p.asked(l.life, "") { // of a brood its mother is asked
		usual[w] |= askedHere
	}
	for _, w := range p.asked(l.life, l.group) {
		usual[w] |= askedNow
	}
	for _, g := range l.life.Groups {
		if l.group != "" && g.Animals.Name.V != l.group || g.Count(p.Result.Today) == 0 {
			continue
		}
		for _, text := range p.states(g) {
			for _, w := range schema.LogWordsIn(text) {
				usual[w] |= endsState
			}
		}
	}
	return usual
}

// states are what is said of the states and the windows of some animals today, in which the
// words stand that end them.
func (p *Page) states(g *life.Group) (out []string) {
	on := p.Result.Today
	for i := range g.Holds {
		if h := &g.Holds[i]; h.From <= on && on < h.Until {
			out = append(out, h.End, h.State.Rule)
		}
	}
	for i := range g.Windows {
		if w := &g.Windows[i]; w.From <= on && on < w.Until {
			out = append(out, w.Text)
		}
	}
	return out
}

// asked are the words that answer what is asked today of an enclosure, or of some animals.
func (p *Page) asked(l *life.Enclosure, group string) (out []*schema.LogWord) {
	for _, a := range p.asks(l, group) {
		out = append(out, schema.LogWordsIn(a.Write)...)
	}
	return out
}

// asks are the questions that stand today about an enclosure, or about some animals there.
func (p *Page) asks(l *life.Enclosure, group string) (out []*life.Ask) {
	take := func(asks []life.Ask) {
		for i := range asks {
			a := &asks[i]
			if (a.From <= p.Result.Today || a.Undated) && (a.Until == 0 || p.Result.Today < a.Until) {
				out = append(out, a)
			}
		}
	}
	take(l.Asks)
	for _, g := range l.Groups {
		if group == "" || g.Animals.Name.V == group {
			take(g.Asks)
		}
	}
	return out
}
