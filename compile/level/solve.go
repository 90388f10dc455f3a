package level

import (
	"cmp"
	"slices"
)

// Load is how much there is to do on each day for somebody who has Cap for it: one of the
// people, a round, or the house.
type Load struct {
	Cap  int
	Days []int
}

// over is by how much something is too much.
func (l *Load) over(day int) int { return max(0, l.Days[day]-l.Cap) }

// Work is some minutes of one load on a day.
type Work struct{ Load, Day, Minutes int }

// Task is work that may stand on other days. Its first option is where it stands now.
type Task struct {
	ID      string
	Minutes int // on one day, at the most
	Options int
	Far     func(option int) int    // by how many days it would move
	Work    func(option int) []Work // what it is then; the slice is used until the next call
}

// Bounds on the work. Ours.
const (
	search  = 200_000 // placements that are tried for the best of all
	swaps   = 30_000  // second tasks that are tried beside a first one
	passes  = 12
	fewEach = 14 // tasks, of which all placements may be tried
)

// solver places tasks. What it minimises is, first, by how much all days together are over
// what there is, and then the number of tasks that move.
type solver struct {
	tasks []Task
	loads []Load
	first [][]int // the loads as they were
	at    []int   // the option of each task
	order []int   // of the tasks: the longest first, ties by id
	tries int
}

// Solve returns the option of each task, and whether no other choice is better: by less over
// what there is, or by as little with fewer moves. No day on which a load is over is made
// worse, and none is put over. The loads are left as they are then.
func Solve(tasks []Task, loads []Load) (at []int, best bool) {
	s := &solver{tasks: tasks, loads: loads, at: make([]int, len(tasks))}
	for _, l := range loads {
		s.first = append(s.first, slices.Clone(l.Days))
	}
	for i := range tasks {
		s.order = append(s.order, i)
	}
	slices.SortFunc(s.order, func(a, b int) int {
		return cmp.Or(cmp.Compare(tasks[b].Minutes, tasks[a].Minutes), cmp.Compare(tasks[a].ID, tasks[b].ID))
	})
	if s.total() == 0 {
		return s.at, true
	}
	for range passes {
		if !s.pass() && !s.pairs() {
			break
		}
	}
	s.back()
	return s.at, s.all()
}

// total is by how much all days together are over.
func (s *solver) total() (n int) {
	for i := range s.loads {
		for d := range s.loads[i].Days {
			n += s.loads[i].over(d)
		}
	}
	return n
}

// put adds a task as one of its options has it, or with sign -1 takes it away. It returns by
// how much more is over then, and whether no day is over that was not, nor more than it was.
func (s *solver) put(task, option, sign int) (delta int, fits bool) {
	fits = true
	for _, w := range s.tasks[task].Work(option) {
		l := &s.loads[w.Load]
		delta -= l.over(w.Day)
		l.Days[w.Day] += sign * w.Minutes
		delta += l.over(w.Day)
		fits = fits && l.Days[w.Day] <= max(l.Cap, s.first[w.Load][w.Day])
	}
	return delta, fits
}

// full is how much there is to do on the days of a task, on the average of them.
func (s *solver) full(task, option int) int {
	n, days := 0, 0
	for _, w := range s.tasks[task].Work(option) {
		n, days = n+s.loads[w.Load].Days[w.Day], days+1
	}
	return n * 100 / max(1, days)
}

// over reports whether a task stands on a day that is over.
func (s *solver) over(task int) bool {
	return slices.ContainsFunc(s.tasks[task].Work(s.at[task]), func(w Work) bool { return s.loads[w.Load].over(w.Day) > 0 })
}

// pass moves each task that stands on a day that is over, the longest first, to where most of
// that goes: of equal places to the least full, then to the nearest. It reports whether any
// moved.
func (s *solver) pass() (moved bool) {
	for _, t := range s.order {
		if !s.over(t) {
			continue
		}
		now := s.at[t]
		if to := s.better(t); to != now {
			moved = true
		}
	}
	return moved
}

// better moves a task to its best place, and returns that.
func (s *solver) better(t int) int {
	now := s.at[t]
	less, _ := s.put(t, now, -1)
	best, most, where := now, -less, [3]int{}
	for k := range s.tasks[t].Options {
		if k == now {
			continue
		}
		more, fits := s.put(t, k, 1)
		key := [3]int{s.full(t, k), s.tasks[t].Far(k), k}
		if fits && (more < most || more == most && best != now && slices.Compare(key[:], where[:]) < 0) {
			best, most, where = k, more, key
		}
		s.put(t, k, -1)
	}
	s.put(t, best, 1)
	s.at[t] = best
	return best
}

// pairs makes room for a task that is on a day that is over by moving another one as well, and
// reports whether it could.
func (s *solver) pairs() bool {
	for _, t := range s.order {
		if !s.over(t) {
			continue
		}
		now := s.at[t]
		for k := range s.tasks[t].Options {
			if k == now || s.tries > swaps {
				continue
			}
			less, _ := s.put(t, now, -1)
			more, _ := s.put(t, k, 1)
			s.at[t] = k
			if s.beside(t, less+more) {
				return true
			}
			s.put(t, k, -1)
			s.put(t, now, 1)
			s.at[t] = now
		}
	}
	return false
}

// beside moves another task so that all is better than before one was put where it is, delta
// being what that came to.
func (s *solver) beside(task, delta int) bool {
	for _, o := range s.order {
		if o == task || !s.shares(o, task) {
			continue
		}
		was := s.at[o]
		less, _ := s.put(o, was, -1)
		for k := range s.tasks[o].Options {
			if s.tries++; k == was || s.tries > swaps {
				continue
			}
			more, fits := s.put(o, k, 1)
			if fits && delta+less+more < 0 && s.fits(task) {
				s.at[o] = k
				return true
			}
			s.put(o, k, -1)
		}
		s.put(o, was, 1)
	}
	return false
}

// fits reports whether a task, as it stands, puts no day over.
func (s *solver) fits(task int) bool {
	return !slices.ContainsFunc(s.tasks[task].Work(s.at[task]), func(w Work) bool {
		return s.loads[w.Load].Days[w.Day] > max(s.loads[w.Load].Cap, s.first[w.Load][w.Day])
	})
}

// shares reports whether two tasks meet on a day that is over.
func (s *solver) shares(a, b int) bool {
	on := map[[2]int]bool{}
	for _, w := range s.tasks[b].Work(s.at[b]) {
		if s.loads[w.Load].over(w.Day) > 0 {
			on[[2]int{w.Load, w.Day}] = true
		}
	}
	return slices.ContainsFunc(s.tasks[a].Work(s.at[a]), func(w Work) bool { return on[[2]int{w.Load, w.Day}] })
}

// back leaves where it was whatever needs not move after all, the shortest first.
func (s *solver) back() {
	for _, t := range slices.Backward(s.order) {
		if s.at[t] == 0 {
			continue
		}
		less, _ := s.put(t, s.at[t], -1)
		if more, fits := s.put(t, 0, 1); fits && less+more <= 0 {
			s.at[t] = 0
			continue
		}
		s.put(t, 0, -1)
		s.put(t, s.at[t], 1)
	}
}

// all tries every placement of the tasks that matter, where they are few, and reports whether
// it came to an end: then there is none better.
func (s *solver) all() bool {
	over := map[int]bool{} // the loads that are over somewhere, as they were
	for i, days := range s.first {
		for _, n := range days {
			over[i] = over[i] || n > s.loads[i].Cap
		}
	}
	var some []int
	for _, t := range s.order {
		if len(s.tasks) <= fewEach || slices.ContainsFunc(s.tasks[t].Work(0), func(w Work) bool { return over[w.Load] }) {
			some = append(some, t)
		}
	}
	if len(some) > fewEach {
		return s.total() == 0 && s.moves() == 0
	}
	best, now := slices.Clone(s.at), slices.Clone(s.at)
	least, fewest := s.total(), s.moves()
	for _, t := range some {
		s.put(t, s.at[t], -1)
	}
	left := search
	var down func(i, over, moves int)
	down = func(i, over, moves int) {
		if left--; left < 0 || over > least || over == least && moves >= fewest {
			return
		}
		if i == len(some) {
			least, fewest = over, moves
			copy(best, now)
			return
		}
		t := some[i]
		for k := range s.tasks[t].Options {
			more, fits := s.put(t, k, 1)
			if fits {
				now[t] = k
				step := 0
				if k != 0 {
					step = 1
				}
				down(i+1, over+more, moves+step)
			}
			s.put(t, k, -1)
		}
	}
	down(0, s.total(), 0)
	s.at = best
	for _, t := range some {
		s.put(t, best[t], 1)
	}
	return left >= 0 && len(some) == len(s.tasks)
}

// moves is how many tasks do not stand where they did.
func (s *solver) moves() (n int) {
	for _, k := range s.at {
		if k != 0 {
			n++
		}
	}
	return n
}
