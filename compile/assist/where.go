package assist

// place is the sort of place at which a cursor stands.
type place uint8

const (
	nowhere place = iota // nothing can be told: a remark, behind a value
	inBody               // where the name of a block or an attribute begins
	inLabel              // in the label of a block
	inValue              // in the value of an attribute
)

// where is where a cursor stands in a plan.
type where struct {
	place
	tree *tree
	in   *block // whose body it is
	name string // the attribute, or the type of the block
	key  token  // where that stands

	from, to int    // what is replaced
	typed    string // of it, what stands before the cursor
	whole    string // all of the text in which the cursor is
	quoted   bool   // it stands in quotes
	open     bool   // whose second is missing
	inList   bool
	others   []string // what else stands in the list
}

// at finds where a byte of a plan stands.
func (p *Page) at(at int) *where {
	w := &where{from: at, to: at}
	found := false
	w.tree = newTree(string(p.Text), func(t *tree, x token) {
		covers := x.from < at && (at < x.to || at == x.to && (x.kind == word || x.open))
		if !found && (covers || x.from >= at) {
			found = true
			w.found(t, x, at, covers)
		}
	})
	return w
}

// found tells the place from what is open when the cursor is reached: x is the token that it
// is in, or the next.
func (w *where) found(t *tree, x token, at int, covers bool) {
	s := &t.st
	w.in = t.in
	if covers && x.kind == aside || t.beyond > 0 {
		return
	}
	if covers && x.kind == text {
		w.quoted, w.open = true, x.open
	}
	if covers || x.kind == word && x.from == at {
		w.from, w.to = x.inside()
		w.whole = t.src[w.from:w.to]
		w.typed = t.src[w.from:max(at, w.from)]
		if x.open {
			w.to = at
		}
	}
	switch n := len(s.tokens); {
	case s.equals > 0:
		w.key = s.tokens[s.equals-1]
		w.name = w.key.of(t.src)
		w.value(t, covers)
	case n == 0 && !w.quoted && !(t.last.kind == sign && t.last.sign == '}'):
		w.place, w.key = inBody, x
	case n == 1 && s.equals < 0 && s.tokens[0].kind == word && !s.listed:
		w.key = s.tokens[0]
		w.name = w.key.of(t.src)
		w.place = inLabel
	}
}

// value is a place behind the = of an attribute: it is in the value, or in a list.
func (w *where) value(t *tree, covers bool) {
	s := &t.st
	values := s.tokens[s.equals:]
	w.inList = s.lists > 0
	switch {
	case w.inList:
		for _, v := range values {
			w.others = append(w.others, v.of(t.src))
		}
		w.place = inValue
	case len(values) == 0 && !s.listed:
		w.place = inValue
	}
}
