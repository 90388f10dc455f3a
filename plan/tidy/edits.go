package tidy

import (
	"strings"

	"vivary/plan/finding"
	"vivary/plan/source"
)

// edits are the changes that make the file tidy, or those of what a place touches.
func (p *page) edits(id source.ID, within source.Place) (all []finding.Edit) {
	put := func(from, to int, text string) {
		if string(p.src[from:to]) != text {
			all = append(all, finding.Edit{At: source.Place{File: id, Start: int32(from), End: int32(to)}, Text: text})
		}
	}
	touched := func(i int) bool {
		return !within.Written() || i >= 0 && i < len(p.all) && p.all[i].from <= int(within.End) && p.all[i].to >= int(within.Start)
	}
	at := 0
	for i := range p.all {
		s := &p.all[i]
		if touched(i) && (i == 0 && !within.Written() || touched(i-1)) {
			put(at, s.from, s.between(i == 0))
		}
		if touched(i) {
			p.changed(s, put)
		}
		at = s.to
	}
	if !within.Written() {
		put(at, len(p.src), "\n")
	}
	return all
}

// changed puts in what of a stretch is to change.
func (p *page) changed(s *stretch, put func(from, to int, text string)) {
	was := string(p.src[s.from:s.to])
	if was == s.text {
		return
	}
	old, new := strings.SplitAfter(was, "\n"), strings.SplitAfter(s.text, "\n")
	begins := make([]int, len(old)+1) // of each line
	begins[0] = s.from
	for i, l := range old {
		begins[i+1] = begins[i] + len(l)
	}
	for _, h := range differences(old, new) {
		put(begins[h.from], begins[h.to], strings.Join(new[h.newFrom:h.newTo], ""))
	}
}

// hunk says that lines of a text give way to those of another.
type hunk struct{ from, to, newFrom, newTo int }

// mostApart bounds how many lines two texts may differ by to be compared line by line.
const mostApart = 200

// differences are the lines in which two texts differ: as few as there can be (Myers 1986, An
// O(ND) difference algorithm), unless there are more than mostApart.
func differences(old, new []string) []hunk {
	first := 0
	for first < len(old) && first < len(new) && old[first] == new[first] {
		first++
	}
	endOld, endNew := len(old), len(new)
	for endOld > first && endNew > first && old[endOld-1] == new[endNew-1] {
		endOld, endNew = endOld-1, endNew-1
	}
	a, b := old[first:endOld], new[first:endNew]
	var all []hunk
	for _, h := range shortest(a, b) {
		all = append(all, hunk{first + h.from, first + h.to, first + h.newFrom, first + h.newTo})
	}
	return all
}

// shortest is differences for texts that differ in their first and last lines.
func shortest(a, b []string) []hunk {
	var trace [][]int // how far each diagonal reaches, after each step
	reach := make([]int, 2*mostApart+3)
	const mid = mostApart + 1
	for d := 0; d <= mostApart; d++ {
		trace = append(trace, append([]int(nil), reach[mid-d-1:mid+d+2]...))
		for k := -d; k <= d; k += 2 {
			x := reach[mid+k-1] + 1
			if k == -d || k != d && reach[mid+k-1] < reach[mid+k+1] {
				x = reach[mid+k+1]
			}
			for x < len(a) && x-k < len(b) && a[x] == b[x-k] {
				x++
			}
			reach[mid+k] = x
			if x >= len(a) && x-k >= len(b) {
				return walkedBack(trace, len(a), len(b))
			}
		}
	}
	return []hunk{{0, len(a), 0, len(b)}}
}

// walkedBack follows the steps back from the ends of both texts.
func walkedBack(trace [][]int, x, y int) (all []hunk) {
	for d := len(trace) - 1; d > 0; d-- {
		reach := trace[d] // reach[d+1+k] is that of diagonal k, before step d
		k := x - y
		before := k - 1
		if k == -d || k != d && reach[d+k] < reach[d+k+2] {
			before = k + 1
		}
		px := reach[d+1+before]
		py := px - before
		from, newFrom := px, py
		to, newTo := px+1, py
		if before == k+1 {
			to, newTo = px, py+1
		}
		if n := len(all); n > 0 && all[n-1].from == to && all[n-1].newFrom == newTo {
			all[n-1].from, all[n-1].newFrom = from, newFrom
		} else {
			all = append(all, hunk{from, to, newFrom, newTo})
		}
		x, y = px, py
	}
	for i, k := 0, len(all)-1; i < k; i, k = i+1, k-1 {
		all[i], all[k] = all[k], all[i]
	}
	return all
}
