package main

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"time"

	"vivary/plan"
	"vivary/schema/civil"
)

// likeADay is a word that is meant for a day, though it may be none.
var likeADay = regexp.MustCompile(`^\d+[-./]\d+([-./]\d+)?$`)

// takeDay reads the day with which the words of a note begin, and returns the words behind
// it. Without one it is today. What is called as an enclosure is called is no day.
func takeDay(c *plan.Collection, today civil.Date, words []string) (day civil.Date, rest []string, err error) {
	if called(c, words[0]) != "" {
		return today, words, nil
	}
	if strings.EqualFold(words[0], "last") && len(words) > 1 {
		if w, ok := civil.ParseWeekday(strings.ToLower(words[1])); ok {
			day, err := lastWeekday(today, w, true)
			return day, words[2:], err
		}
	}
	if len(words) > 2 && strings.EqualFold(words[2], "ago") && (words[1] == "days" || words[1] == "day") {
		if n, err := strconv.Atoi(words[0]); err == nil && n >= 0 && n < 1000 {
			return today - civil.Date(n), words[3:], nil
		}
	}
	switch word := strings.ToLower(words[0]); word {
	case "today", "tonight":
		return today, words[1:], nil
	case "yesterday":
		return today - 1, words[1:], nil
	case "tomorrow":
		return 0, nil, fmt.Errorf("tomorrow is after today, %s: a log holds what was seen", today.Words())
	default:
		if w, ok := civil.ParseWeekday(word); ok {
			day, err := lastWeekday(today, w, false)
			return day, words[1:], err
		}
	}
	if len(words) > 3 { // 2 Dec 2026
		if day, err := civil.Read(strings.Join(words[:3], " ")); err == nil {
			return day, words[3:], nil
		}
	}
	if day, err := civil.Read(words[0]); err == nil {
		return day, words[1:], nil
	} else if likeADay.MatchString(words[0]) {
		return 0, nil, err
	}
	return today, words, nil
}

// lastWeekday is the last such day before today. Whoever says Monday on a Monday may mean
// either.
func lastWeekday(today civil.Date, w time.Weekday, last bool) (civil.Date, error) {
	back := (int(today.Weekday()) - int(w) + 7) % 7
	if back == 0 && !last {
		return 0, fmt.Errorf("today is %s: write today, or %s for a week ago", w, today-7)
	}
	if back == 0 {
		back = 7
	}
	return today - civil.Date(back), nil
}
