package sarif

// The parts of a log, by their names in SARIF 2.1.0; what each means stands there. Only
// those are here that vivary has something to say in.

// Log is a whole log, to be written as JSON.
type Log struct {
	Schema  string `json:"$schema"`
	Version string `json:"version"`
	Runs    []run  `json:"runs"`
}

// schemaAddress is where the schema of version 2.1.0 with its first errata is published.
const schemaAddress = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"

type run struct {
	Tool            tool                        `json:"tool"`
	Bases           map[string]artifactLocation `json:"originalUriBaseIds"`
	DefaultEncoding string                      `json:"defaultEncoding"`
	ColumnKind      string                      `json:"columnKind"`
	Results         []result                    `json:"results"`
}

type tool struct {
	Driver driver `json:"driver"`
}

type driver struct {
	Name     string      `json:"name"`
	Version  string      `json:"version,omitempty"`
	Language string      `json:"language"`
	Rules    []reporting `json:"rules"`
}

// reporting is a reportingDescriptor: what there is to say of a rule.
type reporting struct {
	ID      string         `json:"id"`
	Short   *message       `json:"shortDescription,omitempty"`
	Full    *message       `json:"fullDescription,omitempty"`
	Help    *message       `json:"help,omitempty"`
	Default configuration  `json:"defaultConfiguration"`
	More    ruleProperties `json:"properties"`
}

type configuration struct {
	Level string `json:"level"`
}

type ruleProperties struct {
	Severity string `json:"severity"`
	Silence  string `json:"silence"` // never, with-reason, or caution-with-reason
	Now      string `json:"now,omitempty"`
}

// message is a message or a multiformatMessageString, which have these in common.
type message struct {
	Text     string `json:"text"`
	Markdown string `json:"markdown,omitempty"`
}

type result struct {
	Rule         string            `json:"ruleId"`
	Index        int               `json:"ruleIndex"`
	Level        string            `json:"level"`
	Message      message           `json:"message"`
	Locations    []location        `json:"locations,omitempty"`
	Related      []location        `json:"relatedLocations,omitempty"`
	Fingerprints map[string]string `json:"partialFingerprints"`
	Suppressions []suppression     `json:"suppressions"`
	Fixes        []fix             `json:"fixes,omitempty"`
	More         resultProperties  `json:"properties"`
}

// resultProperties are what a finding says, each by itself and as it is.
type resultProperties struct {
	Severity   string   `json:"severity"`
	Text       string   `json:"text"`
	Where      string   `json:"where,omitempty"`
	Enclosures []string `json:"enclosures,omitempty"`
	Limit      string   `json:"limit,omitempty"`
	Source     string   `json:"source,omitempty"`
	Write      string   `json:"write,omitempty"`
}

type location struct {
	ID       *int              `json:"id,omitempty"`
	Physical *physicalLocation `json:"physicalLocation,omitempty"`
	Logical  []logicalLocation `json:"logicalLocations,omitempty"`
	Message  *message          `json:"message,omitempty"`
}

type logicalLocation struct {
	Name string `json:"name"`
	Full string `json:"fullyQualifiedName"`
	Kind string `json:"kind"`
}

type physicalLocation struct {
	Artifact artifactLocation `json:"artifactLocation"`
	Region   region           `json:"region"`
}

type artifactLocation struct {
	Address     string   `json:"uri,omitempty"`
	Base        string   `json:"uriBaseId,omitempty"`
	Description *message `json:"description,omitempty"`
}

// region is a stretch of a text, told in three ways: lines and columns, code points, bytes.
// What is to be replaced is told in the first two, which do not ask whether a mark of the
// encoding stands before the text.
type region struct {
	Line       int  `json:"startLine"`
	Column     int  `json:"startColumn"`
	EndLine    int  `json:"endLine"`
	EndColumn  int  `json:"endColumn"`
	Offset     int  `json:"charOffset"`
	Length     int  `json:"charLength"`
	ByteOffset *int `json:"byteOffset,omitempty"`
	ByteLength *int `json:"byteLength,omitempty"`
}

type suppression struct {
	Kind          string   `json:"kind"`
	Status        string   `json:"status"`
	Justification string   `json:"justification"`
	Location      location `json:"location"`
}

type fix struct {
	Description message          `json:"description"`
	Changes     []artifactChange `json:"artifactChanges"`
}

type artifactChange struct {
	Artifact     artifactLocation `json:"artifactLocation"`
	Replacements []replacement    `json:"replacements"`
}

type replacement struct {
	Deleted  region   `json:"deletedRegion"`
	Inserted *content `json:"insertedContent,omitempty"`
}

type content struct {
	Text string `json:"text"`
}
