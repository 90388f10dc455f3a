package hostile

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"vivary/schema"
)

// Mutated is a plan and a log in which is done what bytes say, some bytes for each thing:
// lines and blocks are taken out, doubled and moved, values and names take the place of
// others, and what the language has is put where it may not stand. What comes out is nearly a
// plan, so that most of it is read: bytes changed at random are refused by their first line.
func Mutated(plan, log string, by []byte) Input {
	m := mutator{plan: strings.Split(plan, "\n"), log: strings.Split(log, "\n"), by: by}
	for len(m.by) > 0 && len(m.plan) < 3000 {
		ops[m.n(len(ops))](&m)
	}
	return Input{Name: "mutated", Plan: strings.Join(m.plan, "\n"), Log: strings.Join(m.log, "\n")}
}

type mutator struct {
	plan, log []string
	by        []byte
}

// n is a number below most, of one byte or two; 0 where there are none left.
func (m *mutator) n(most int) int {
	x := 0
	for k := 0; k < 2 && len(m.by) > 0 && (k == 0 || most > 256); k++ {
		x, m.by = x<<8|int(m.by[0]), m.by[1:]
	}
	return x % max(most, 1)
}

// one is one of some texts.
func (m *mutator) one(all []string) string { return all[m.n(len(all))] }

// line is the place of a line of the plan.
func (m *mutator) line() int { return m.n(len(m.plan)) }

// block is where a block begins and ends that is near a line: its first line, and the first
// behind its last.
func (m *mutator) block() (from, to int) {
	from = m.line()
	for from > 0 && !strings.HasSuffix(strings.TrimSpace(m.plan[from]), "{") {
		from--
	}
	depth := 0
	for to = from; to < len(m.plan); {
		depth += strings.Count(m.plan[to], "{") - strings.Count(m.plan[to], "}")
		if to++; depth <= 0 {
			break
		}
	}
	return from, to
}

// valued is the place of a line with an attribute near another, or -1.
func (m *mutator) valued() int {
	from := m.line()
	for i := range m.plan {
		if k := (from + i) % len(m.plan); strings.Contains(m.plan[k], " = ") {
			return k
		}
	}
	return -1
}

// set gives an attribute another value.
func (m *mutator) set(value string) {
	if k := m.valued(); k >= 0 {
		name, _, _ := strings.Cut(m.plan[k], " = ")
		m.plan[k] = name + " = " + value
	}
}

// ops are what is done.
var ops = []func(*mutator){
	func(m *mutator) { k := m.line(); m.plan = slices.Delete(m.plan, k, k+min(1, len(m.plan)-1)) },
	func(m *mutator) { k := m.line(); m.plan = slices.Insert(m.plan, k, m.plan[k]) },
	func(m *mutator) { a, b := m.line(), m.line(); m.plan[a], m.plan[b] = m.plan[b], m.plan[a] },
	func(m *mutator) {
		from, to := m.block()
		if m.plan = slices.Delete(m.plan, from, to); len(m.plan) == 0 {
			m.plan = []string{""}
		}
	},
	func(m *mutator) {
		from, to := m.block()
		m.plan = slices.Insert(m.plan, from, slices.Clone(m.plan[from:to])...)
	},
	func(m *mutator) {
		from, to := m.block()
		some := slices.Clone(m.plan[from:to])
		m.plan = slices.Insert(m.plan, m.line(), some...)
	},
	func(m *mutator) { m.set(m.one(values)) },
	func(m *mutator) { m.set(m.one(values)) },
	func(m *mutator) { // a value of another line
		if k := m.valued(); k >= 0 {
			_, value, _ := strings.Cut(m.plan[k], " = ")
			m.set(value)
		}
	},
	func(m *mutator) { m.number(m.plan) },
	func(m *mutator) { m.number(m.log) },
	func(m *mutator) { m.name(m.plan) },
	func(m *mutator) { m.plan = slices.Insert(m.plan, m.line(), "  "+m.one(attributes)) },
	func(m *mutator) { m.plan = slices.Insert(m.plan, m.line(), m.one(attributes), m.one(attributes)) },
	func(m *mutator) { m.plan = slices.Insert(m.plan, m.line(), strings.Split(m.one(blocks), "\n")...) },
	func(m *mutator) { m.plan = slices.Insert(m.plan, m.line(), m.one(blockNames)+" \"x\" {", "}") },
	func(m *mutator) { k := m.line(); m.plan[k] = m.within(m.plan[k], m.one(units)) },
	func(m *mutator) { k := m.line(); m.plan[k] = m.within(m.plan[k], "") },
	func(m *mutator) { k := m.n(len(m.log)); m.log[k] = m.within(m.log[k], m.one(units)) },
	func(m *mutator) { k := m.n(len(m.log)); m.log = slices.Insert(m.log, k, m.log[k]) },
	func(m *mutator) { k := m.n(len(m.log)); m.log = slices.Delete(m.log, k, k+min(1, len(m.log)-1)) },
	func(m *mutator) { m.logged() },
	func(m *mutator) { m.logged() },
}

// within puts something into a line in place of a letter.
func (m *mutator) within(line, what string) string {
	k := m.n(len(line) + 1)
	return line[:k] + what + line[min(k+1, len(line)):]
}

var digits = regexp.MustCompile(`\d+`)

// number puts another number in the place of one.
func (m *mutator) number(lines []string) {
	k := m.n(len(lines))
	if all := digits.FindAllStringIndex(lines[k], -1); len(all) > 0 {
		at := all[m.n(len(all))]
		lines[k] = lines[k][:at[0]] + m.one([]string{"0", "1", "2", "7", "31", "60", "999", "100000", "-1", "0.001", "1e9"}) + lines[k][at[1]:]
	}
}

var texts = regexp.MustCompile(`"[^"]*"`)

// name puts one text of the plan in the place of another.
func (m *mutator) name(lines []string) {
	a, b := m.n(len(lines)), m.n(len(lines))
	all, others := texts.FindAllStringIndex(lines[a], -1), texts.FindAllString(lines[b], -1)
	if len(all) > 0 && len(others) > 0 {
		at := all[m.n(len(all))]
		lines[a] = lines[a][:at[0]] + m.one(others) + lines[a][at[1]:]
	}
}

// logged adds a line to the log: some word of it, of an enclosure of another line.
func (m *mutator) logged() {
	k := m.n(len(m.log))
	fields := strings.Fields(m.log[k])
	box := "one"
	if len(fields) > 1 {
		box = fields[1]
	}
	day := m.one([]string{"2026-03-01", "2026-08-30", "2026-10-25", "2027-02-03", "2027-09-30"})
	line := day + " " + box + " " + schema.LogWords[m.n(len(schema.LogWords))].Name
	if what := m.one([]string{"", " 1", " 3 to " + box, " 20 g", " 2 cricket", " 5 days", " adult", " water", " 0", " 99999"}); what != "" {
		line += what
	}
	m.log = slices.Insert(m.log, k, line)
}

// values are as the language has them anywhere, attributes are with them, and blocks are
// examples of blocks.
var values, attributes, blocks, blockNames = func() (values, attributes, blocks, names []string) {
	seen := map[*schema.Block]bool{}
	var into func(b *schema.Block)
	into = func(b *schema.Block) {
		if seen[b] {
			return
		}
		seen[b] = true
		names = append(names, b.Name)
		if b.Example != "" {
			blocks = append(blocks, b.Example)
		}
		for i := range b.Attrs {
			if a := &b.Attrs[i]; a.Example != "" {
				values, attributes = append(values, a.Example), append(attributes, a.Name+" = "+a.Example)
			}
			for _, c := range b.Attrs[i].Choices {
				values = append(values, strconv.Quote(c.Name))
			}
		}
		for _, in := range b.Blocks {
			into(in)
		}
	}
	into(schema.Plan)
	slices.Sort(values)
	return slices.Compact(values), attributes, blocks, names
}()
