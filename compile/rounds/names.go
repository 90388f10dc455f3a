package rounds

import (
	"strconv"
	"strings"
)

// maxName is how many characters of a title stand in a list. A longer one would
// push the others out of the entry.
const maxName = 40

// name is an enclosure as it stands in a list, taken apart so that neighbours which
// differ only in a number can share their words: "Tub 1 to 3, 7 and 9 to 12".
type name struct {
	text  string
	stem  int // the words before the number, equal for equal words; -1 for no number
	digit int // where in text the number begins
	n     int // the number
}

// number is the number that stands.
func (x *name) number() string { return x.text[x.digit:] }

// follows reports whether x is the next after y: 10 after 9, 010 after 009, but
// not 010 after 9.
func (x *name) follows(y *name) bool {
	if x.n != y.n+1 {
		return false
	}
	a, b := y.number(), x.number()
	return len(a) == len(b) || a[0] != '0' && b[0] != '0'
}

// named returns the places by the names under which people know them, told apart
// where two have one title.
func named(places []Place) []name {
	titles := make(map[string]int, len(places))
	stems := map[string]int{}
	out := make([]name, len(places))
	for i := range places {
		out[i].text = brief(places[i].Title)
		titles[out[i].text]++
	}
	for i := range out {
		if titles[out[i].text] > 1 {
			out[i].text += " (" + places[i].Name + ")"
		}
		out[i].part(stems)
	}
	return out
}

// maxDigits is of how many digits a number is at most, not something else that is
// written in digits.
const maxDigits = 9

// part finds the number at the end of a name. A number with no words before it has
// a stem too: "1 to 40".
func (x *name) part(stems map[string]int) {
	x.digit, x.stem = digits(x.text), -1
	if d := len(x.text) - x.digit; d == 0 || d > maxDigits {
		return
	}
	x.n, _ = strconv.Atoi(x.number())
	words := x.text[:x.digit]
	k, known := stems[words]
	if !known {
		k = len(stems)
		stems[words] = k
	}
	x.stem = k
}

// digits returns where the number at the end of a text begins.
func digits(text string) int {
	k := len(text)
	for k > 0 && '0' <= text[k-1] && text[k-1] <= '9' {
		k--
	}
	return k
}

// brief is a title as it stands in a list: on one line, and not too long. The
// number at its end is what tells it from its neighbours, and stays.
func brief(title string) string {
	title = flat(title)
	if len(title) <= maxName {
		return title
	}
	r := []rune(title)
	if len(r) <= maxName {
		return title
	}
	number := title[digits(title):]
	if len(number) > maxDigits || number == "" {
		return string(r[:maxName-1]) + "…"
	}
	return strings.TrimRight(string(r[:maxName-len(number)-2]), " ") + "… " + number
}

// appendNames appends the names of some places, which stand in walking order. None
// is left out, however many there are.
func appendNames(dst []byte, names []name, places []int32) []byte {
	for i := 0; i < len(places); {
		if i > 0 {
			dst = append(dst, ", "...)
		}
		end := i + 1
		if stem := names[places[i]].stem; stem >= 0 {
			for end < len(places) && names[places[end]].stem == stem {
				end++
			}
		}
		dst = append(dst, names[places[i]].text...)
		dst = appendNumbers(dst, names, places[i:end])
		i = end
	}
	return dst
}

// appendNumbers goes on from the first of some places, all of one stem, which is
// written already. Only three in a row are a range: "1 and 2" is as short as "1 to
// 2", and plainer.
func appendNumbers(dst []byte, names []name, places []int32) []byte {
	for i := 0; i < len(places); {
		end := i + 1
		for end < len(places) && names[places[end]].follows(&names[places[end-1]]) {
			end++
		}
		if end-i == 2 {
			end--
		}
		if i > 0 {
			dst = append(dst, between(end == len(places))...)
			dst = append(dst, names[places[i]].number()...)
		}
		if end-i > 2 {
			dst = append(dst, " to "...)
			dst = append(dst, names[places[end-1]].number()...)
		}
		i = end
	}
	return dst
}

// between is what stands before a part of a list, which may be its last.
func between(last bool) string {
	if last {
		return " and "
	}
	return ", "
}
