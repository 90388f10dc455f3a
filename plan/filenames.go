package plan

import (
	"path/filepath"
	"regexp"
	"strings"
	"unicode"

	"github.com/agext/levenshtein"
)

// likeness is what the name of a file has of that of a plan or a log.
type likeness uint8

const (
	otherFile likeness = iota
	planFile           // it is one
	logFile
	nearPlan // it was meant for one, and is not read
	nearLog
	maybeLog // it may have been meant for one
	leftover // an editor left it beside one
)

// suffixes are those of the files that are read, and what is nearly so.
var suffixes = []struct {
	suffix   string
	is, near likeness
}{{PlanSuffix, planFile, nearPlan}, {LogSuffix, logFile, nearLog}}

// likenessOf tells it from the name alone. asked is the name that it should have, of a
// near one, or that of the file beside which it was left.
func likenessOf(name string) (is likeness, asked string) {
	for _, own := range []string{"._", ".#", ".~lock."} { // of a system, of editors
		if strings.HasPrefix(name, own) {
			return otherFile, ""
		}
	}
	seen := strings.Map(visible, name)
	low := strings.ToLower(seen)
	if len(low) != len(seen) {
		seen = low // letters of another size: what follows counts in bytes
	}
	for _, of := range suffixes {
		if strings.HasSuffix(name, of.suffix) && name[0] != '.' {
			return of.is, ""
		}
		at := strings.LastIndex(low, of.suffix)
		if at < 0 {
			continue
		}
		rest := low[at+len(of.suffix):]
		asked = stemOf(strings.TrimLeft(seen[:at], "#")) + of.suffix
		switch {
		case rest == cloudSuffix:
		case left.MatchString(rest), name[0] == '.' && temporary.MatchString(rest):
			return leftover, asked
		case rest == pictureSuffix:
			return otherFile, ""
		}
		return of.near, asked
	}
	return nearlyOf([]rune(low))
}

// pictureSuffix ends what the program itself draws, under a name like a plan's too.
const pictureSuffix = ".svg"

// cloudSuffix ends the name of what stands in the place of a file that is not here.
const cloudSuffix = ".icloud"

// left is what editors put behind the name of a file that they keep a copy of, write anew
// or have open: "burrow.care.hcl~", "burrow.care.hcl.bak", ".burrow.care.hcl.swp". A
// hidden one may also have letters by chance behind it while it is written, or the number
// that this program puts there.
var (
	left      = regexp.MustCompile(`^(~|#|\.~\d+~|\.(bak|bk|backup|old|orig|save|sw[a-p]|tmp|temp|part|rej|kate-swp)\d*)$`)
	temporary = regexp.MustCompile(`^\.([a-z0-9]{6}|tmp\..+|\d+\.new)$`)
)

// joints are what parts of a name are put together with.
var joints = strings.NewReplacer(".", "", "-", "", "_", "", " ", "")

// visible drops what nobody sees in a name, and blanks and dots at its end go with it.
func visible(r rune) rune {
	if unicode.IsSpace(r) {
		return ' '
	}
	if !unicode.IsPrint(r) {
		return -1
	}
	return r
}

// nearlyOf is likenessOf for a name that has neither ending in it, in small letters.
func nearlyOf(low []rune) (likeness, string) {
	for len(low) > 0 && strings.ContainsRune(" .", low[len(low)-1]) {
		low = low[:len(low)-1]
	}
	name := string(low)
	short := joints.Replace(name)
	for _, of := range suffixes {
		for n := len(of.suffix) - 1; n <= min(len(of.suffix)+1, len(low)); n++ {
			if levenshtein.Distance(string(low[len(low)-n:]), of.suffix, nil) <= 1 {
				return of.near, stemOf(string(low[:len(low)-n])) + of.suffix
			}
		}
		if strings.HasSuffix(short, strings.ReplaceAll(of.suffix, ".", "")) {
			return of.near, stemOf(name[:strings.LastIndex(name, "care")]) + of.suffix
		}
	}
	stem, ext := filepath.Ext(name), ""
	if stem, ext = strings.TrimSuffix(name, stem), stem; left.MatchString(ext) {
		return otherFile, ""
	}
	switch within := filepath.Ext(stem); {
	case ext == ".hcl" || ext == ".care":
		return nearPlan, stemOf(strings.TrimSuffix(stem, ".care")) + PlanSuffix
	case within == ".hcl" || within == ".care": // and another behind it: burrow.hcl.txt
		return nearPlan, stemOf(strings.TrimSuffix(stem, within)) + PlanSuffix
	case ext == ".log":
		return maybeLog, stemOf(stem) + LogSuffix
	}
	return otherFile, ""
}

// stemOf is a stem that a file can have for a name.
func stemOf(stem string) string {
	if stem = strings.Trim(stem, " .-_"); stem == "" {
		return "my-plan"
	}
	return stem
}
