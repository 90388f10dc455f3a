package finding

// Silence says what an accept block may do about a rule. The zero Silence is the
// one that nobody can go wrong with.
type Silence uint8

const (
	// Never is for what can kill an animal or hurt a person, and for what is about
	// the text of a plan: it is put right.
	Never Silence = iota
	// ByReason is for what may be so for a while, with a reason and a date.
	ByReason
	// OnlyCaution is for what may be so with a reason and a date, unless it is so
	// bad that it refuses the plan or is urgent.
	OnlyCaution
)

var silenceWords = [...]string{
	"No accept block silences it.",
	"An accept block silences it, with a reason, until a date.",
	"An accept block silences it, with a reason, until a date, where it is neither an error nor urgent.",
}

// String says it in a sentence for a keeper.
func (s Silence) String() string { return silenceWords[s] }

// Silenced reports whether an accept block of its rule silences the finding.
func (f *Finding) Silenced() bool {
	switch f.Rule.Silence {
	case ByReason:
		return true
	case OnlyCaution:
		return f.Severity < Urgent
	}
	return false
}
