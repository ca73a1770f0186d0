"""Kills the service with SIGKILL at random moments under load and checks that every mail of an answered report came.

A mail may come twice, under the same Message-ID; it may never be missing, and never come under two.
Run from the project folder after `mvn package`:

    python3 src/bench/python/alerts/kill_test.py --kills 50
"""

import argparse
import collections
import random
import threading
import time
from pathlib import Path

import rig


def file_until(service, units, answered, stop, pause):
    while not stop.is_set():
        try:
            answered.append(service.strike(random.choice(units)))
        except OSError:
            time.sleep(0.05)
        time.sleep(pause)


def one_life(service, units, answered, seconds):
    stop = threading.Event()
    threads = [
        threading.Thread(target=file_until, args=(service, units, answered, stop, 0.02)) for _ in range(2)
    ]
    for thread in threads:
        thread.start()
    before = len(answered)
    deadline = time.monotonic() + 30
    while len(answered) == before and time.monotonic() < deadline:
        time.sleep(0.02)
    time.sleep(seconds)
    service.kill()
    stop.set()
    for thread in threads:
        thread.join()


def main():
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--jar", default="target/quarkus-app/quarkus-run.jar")
    options.add_argument("--port", type=int, default=18090)
    options.add_argument("--kills", type=int, default=50)
    options.add_argument("--minutes", type=float, default=120, help="no kill is begun after so long")
    options.add_argument("--seed", type=int, default=1)
    chosen = options.parse_args()
    random.seed(chosen.seed)
    mails = rig.MailServer()
    service = rig.Service(Path(chosen.jar).resolve(), chosen.port, mails.port)
    answered = []
    service.start()
    units = service.units()
    begun = time.monotonic()
    for kill in range(chosen.kills):
        if time.monotonic() - begun > chosen.minutes * 60:
            print(f"stopped after {chosen.minutes} minutes", flush=True)
            break
        one_life(service, units, answered, random.uniform(0.0, 3.0))
        print(f"kill {kill + 1}: {len(answered)} reports answered, {len(mails.snapshot())} mails arrived", flush=True)
        service.start()
    service.await_all_sent(limit=1800)
    service.stop()
    judge(answered, mails.snapshot())


def judge(answered, taken):
    by_task = collections.defaultdict(lambda: collections.defaultdict(set))
    for _, message_id, recipient, task in taken:
        by_task[task][recipient].add(message_id)
    missing = [task for task in answered if len(by_task[task]) < 2]
    doubled = [task for task in answered if any(len(ids) > 1 for ids in by_task[task].values())]
    again = len(taken) - len({message_id for _, message_id, _, _ in taken})
    print(f"reports answered: {len(answered)}; mails: {len(taken)}, of which {again} came again under their own id")
    print(f"reports with a mail missing: {len(missing)}; with a mail under two ids: {len(doubled)}")
    raise SystemExit(1 if missing or doubled else 0)


if __name__ == "__main__":
    main()
