"""Works out again what compile/readings makes of a file: the time constant, in minutes, of a fall
towards a room, and the hours and degree-hours above a limit. Called as
    readings.py FILE ROOM LIMIT
It shares no code with the program: least squares by statistics.linear_regression of the standard
library, integrals by small pieces of straight lines."""
import csv
import datetime
import math
import statistics
import sys

rows = list(csv.reader(open(sys.argv[1])))[1:]
room, limit = float(sys.argv[2]), float(sys.argv[3])
t = [datetime.datetime.fromisoformat(r[0]).timestamp() / 60 for r in rows]
v = [float(r[1]) for r in rows]
t = [x - t[0] for x in t]
use = [(a, math.log(b - room)) for a, b in zip(t, v) if b - room >= 2]
slope = statistics.linear_regression([a for a, _ in use], [b for _, b in use]).slope
hours = degrees = 0.0
for a, b, x, y in zip(t, t[1:], v, v[1:]):
    pieces = 5000
    for k in range(pieces):
        over = x + (y - x) * (k + 0.5) / pieces - limit
        if over > 0:
            hours += (b - a) / 60 / pieces
            degrees += over * (b - a) / 60 / pieces
print(-1 / slope, hours, degrees)
