"""A server of the real program for a test, and what the page would ask it."""
import http.client
import json
import os
import re
import shutil
import signal
import subprocess
import tempfile
import urllib.parse


class Serving:
    """In `folder`, which stays; started anew by another of the same folder."""

    def __init__(self, program, folder, env=None):
        self.place = tempfile.mkdtemp()  # for what the server keeps while it runs
        self.process = subprocess.Popen(
            [program, "serve", "--no-browser"], cwd=folder, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL,
            text=True, env={**os.environ, "TMPDIR": self.place, **(env or {})})
        found = re.search(r"http://127\.0\.0\.1:(\d+)/#([0-9a-f]{48})", self.process.stdout.readline())
        if not found:
            raise SystemExit("brimwright serve does not start")
        self.port, self.key = int(found[1]), found[2]

    def ask(self, method, path, body=None, timeout=60):
        """The status and what the answer's JSON says."""
        connection = http.client.HTTPConnection("127.0.0.1", self.port, timeout=timeout)
        connection.request(method, path, None if body is None else json.dumps(body).encode(), {"X-Bench-Key": self.key})
        answer = connection.getresponse()
        content = answer.read()
        connection.close()
        return answer.status, json.loads(content)

    def get(self, path, **query):
        return self.ask("GET", f"{path}?{urllib.parse.urlencode(query, quote_via=urllib.parse.quote)}")

    def post(self, path, **body):
        return self.ask("POST", path, body)

    def kill(self):
        self.process.kill()
        self.process.communicate()
        shutil.rmtree(self.place, ignore_errors=True)

    def end(self):
        self.process.send_signal(signal.SIGTERM)
        self.process.communicate(timeout=30)
        shutil.rmtree(self.place, ignore_errors=True)
