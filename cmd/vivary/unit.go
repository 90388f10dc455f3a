package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"vivary/schema/wording"
)

// unit prints a unit for systemd, by which the server is started with the machine.
func (w *world) unit(f *flags, root, keys string) int {
	program, err := os.Executable()
	if err == nil {
		root, err = filepath.Abs(root)
	}
	if err != nil {
		fmt.Fprintf(w.err, "vivary serve: %v\n", wording.Plain(err))
		return refused
	}
	line := []string{program, "serve", root, "--keys", keys}
	for _, x := range [][2]string{{"--listen", f.listen}, {"--address", f.address}, {"--certificate", f.certificate}, {"--private-key", f.privateKey}, {"--measures", f.measures}, {"--notice-after", f.noticeAfter}, {"--out", f.out}} {
		if x[1] != "" {
			line = append(line, x[0], x[1])
		}
	}
	for i := range line {
		line[i] = unitQuoted(line[i])
	}
	fmt.Fprintf(w.out, `# Keep this as vivary.service in ~/.config/systemd/user, then:
#   systemctl --user enable --now vivary.service
#   loginctl enable-linger    # so that it runs while nobody is signed in
[Unit]
Description=vivary: care calendars and pages of %s
After=network-online.target
Wants=network-online.target

[Service]
ExecStart=%s
Restart=on-failure
RestartSec=5
UMask=0077
NoNewPrivileges=true

[Install]
WantedBy=default.target
`, strings.ReplaceAll(filepath.Base(root), "%", "%%"), strings.Join(line, " "))
	return fine
}

// unitQuoted is a word of a command line in a unit (systemd.service, "Command lines").
func unitQuoted(s string) string {
	s = strings.NewReplacer(`\`, `\\`, `"`, `\"`, "%", "%%", "$", "$$").Replace(s)
	if strings.ContainsAny(s, " \t'\";") {
		return `"` + s + `"`
	}
	return s
}
