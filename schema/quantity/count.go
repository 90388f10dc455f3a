package quantity

import (
	"regexp"
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
// females, "2.1" two males and a female, "5" or "five" five of unknown sex. The error is
// an *Error.
func ParseCount(s string) (Count, error) {
	c, f := readCount(s)
	if f.kind != 0 {
		return Count{}, f.build(s, 0, countForm, meantCount(s), func(t string) bool {
			_, f := readCount(t)
			return f.kind == 0
		})
	}
	return c, nil
}

var sexes = regexp.MustCompile(`(?i)(\d+|a|one|two|three|four|five|six|seven|eight|nine|ten) ?(males?|females?|unsexed|m|f|u)\b`)

// couples are a male and a female each.
var couples = regexp.MustCompile(`(?i)^(?:(\d+|a|one|two|three|four|five|six|seven|eight|nine|ten) )?pairs?$`)

// meantCount returns the texts that may be meant by one that is no count.
func meantCount(s string) (all []string) {
	s = folded(s)
	// A comma before three digits may mark thousands.
	if i := strings.IndexByte(s, ','); i >= 0 && digits(s[i+1:]) != 3 {
		all = append(all, strings.ReplaceAll(s, ",", "."), strings.ReplaceAll(s, ", ", "."))
	}
	all = append(all, strings.NewReplacer("/", ".", ":", ".").Replace(s))
	if m := couples.FindStringSubmatch(s); m != nil {
		n := 1
		if v, _, ok := numeral(m[1]+" ", Duration); ok {
			n = int(v)
		} else if digits(m[1]) > 0 {
			n = whole(m[1])
		}
		all = append(all, strconv.Itoa(n)+"."+strconv.Itoa(n))
	}
	if v, rest, ok := numeral(s+" ", Duration); ok && rest == "" {
		all = append(all, strconv.Itoa(int(v)))
	}
	if n := digits(s); n > 0 && uncounted.MatchString(s[n:]) {
		all = append(all, s[:n])
	}
	return append(all, bySex(s))
}

// uncounted is what is said after a number of animals and adds nothing to it.
var uncounted = regexp.MustCompile(`(?i)^ ?(animals?|adults?|juveniles?|slings?|young|babies|scorpions?|tarantulas?|spiders?|of them)$`)

// bySex makes "1.2" of "1 male, 2 females", or nothing where something else is said too.
func bySex(s string) string {
	var c Count
	for _, m := range sexes.FindAllStringSubmatch(s, -1) {
		n := whole(m[1])
		if digits(m[1]) == 0 {
			v, _, _ := numeral(m[1]+" ", Duration)
			n = int(v)
		}
		switch strings.ToLower(m[2])[0] {
		case 'm':
			c.Males += n
		case 'f':
			c.Females += n
		default:
			c.Unsexed += n
		}
	}
	if rest := strings.Trim(sexes.ReplaceAllString(s, ""), " ,+&;"); c.Total() == 0 || rest != "" && rest != "and" {
		return ""
	}
	return c.String()
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

// Total returns the number of animals.
func (c Count) Total() int { return c.Males + c.Females + c.Unsexed }

// String prints "1.2.0", or "5" where no sex is known.
func (c Count) String() string {
	if c.Males == 0 && c.Females == 0 {
		return strconv.Itoa(c.Unsexed)
	}
	return strconv.Itoa(c.Males) + "." + strconv.Itoa(c.Females) + "." + strconv.Itoa(c.Unsexed)
}
