package ical

import (
	"bytes"
	"reflect"
	"testing"
	"time"

	"vivary/schema/civil"
)

// What quick reads, the library reads alike: the same entries, stamps and bytes.
// A feed that is not as Write left it is none for quick.
func TestQuickReadsAsTheLibrary(t *testing.T) {
	day := civil.Must(2027, 3, 1)
	f := &Feed{Name: "N; ä", Zone: "Etc/UTC", Location: time.UTC,
		Timezone: []byte("BEGIN:VTIMEZONE\r\nTZID:Etc/UTC\r\nBEGIN:STANDARD\r\nDTSTART:20260101T000000\r\nTZOFFSETFROM:+0000\r\nTZOFFSETTO:+0000\r\nTZNAME:UTC\r\nEND:STANDARD\r\nEND:VTIMEZONE\r\n"),
		Entries: []Entry{
			{UID: UID("a"), Date: day, At: 19*60 + 30, Minutes: 60, Summary: "Feed, 4 each", Description: "line\nBEGIN:VEVENT\nUID:x\n" + string(bytes.Repeat([]byte("ü"), 200)), Remind: 10},
			{UID: UID("b"), Date: day + 2, AllDay: true, Days: 5, Summary: "band"},
			{UID: UID("c"), Date: day + 1, At: 8 * 60, Minutes: 5, RRule: "FREQ=DAILY;INTERVAL=2", ExDates: []civil.Date{day + 3}, Summary: "s"},
		}}
	feed := Write(nil, f, nil, time.Date(2027, 3, 1, 12, 0, 0, 0, time.UTC), day, day)
	fast, ok := quick(feed)
	if !ok {
		t.Fatalf("not read:\n%s", feed)
	}
	slow, err := slowly(feed)
	if err != nil {
		t.Fatal(err)
	}
	if !reflect.DeepEqual(fast, slow) {
		t.Errorf("quick: %+v\nlibrary: %+v", fast, slow)
	}
	for name, other := range map[string][]byte{
		"line feeds only": bytes.ReplaceAll(feed, []byte("\r\n"), []byte("\n")),
		"other order":     bytes.ReplaceAll(feed, []byte("SEQUENCE:0\r\n"), nil),
		"another program": bytes.Replace(feed, []byte("PRODID:"), []byte("PRODID:x"), 1),
		"the same twice":  append(bytes.TrimSuffix(append([]byte{}, feed...), []byte("END:VCALENDAR\r\n")), feed[bytes.Index(feed, []byte("BEGIN:VEVENT")):]...),
	} {
		if _, ok := quick(other); ok {
			t.Errorf("%s: read as it stands", name)
		}
	}
}

func BenchmarkRememberOwn(b *testing.B) {
	day := civil.Must(2027, 3, 1)
	f := &Feed{Zone: "Etc/UTC", Location: time.UTC}
	for i := range 366 {
		f.Entries = append(f.Entries, Entry{UID: UID("a", (day + civil.Date(i)).String()), Date: day + civil.Date(i), At: 19 * 60, Minutes: 60, Summary: "Evening round",
			Description: string(bytes.Repeat([]byte("- Mist 150 ml: Burrow A, Burrow B, Burrow C\n"), 20))})
	}
	feed := Write(nil, f, nil, time.Unix(0, 0), day, day)
	for name, read := range map[string]func([]byte) (*Memory, error){"quick": Remember, "library": slowly} {
		b.Run(name, func(b *testing.B) {
			b.SetBytes(int64(len(feed)))
			b.ReportAllocs()
			for range b.N {
				if _, err := read(feed); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
