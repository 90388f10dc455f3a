package schema

// word is an entry of a vocabulary.
type word interface{ name() string }

func (k *CareKind) name() string { return k.Name }
func (n *NeedName) name() string { return n.Name }
func (w *LogWord) name() string  { return w.Name }
func (f *Figure) name() string   { return f.Name }

// listed puts an entry into its vocabulary as it is declared, so that none is known by
// a name in Go and not in a plan. Two of one name would hide each other in a plan.
func listed[T any, P interface {
	*T
	word
}](list *[]P, entry T) P {
	p := P(&entry)
	for _, other := range *list {
		if other.name() == p.name() {
			panic("schema: two entries are named " + p.name())
		}
	}
	*list = append(*list, p)
	return p
}
