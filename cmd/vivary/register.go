package main

import (
	"fmt"

	"vivary/compile/paper"
	"vivary/compile/register"
	"vivary/plan/finding"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// registerOf prints the stock book of a collection.
func registerOf(w *world, f *flags, args []string) int {
	r, _, status := w.toPrint("register", f, args)
	if status != fine {
		return status
	}
	if !r.Plan.Complete() {
		return w.refuse(r, "A register in which animals are missing is none: put this right")
	}
	from, on, err := f.span(r.Today)
	if err != nil {
		fmt.Fprintf(w.err, "vivary register: %v\n", wording.Plain(err))
		return usage
	}
	book := register.Of(r, on)
	b := book.Balance(from, on)
	switch {
	case f.paper != "":
		return w.print(f, "register", paper.Register(r, book, b))
	case f.format == "json":
		printJSON(w, newRegisterForm(r, book, b))
		return fine
	case f.format == "csv":
		if err := book.CSV(w.raw); err != nil { // its lines end as the standard says, and no cell steers a terminal
			fmt.Fprintf(w.err, "vivary register: what is said here could not all be printed: %v\n", wording.Plain(err))
			return refused
		}
		return fine
	}
	status = w.print(f, "register", paper.Register(r, book, b))
	if sum := finding.Summary(r.Findings); sum != "" {
		fmt.Fprintf(w.out, "\n%s: see vivary check.\n", sum)
	}
	return status
}

// span is the days of the register: it is as of the last, and the balance begins with the
// first.
func (f *flags) span(today civil.Date) (from, on civil.Date, err error) {
	on = today
	if f.on != "" {
		if on, err = civil.Parse(f.on); err != nil {
			return 0, 0, fmt.Errorf("--on: %w", err)
		}
		if on > today {
			return 0, 0, fmt.Errorf("--on: %s is after today, %s, and nobody knows who will be here", on.Words(), today.Words())
		}
	}
	from = on.AddMonths(-12) + 1
	if f.from != "" {
		if from, err = civil.Parse(f.from); err != nil {
			return 0, 0, fmt.Errorf("--from: %w", err)
		}
		if from > on {
			return 0, 0, fmt.Errorf("--from: %s is after %s, on which the register ends", from.Words(), on.Words())
		}
	}
	return from, on, nil
}
