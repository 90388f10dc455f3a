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
	v, u, f := crossed(s, 3, notThree)
	if f.kind != 0 {
		return Size{}, f
	}
	return Size{v[0], v[1], v[2], u}, fault{}
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
	read := func(s string) (Face, fault) {
		v, u, f := crossed(s, 2, notTwo)
		return Face{v[0], v[1], u}, f
	}
	z, f := read(s)
	if f.kind != 0 {
		return Face{}, f.build(s, Length, faceForm, "", func(t string) bool {
			_, f := read(t)
			return f.kind == 0
		})
	}
	return z, nil
}

// Area returns length times width in cm².
func (z Face) Area() float64 { return z.Length * z.Width / 100 }

// String prints the face in its own unit, "28 x 43 cm".
func (z Face) String() string {
	return join(" x ", z.Unit, shortest(z.Length, z.Unit), shortest(z.Width, z.Unit))
}

// crossed reads n lengths, all above zero, with crosses between them.
func crossed(s string, n int, reason string) (v [3]float64, u Unit, f fault) {
	rest := strings.TrimSpace(s)
	var between [2]string // units written before the last
	for k := range n {
		var ok bool
		if v[k], rest, ok = number(rest); !ok {
			if k == 0 {
				return v, u, fault{kind: NoNumber}
			}
			return v, u, fault{kind: Malformed, reason: reason}
		}
		if k == n-1 {
			break
		}
		if between[k], rest, ok = cutCross(rest); !ok {
			return v, u, fault{kind: Malformed, reason: reason}
		}
	}
	for _, b := range between[:n-1] {
		if f := sameUnit(b, rest, Length); f.kind != 0 {
			return v, u, f
		}
	}
	if u, f = unitOf(rest, Length); f.kind != 0 {
		return v, u, f
	}
	for k := range n {
		v[k] = units[u].canonical(v[k])
		if reason := outside(v[k], Length); reason != "" {
			return v, u, fault{kind: OutOfBounds, reason: "has a side that " + reason}
		}
		if v[k] == 0 {
			return v, u, fault{kind: OutOfBounds, reason: "has a side of nothing"}
		}
	}
	return v, u, fault{}
}

const (
	notThree = "is not three measures with an x between them"
	notTwo   = "is not two measures with an x between them"
)

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
