package schema

import "slices"

// NumberBlock is what differs in some enclosures of a block with numbers.
var NumberBlock = &Block{
	Name: "number", Label: "number, or several",
	Doc: "What differs in one of the enclosures of a block with `numbers`, or in some of them: one line for each fact, `number \"7\" { instar = 5 }`. It goes before what the block says, as the block goes before its template and its rack. " +
		"Two lines may say different things of one enclosure, never the same, and a range goes over what is not among the numbers. A title and a former name that are said of several have the number after them, like the name.",
	Example: "enclosure \"tub\" {\n  numbers  = \"1 to 40\"\n  template = \"desert-tub\"\n\n  animals \"one\" {\n    count = 1\n    stage = \"adult\"\n  }\n\n  number \"7\"        { stage = \"subadult\" }\n  number \"12\"       { born = \"2024-06-02\" }\n  number \"31 to 40\" { depth = \"20 cm\" }\n}",
	Attrs:   append([]Attr{titleAttr, templateAttr, formerlyAttr}, optional(common)...),
	Blocks:  inBox,
	Flat:    []*Block{Animals, Housing},
}

// optional returns attributes none of which must be written.
func optional(all []Attr) []Attr {
	out := slices.Clone(all)
	for i := range out {
		out[i].Required = false
	}
	return out
}
