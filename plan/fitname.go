package plan

import "errors"

// FitName says why something cannot be called so; nil where it can.
func FitName(name string) error {
	if !validName(name) {
		return errors.New(quote(name) + " cannot be a name: a name is made of letters, digits, hyphens and underscores, at most 60 of them")
	}
	return nil
}
