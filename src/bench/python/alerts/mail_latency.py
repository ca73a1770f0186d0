"""Files strikes at a steady rate and measures how long after the answer each mail was taken by the mail server.

Run from the project folder after `mvn package`:

    python3 src/bench/python/alerts/mail_latency.py --rate 20 --seconds 60
"""

import argparse
import random
import threading
import time
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import rig


def main():
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--jar", default="target/quarkus-app/quarkus-run.jar")
    options.add_argument("--port", type=int, default=18090)
    options.add_argument("--rate", type=float, default=20)
    options.add_argument("--seconds", type=float, default=60)
    chosen = options.parse_args()
    mails = rig.MailServer()
    service = rig.Service(Path(chosen.jar).resolve(), chosen.port, mails.port)
    print(f"started in {service.start():.1f} s")
    units = service.units()
    for unit in units[:40]:
        service.strike(unit)
    answered, failed = load(service, units, chosen)
    service.await_all_sent()
    service.stop()
    report(answered, failed, mails.snapshot())


def load(service, units, chosen):
    answered, failed, lock = {}, [], threading.Lock()

    def one():
        try:
            task = service.strike(random.choice(units))
        except OSError as error:
            failed.append(error)
            return
        with lock:
            answered[task] = time.monotonic()

    begun = time.monotonic()
    with ThreadPoolExecutor(16) as pool:
        for number in range(int(chosen.rate * chosen.seconds)):
            time.sleep(max(0, begun + number / chosen.rate - time.monotonic()))
            pool.submit(one)
    print(f"{len(answered)} strikes in {time.monotonic() - begun:.1f} s, {len(failed)} failed")
    return answered, failed


def report(answered, failed, taken):
    waits = sorted(max(0.0, at - answered[task]) for at, _, _, task in taken if task in answered)
    if failed or not waits:
        raise SystemExit(f"{len(failed)} strikes failed, {len(waits)} mails measured")
    for share in (0.5, 0.9, 0.99, 1):
        print(f"{share:>5.0%} of {len(waits)} mails within {waits[int(share * (len(waits) - 1))] * 1000:.0f} ms")


if __name__ == "__main__":
    main()
