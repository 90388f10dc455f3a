package qrcode

// penalty is how much a code confuses a reader, by the four rules of the standard (7.8.3): runs
// of one colour, blocks of one colour, what looks like the mark of a corner, and too much of
// one colour. The mask with the least is taken.
func (c *Code) penalty() int {
	n := c.grid.Size
	total, black := 0, 0
	for i := range n {
		total += lineOf(n, func(k int) bool { return c.grid.Black(k, i) })
		total += lineOf(n, func(k int) bool { return c.grid.Black(i, k) })
		for k := range n {
			here := c.grid.Black(k, i)
			if here {
				black++
			}
			if k+1 < n && i+1 < n && here == c.grid.Black(k+1, i) && here == c.grid.Black(k, i+1) && here == c.grid.Black(k+1, i+1) {
				total += 3
			}
		}
	}
	off := black*20 - n*n*10 // twentieths of all squares away from half of them
	return total + max(off, -off)/(n*n)*10
}

// corner is the middle of the mark at the corners, with white on one side: 10111010000.
var corner = [...]bool{true, false, true, true, true, false, true, false, false, false, false}

// lineOf is the penalty of a row or a column of n squares.
func lineOf(n int, black func(int) bool) int {
	total, run := 0, 0
	for k := range n {
		if k > 0 && black(k) == black(k-1) {
			run++
		} else {
			run = 1
		}
		if run == 5 {
			total += 3
		} else if run > 5 {
			total++
		}
		if k+len(corner) <= n {
			ahead, back := true, true
			for i, want := range corner {
				ahead = ahead && black(k+i) == want
				back = back && black(k+len(corner)-1-i) == want
			}
			if ahead {
				total += 40
			}
			if back {
				total += 40
			}
		}
	}
	return total
}
