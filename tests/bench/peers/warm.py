"""Stays loaded and does a job once for every line that comes in; talks JSON, a line each."""

import json
import sys
import time


def say(answer):
    print(json.dumps(answer), flush=True)


def lacking(cause, install="tests/outside/peers/install"):
    """Tells that a library cannot be loaded and what would install it."""
    say({"lacking": " ".join(str(cause).split())[:120], "install": install})
    sys.exit()


def serve(peer, job):
    """Answers with the name, then with the seconds of each run and what came of it."""
    say({"peer": peer})
    for _ in sys.stdin:
        start = time.perf_counter()
        made = job()
        say({"seconds": time.perf_counter() - start, "made": made})
