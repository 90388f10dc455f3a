package rounds

import (
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"vivary/plan"
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

// name names the places as people know them. Where two have one title the room
// tells them apart: beneath its heading by the title alone, elsewhere with the room
// before it, so that ranges stay. Only of those whose room is the same too is the
// name in the plan said.
func (r *Round) name() {
	stems := map[string]int{}
	times := make(map[string]int, len(r.places))
	r.short = make([]name, len(r.places))
	for i := range r.places {
		text := brief(r.places[i].Title)
		r.short[i].text = text
		times[text]++
	}
	if r.names = r.short; len(times) < len(r.places) {
		r.tellApart(times)
		for i := range r.names {
			r.names[i].part(stems)
		}
	}
	for i := range r.short {
		r.short[i].part(stems)
	}
}

// tellApart tells places apart that have one title; times is how often there is each.
func (r *Round) tellApart(times map[string]int) {
	type inRoom struct {
		room int
		text string
	}
	there := map[inRoom]int{}
	for i := range r.short {
		there[inRoom{r.room[i], r.short[i].text}]++
	}
	r.names = make([]name, len(r.places))
	whole := map[string]int{}
	for i := range r.names {
		x := r.short[i].text
		label := r.sections[r.room[i]].label
		if r.names[i].text = x; times[x] > 1 && label != "" {
			r.names[i].text = label + " " + x
		}
		whole[r.names[i].text]++
		if there[inRoom{r.room[i], x}] > 1 {
			r.short[i].text += r.planned(i)
		}
	}
	for i := range r.names {
		if whole[r.names[i].text] > 1 {
			r.names[i].text += r.planned(i)
		}
	}
}

// planned is the name of a place in the plan, as it stands behind its title.
func (r *Round) planned(i int) string { return " (" + r.places[i].Name + ")" }

// maxDigits is of how many digits a number is at most, not something else that is
// written in digits.
const maxDigits = 9

// part finds the number at the end of a name. One that ends a number of several
// parts stands in full: behind "Case 1.2" a 3 would be read as Case 3.
func (x *name) part(stems map[string]int) {
	x.digit, x.stem = digits(x.text), -1
	words := x.text[:x.digit]
	if d := len(x.text) - x.digit; d == 0 || d > maxDigits || goesOn(words) {
		return
	}
	x.n, _ = strconv.Atoi(x.number())
	k, known := stems[words]
	if !known {
		k = len(stems)
		stems[words] = k
	}
	x.stem = k
}

// goesOn reports whether what stands before a number ends with another one.
func goesOn(words string) bool {
	r, _ := utf8.DecodeLastRuneInString(strings.TrimRightFunc(words, func(r rune) bool {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r)
	}))
	return unicode.IsDigit(r)
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
// number at its end is what tells it from its neighbours, and stays. A title that is
// a number is marked as one, or it would be read as another of those before it:
// "Brood 2024, No. 7".
func brief(title string) string {
	title = flat(title)
	if isNumber(title) {
		title = "No. " + title
	}
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

// isNumber reports whether a title is one word that begins as a number: "7", "12b".
func isNumber(title string) bool {
	return title != "" && '0' <= title[0] && title[0] <= '9' && !strings.Contains(title, " ")
}

// list appends the names of some places, which stand in walking order: by room where
// they are in several, since their numbers would look shuffled.
func (r *Round) list(dst []byte, places []int32) []byte {
	first := r.room[places[0]]
	if first == r.room[places[len(places)-1]] && !slices.ContainsFunc(places, func(p int32) bool { return r.room[p] != first }) {
		return appendNames(dst, r.names, places)
	}
	for i := 0; i < len(places); {
		room, end := r.room[places[i]], i+1
		for end < len(places) && r.room[places[end]] == room {
			end++
		}
		if i > 0 {
			dst = append(dst, "; "...)
		}
		dst = append(append(dst, r.sections[room].label...), ": "...)
		dst = appendNames(dst, r.short, places[i:end])
		i = end
	}
	return dst
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

// Named lists enclosures by their titles as a round does, "Tub 1 to 3, 7 and 9 to 12".
// Those that have a title in common with another are told by their name in the plan too.
// They stand in walking order.
func Named(all []*plan.Enclosure) string {
	names, places := make([]name, len(all)), make([]int32, len(all))
	times, stems := map[string]int{}, map[string]int{}
	for _, e := range all {
		times[brief(e.Shown())]++
	}
	for i, e := range all {
		names[i].text, places[i] = brief(e.Shown()), int32(i)
		if times[names[i].text] > 1 {
			names[i].text += " (" + e.Name.V + ")"
		}
		names[i].part(stems)
	}
	return string(appendNames(nil, names, places))
}
