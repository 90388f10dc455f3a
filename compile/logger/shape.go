package logger

import (
	"bytes"
	"fmt"
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"
)

// fields cuts a line at the separator, with what stands in quotes together. It uses to again.
func fields(line []byte, sep byte, to [][]byte) [][]byte {
	to = to[:0]
	for len(to) < maxColumns {
		if t := bytes.TrimLeft(line, " "); len(t) > 0 && t[0] == '"' {
			if end := bytes.IndexByte(t[1:], '"'); end >= 0 {
				to = append(to, t[1:1+end])
				rest := t[2+end:]
				next := bytes.IndexByte(rest, sep)
				if next < 0 {
					return to
				}
				line = rest[next+1:]
				continue
			}
		}
		next := bytes.IndexByte(line, sep)
		if next < 0 {
			return append(to, bytes.TrimSpace(line))
		}
		to = append(to, bytes.TrimSpace(line[:next]))
		line = line[next+1:]
	}
	return to
}

// column is what stands in a column of the first lines.
type column struct {
	full, day, clock, half, zoned int // how often
	numbers, empties, words       int
	low, high                     float64
	rises, falls                  int
	last                          float64
	whole                         bool
	unit                          byte
}

func (c *column) add(f []byte, comma bool) {
	if v, unit, s := readNumber(f, comma); s != words {
		if s == empty {
			c.empties++
			return
		}
		if unit != 0 {
			c.unit = unit
		}
		if st, ok := readStamp(f); ok && st.date { // 20261101
			c.day++
		}
		if c.numbers == 0 {
			c.low, c.high, c.whole = v, v, true
		} else if v > c.last {
			c.rises++
		} else if v < c.last {
			c.falls++
		}
		c.low, c.high, c.last = min(c.low, v), max(c.high, v), v
		c.whole = c.whole && v == math.Trunc(v)
		c.numbers++
		return
	}
	switch st, ok := readStamp(f); {
	case ok && st.date && st.clock:
		c.full++
		if st.zoned {
			c.zoned++
		}
	case ok && st.date:
		c.day++
	case ok:
		c.clock++
	default:
		p := scanner{s: f}
		if p.half() != 0 && p.i == len(f) {
			c.half++
		}
		c.words++
	}
}

// What a heading says of its column, in the languages of most loggers (from memory).
var (
	heatWords   = []string{"temp", "°c", "°f", "celc", "cels", "fahr", "(c)", "(f)", "degc", "degf", "deg c", "deg f", "[c]", "[f]"}
	dampWords   = []string{"humid", "rh", "r.h", "%", "hygro", "feucht", "humed", "umid", "vocht", "hum"}
	otherWords  = []string{"dew", "taupunkt", "rosée", "abs", "vpd", "batt", "volt", "lux", "light", "press", "hpa", "co2", "alarm", "limit", "high", "low", "min", "max", "index", "rssi", "signal", "serial"}
	plainOthers = []string{"#", "no", "no.", "nr", "nr.", "id", "n", "row", "record", "line", "count"}
)

func says(heading string, words []string) bool {
	return slices.ContainsFunc(words, func(w string) bool { return strings.Contains(heading, w) })
}

func other(heading string) bool {
	return says(strings.ReplaceAll(strings.ReplaceAll(heading, "minute", ""), "thermometer", ""), otherWords) || slices.Contains(plainOthers, heading)
}

// reader finds the shape of a file from its first lines.
type reader struct {
	Options
	shape Shape
	cols  []column
	width int // columns of a line of data
}

// guess finds out how the file is laid out, from whole lines at its beginning.
func (r *reader) guess(lines [][]byte) error {
	best, seps := 0, []byte{';', '\t', ','}
	for _, sep := range seps {
		if n := r.score(lines, sep); n > best {
			best, r.shape.Separator = n, sep
		}
	}
	if best == 0 {
		return fmt.Errorf("no line has a time and a number, parted by semicolons, tabs or commas: is it a table that a logger wrote?")
	}
	r.shape.Comma = r.shape.Separator != ','
	first := -1
	var row [][]byte
	counts := map[int]int{}
	for _, l := range lines {
		row = fields(l, r.shape.Separator, row)
		if r.dataLike(row) {
			counts[len(row)]++
		}
	}
	for n, k := range counts {
		if k > counts[r.width] || k == counts[r.width] && n > r.width {
			r.width = n
		}
	}
	r.cols = make([]column, r.width)
	for i, l := range lines {
		row = fields(l, r.shape.Separator, row)
		if !r.dataLike(row) || len(row) != r.width {
			continue
		}
		if first < 0 {
			first = i
		}
		for k, f := range row {
			r.cols[k].add(f, true)
		}
	}
	r.shape.Before = first
	r.headings(lines[:first])
	return r.choose()
}

// score is how many lines are data if they are cut at sep: those with a written time count
// more than those with numbers alone.
func (r *reader) score(lines [][]byte, sep byte) (n int) {
	var row [][]byte
	for _, l := range lines {
		row = fields(l, sep, row)
		times, numbers := 0, 0
		for _, f := range row {
			if _, _, s := readNumber(f, true); s == number {
				numbers++
			} else if _, ok := readStamp(f); ok {
				times++
			}
		}
		switch {
		case times > 0 && numbers > 0:
			n += 3
		case numbers > 1:
			n++
		}
	}
	return n
}

// dataLike reports whether a line is one of data.
func (r *reader) dataLike(row [][]byte) bool {
	times, numbers, none := 0, 0, 0
	for _, f := range row {
		if _, _, s := readNumber(f, true); s == number {
			numbers++
		} else if _, ok := readStamp(f); ok {
			times++
		} else if s == empty && len(f) > 0 {
			none++
		}
	}
	return times > 0 && numbers+none > 0 || numbers > 1
}

// headings puts together what stands above the columns, of two lines where units have a line
// of their own.
func (r *reader) headings(before [][]byte) {
	var row [][]byte
	near := before[max(0, len(before)-2):]
	off := 1
	for _, l := range near {
		if row = fields(l, r.shape.Separator, row); len(row) == r.width {
			off = 0 // else a separator may be lacking
		}
	}
	for _, l := range near {
		row = fields(l, r.shape.Separator, row)
		if len(row) < max(2, r.width-off) || len(row) > r.width+off {
			continue
		}
		if r.shape.Headings == nil {
			r.shape.Headings = make([]string, r.width)
		}
		for i := range min(len(row), r.width) {
			h := r.shape.Headings[i] + " " + valid(row[i])
			if h = strings.TrimSpace(h); len(h) > 60 {
				h = strings.ToValidUTF8(h[:60], "")
			}
			r.shape.Headings[i] = h
		}
	}
}

// valid is text, of a file that may be in the older encoding of western languages.
func valid(b []byte) string {
	if utf8.Valid(b) {
		return string(b)
	}
	out := make([]rune, len(b))
	for i, c := range b {
		out[i] = rune(c)
	}
	return string(out)
}

func (r *reader) heading(i int) string {
	if i < len(r.shape.Headings) {
		return strings.ToLower(r.shape.Headings[i])
	}
	return ""
}

// choose decides which columns are what.
func (r *reader) choose() error {
	s := &r.shape
	named := map[string]*int{"time": &s.Time, "date": &s.Time, "clock": &s.Clock, "temperature": &s.Heat, "humidity": &s.Damp}
	for _, what := range slices.Sorted(maps.Keys(r.Columns)) {
		which := r.Columns[what]
		to, ok := named[what]
		if !ok {
			return fmt.Errorf("no column is called %q here: there are time, or date and clock, temperature and humidity", what)
		}
		n, err := r.named(which)
		if err != nil {
			return err
		}
		*to = n
	}
	if err := r.times(); err != nil {
		return err
	}
	if err := r.values(); err != nil {
		return err
	}
	if s.Heat == 0 && s.Damp == 0 {
		return fmt.Errorf("there are times, and no column of temperatures or humidities was found among %s: name one, such as --columns temperature=2", r.list())
	}
	return nil
}

func (r *reader) named(which string) (int, error) {
	if n, err := strconv.Atoi(which); err == nil {
		if n < 1 || n > r.width {
			return 0, fmt.Errorf("there is no column %d: a line has %d", n, r.width)
		}
		return n, nil
	}
	at := 0
	for i := range r.width {
		if h := r.heading(i); h != "" && strings.Contains(h, strings.ToLower(which)) {
			if at > 0 {
				return 0, fmt.Errorf("columns %d and %d both have %q in their heading: give the number", at, i+1, which)
			}
			at = i + 1
		}
	}
	if at == 0 {
		return 0, fmt.Errorf("no column has %q in its heading: there are %s", which, r.list())
	}
	return at, nil
}

func (r *reader) list() string {
	all := make([]string, r.width)
	for i := range all {
		if all[i] = strconv.Itoa(i + 1); i < len(r.shape.Headings) && r.shape.Headings[i] != "" {
			all[i] += " " + strconv.Quote(r.shape.Headings[i])
		}
	}
	return strings.Join(all, ", ")
}

// times finds the column of the time, or those of day, time of day, and AM and PM.
func (r *reader) times() error {
	s := &r.shape
	most := func(of func(*column) int) int {
		at, n := 0, 0
		for i := range r.cols {
			if k := of(&r.cols[i]); k > n {
				at, n = i+1, k
			}
		}
		return at
	}
	if s.Time == 0 {
		if s.Time = most(func(c *column) int { return c.full }); s.Time == 0 {
			s.Time = most(func(c *column) int { return c.day })
		}
	}
	if s.Time > 0 {
		c := &r.cols[s.Time-1]
		if c.full == 0 && c.day > 0 && s.Clock == 0 {
			s.Clock = most(func(c *column) int { return c.clock })
			if s.Clock == 0 {
				return fmt.Errorf("there are days in column %d and no time of day beside them", s.Time)
			}
		}
		if c.full == 0 && s.Clock > 0 || c.full > 0 {
			s.Half = most(func(c *column) int { return c.half })
		}
		if c.full > 0 || s.Clock > 0 {
			s.Stamps = "local"
			if c.zoned > 0 {
				s.Stamps = "with their zone"
			} else if h := r.heading(s.Time - 1); strings.Contains(h, "utc") || strings.Contains(h, "gmt+00") || strings.Contains(h, "gmt+0:00") {
				s.Stamps = "UTC"
			}
			return nil
		}
	}
	for i := range r.cols {
		c := &r.cols[i]
		if s.Time > 0 && i != s.Time-1 || c.numbers < 1 || c.falls > 0 && c.rises > 0 {
			continue
		}
		switch {
		case c.low > 9e8 && c.high < 5e9:
			s.Stamps = "epoch s"
		case c.low > 9e11 && c.high < 5e12:
			s.Stamps = "epoch ms"
		case c.low > 36000 && c.high < 73000 && !c.whole: // 1998 to 2099
			s.Stamps = "spreadsheet days"
		default:
			continue
		}
		s.Time = i + 1
		return nil
	}
	return fmt.Errorf("no column of times was found among %s: name it, such as --columns time=1", r.list())
}

// values finds the columns of temperature and humidity: by their headings, else by what they hold.
func (r *reader) values() error {
	s := &r.shape
	free := func(i int) bool {
		return i+1 != s.Time && i+1 != s.Clock && i+1 != s.Half && i+1 != s.Heat && i+1 != s.Damp && r.cols[i].numbers+r.cols[i].empties > r.cols[i].words && r.cols[i].day == 0
	}
	find := func(fits func(i int, h string) bool) int {
		for i := range r.cols {
			if free(i) && fits(i, r.heading(i)) {
				return i + 1
			}
		}
		return 0
	}
	pick := func(to *int, fits ...func(i int, h string) bool) {
		for _, f := range fits {
			if *to == 0 {
				*to = find(f)
			}
		}
	}
	byHeading := func(words, not []string) func(int, string) bool {
		return func(_ int, h string) bool { return says(h, words) && !says(h, not) && !other(h) }
	}
	by := func(unit ...byte) func(int, string) bool {
		return func(i int, h string) bool {
			return r.cols[i].unit != 0 && slices.Contains(unit, r.cols[i].unit) && !other(h)
		}
	}
	index := func(i int) bool { // 1, 2, 3
		c := &r.cols[i]
		return c.whole && c.falls == 0 && c.numbers > 2 && c.rises == c.numbers-1 && c.high-c.low == float64(c.numbers-1)
	}
	plain := func(low, high float64) func(int, string) bool {
		return func(i int, h string) bool {
			c := &r.cols[i]
			return (h == "" || !says(h, heatWords) && !says(h, dampWords)) && !other(h) && !index(i) && c.low >= low && c.high <= high
		}
	}
	heatNamed := r.Columns["temperature"] != ""
	dampNamed := r.Columns["humidity"] != ""
	if heatNamed == dampNamed || !dampNamed {
		pick(&s.Heat, byHeading(heatWords, []string{"humid", "rh"}), by('C', 'F'))
	}
	if heatNamed == dampNamed || !heatNamed {
		pick(&s.Damp, byHeading(dampWords, heatWords), by('%'))
	}
	if !heatNamed && !dampNamed && s.Heat == 0 && s.Damp == 0 {
		pick(&s.Heat, plain(-130, 190))
		pick(&s.Damp, plain(-10, 110))
		if s.Damp > 0 {
			if err := r.which(); err != nil {
				return err
			}
		}
	}
	for i := range r.cols {
		if h := r.heading(i); free(i) && !index(i) && !other(h) && r.cols[i].numbers > 0 {
			s.Others = append(s.Others, i+1)
		}
	}
	r.degrees()
	return nil
}

// degrees decides between Celsius and Fahrenheit.
func (r *reader) degrees() {
	s := &r.shape
	if s.Damp > 0 {
		c := &r.cols[s.Damp-1]
		s.Part = c.unit == 0 && c.numbers > 3 && c.low >= 0 && c.high <= 1
	}
	s.Degrees, s.DegreesBy = 'C', "nothing says otherwise"
	if s.Heat == 0 {
		return
	}
	c, h := &r.cols[s.Heat-1], r.heading(s.Heat-1)
	switch {
	case r.Degrees != 0:
		s.Degrees, s.DegreesBy, s.Asked = r.Degrees, "as asked for", true
	case c.unit == 'C' || c.unit == 'F':
		s.Degrees, s.DegreesBy = c.unit, "as the values say"
	case says(h, []string{"°f", "fahr", "(f)", "degf", "deg f", "[f]"}) || strings.HasSuffix(h, " f") || strings.HasSuffix(h, "_f"):
		s.Degrees, s.DegreesBy = 'F', "as the heading says"
	case says(h, []string{"°c", "celc", "cels", "(c)", "degc", "deg c", "[c]"}) || strings.HasSuffix(h, " c") || strings.HasSuffix(h, "_c"):
		s.DegreesBy = "as the heading says"
	case c.numbers > 0 && c.low > 45 && c.low != 85 && c.high < 140:
		s.Degrees, s.DegreesBy = 'F', "since none is below 45"
	}
}
