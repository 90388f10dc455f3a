package logger

import (
	"strings"
	"testing"
	"time"
)

// FuzzRead reads any bytes as the file of a logger: no panic, time rises, nothing is outside of
// what there can be, and no more problems are kept than are told.
func FuzzRead(f *testing.F) {
	at, heats, damps := truth()
	for i := range shapes {
		c := &shapes[i]
		var b strings.Builder
		b.WriteString(c.before)
		for k := range 6 {
			b.WriteString(c.row(k, at[k], heats[k], damps[k]) + "\n")
		}
		f.Add([]byte(b.String()), uint8(i), "")
	}
	for _, s := range []string{"", "\n", ",,,\n,,,\n", "\"", "\"\"\"\n\"", "1,2\n3,4\n", "\xff\xfe", "\xff\xfet\x00", "0:00,1\n", "2027-10-31 01:50,1\n2027-10-31 01:00,2\n2027-10-31 01:50,1\n2027-10-31 01:00,2\n", strings.Repeat("9", 9000) + ",1\n", "85,85\r85,85\r"} {
		f.Add([]byte(s), uint8(1), "2")
	}
	london, _ := time.LoadLocation("Europe/London")
	f.Fuzz(func(t *testing.T, text []byte, order uint8, column string) {
		if len(text) > 1<<18 {
			return
		}
		slow := time.AfterFunc(10*time.Second, func() { panic("it does not come to an end") })
		defer slow.Stop()
		o := Options{Zone: london, Order: Order(order % 4)}
		if column != "" {
			o.Columns = map[string]string{"temperature": column}
		}
		s, err := Read(strings.NewReader(string(text)), o)
		if err != nil {
			if s != nil {
				t.Fatal("an error and a series")
			}
			return
		}
		if len(s.Samples) < 2 || s.Step < 1 || len(s.Problems) > maxSaid {
			t.Fatalf("%d samples, step %d, %d problems", len(s.Samples), s.Step, len(s.Problems))
		}
		_ = s.Shape.String()
		for i, x := range s.Samples {
			if i > 0 && x.At <= s.Samples[i-1].At {
				t.Fatalf("sample %d does not rise: %d after %d", i, x.At, s.Samples[i-1].At)
			}
			if x.Heat < -60 || x.Heat > 150 || x.Damp < 0 || x.Damp > 100 {
				t.Fatalf("sample %d is %v, %v", i, x.Heat, x.Damp)
			}
		}
	})
}
