package logger

import (
	"bufio"
	"bytes"
	"errors"
	"fmt"
	"io"
	"math"
	"slices"
	"strconv"
	"time"

	"golang.org/x/text/encoding/unicode"
	"golang.org/x/text/transform"
)

// headBytes is how much of a file its shape is guessed from.
const headBytes = 64 << 10

// row is a line of the file before its times are instants.
type row struct {
	line       int32
	st         stamp
	at         int64 // seconds: an instant, or local time as if it were UTC
	heat, damp float64
}

// Ask is an error that an option answers: what it is about has two readings.
type Ask struct{ Text string }

func (a *Ask) Error() string { return a.Text }

// Read reads a file as it streams by. The error is for a file that is no table of a logger, is
// past a bound, or has days that can be read in two ways; what is wrong in single lines is a
// problem of the series.
func Read(in io.Reader, o Options) (*Series, error) {
	if o.Zone == nil {
		o.Zone = time.UTC
	}
	limited := &io.LimitedReader{R: in, N: MaxBytes + 1}
	raw := bufio.NewReaderSize(limited, headBytes)
	mark, _ := raw.Peek(3)
	var text io.Reader = raw
	if len(mark) >= 2 && (mark[0] == 0xff && mark[1] == 0xfe || mark[0] == 0xfe && mark[1] == 0xff) {
		text = transform.NewReader(raw, unicode.UTF16(unicode.LittleEndian, unicode.UseBOM).NewDecoder())
	}
	br := bufio.NewReaderSize(text, headBytes)
	head, err := br.Peek(headBytes)
	if err != nil && err != io.EOF && !errors.Is(err, bufio.ErrBufferFull) {
		return nil, err
	}
	skip := 0
	if bytes.HasPrefix(head, []byte("\xef\xbb\xbf")) {
		skip = 3
	}
	if bytes.IndexByte(head, 0) >= 0 {
		return nil, errors.New("this is no text: save it as CSV in the logger's own program")
	}
	r := &reader{Options: o}
	if err := r.guess(wholeLines(head[skip:], err == io.EOF)); err != nil {
		return nil, err
	}
	_, _ = br.Discard(skip)
	s := &Series{Zone: o.Zone}
	rows, err := r.rows(br, s)
	if err != nil {
		return nil, err
	}
	if limited.N <= 0 {
		return nil, fmt.Errorf("the file is larger than %d MiB: cut it into years", MaxBytes>>20)
	}
	if len(rows) == 0 {
		return nil, errors.New("no line has a time and a value that can be read")
	}
	if err := r.order(rows, s); err != nil {
		return nil, err
	}
	if err := r.instants(rows, s); err != nil {
		return nil, err
	}
	s.Shape = r.shape
	if len(s.Samples) < 2 {
		return nil, errors.New("there are fewer than two readings in the file")
	}
	s.Step = step(s.Samples)
	return s, nil
}

// wholeLines are the lines at the beginning of a file, without one that is cut off.
func wholeLines(head []byte, all bool) (lines [][]byte) {
	for len(head) > 0 && len(lines) < 500 {
		end := bytes.IndexAny(head, "\r\n")
		if end < 0 {
			if all {
				lines = append(lines, head)
			}
			break
		}
		lines = append(lines, head[:end])
		if head[end] == '\r' && end+1 < len(head) && head[end+1] == '\n' {
			end++
		}
		head = head[end+1:]
	}
	return lines
}

// nextLine returns the next line without its end; a line that is too long is said to be.
func nextLine(br *bufio.Reader, buf []byte) (line []byte, long bool, err error) {
	line, err = br.ReadSlice('\n')
	if err == nil {
		return bytes.TrimRight(line, "\r\n"), len(line) > maxLine, nil
	}
	if err == io.EOF {
		if len(line) == 0 {
			return nil, false, io.EOF
		}
		return bytes.TrimRight(line, "\r\n"), len(line) > maxLine, nil
	}
	for errors.Is(err, bufio.ErrBufferFull) {
		_, err = br.ReadSlice('\n')
	}
	if err == io.EOF {
		err = nil
	}
	return nil, true, err
}

// rows reads all lines of data.
func (r *reader) rows(br *bufio.Reader, s *Series) ([]row, error) {
	br = lonely(br)
	var out []row
	var cells [][]byte
	sh := &r.shape
	comma := sh.Comma
	for n := 1; ; n++ {
		line, long, err := nextLine(br, nil)
		if err == io.EOF {
			return out, nil
		}
		if err != nil {
			return nil, err
		}
		if n <= sh.Before || len(bytes.TrimSpace(line)) == 0 {
			continue
		}
		if long {
			s.Passed++
			s.problem(n, "the line is longer than any reading")
			continue
		}
		cells = fields(line, sh.Separator, cells)
		x, ok := r.row(cells, comma)
		if !ok {
			s.Passed++
			if !bytes.HasPrefix(bytes.TrimSpace(line), []byte("#")) {
				s.problem(n, "no time and no value can be read in "+strconv.Quote(cut(valid(line))))
			}
			continue
		}
		if sh.Heat > 0 && None(x.heat) {
			s.Missing++
		}
		if sh.Damp > 0 && None(x.damp) {
			s.Missing++
		}
		x.line = int32(n)
		if len(out) >= MaxRows {
			return nil, fmt.Errorf("the file has more than %d readings: cut it into years", MaxRows)
		}
		if len(out) == cap(out) {
			out = slices.Grow(out, max(4096, len(out)/2))
		}
		out = append(out, x)
	}
}

// lonely reads lines that end in a carriage return alone.
func lonely(br *bufio.Reader) *bufio.Reader {
	head, _ := br.Peek(headBytes)
	if bytes.IndexByte(head, '\n') >= 0 || bytes.IndexByte(head, '\r') < 0 {
		return br
	}
	return bufio.NewReaderSize(returns{br}, headBytes)
}

type returns struct{ io.Reader }

func (r returns) Read(p []byte) (int, error) {
	n, err := r.Reader.Read(p)
	for i, c := range p[:n] {
		if c == '\r' {
			p[i] = '\n'
		}
	}
	return n, err
}

func cut(s string) string {
	if r := []rune(s); len(r) > 40 {
		return string(r[:40]) + "…"
	}
	return s
}

// row reads a line; false where it has no time.
func (r *reader) row(cells [][]byte, comma bool) (x row, ok bool) {
	sh := &r.shape
	cell := func(i int) []byte {
		if i < 1 || i > len(cells) {
			return nil
		}
		return cells[i-1]
	}
	value := func(i int) float64 {
		if i == 0 {
			return math.NaN()
		}
		v, _, s := readNumber(cell(i), true)
		if s != number {
			return math.NaN()
		}
		return v
	}
	switch sh.Stamps {
	case "epoch s", "epoch ms", "spreadsheet days":
		v := value(sh.Time)
		if None(v) {
			return x, false
		}
		switch sh.Stamps {
		case "epoch ms":
			v /= 1000
		case "spreadsheet days": // since 30 December 1899
			v = math.Round((v - 25569) * 86400)
		}
		if v < 3e8 || v > 7e9 {
			return x, false
		}
		x.at = int64(math.Round(v))
	default:
		if x.st, ok = readStamp(cell(sh.Time)); !ok || !x.st.date {
			return x, false
		}
		if sh.Clock > 0 {
			c, ok := readStamp(cell(sh.Clock))
			if !ok || c.date {
				return x, false
			}
			x.st.sec, x.st.clock = c.sec, true
		}
		if sh.Half > 0 && x.st.sec < 13*3600 {
			p := scanner{s: cell(sh.Half)}
			if half := p.half(); half != 0 {
				x.st.sec = twelve(x.st.sec/3600, half)*3600 + x.st.sec%3600
			}
		}
	}
	x.heat, x.damp = math.NaN(), math.NaN()
	if v := value(sh.Heat); !None(v) {
		x.heat = heat(v, sh.Degrees)
	}
	if v := value(sh.Damp); !None(v) {
		if sh.Part {
			v *= 100
		}
		x.damp = damp(v)
	}
	return x, true
}

// step is the time between most samples.
func step(all []Sample) int64 {
	counts := map[int64]int{}
	for i := 1; i < len(all) && len(counts) < 2000; i++ {
		counts[all[i].At-all[i-1].At]++
	}
	best := int64(0)
	for d, n := range counts {
		if n > counts[best] || n == counts[best] && d < best {
			best = d
		}
	}
	if counts[best]*3 >= len(all) || len(all) < 4 {
		return max(best, 1)
	}
	all2 := make([]int64, 0, len(all)) // a logger that writes when something changes: the middle
	for i := 1; i < len(all); i++ {
		all2 = append(all2, all[i].At-all[i-1].At)
	}
	slices.Sort(all2)
	return max(1, all2[len(all2)/2])
}
