"""The real server, started as a maker starts it: one line with the address, the browser opened without
a shell, the command line's own bytes, and an end that leaves nothing behind even in the middle of work."""
import http.client
import json
import os
import re
import select
import shutil
import signal
import socket
import stat
import struct
import subprocess
import sys
import tempfile
import threading
import time

root, program = sys.argv[1:3]
failures = []


def check(condition, what):
    if not condition:
        failures.append(what)


class Serving:
    def __init__(self, *words, env=None):
        self.folder = tempfile.mkdtemp()
        self.place = tempfile.mkdtemp()  # for what the server keeps while it runs
        self.process = subprocess.Popen(
            [program, "serve", *words], cwd=self.folder, stdout=subprocess.PIPE, stderr=subprocess.PIPE,
            text=True, env={**os.environ, "TMPDIR": self.place, **(env or {})})
        said = select.select([self.process.stdout], [], [], 60)[0]
        self.line = self.process.stdout.readline() if said else ""
        found = re.fullmatch(
            r"Brimwright is running at (http://127\.0\.0\.1:(\d+)/#([0-9a-f]{48}))  \(Ctrl\+C stops it\)\n", self.line)
        if not found:
            self.process.kill()  # or its other words would be waited for until it ends by itself
            raise SystemExit(f"serve said {self.line!r} {self.process.communicate()[1]!r}")
        self.address, self.port, self.key = found[1], int(found[2]), found[3]

    def ask(self, method, path, body=None, timeout=60):
        connection = http.client.HTTPConnection("127.0.0.1", self.port, timeout=timeout)
        if body is not None and not isinstance(body, bytes):
            body = json.dumps(body).encode()
        connection.request(method, path, body, {"X-Bench-Key": self.key})
        answer = connection.getresponse()
        content = answer.read()
        connection.close()
        return answer.status, content

    def end(self, what, signals=(signal.SIGTERM,), within=3.5):
        start = time.monotonic()
        for each in signals:
            self.process.send_signal(each)
        out, err = self.process.communicate(timeout=30)
        check(self.process.returncode == 0, f"{what}: exit {self.process.returncode}")
        check(time.monotonic() - start < within, f"{what}: took {time.monotonic() - start:.1f} s to stop")
        check(out == "" and err == "", f"{what}: also said {out!r} {err!r}")
        check(os.listdir(self.place) == [], f"{what}: left {os.listdir(self.place)} behind")
        shutil.rmtree(self.folder)
        shutil.rmtree(self.place)


def printed(*words, cwd=root):
    return subprocess.run([program, *words, "--json"], cwd=cwd, capture_output=True, timeout=60).stdout


# The same bytes; in the folder of the run that was named.
serving = Serving("--no-browser")
for run in "spring_cups", "plain_bars", "tray_cups":
    status, body = serving.ask("POST", "/api/plan", {"file": f"examples/{run}.run.json"})
    check(status == 200 and body == printed("plan", os.path.realpath(f"{root}/examples/{run}.run.json")),
          f"{run}: the page is told other bytes than the command line prints")
spring = os.path.realpath(f"{root}/examples/spring_cups.run.json")
for asked, words in (True, []), ("pour.make_g", ["pour.make_g"]):
    status, body = serving.ask("POST", "/api/plan", {"file": "examples/spring_cups.run.json", "explain": asked})
    check(status == 200 and body == printed("plan", spring, "--explain", *words), f"explain {asked}: other bytes than the command line's")
status, body = serving.ask("POST", "/api/gauge", {"file": "moulds/low_bowl.json", "depth": ["10 mm"], "batches-of": "moulds/low_bowl.json"})
check(body == printed("gauge", os.path.realpath(f"{root}/moulds/low_bowl.json"), "--depth", "10 mm"),
      "gauge: other bytes than the command line's")
status, body = serving.ask("GET", "/api/files")
check(json.loads(body)["folder"] == os.path.realpath(serving.folder), "not the current folder")

# On this computer alone: the loopback address and no other.
with open("/proc/net/tcp") as table:
    listening = [line.split()[1] for line in table if line.split()[3] == "0A"]
check(f"0100007F:{serving.port:04X}" in listening, "does not listen on 127.0.0.1")
check(f"00000000:{serving.port:04X}" not in listening, "listens on every address")

taken = subprocess.run([program, "serve", "--no-browser", "--port", str(serving.port)], capture_output=True,
                       text=True, timeout=20)
check(taken.returncode == 1 and taken.stderr.count("\n") == 1 and "--port" in taken.stderr,
      f"a taken port: {taken.returncode} {taken.stderr!r}")
serving.end("SIGTERM")
for words, said in ((["nowhere.run.json"], "nowhere.run.json"), (["--port", "70000"], "--port"),
                    (["--library"], "--library"), (["--address", "0.0.0.0"], "--address")):
    refused = subprocess.run([program, "serve", "--no-browser", *words], capture_output=True, text=True, timeout=20)
    check(refused.returncode == 1 and said in refused.stderr and refused.stderr.count("\n") == 1,
          f"serve {words}: {refused.returncode} {refused.stderr!r}")

# The browser is started with the address as one word, however the program is called.
browser_folder = tempfile.mkdtemp()
browser = os.path.join(browser_folder, "my browser; touch broken")
told = os.path.join(browser_folder, "told")
with open(browser, "w") as file:
    file.write(f'#!/bin/sh\nls -l /proc/self/fd > "{told}.fds"\necho "$# $1" > "{told}"\n')
os.chmod(browser, os.stat(browser).st_mode | stat.S_IXUSR)
serving = Serving(env={"BROWSER": browser})
for _ in range(100):
    if os.path.exists(told) and os.path.getsize(told):
        break
    time.sleep(0.05)
with open(told) as file:
    check(file.read() == f"1 {serving.address}\n", "the browser is not told the address")
with open(f"{told}.fds") as file:
    check("socket:" not in file.read(), "the browser inherits a socket")
check(sorted(os.listdir(browser_folder)) == sorted(["my browser; touch broken", "told", "told.fds"]),
      "a shell read the browser's name")
serving.end("with a browser, SIGINT", (signal.SIGINT,))
shutil.rmtree(browser_folder)
Serving(env={"BROWSER": "/no/such/browser"}).end("without a browser, SIGHUP", (signal.SIGHUP,))


def many_solids(count):
    """Tetrahedra far apart, as a binary STL: sound, but slow to sort out. More than 20,000 are refused at once."""
    facets = bytearray()
    for i in range(count):
        x, y, z = 3.0 * (i % 100), 3.0 * (i // 100 % 100), 3.0 * (i // 10000)
        a, b, c, d = ((x, y, z), (x + 1, y, z), (x, y + 1, z), (x, y, z + 1))
        for face in ((a, c, b), (a, b, d), (a, d, c), (b, c, d)):
            facets += struct.pack("<12fH", 0, 0, 0, *face[0], *face[1], *face[2], 0)
    return bytes(80) + struct.pack("<I", 4 * count) + bytes(facets)


def children(process):
    """The processes that `process` started and that still run: the fields after the name in proc(5)."""
    found = []
    for name in filter(str.isdigit, os.listdir("/proc")):
        try:
            with open(f"/proc/{name}/stat") as file:
                state, parent = file.read().rpartition(")")[2].split()[:2]
        except OSError:
            continue
        if int(parent) == process and state not in "ZX":
            found.append(int(name))
    return found


def measured(server, file):
    try:
        server.ask("POST", "/api/gauge", {"file": file, "unit": "mm", "role": "cavity"})
        answered.append(time.monotonic())
    except (OSError, http.client.HTTPException):
        pass


def runs(process):
    try:
        with open(f"/proc/{process}/stat") as file:
            return file.read().rpartition(")")[2].split()[0] not in "ZX"
    except OSError:
        return False


# The worker is nothing to type, and no help shows it.
for given in (subprocess.DEVNULL, subprocess.PIPE):
    typed = subprocess.run([program, "serve-worker"], stdin=given, capture_output=True, text=True, timeout=20)
    check(typed.returncode == 1 and typed.stdout == "" and typed.stderr.count("\n") == 1 and "serve" in typed.stderr,
          f"serve-worker typed: {typed.returncode} {typed.stderr!r}")
ours, theirs = socket.socketpair()
typed = subprocess.run(["sh", "-c", f'"{program}" serve-worker 3<&{theirs.fileno()}; exit $?'],
                       pass_fds=(theirs.fileno(),), capture_output=True, text=True, timeout=20)
check(typed.returncode == 1 and typed.stderr.count("\n") == 1, f"a stranger's socket: {typed.returncode} {typed.stderr!r}")
ours.close()
theirs.close()
shown = subprocess.run([program, "--help"], capture_output=True, text=True, timeout=20).stdout
check("serve" in shown and "worker" not in shown, "--help shows the worker")

# A worker killed from outside: told on standard error, and the next answer comes from another. It starts with
# nothing of the server's but what it was given, and Ctrl+C at the terminal is the server's to act on.
serving = Serving("--no-browser")
status, body = serving.ask("POST", "/api/plan", {"file": "examples/plain_bars.run.json"})
(worker,) = children(serving.process.pid)
opened = [os.readlink(f"/proc/{worker}/fd/{number}") for number in os.listdir(f"/proc/{worker}/fd")]
check(sum(name.startswith("socket:") for name in opened) == 1, f"the worker has {opened} open")
for each in signal.SIGINT, signal.SIGHUP, signal.SIGTERM:
    os.kill(worker, each)
check(serving.ask("POST", "/api/plan", {"file": "examples/plain_bars.run.json"}) == (status, body) and runs(worker),
      "a signal to everybody at the terminal ends the worker before its server")
os.kill(worker, signal.SIGKILL)
check(serving.ask("POST", "/api/plan", {"file": "examples/plain_bars.run.json"}) == (status, body),
      "no answer after the worker's death")
serving.process.send_signal(signal.SIGTERM)
out, err = serving.process.communicate(timeout=30)
check(serving.process.returncode == 0 and err.count("\n") == 1 and "signal 9" in err, f"the worker's death: {err!r}")
check(os.listdir(serving.place) == [], "left behind after a worker's death")

# The server killed: its worker does not outlive it, whatever it is doing.
answered = []
serving = Serving("--no-browser")
status, body = serving.ask("POST", "/api/mesh?name=many.stl", many_solids(19_000))
(worker,) = children(serving.process.pid)
waiting = threading.Thread(target=measured, args=(serving, json.loads(body)["file"]))
waiting.start()
time.sleep(0.2)
serving.process.kill()
serving.process.communicate(timeout=30)
waiting.join()
for _ in range(100):
    if not runs(worker):
        break
    time.sleep(0.02)
check(not runs(worker), "the worker outlives its server")
for left in os.listdir(serving.place):  # as though it had been long ago
    os.utime(os.path.join(serving.place, left), (0, 0))
Serving("--no-browser", env={"TMPDIR": serving.place}).end("after one that was killed")
check(os.listdir(serving.place) == [], f"a killed server's {os.listdir(serving.place)} stays for good")
shutil.rmtree(serving.place)

# Stopped in the middle of an upload, of a wait, and of a measurement that takes longer than the grace.
serving = Serving("--no-browser")
status, body = serving.ask("POST", "/api/mesh?name=many.stl", many_solids(19_000))
check(status == 200, f"the large mesh: {status} {body[:200]}")
upload = socket.create_connection(("127.0.0.1", serving.port))
upload.sendall(f"POST /api/mesh?name=half.stl HTTP/1.1\r\nHost: 127.0.0.1:{serving.port}\r\n"
               f"X-Bench-Key: {serving.key}\r\nContent-Length: 1000000\r\n\r\nhalf".encode())


answered = []
waiting = threading.Thread(target=measured, args=(serving, json.loads(body)["file"]))
waiting.start()
time.sleep(0.5)
check(not answered, "the measurement was too quick to be stopped in its middle")
serving.end("in the middle of everything, twice", (signal.SIGINT, signal.SIGINT))
waiting.join()
upload.close()

if failures:
    print("\n".join(failures))
    sys.exit(1)
print("serve starts, answers and stops")
