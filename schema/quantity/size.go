package quantity

import "strings"

// Size is the inside of an enclosure.
type Size struct {
	Length, Width, Height float64 // mm
	Unit                  Unit    // as written
}

var sizeForm = form{"size", "a", `"76 x 46 x 41 cm" or "20 x 10 x 12 in" (length x width x height)`}

// ParseSize reads length, width and height, "76 x 46 x 41 cm"; the cross may be
// an x or ×. All three are above zero. The error is an *Error.
func ParseSize(s string) (Size, error) {
	z, f := readSize(s)
	if f.kind != 0 {
		return Size{}, f.build(s, Length, sizeForm, "", func(t string) bool {
			_, f := readSize(t)
			return f.kind == 0
		})
	}
	return z, nil
}

func readSize(s string) (Size, fault) {
	rest := strings.TrimSpace(s)
	var v [3]float64
	var between [2]string // units written before the last
	for k := range v {
		var ok bool
		if v[k], rest, ok = number(rest); !ok {
			if k == 0 {
				return Size{}, fault{kind: NoNumber}
			}
			return Size{}, fault{kind: Malformed, reason: notThree}
		}
		if k == 2 {
			break
		}
		if between[k], rest, ok = cutCross(rest); !ok {
			return Size{}, fault{kind: Malformed, reason: notThree}
		}
	}
	for _, b := range between {
		if f := sameUnit(b, rest, Length); f.kind != 0 {
			return Size{}, f
		}
	}
	u, f := unitOf(rest, Length)
	if f.kind != 0 {
		return Size{}, f
	}
	for k := range v {
		v[k] = units[u].canonical(v[k])
		if reason := outside(v[k], Length); reason != "" {
			return Size{}, fault{kind: OutOfBounds, reason: "has a side that " + reason}
		}
		if v[k] == 0 {
			return Size{}, fault{kind: OutOfBounds, reason: "has a side of nothing"}
		}
	}
	return Size{v[0], v[1], v[2], u}, fault{}
}

const notThree = "is not three measures with an x between them"

// cutCross cuts what follows a measure at the next cross.
func cutCross(s string) (unit, rest string, found bool) {
	i, n := strings.IndexAny(s, "xX×"), 1
	if i < 0 {
		return "", s, false
	}
	if strings.HasPrefix(s[i:], "×") {
		n = len("×")
	}
	return strings.TrimSuffix(s[:i], " "), strings.TrimPrefix(s[i+n:], " "), true
}

// FloorArea returns length times width in cm².
func (z Size) FloorArea() float64 { return z.Length * z.Width / 100 }

// VolumeLitres returns the volume in litres.
func (z Size) VolumeLitres() float64 { return z.Length * z.Width * z.Height / 1e6 }

// String prints the size in its own unit, "76 x 46 x 41 cm".
func (z Size) String() string {
	return join(" x ", z.Unit, shortest(z.Length, z.Unit), shortest(z.Width, z.Unit), shortest(z.Height, z.Unit))
}
