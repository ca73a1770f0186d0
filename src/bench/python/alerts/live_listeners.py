"""Has many listeners hear strikes over server-sent events: time to deliver, memory, and no gap over a reconnect.

Run from the project folder after `mvn package`:

    python3 src/bench/python/alerts/live_listeners.py --listeners 1000 --strikes 60 --rate 2

Each listener is a connection of its own. Half way all of them are cut and come back with Last-Event-ID. Some never
read, to show what they cost the others.
"""

import argparse
import asyncio
import json
import random
import resource
import time
import urllib.parse
import urllib.request
from pathlib import Path

import rig


class Listener:
    def __init__(self, number, port, cookie):
        self.number, self.port, self.cookie = number, port, cookie
        self.heard = {}
        self.times_heard = 0
        self.last_id = None
        self.writer = None

    async def connect(self, reads=True):
        reader, self.writer = await asyncio.open_connection("127.0.0.1", self.port, limit=2**16)
        seen = f"Last-Event-ID: {self.last_id}\r\n" if self.last_id else ""
        self.writer.write(
            f"GET /api/live HTTP/1.1\r\nHost: 127.0.0.1:{self.port}\r\nCookie: {self.cookie}\r\n{seen}\r\n".encode()
        )
        status = await reader.readline()
        if b" 200 " not in status:
            raise SystemExit(f"listener {self.number} was answered {status!r}")
        if reads:
            self.task = asyncio.create_task(self.read(reader))
        else:
            self.writer.transport.pause_reading()

    async def read(self, reader):
        event_id = None
        while line := await reader.readline():
            now = time.monotonic()
            if line.startswith(b"id:"):
                event_id = line[3:].strip().decode()
                self.last_id = event_id
            elif line.startswith(b"data:"):
                self.times_heard += 1
                told = json.loads(line[5:])
                if told["kind"] == "strike":
                    self.heard[told["task"]] = now

    def cut(self):
        self.task.cancel()
        self.writer.transport.abort()


def sign_in(url):
    class NoRedirect(urllib.request.HTTPRedirectHandler):
        def redirect_request(self, *unused):
            return None

    form = urllib.parse.urlencode({"username": "coordinator", "password": "halden", "next": "/"}).encode()
    try:
        urllib.request.build_opener(NoRedirect).open(url + "/sign-in", form)
    except urllib.error.HTTPError as redirect:
        return redirect.headers["Set-Cookie"].split(";")[0]
    raise SystemExit("the sign-in did not lead on")


def state_of(process):
    fields = dict(line.split(":", 1) for line in Path(f"/proc/{process.pid}/status").read_text().splitlines())
    return int(fields["VmRSS"].split()[0]) / 1024, int(fields["Threads"])


def cpu_of(process):
    fields = Path(f"/proc/{process.pid}/stat").read_text().rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / 100


async def open_all(listeners, at_a_time=50):
    for start in range(0, len(listeners), at_a_time):
        await asyncio.gather(*(listener.connect() for listener in listeners[start : start + at_a_time]))


async def strikes(service, units, count, rate, answered):
    loop = asyncio.get_running_loop()

    def one():
        task = service.strike(random.choice(units))
        answered[task] = time.monotonic()

    begun = time.monotonic()
    calls = []
    for number in range(count):
        await asyncio.sleep(max(0, begun + number / rate - time.monotonic()))
        calls.append(loop.run_in_executor(None, one))
    await asyncio.gather(*calls)


async def all_heard(listeners, answered, limit=60):
    deadline = time.monotonic() + limit
    while time.monotonic() < deadline:
        if all(len(listener.heard) >= len(answered) for listener in listeners):
            return
        await asyncio.sleep(0.2)


async def run(service, chosen):
    cookie = sign_in(service.url)
    units = service.units()
    for unit in units[:40]:
        service.strike(unit)
    before, threads_before = state_of(service.process)
    listeners = [Listener(number, chosen.port, cookie) for number in range(chosen.listeners)]
    deaf = [Listener(-number, chosen.port, cookie) for number in range(1, chosen.deaf + 1)]
    begun = time.monotonic()
    await open_all(listeners)
    for one in deaf:
        await one.connect(reads=False)
    print(f"{len(listeners)} listeners and {len(deaf)} that never read, connected in {time.monotonic() - begun:.1f} s")
    answered, cpu = {}, cpu_of(service.process)
    begun = time.monotonic()
    await strikes(service, units, chosen.strikes, chosen.rate, answered)
    await all_heard(listeners, answered)
    after, threads_after = state_of(service.process)
    print(f"service: {before:.0f} MB and {threads_before} threads before, {after:.0f} MB and {threads_after} threads after")
    print(f"CPU of the service: {cpu_of(service.process) - cpu:.1f} s in {time.monotonic() - begun:.1f} s")
    waits(listeners, answered)
    await gap(service, units, listeners, answered, chosen)


def waits(listeners, answered):
    found = sorted(at - answered[task] for one in listeners for task, at in one.heard.items() if task in answered)
    print(f"strikes: {len(answered)}; heard: {len(found)} of {len(answered) * len(listeners)}")
    for share in (0.5, 0.9, 0.99, 1):
        print(f"{share:>5.0%} heard within {found[int(share * (len(found) - 1))] * 1000:.0f} ms after the answer")


async def gap(service, units, listeners, answered, chosen):
    for one in listeners:
        one.cut()
    await strikes(service, units, 10, chosen.rate, answered)
    begun = time.monotonic()
    await open_all(listeners)
    await all_heard(listeners, answered)
    missing = sum(1 for one in listeners for task in answered if task not in one.heard)
    print(f"cut and back in {time.monotonic() - begun:.1f} s: {missing} strikes not heard, of 10 filed meanwhile")
    raise SystemExit(1 if missing else 0)


def main():
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--jar", default="target/quarkus-app/quarkus-run.jar")
    options.add_argument("--port", type=int, default=18091)
    options.add_argument("--listeners", type=int, default=1000)
    options.add_argument("--deaf", type=int, default=20)
    options.add_argument("--strikes", type=int, default=60)
    options.add_argument("--rate", type=float, default=2)
    chosen = options.parse_args()
    resource.setrlimit(resource.RLIMIT_NOFILE, (resource.getrlimit(resource.RLIMIT_NOFILE)[1],) * 2)
    mails = rig.MailServer()
    service = rig.Service(Path(chosen.jar).resolve(), chosen.port, mails.port)
    service.start()
    try:
        asyncio.run(run(service, chosen))
    finally:
        service.stop()


if __name__ == "__main__":
    main()
