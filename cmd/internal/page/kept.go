package page

import (
	"html/template"
	"strings"
	"sync"

	"vivary/compile"
	"vivary/compile/daylist"
)

// kept is what pages have made, from one House to the next: where a tick changes one round
// of many, the others are as they were.
type kept struct {
	mu     sync.Mutex
	lists  daylist.Memory
	rounds map[string]map[*daylist.List]round // by keeper, those of the last list
}

// list makes the list of a keeper, or of all for "", one at a time.
func (k *kept) list(r *compile.Result, keeper string) *list {
	k.mu.Lock()
	defer k.mu.Unlock()
	return k.listOf(r, keeper)
}

// Ready makes the lists of a House that were asked for of the one before, so that whoever asks
// next does not wait for them.
func (p *Pages) Ready(h *House) {
	p.kept.mu.Lock()
	var keepers []string
	for keeper := range p.kept.rounds {
		keepers = append(keepers, keeper)
	}
	p.kept.mu.Unlock()
	q := &request{Pages: p, h: h}
	r, _ := q.listed()
	for _, keeper := range keepers {
		if r != nil {
			q.list(r, keeper)
		}
	}
}

// fragments are a round as it stands on pages, by whose page it is.
type fragments struct {
	mu sync.Mutex
	of map[reader]template.HTML
}

// reader is what a round on a page depends on beside the round itself.
type reader struct {
	home, day, mine string
	write           bool
}

// maxKept is for how many readers a round is kept.
const maxKept = 50

// Part returns a round as it stands on the page. One beside which nothing is said of what was
// sent is made once.
func (p dayPage) Part(x round) (template.HTML, error) {
	if p.Slip != nil && (p.Before == x.ID || strings.HasPrefix(p.Before, x.ID+"-")) {
		return p.part(x)
	}
	by := reader{p.Home, p.Day, p.Mine, p.Write}
	x.html.mu.Lock()
	defer x.html.mu.Unlock()
	if text, made := x.html.of[by]; made {
		return text, nil
	}
	text, err := p.part(x)
	if err != nil {
		return "", err
	}
	if x.html.of == nil {
		x.html.of = map[reader]template.HTML{}
	}
	if len(x.html.of) < maxKept {
		x.html.of[by] = text
	}
	return text, nil
}

func (p dayPage) part(x round) (template.HTML, error) {
	var b strings.Builder
	err := templates["day"].ExecuteTemplate(&b, "round", map[string]any{"R": x, "P": p})
	return template.HTML(b.String()), err // the template has escaped what stands in it
}
