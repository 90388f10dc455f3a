package readings

import "vivary/compile/logger"

// notSet is the year before which no clock of a logger was right: it begins at 1970 or 2000 where
// nobody set it.
const notSet = 2005

// doubts are what cannot be of a file as a whole: the other scale, or a clock that nobody set.
// They are told, and nothing of such a file goes into plan or log.
func doubts(s *logger.Series) (all []Fault) {
	if s.First().Year() < notSet {
		all = append(all, Fault{Kind: "clock", Text: "the clock of the logger was never set: when this was nobody can say, and nothing of it goes into the log"})
	}
	if heat, _ := s.Has(); !heat {
		return all
	}
	low, high, any := 0.0, 0.0, false
	for i := range s.Samples {
		if t := s.Samples[i].Heat; !logger.None(t) {
			if !any {
				low, high, any = t, t, true
			}
			low, high = min(low, t), max(high, t)
		}
	}
	switch {
	case s.Shape.Asked: // whoever asked for it knows
	case any && s.Shape.Degrees == 'C' && low > 45 && high < 140:
		all = append(all, Fault{Kind: "scale", Text: "every temperature is above 45 °C: if these are °F, say --degrees F. Until then nothing of it goes into the log"})
	case any && s.Shape.Degrees == 'F' && high < 8 && low > -12.5:
		all = append(all, Fault{Kind: "scale", Text: "every temperature is below 46 °F: if these are °C, say --degrees C. Until then nothing of it goes into the log"})
	}
	return all
}

// doubted reports whether anything cannot be of one of the files as a whole.
func (r *Report) doubted() bool {
	for _, j := range r.Files {
		if len(doubts(j.Series)) > 0 {
			return true
		}
	}
	return false
}
