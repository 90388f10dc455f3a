"""Types into a shell as somebody at a terminal does: typed.py STEPS SHELL [ARGUMENT...].

STEPS is a list, as JSON, of pairs: what is typed, and an expression that what the shell
shows from then on must match before the next is typed. Fails, with all that was shown,
where it does not within a minute.
"""

import json
import os
import pty
import re
import select
import sys
import time

SHOWN_ONLY = re.compile(r"\x1b(\[[0-9;?]*[A-Za-z]|\][^\x07]*\x07|[()][0-9A-B]|[=>])|[\x00\x07\x0f]|.\x08")

steps = json.loads(sys.argv[1])
child, terminal = pty.fork()
if child == 0:
    os.execvp(sys.argv[2], sys.argv[2:])

shown = ""
for typed, wanted in steps:
    os.write(terminal, typed.encode())
    part, until = "", time.monotonic() + 60
    while not re.search(wanted, SHOWN_ONLY.sub("", part)):
        ready, _, _ = select.select([terminal], [], [], max(0, until - time.monotonic()))
        try:
            more = os.read(terminal, 65536) if ready else b""
        except OSError:
            more = b""
        if not more:
            sys.exit(f"after {typed!r} there is no {wanted!r}:\n{shown}{part}\n{part!r}")
        part += more.decode(errors="replace")
    shown += part
os.kill(child, 9)
