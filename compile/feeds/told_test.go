package feeds_test

import (
	"bytes"
	"testing"

	"vivary/compile/feeds"
	"vivary/compile/identity"
	"vivary/schema/civil"
)

// What a feed says of itself is what it shows, of care of its own rounds and of all of
// them, and nobody else's file says anything.
func TestAFeedTellsWhatItShowed(t *testing.T) {
	text := `
collection "fixtures" {
  time_zone = "Etc/UTC"
}
keeper "lead" {
}
round "morning" {
  at = "08:00"
}
round "evening" {
  at = "20:00"
}
calendar "all" {
}
` + sheet + box("alpha", `
  animals "only" {
    count = 3
    stage = "juvenile"
  }
  care "look" {
    every = "day"
    round = "morning"
  }
  care "water" {
    on    = ["tue", "fri"]
    round = ["morning", "evening"]
  }
`)
	on := civil.Must(2027, 3, 10)
	r := compiled(t, text, "", on)
	head, err := feeds.Of(r)[0].Bytes(nil)
	if err != nil {
		t.Fatal(err)
	}
	told := feeds.ToldBy("fixtures", feeds.ReadHeads([][]byte{head}))
	if told == nil {
		t.Fatal("the feed tells nothing")
	}
	water := func(d civil.Date) bool { return d.Weekday().String() == "Tuesday" || d.Weekday().String() == "Friday" }
	for _, c := range []struct {
		id   identity.Identity
		want func(civil.Date) bool
	}{
		{identity.Identity{Enclosure: "alpha", Care: "look"}, func(civil.Date) bool { return true }},
		{identity.Identity{Enclosure: "alpha", Care: "water", Round: "evening"}, water},
		{identity.Identity{Enclosure: "alpha", Care: "water", Round: "of another name then"}, water},
	} {
		shown, from, until, ok := told.Days(c.id)
		if !ok || from > on-31 || until <= on {
			t.Errorf("%s: it tells of %s to %s", c.id, from, until)
			continue
		}
		for d := from; d < until; d++ {
			if shown(d) != c.want(d) {
				t.Errorf("%s on %s: told %v", c.id, d, shown(d))
			}
		}
	}
	if _, _, _, ok := told.Days(identity.Identity{Enclosure: "beta", Care: "look"}); ok {
		t.Error("it tells of an enclosure that there was not")
	}
	if _, _, _, ok := feeds.ToldBy("others", feeds.ReadHeads([][]byte{head})).Days(identity.Identity{Enclosure: "alpha", Care: "look"}); ok {
		t.Error("it tells of another collection")
	}
	foreign := bytes.Replace(head, []byte("PRODID:"), []byte("PRODID:-//Somebody else//"), 1)
	for name, file := range map[string][]byte{"of another program": foreign, "that is no calendar": head[1:], "that is empty": nil} {
		if feeds.ToldBy("fixtures", feeds.ReadHeads([][]byte{file})) != nil {
			t.Errorf("a file %s tells something", name)
		}
	}
}
