package main

import (
	"net"
	"testing"
)

// How a server is reached follows from where it listens, unless that is everywhere.
func TestReachedBy(t *testing.T) {
	for _, x := range []struct {
		at      string
		secure  bool
		address string
		want    string
	}{
		{"127.0.0.1:8424", false, "", "http://127.0.0.1:8424"},
		{"192.168.1.20:8424", true, "", "https://192.168.1.20:8424"},
		{"[::1]:8424", false, "", "http://[::1]:8424"},
		{"[::]:8424", false, "", ""},
		{"0.0.0.0:8424", true, "", ""},
		{"[::]:8424", false, "https://care.example/", "https://care.example"},
	} {
		at, err := net.ResolveTCPAddr("tcp", x.at)
		if err != nil {
			t.Fatal(err)
		}
		if got := (&flags{address: x.address}).base(at, x.secure); got != x.want {
			t.Errorf("%s: %q, not %q", x.at, got, x.want)
		}
	}
}
