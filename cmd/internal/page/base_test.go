package page

import (
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"
)

// TestReachedAsAsked: where nobody said how the server is reached, addresses to be copied and
// codes to be scanned are those by which the page itself was asked for, never an address of
// all machines.
func TestReachedAsAsked(t *testing.T) {
	s := quillmoor(t)
	s.house.Base = ""
	for _, host := range []string{"192.168.1.20:8424", "care.local:8424", "[fe80::1]:8424"} {
		for _, x := range []struct{ path, has string }{{"/calendars", "http://" + host + "/c/key-of-"}, {"/calendars", "webcal://" + host + "/c/key-of-"}} {
			r := httptest.NewRequest(http.MethodGet, home+x.path, nil)
			r.Host = host
			w := httptest.NewRecorder()
			s.ServeHTTP(w, r)
			if !strings.Contains(w.Body.String(), x.has) {
				t.Errorf("%s does not say %s", x.path, x.has)
			}
		}
	}
}
