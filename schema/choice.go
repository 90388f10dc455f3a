package schema

import "strings"

// Choice is one of the words that an attribute allows.
type Choice struct {
	Name, Doc string
	Also      []string // what keepers call it otherwise: each is understood as it
}

// Question is what keepers write that does not mean one thing alone. It is never guessed.
type Question struct {
	Texts []string
	Ask   string // what is asked, or why it is not clear
	Write string // what to write
}

// choices makes a list of words, each followed by what it means. A word may be followed by
// what else it is called, each after " | ".
func choices(pairs ...string) []Choice {
	c := make([]Choice, 0, len(pairs)/2)
	for i := 0; i < len(pairs); i += 2 {
		names := strings.Split(pairs[i], " | ")
		c = append(c, Choice{names[0], pairs[i+1], names[1:]})
	}
	return c
}

// Called returns the name of the word of a list that is written so, or is called so by
// keepers: "" for none. Capitals do not matter, nor how the words of a name are parted.
func Called(list []Choice, written string) string {
	key := unparted(written)
	for _, c := range list {
		if c.Name == written {
			return c.Name
		}
	}
	for _, c := range list {
		if unparted(c.Name) == key {
			return c.Name
		}
		for _, a := range c.Also {
			if unparted(a) == key {
				return c.Name
			}
		}
	}
	return ""
}

// AskedBack returns the question with which a written word is answered, or nil.
func AskedBack(list []Question, written string) *Question {
	key := unparted(written)
	for i := range list {
		for _, t := range list[i].Texts {
			if unparted(t) == key {
				return &list[i]
			}
		}
	}
	return nil
}

var noParts = strings.NewReplacer("-", "", "_", "", " ", "")

func unparted(s string) string { return noParts.Replace(strings.ToLower(s)) }
