"""A packaged Lapwing under a script's control, and a mail server that writes down what it takes and when."""

import base64
import email
import email.policy
import json
import re
import shutil
import signal
import socketserver
import subprocess
import tempfile
import threading
import time
import urllib.error
import urllib.request
from datetime import datetime, timedelta, timezone
from pathlib import Path

TASK_LINK = re.compile(r"/tasks/([0-9a-f-]{36})")
NOTE = "scraped the top along an oak limb at the site"


class MailServer:
    """Takes every mail at once and keeps (time, Message-ID, recipient, task)."""

    def __init__(self):
        self.taken = []
        self.lock = threading.Lock()
        rig = self

        class Talk(socketserver.StreamRequestHandler):
            def handle(self):
                rig.talk(self)

        socketserver.ThreadingTCPServer.allow_reuse_address = True
        socketserver.ThreadingTCPServer.daemon_threads = True
        self.server = socketserver.ThreadingTCPServer(("127.0.0.1", 0), Talk)
        self.port = self.server.server_address[1]
        threading.Thread(target=self.server.serve_forever, daemon=True).start()

    def talk(self, call):
        def say(line):
            call.wfile.write(line + b"\r\n")

        recipient = ""
        try:
            say(b"220 rig")
            while line := call.rfile.readline().strip():
                if line.startswith(b"RCPT"):
                    recipient = line[line.index(b"<") + 1 : line.index(b">")].decode()
                if line == b"DATA":
                    say(b"354 go on")
                    body = b""
                    while (text := call.rfile.readline()) not in (b".\r\n", b""):
                        body += text
                    if text == b"":
                        return
                    self.take(body, recipient)
                    say(b"250 taken")
                elif line == b"QUIT":
                    say(b"221 bye")
                    return
                else:
                    say(b"250 ok")
        except OSError:
            return

    def take(self, body, recipient):
        at = time.monotonic()
        mail = email.message_from_bytes(body, policy=email.policy.default)
        text = mail.get_body(("plain",)).get_content()
        link = TASK_LINK.search(text)
        with self.lock:
            self.taken.append((at, mail["Message-ID"], recipient, link and link.group(1)))

    def snapshot(self):
        with self.lock:
            return list(self.taken)


class Service:
    """The packaged service on a data folder of its own."""

    def __init__(self, jar, port, mail_port, home=None):
        self.home = home or Path(tempfile.mkdtemp(prefix="lapwing-bench-"))
        self.url = f"http://127.0.0.1:{port}"
        root = Path(__file__).resolve().parents[4]
        shared = self.home / "shared"
        if not shared.exists():
            shutil.copytree(root / "shared", shared)
        settings = {
            "quarkus.http.port": port,
            "lapwing.demo": "true",
            "lapwing.mail.transport": "smtp",
            "lapwing.mail.smtp.host": "127.0.0.1",
            "lapwing.mail.smtp.port": mail_port,
            "lapwing.mail.smtp.tls": "none",
        }
        self.command = ["java", "-Xmx1g"] + [f"-D{k}={v}" for k, v in settings.items()] + ["-jar", str(jar)]

    def start(self, limit=900):
        self.log = open(self.home / "service.log", "ab")
        self.process = subprocess.Popen(self.command, cwd=self.home, stdout=self.log, stderr=self.log)
        begun = time.monotonic()
        while time.monotonic() - begun < limit:
            if self.process.poll() is not None:
                raise SystemExit(f"the service ended at start; see {self.home}/service.log")
            try:
                self.call("GET", "/api/outbox?limit=1", user="coordinator")
                return time.monotonic() - begun
            except OSError:
                time.sleep(0.2)
        raise SystemExit("the service did not come up")

    def kill(self):
        self.process.send_signal(signal.SIGKILL)
        self.process.wait()

    def stop(self):
        self.process.terminate()
        self.process.wait()

    def call(self, method, path, body=None, user="desk", key=None):
        request = urllib.request.Request(self.url + path, method=method)
        request.add_header("Authorization", "Basic " + base64.b64encode(f"{user}:halden".encode()).decode())
        if key:
            request.add_header("Idempotency-Key", key)
        if body is not None:
            request.add_header("Content-Type", "application/json")
            request.data = json.dumps(body).encode()
        with urllib.request.urlopen(request, timeout=30) as answer:
            return json.load(answer)

    def units(self):
        return [unit["number"] for unit in self.call("GET", "/api/units?limit=500")["items"]]

    def strike(self, unit):
        """Files a report of contact; returns the id of the inspection it opened."""
        returned = datetime.now(timezone.utc) - timedelta(minutes=1)
        report = {"unit": unit, "returnedAt": returned.isoformat(timespec="seconds"), "note": NOTE}
        return self.call("POST", "/api/return-reports", report)["task"]["id"]

    def unsent(self):
        states = ("waiting", "failed", "given-up")
        return sum(
            self.call("GET", f"/api/outbox?limit=1&state={state}", user="coordinator")["total"] for state in states
        )

    def await_all_sent(self, limit=300):
        begun = time.monotonic()
        while self.unsent():
            if time.monotonic() - begun > limit:
                raise SystemExit(f"{self.unsent()} mails did not go within {limit} s")
            time.sleep(0.5)
