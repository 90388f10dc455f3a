// Package stock reckons with feeder animals as living stock: how many the meals of a roster
// take, how fast cultures come, what is to be ordered by when and where it will not be enough.
// It decides no meal: what is fed, and on which day, stands in the roster.
package stock
