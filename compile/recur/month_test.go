package recur

import (
	"testing"

	"vivary/schema/civil"
)

// Every day of the calendar, against civil's own arithmetic.
func TestMonthAgainstCivil(t *testing.T) {
	for d := MinDate; d <= MaxDate; d++ {
		y, m, want := d.YMD()
		month, day := monthOf(d)
		if month != y*12+int(m)-1 || day != want {
			t.Fatalf("%v: month %d, day %d", d, month, day)
		}
		if day == 1 && (monthStart(month) != d || monthStart(month+1) != d+civil.Date(civil.DaysIn(y, m))) {
			t.Fatalf("month of %v: from %v to %v", d, monthStart(month), monthStart(month+1))
		}
	}
}
