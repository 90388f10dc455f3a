"""How much longer a command takes in one build than in another: both by turns, so that
what else the machine does meets both. The ratio of medians is what counts.

    python3 testdata/bench/pair.py OLD NEW 41 check --in examples/quillmoor --now 2027-03-01
"""
import resource
import statistics
import subprocess
import sys
import time


def run(binary, args):
    before, begun = resource.getrusage(resource.RUSAGE_CHILDREN), time.time()
    subprocess.run([binary] + args, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    return after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime, time.time() - begun


old, new, pairs, args = sys.argv[1], sys.argv[2], int(sys.argv[3]), sys.argv[4:]
taken = [(run(old, args), run(new, args)) for _ in range(pairs)]
for k, name in enumerate(("cpu", "wall")):
    a, b = (statistics.median(t[i][k] for t in taken) for i in (0, 1))
    print(f"{name}: {1000 * a:.1f} ms and {1000 * b:.1f} ms, ratio {b / a:.2f}")
