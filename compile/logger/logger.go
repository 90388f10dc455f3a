// Package logger reads the files that data loggers write: tables of times with a temperature,
// a humidity, or both, in whatever shape. It makes one series of them, in order, in °C and % of
// relative humidity, and says what it took for what. It knows no plan and judges nothing.
package logger

import (
	"math"
	"time"
)

// The bounds of one file. They hold five years of minutes.
const (
	MaxBytes   = 256 << 20
	MaxRows    = 2_700_000
	maxLine    = 8 << 10 // bytes of a line
	maxColumns = 64
	maxSaid    = 12 // problems that are told; more are counted
)

// Sample is what a logger showed at an instant; not a number is no reading.
type Sample struct {
	At   int64   // seconds since 1970, UTC
	Heat float64 // °C
	Damp float64 // % of relative humidity
}

// None reports whether there is no reading in a value.
func None(x float64) bool { return math.IsNaN(x) }

// Problem is what is wrong in a line of the file.
type Problem struct {
	Line int // from 1; 0 for the whole
	Text string
}

// Series is what one file says, in order of time. It is not changed once it is read.
type Series struct {
	Samples []Sample
	Step    int64 // seconds between most samples
	Zone    *time.Location

	Shape    Shape
	Rows     int // lines with a time
	Missing  int // values that are no reading: 85.0, -127, NaN, -- and such
	Repeated int // lines of an hour that the clock showed twice
	Passed   int // lines that could not be read, or lie before others
	Problems []Problem
	more     int // problems that are not told
}

// Untold is how many problems there are besides those in Problems.
func (s *Series) Untold() int { return s.more }

// Has reports whether there is any temperature, and any humidity.
func (s *Series) Has() (heat, damp bool) {
	return s.Shape.Heat > 0, s.Shape.Damp > 0
}

// First and Last are its ends.
func (s *Series) First() time.Time { return time.Unix(s.Samples[0].At, 0).In(s.Zone) }

// Last is the time of the last sample.
func (s *Series) Last() time.Time { return time.Unix(s.Samples[len(s.Samples)-1].At, 0).In(s.Zone) }

// MaxGap is the longest time between two samples across which a straight line is drawn: three
// steps. What happened in a longer one nobody knows.
func (s *Series) MaxGap() int64 { return 3 * s.Step }

func (s *Series) problem(line int, text string) {
	if len(s.Problems) >= maxSaid {
		s.more++
		return
	}
	s.Problems = append(s.Problems, Problem{line, text})
}

// Order is the order in which a file writes day, month and year.
type Order uint8

// The orders.
const (
	OrderUnknown Order = iota
	DayFirst
	MonthFirst
	YearFirst
)

// Orders are the words for them, as --dates takes them.
var Orders = []string{"", "day-first", "month-first", "year-first"}

// Options say what is not to be guessed.
type Options struct {
	Zone    *time.Location // of times without one
	Order   Order
	Columns map[string]string // by time, date, clock, temperature, humidity: a number from 1, or a heading
	Degrees byte              // 'C', 'F', or 0 for as the file says
}

// Shape is how the file was read.
type Shape struct {
	Separator byte
	Comma     bool     // decimals stand behind a comma
	Headings  []string // of the columns, where there are any
	Before    int      // lines before the data
	Time      int      // the columns, from 1: of the whole time, or of the day; 0 for none
	Clock     int      // of the time of day, where it stands apart
	Half      int      // of AM and PM, where they stand apart
	Heat      int
	Damp      int
	Part      bool  // humidities are parts of 1, and no percent
	Others    []int // columns of numbers that are not used and could be
	Order     Order
	How       string // what decided the order, in words
	Stamps    string // what times are: "local", "UTC", "epoch s", "epoch ms", "spreadsheet days"
	Degrees   byte   // 'C' or 'F'
	DegreesBy string // what says so, in words
	Asked     bool   // the scale was asked for
	Guess     string // by what two columns without a heading were told apart, in words; else ""
	Reversed  bool   // the newest stood first
}
