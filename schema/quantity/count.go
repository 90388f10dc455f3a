package quantity

import (
	"strconv"
	"strings"
)

// Count is a number of animals by sex.
type Count struct {
	Males, Females, Unsexed int
}

// MaxCount is the most animals that one Count holds.
const MaxCount = 100000

var countForm = form{"count", "a", `"1.2.0" (males.females.unsexed), "1.2" or "5"`}

// ParseCount reads a count as the trade writes it: "1.2.0" is a male and two
// females, "2.1" two males and a female, "5" five of unknown sex. The error is
// an *Error.
func ParseCount(s string) (Count, error) {
	c, f := readCount(s)
	if f.kind != 0 {
		instead := ""
		// A comma before three digits may mark thousands.
		if i := strings.IndexByte(s, ','); i >= 0 && digits(s[i+1:]) != 3 {
			instead = strings.ReplaceAll(s, ",", ".")
		}
		return Count{}, f.build(s, 0, countForm, instead, func(t string) bool {
			_, f := readCount(t)
			return f.kind == 0
		})
	}
	return c, nil
}

func readCount(s string) (Count, fault) {
	rest := strings.TrimSpace(s)
	if strings.HasPrefix(rest, "-") || strings.HasPrefix(rest, "−") {
		return Count{}, fault{kind: OutOfBounds, reason: "is below zero"}
	}
	var v [3]int
	k, total := 0, 0
	for {
		n := digits(rest)
		switch {
		case n == 0 && k == 0:
			return Count{}, fault{kind: NoNumber}
		case n == 0 || n > 1 && rest[0] == '0': // "1.000" is a thousand to some
			return Count{}, fault{kind: Malformed, reason: notCount}
		}
		v[k] = whole(rest[:n])
		if total += v[k]; total > MaxCount {
			return Count{}, fault{kind: OutOfBounds, reason: "is more than 100000 animals"}
		}
		rest = rest[n:]
		if k++; rest == "" {
			break
		}
		if rest[0] != '.' || k == len(v) {
			return Count{}, fault{kind: Malformed, reason: notCount}
		}
		rest = rest[1:]
	}
	if k == 1 {
		return Count{Unsexed: v[0]}, fault{}
	}
	return Count{v[0], v[1], v[2]}, fault{}
}

const notCount = "is not one, two or three whole numbers with points between them"

// whole reads a text of digits; what is far beyond any use here stays just that.
func whole(s string) int {
	n := 0
	for i := 0; i < len(s) && n < 1e9; i++ {
		n = n*10 + int(s[i]-'0')
	}
	return n
}

// Total returns the number of animals.
func (c Count) Total() int { return c.Males + c.Females + c.Unsexed }

// String prints "1.2.0", or "5" where no sex is known.
func (c Count) String() string {
	if c.Males == 0 && c.Females == 0 {
		return strconv.Itoa(c.Unsexed)
	}
	return strconv.Itoa(c.Males) + "." + strconv.Itoa(c.Females) + "." + strconv.Itoa(c.Unsexed)
}
