package quantity

import (
	"regexp"
	"strings"
)

// Size is the inside of an enclosure.
type Size struct {
	Length, Width, Height float64 // mm
	Unit                  Unit    // as written
}

var sizeForm = form{"size", "a", `"76 x 46 x 41 cm" or "20 x 10 x 12 in" (length x width x height)`}

// ParseSize reads length, width and height, "76 x 46 x 41 cm"; between them stands x, ×,
// * or by. All three are above zero. The error is an *Error.
func ParseSize(s string) (Size, error) {
	v, u, f := crossed(s, 3)
	if f.kind != 0 {
		return Size{}, sizeError(s, 3, sizeForm, f)
	}
	return Size{v[0], v[1], v[2], u}, nil
}

// Face is the length and the width of something flat.
type Face struct {
	Length, Width float64 // mm
	Unit          Unit    // as written
}

var faceForm = form{"size", "a", `"28 x 43 cm" or "11 x 17 in" (length x width)`}

// ParseFace reads length and width, "28 x 43 cm", as ParseSize does. The error is an
// *Error.
func ParseFace(s string) (Face, error) {
	v, u, f := crossed(s, 2)
	if f.kind != 0 {
		return Face{}, sizeError(s, 2, faceForm, f)
	}
	return Face{v[0], v[1], u}, nil
}

// Area returns length times width in cm².
func (z Face) Area() float64 { return z.Length * z.Width / 100 }

// String prints the face in its own unit, "28 x 43 cm".
func (z Face) String() string { return written(z.Unit, z.Length, z.Width) }

// FloorArea returns length times width in cm².
func (z Size) FloorArea() float64 { return z.Length * z.Width / 100 }

// VolumeLitres returns the volume in litres.
func (z Size) VolumeLitres() float64 { return z.Length * z.Width * z.Height / 1e6 }

// String prints the size in its own unit, "76 x 46 x 41 cm".
func (z Size) String() string { return written(z.Unit, z.Length, z.Width, z.Height) }

// written prints sides in unit u.
func written(u Unit, sides ...float64) string {
	var in [3]float64
	for k, v := range sides {
		in[k] = shortest(v, u)
	}
	return join(" x ", u, in[:len(sides)]...)
}

const (
	notThree = "is not three measures with an x between them"
	notTwo   = "is not two measures with an x between them"
)

// crossed reads n lengths, all above zero, with crosses between them.
func crossed(s string, n int) (v [3]float64, u Unit, f fault) {
	v, units, f := sides(s, n)
	if f.kind != 0 {
		return v, u, f
	}
	unit := units[n-1]
	for _, b := range units[:n-1] {
		if unit, f = common(b, unit, Length); f.kind != 0 {
			return v, u, f
		}
	}
	if u, f = unitOf(unit, Length); f.kind != 0 {
		return v, u, f
	}
	for k := range n {
		if v[k], f = side(v[k], u); f.kind != 0 {
			return v, u, f
		}
	}
	return v, u, fault{}
}

// side returns a side in millimetres.
func side(x float64, u Unit) (float64, fault) {
	v := units[u].canonical(x)
	if reason := outside(v, Length); reason != "" {
		return v, fault{kind: OutOfBounds, reason: "has a side that " + reason}
	}
	if v == 0 {
		return v, fault{kind: OutOfBounds, reason: "has a side of nothing"}
	}
	return v, fault{}
}

// sides reads n numbers with crosses between them, and what stands after each.
func sides(s string, n int) (v [3]float64, unit [3]string, f fault) {
	reason := notThree
	if n == 2 {
		reason = notTwo
	}
	rest := folded(s)
	for k := range n {
		if v[k], rest, f = number(rest, Length); f.kind != 0 {
			if f.kind == NoNumber && k > 0 {
				f = fault{kind: Malformed, reason: reason}
			}
			return v, unit, f
		}
		unit[k] = rest
		if k == n-1 {
			break
		}
		var ok bool
		if unit[k], rest, ok = cutCross(rest); !ok {
			return v, unit, fault{kind: Malformed, reason: reason}
		}
	}
	if _, _, more := cutCross(rest); more {
		return v, unit, fault{kind: Malformed, reason: reason}
	}
	return v, unit, fault{}
}

// cutCross cuts what follows a measure at the next cross.
func cutCross(s string) (unit, rest string, found bool) {
	for i := 0; i < len(s); i++ {
		n := 0
		switch c := s[i]; {
		case c == 'x' && !strings.HasSuffix(s[:i], "e") || c == 'X' || c == '*':
			n = 1
		case c == "×"[0] && strings.HasPrefix(s[i:], "×"):
			n = len("×")
		case c|0x20 == 'b' && word(s, i, "by"):
			n = 2
		}
		if n > 0 {
			return strings.TrimSuffix(s[:i], " "), strings.TrimPrefix(s[i+n:], " "), true
		}
	}
	return "", s, false
}

func sizeError(s string, n int, w form, f fault) error {
	reads := func(t string) bool {
		_, _, f := crossed(t, n)
		return f.kind == 0
	}
	e := f.build(s, Length, w, meantSize(s, n), reads)
	if f.kind == NoUnit {
		for _, u := range [...]Unit{Centimetre, Inch} {
			e.Either = append(e.Either, folded(s)+" "+u.String())
		}
	}
	return e
}

var sideNames = regexp.MustCompile(`(?i)\b(l|w|d|h|long|wide|deep|high|tall|length|width|depth|height)\b[:.=]?|\b([lwdh])(\d)`)

// meantSize returns the texts that may be meant by a size that does not read.
func meantSize(s string, n int) (all []string) {
	s = folded(s)
	named := ""
	for _, m := range sideNames.FindAllStringSubmatch(s, -1) {
		named += strings.ToLower((m[1] + m[2])[:1])
	}
	// The height comes last, and the first two are the floor.
	if named != "" && strings.Contains(" lwh ldh wdh lw wd wh ", " "+named+" ") {
		all = append(all, sideNames.ReplaceAllString(s, "$3"))
	}
	all = append(all, bared(s))
	marks := strings.NewReplacer("/", " x ", " by ", " x ", ", ", " x ", "-", " x ", ";", " x ")
	all = append(all, marks.Replace(s))
	if v, unit, f := sides(s, n); f.kind == 0 {
		last, f := unitOf(unit[n-1], Length)
		if f.kind == 0 {
			ok := true
			for k := range n {
				u, f := unitOf(unit[k], Length)
				ok = ok && f.kind == 0 && short(units[u].canonical(v[k]), last)
				v[k] = units[u].canonical(v[k])
			}
			if ok {
				all = append(all, written(last, v[:n]...))
			}
		}
	}
	return all
}
