package logger

import (
	"bytes"
	"math"
	"strconv"
	"unsafe"
)

// sort is what a field is, as far as numbers go.
type sort uint8

const (
	words  sort = iota // something else
	number             // a number
	empty              // a mark for no reading
)

// missing are marks for no reading.
var missing = [][]byte{[]byte("nan"), []byte("n/a"), []byte("na"), []byte("null"), []byte("none"), []byte("err"), []byte("error"), []byte("ol"), []byte("inf"), []byte("-inf"), []byte("#n/a"), []byte("fault"), []byte("open")}

// readNumber reads a number with a point, or with a comma where comma says that one may be.
// unit is 'C', 'F' or '%' where that stands behind it.
func readNumber(field []byte, comma bool) (v float64, unit byte, s sort) {
	f := bytes.TrimSpace(field)
	if f, unit = cutUnit(f); len(f) == 0 && unit != 0 {
		return 0, 0, words // a unit alone
	}
	if len(f) == 0 || len(bytes.Trim(f, "-*?_. ")) == 0 {
		return math.NaN(), unit, empty
	}
	if c := f[len(f)-1] | 0x20; c >= 'a' && c <= 'z' {
		for _, m := range missing {
			if bytes.EqualFold(f, m) {
				return math.NaN(), unit, empty
			}
		}
		return 0, 0, words
	}
	if len(f) > 32 {
		return 0, 0, words
	}
	var buf [32]byte
	n := copy(buf[:], f)
	text := buf[:n]
	digits := false
	for i, c := range text {
		switch {
		case c >= '0' && c <= '9':
			digits = true
		case c == '.' || c == 'e' || c == 'E':
		case (c == '-' || c == '+') && (i == 0 || text[i-1]|0x20 == 'e'):
		case c == ',' && comma:
		default:
			return 0, 0, words
		}
	}
	if !digits {
		return 0, 0, words
	}
	if comma {
		text = pointed(text)
	}
	v, err := strconv.ParseFloat(unsafe.String(&text[0], len(text)), 64) // not kept beyond the call
	if err != nil {
		return 0, 0, words
	}
	return v, unit, number
}

// pointed puts a point for a comma, and leaves out points before it that part thousands.
func pointed(text []byte) []byte {
	at := bytes.LastIndexByte(text, ',')
	if at < 0 {
		return text
	}
	out := text[:0]
	for i, c := range text {
		switch {
		case i == at:
			out = append(out, '.')
		case c == '.' || c == ',':
		default:
			out = append(out, c)
		}
	}
	return out
}

// cutUnit takes the unit off a value.
func cutUnit(f []byte) ([]byte, byte) {
	if len(f) < 2 {
		return f, 0
	}
	unit := byte(0)
	switch c := f[len(f)-1]; {
	case c == '%':
		unit = '%'
	case c == 'C' || c == 'c' || c == 'F' || c == 'f':
		unit = c &^ 0x20
		if f[len(f)-2]|0x20 >= 'a' && f[len(f)-2]|0x20 <= 'z' {
			return f, 0 // a word
		}
	case bytes.HasSuffix(f, []byte("%RH")) || bytes.HasSuffix(f, []byte("% RH")) || bytes.HasSuffix(f, []byte("%rh")) || bytes.HasSuffix(f, []byte("% rh")):
		f, unit = f[:bytes.IndexByte(f, '%')+1], '%'
	default:
		return f, 0
	}
	f = bytes.TrimSpace(f[:len(f)-1])
	f = bytes.TrimSuffix(bytes.TrimSuffix(bytes.TrimSuffix(f, []byte("\xc2\xb0")), []byte("\xb0")), []byte("\xc2\xba"))
	return bytes.TrimSpace(f), unit
}

// What one-wire and other sensors show where they have no reading (from memory): power-on,
// no answer, the end of the range. In °C.
var sentinels = [...]float64{85, -127, -40}

// heat is a temperature in °C, not a number where the logger had none.
func heat(v float64, degrees byte) float64 {
	if degrees == 'F' {
		v = (v - 32) / 1.8
	}
	for _, s := range sentinels {
		if math.Abs(v-s) < 1e-6 {
			return math.NaN()
		}
	}
	if v < -60 || v > 150 {
		return math.NaN()
	}
	return v
}

// damp is a relative humidity in %, not a number where the logger had none.
func damp(v float64) float64 {
	if v <= 0 || v > 105 {
		return math.NaN()
	}
	return min(v, 100)
}
