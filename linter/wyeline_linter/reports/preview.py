"""A live page on this machine: the diagram, the tables and the findings of a model, renewed when it changes.

Only a browser of this machine that was given the address gets an answer: the server listens on loopback alone, every
path begins with a random token, the ``Host`` must be the one that was handed out (so a foreign name that resolves to
loopback is refused), and an ``Origin``, where a browser sends one, must be this page's own.
"""

from __future__ import annotations

import contextlib
import hmac
import os
import queue
import secrets
import socket
import threading
from collections.abc import Callable
from http import HTTPStatus
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from typing import Any

MOST_LISTENERS = 16
_BODY_LIMIT = 4096
_BEAT_S = 15.0
_END = ""
ELSEWHERE = (
    "Refused: the live page answers a browser at 127.0.0.1:{port} or localhost:{port} alone. From another machine, "
    "forward that port under the same number and open the address that the editor or `wyeline preview` names."
)
"""Said to who asks by another name or port, as through an editor's proxy."""


class Preview:
    """The server. ``page`` makes the whole page, ``edition`` the part that changes; both are asked when a browser
    asks, so nothing is drawn that nobody looks at. ``selected`` hears ``file:line`` of what is chosen on the page.
    """

    def __init__(
        self,
        page: Callable[[], str],
        edition: Callable[[], str],
        selected: Callable[[str], None] = lambda _: None,
        port: int = 0,
    ) -> None:
        self.page, self.edition, self.selected = page, edition, selected
        self.token = secrets.token_urlsafe(24)
        self._listeners: set[queue.Queue[str]] = set()
        self._lock = threading.Lock()
        self._server = _Server(("127.0.0.1", port), _Handler, self)
        self.port = int(self._server.server_address[1])

    @property
    def origin(self) -> str:
        return f"http://127.0.0.1:{self.port}"

    @property
    def address(self) -> str:
        """What to open in a browser."""
        return f"{self.origin}/{self.token}/"

    def start(self) -> None:
        """Serve in a thread of its own."""
        threading.Thread(target=self._server.serve_forever, args=(0.1,), name="preview", daemon=True).start()

    def close(self) -> None:
        """Stop serving; open pages say so."""
        self._tell(_END)
        self._server.shutdown()
        self._server.server_close()
        self._server.hang_up()

    def changed(self) -> None:
        """Tell every open page that there is a new edition, or a reason why there is none."""
        self._tell("edition")

    def _tell(self, event: str) -> None:
        with self._lock:
            for listener in self._listeners:
                listener.put(event)

    def listen(self) -> queue.Queue[str] | None:
        """A queue of events for one page; None where too many listen."""
        with self._lock:
            if len(self._listeners) >= MOST_LISTENERS:
                return None
            made: queue.Queue[str] = queue.Queue()
            self._listeners.add(made)
            return made

    def leave(self, listener: queue.Queue[str]) -> None:
        with self._lock:
            self._listeners.discard(listener)


class _Server(ThreadingHTTPServer):
    daemon_threads = True
    allow_reuse_address = os.name == "posix"  # elsewhere it would let another program listen on the same port

    def __init__(self, address: tuple[str, int], handler: type[BaseHTTPRequestHandler], preview: Preview) -> None:
        super().__init__(address, handler)
        self.preview = preview
        self._connections: set[socket.socket] = set()

    def process_request(self, request: Any, client_address: Any) -> None:
        self._connections.add(request)
        super().process_request(request, client_address)

    def shutdown_request(self, request: Any) -> None:
        self._connections.discard(request)
        super().shutdown_request(request)

    def hang_up(self) -> None:
        """End the connections that browsers keep open, and with them their threads."""
        for connection in tuple(self._connections):
            with contextlib.suppress(OSError):
                connection.shutdown(socket.SHUT_RDWR)

    def handle_error(self, request: Any, client_address: Any) -> None:
        """A browser that goes away in the middle is no fault."""


class _Handler(BaseHTTPRequestHandler):
    server: _Server
    protocol_version = "HTTP/1.1"
    server_version = "wyeline"
    sys_version = ""
    timeout = 60

    def log_message(self, format: str, *args: Any) -> None:
        """Nothing is logged: a path holds the token."""

    def do_GET(self) -> None:
        preview = self.server.preview
        wanted = self._wanted()
        if wanted == "":
            self._answer(preview.page)
        elif wanted == "edition":
            self._answer(preview.edition)
        elif wanted == "events":
            self._events()
        elif wanted is not None:
            self._refuse(HTTPStatus.NOT_FOUND)

    def do_POST(self) -> None:
        wanted = self._wanted()
        if wanted is None:
            return
        length = self.headers.get("Content-Length", "")
        if wanted != "select" or self.headers.get("Origin") is None:
            self._refuse(HTTPStatus.NOT_FOUND)
        elif not length.isdigit() or int(length) > _BODY_LIMIT:
            self._refuse(HTTPStatus.REQUEST_ENTITY_TOO_LARGE)
        else:
            text = self.rfile.read(int(length)).decode("utf-8", "replace")
            self.server.preview.selected("".join(c for c in text if c.isprintable()))
            self._send(HTTPStatus.OK, "", "text/plain")

    def _wanted(self) -> str | None:
        """The path behind the token; None where the request is refused already."""
        preview = self.server.preview
        own = (f"127.0.0.1:{preview.port}", f"localhost:{preview.port}")
        origin = self.headers.get("Origin")
        hosts = self.headers.get_all("Host") or []
        if len(hosts) != 1 or hosts[0] not in own or (origin is not None and origin != f"http://{hosts[0]}"):
            self._refuse(HTTPStatus.FORBIDDEN, ELSEWHERE.format(port=preview.port))
            return None
        _, token, *rest = [*self.path.split("?")[0].split("/"), ""]
        if not hmac.compare_digest(token.encode(), preview.token.encode()):
            self._refuse(HTTPStatus.FORBIDDEN)
            return None
        return "/".join(rest).rstrip("/")

    def _refuse(self, status: HTTPStatus, why: str = "") -> None:
        self.close_connection = True
        self._send(status, why or status.phrase, "text/plain")

    def _answer(self, make: Callable[[], str]) -> None:
        try:
            text = make()
        except Exception as trouble:
            self._send(HTTPStatus.SERVICE_UNAVAILABLE, str(trouble), "text/plain")
            return
        self._send(HTTPStatus.OK, text, "text/html")

    def _head(self, status: HTTPStatus, kind: str) -> None:
        self.send_response(status)
        self.send_header("Content-Type", f"{kind}; charset=utf-8")
        self.send_header("Cache-Control", "no-store")
        self.send_header("X-Content-Type-Options", "nosniff")
        self.send_header("X-Frame-Options", "DENY")
        self.send_header("Referrer-Policy", "no-referrer")
        self.send_header("Cross-Origin-Resource-Policy", "same-origin")
        self.send_header("Cross-Origin-Opener-Policy", "same-origin")

    def _send(self, status: HTTPStatus, text: str, kind: str) -> None:
        data = text.encode()
        self._head(status, kind)
        self.send_header("Content-Length", str(len(data)))
        self.end_headers()
        self.wfile.write(data)

    def _events(self) -> None:
        listener = self.server.preview.listen()
        if listener is None:
            self._refuse(HTTPStatus.SERVICE_UNAVAILABLE)
            return
        self.close_connection = True
        try:
            self._head(HTTPStatus.OK, "text/event-stream")
            self.end_headers()
            self.wfile.write(b": listening\n\n")
            while True:
                try:
                    event = listener.get(timeout=_BEAT_S)
                except queue.Empty:
                    self.wfile.write(b": beat\n\n")
                    continue
                if event == _END:
                    return
                self.wfile.write(f"event: {event}\ndata:\n\n".encode())
        except OSError:
            return
        finally:
            self.server.preview.leave(listener)
