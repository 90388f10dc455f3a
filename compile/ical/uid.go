package ical

import (
	"crypto/sha1"
	"strconv"

	"github.com/google/uuid"
)

// namespace separates our identifiers from everybody else's. Changing it makes
// every published entry a new one.
var namespace = uuid.MustParse("016dfd6b-daf7-41dd-85b3-b3c60bcb510a")

// UID returns a name-based UUID (RFC 9562, 5.5: version 5) of the parts. It
// holds no host name and nothing of a person (RFC 7986, 5.3), and ("ab", "c")
// and ("a", "bc") differ.
func UID(parts ...string) string {
	name := append(make([]byte, 0, 128), namespace[:]...)
	for _, p := range parts {
		name = strconv.AppendInt(name, int64(len(p)), 10)
		name = append(name, ':')
		name = append(name, p...)
	}
	// As uuid.NewSHA1, without its three allocations: feeds have many alarms.
	hash := sha1.Sum(name)
	id := uuid.UUID(hash[:16])
	id[6] = id[6]&0x0f | 0x50
	id[8] = id[8]&0x3f | 0x80
	return id.String()
}
