package logger

import (
	"bytes"
	"strings"
)

// stamp is a time as it is written, before it is known in which order day, month and year
// stand.
type stamp struct {
	a, b, c  int32 // the parts of the day, in the order in which they stand
	sec      int32 // of the day
	offset   int32 // seconds east of Greenwich
	date     bool
	clock    bool
	zoned    bool  // offset is written
	order    Order // what the form itself tells
	dotted   bool
	twoDigit bool
}

// months are the names of months by their first three letters, in the languages in which
// loggers are mostly sold (from memory).
var months = map[string]int32{
	"jan": 1, "ene": 1, "gen": 1, "feb": 2, "fev": 2, "fév": 2, "mar": 3, "mär": 3, "mrz": 3, "maa": 3, "apr": 4, "abr": 4, "avr": 4,
	"may": 5, "mai": 5, "mei": 5, "mag": 5, "jun": 6, "jui": 0, "giu": 6, "jul": 7, "lug": 7, "aug": 8, "ago": 8, "aoû": 8,
	"sep": 9, "set": 9, "oct": 10, "okt": 10, "ott": 10, "out": 10, "nov": 11, "dec": 12, "dez": 12, "dic": 12, "déc": 12,
}

var weekdays = map[string]bool{"mon": true, "tue": true, "wed": true, "thu": true, "fri": true, "sat": true, "sun": true}

// scanner walks over the bytes of a time.
type scanner struct {
	s []byte
	i int
}

func (p *scanner) peek() byte {
	if p.i < len(p.s) {
		return p.s[p.i]
	}
	return 0
}

func (p *scanner) take(c byte) bool {
	if p.peek() == c && p.i < len(p.s) {
		p.i++
		return true
	}
	return false
}

func (p *scanner) blanks() {
	for p.peek() == ' ' || p.peek() == '\t' {
		p.i++
	}
}

// number reads up to so many digits, and how many they were.
func (p *scanner) number(most int) (v int32, n int) {
	for n < most && p.peek() >= '0' && p.peek() <= '9' {
		v = v*10 + int32(p.peek()-'0')
		p.i++
		n++
	}
	return v, n
}

// word reads letters, in small ones.
func (p *scanner) word() string {
	from := p.i
	for c := p.peek(); c|0x20 >= 'a' && c|0x20 <= 'z' || c >= 0x80; c = p.peek() {
		p.i++
	}
	return strings.ToLower(string(p.s[from:p.i]))
}

func month(word string) int32 {
	r := []rune(word)
	if len(r) < 3 {
		return 0
	}
	return months[string(r[:3])]
}

// readStamp reads a whole field as a time, as a day, or as a time of day.
func readStamp(field []byte) (st stamp, ok bool) {
	s := bytes.TrimSpace(field)
	if len(s) < 3 || len(s) > 48 {
		return st, false
	}
	p := scanner{s: s}
	if !p.clock(&st) {
		p.i = 0
		if !p.date(&st) {
			return st, false
		}
		for c := p.peek(); c == ' ' || c == 'T' || c == 't' || c == ',' || c == '_' || c == '-' && p.i+1 < len(s); c = p.peek() {
			p.i++
		}
		if p.i < len(s) && !p.clock(&st) && !(p.i > 8 && p.compact(&st)) {
			return st, false
		}
	}
	return st, p.zone(&st) && p.i == len(p.s)
}

// date reads a day: three numbers, or two and the name of a month.
func (p *scanner) date(st *stamp) bool {
	if c := p.peek(); c|0x20 >= 'a' && c|0x20 <= 'z' {
		at := p.i
		if w := p.word(); len(w) >= 3 && weekdays[w[:3]] && month(w) == 0 {
			for p.take('.') || p.take(',') || p.take(' ') {
			}
		} else {
			p.i = at
		}
	}
	if c := p.peek(); c|0x20 >= 'a' && c|0x20 <= 'z' { // Nov 1, 2026
		m := month(p.word())
		p.blanks()
		day, n := p.number(2)
		p.take(',')
		p.blanks()
		year, y := p.number(4)
		*st = stamp{a: m, b: day, c: year, date: true, order: MonthFirst, twoDigit: y == 2}
		return m > 0 && n > 0 && (y == 4 || y == 2)
	}
	at := p.i
	a, n := p.number(14)
	sep := p.peek()
	if n == 8 || n == 14 { // 20261101, 20261101T1000
		p.i = at
		a, _ = p.number(4)
		b, _ := p.number(2)
		c, _ := p.number(2)
		*st = stamp{a: a, b: b, c: c, date: true, order: YearFirst}
		if n == 14 {
			h, _ := p.number(2)
			m, _ := p.number(2)
			s, _ := p.number(2)
			st.sec, st.clock = h*3600+m*60+s, true
			return a >= 1970 && a <= 2100 && h < 24 && m < 60 && s < 60
		}
		return a >= 1970 && a <= 2100 && b >= 1 && b <= 12 && c >= 1 && c <= 31
	}
	if n == 0 || n > 4 || sep != '-' && sep != '/' && sep != '.' && sep != ' ' {
		return false
	}
	p.i++
	p.blanks()
	if c := p.peek(); c|0x20 >= 'a' && c|0x20 <= 'z' || c >= 0x80 { // 1-Nov-2026
		m := month(p.word())
		for p.take('-') || p.take('.') || p.take('/') || p.take(' ') || p.take(',') {
		}
		y, yn := p.number(4)
		*st = stamp{a: a, b: m, c: y, date: true, order: DayFirst, twoDigit: yn == 2}
		if n == 4 {
			st.order, st.twoDigit = YearFirst, false
			return m > 0 && yn > 0 && yn <= 2
		}
		return m > 0 && n <= 2 && (yn == 4 || yn == 2)
	}
	if sep == ' ' {
		return false
	}
	b, bn := p.number(2)
	if bn == 0 || !p.take(sep) {
		return false
	}
	c, cn := p.number(4)
	*st = stamp{a: a, b: b, c: c, date: true, dotted: sep == '.'}
	switch {
	case n == 4:
		st.order = YearFirst
		return cn >= 1 && cn <= 2
	case cn == 4:
		return n <= 2
	case cn == 2:
		st.twoDigit = true
		return n <= 2
	}
	return false
}

// clock reads a time of day: 9:30, 09:30:15.250, 9:30 PM.
func (p *scanner) clock(st *stamp) bool {
	at := p.i
	h, n := p.number(2)
	if n == 0 || !p.take(':') {
		p.i = at
		return false
	}
	m, n := p.number(2)
	if n != 2 || m > 59 || h > 24 {
		return false
	}
	s := int32(0)
	if p.take(':') {
		if s, n = p.number(2); n != 2 || s > 60 {
			return false
		}
		if p.peek() == '.' || p.peek() == ',' {
			p.i++
			if _, n = p.number(9); n == 0 {
				return false
			}
		}
	}
	at = p.i
	p.blanks()
	switch half := p.half(); {
	case half == 0:
		p.i = at
	case h < 1 || h > 12:
		return false
	default:
		h = twelve(h, half)
	}
	st.sec, st.clock = h*3600+m*60+s, true
	return h < 24 || m == 0 && s == 0
}

// compact reads a time of day without colons, 1000 or 100059.
func (p *scanner) compact(st *stamp) bool {
	if p.s[8] != 'T' {
		return false
	}
	h, hn := p.number(2)
	m, mn := p.number(2)
	s, sn := p.number(2)
	st.sec, st.clock = h*3600+m*60+s, true
	return hn == 2 && mn == 2 && sn != 1 && h < 24 && m < 60 && s < 60
}

// half reads AM or PM, and returns its first letter; 0 for neither.
func (p *scanner) half() byte {
	c := p.peek() | 0x20
	if c != 'a' && c != 'p' {
		return 0
	}
	p.i++
	p.take('.')
	if p.peek()|0x20 != 'm' {
		return 0
	}
	p.i++
	p.take('.')
	return c
}

func twelve(h int32, half byte) int32 {
	h %= 12
	if half == 'p' {
		h += 12
	}
	return h
}

// zone reads what is written of the zone: Z, UTC, +01:00.
func (p *scanner) zone(st *stamp) bool {
	p.blanks()
	if p.i == len(p.s) {
		return true
	}
	if !st.clock {
		return false
	}
	switch w := string(p.s[p.i:]); strings.ToUpper(w) {
	case "Z", "UTC", "GMT":
		p.i, st.zoned = len(p.s), true
		return true
	}
	sign := int32(1)
	switch {
	case p.take('+'):
	case p.take('-'):
		sign = -1
	default:
		return false
	}
	h, n := p.number(2)
	p.take(':')
	m, _ := p.number(2)
	st.offset, st.zoned = sign*(h*3600+m*60), true
	return n == 2 && h <= 14 && m < 60
}

// day puts the parts in their order; false where that is no day.
func (st *stamp) day(o Order) (y, m, d int32, ok bool) {
	if st.order != OrderUnknown {
		o = st.order
	}
	switch o {
	case DayFirst:
		d, m, y = st.a, st.b, st.c
	case MonthFirst:
		m, d, y = st.a, st.b, st.c
	default:
		y, m, d = st.a, st.b, st.c
	}
	if st.twoDigit {
		y += 2000
	}
	return y, m, d, m >= 1 && m <= 12 && d >= 1 && d <= 31 && y >= 1970 && y <= 2199
}
