"""The wire: pygls's protocol without its two costs, typed objects for every message and its own copies of documents.

Messages stay plain dicts in and out. A thread reads ahead, so that a cancelled request is known to be cancelled before
it is begun, a long one can ask whether it still is wanted, and findings are published when no keystroke waits.
"""

from __future__ import annotations

import asyncio
import json
import logging
import threading
from collections import deque
from collections.abc import Iterator
from typing import TYPE_CHECKING, Any, BinaryIO

from pygls.protocol import JsonRPCRequestMessage, LanguageServerProtocol
from pygls.protocol.json_rpc import JsonRPCNotification

if TYPE_CHECKING:
    from concurrent.futures import Future

    from wyeline_server.server import WyelineServer

logger = logging.getLogger(__name__)

MAX_MESSAGE_BYTES = 256 * 1024 * 1024
_MAX_LENGTH_DIGITS = 18
_PORTION = 128 * 1024
PARSE_ERROR, INVALID_REQUEST, METHOD_NOT_FOUND, INVALID_PARAMS = -32700, -32600, -32601, -32602
NOT_INITIALIZED, CANCELLED, REQUEST_FAILED = -32002, -32800, -32803

TEXT_CHANGES = frozenset({"textDocument/didOpen", "textDocument/didChange", "textDocument/didClose"})


class RequestError(Exception):
    """A request is answered with this error; ``message`` is for people."""

    def __init__(self, code: int, message: str) -> None:
        super().__init__(message)
        self.code = code
        self.message = message


class RequestCancelledError(RequestError):
    """The client has taken its request back."""

    def __init__(self) -> None:
        super().__init__(CANCELLED, "the request was cancelled")


class BadParametersError(RequestError):
    """What the client sent with the request is no such thing as the protocol describes."""

    def __init__(self, what: str) -> None:
        super().__init__(INVALID_PARAMS, what)


class ReadyJson:
    """A result that is JSON already, in ASCII, in ``parts``: large answers are put together from pieces kept for each
    block, and are never held as one text."""

    __slots__ = ("parts",)

    def __init__(self, parts: list[str]) -> None:
        self.parts = parts

    def __str__(self) -> str:
        return "".join(self.parts)

    def __len__(self) -> int:
        return sum(map(len, self.parts))

    def portions(self) -> Iterator[str]:
        """The same in texts that are neither many nor large."""
        waiting: list[str] = []
        size = 0
        for part in self.parts:
            waiting.append(part)
            size += len(part)
            if size >= _PORTION:
                yield "".join(waiting)
                waiting.clear()
                size = 0
        yield "".join(waiting)


class Unreadable:
    """A message that is no JSON object; ``reason`` says why."""

    def __init__(self, reason: str) -> None:
        self.reason = reason


def framed(stream: BinaryIO) -> Iterator[bytes]:
    """The bodies of messages framed by ``Content-Length``; ends with the stream. Garbage between them is skipped."""
    while True:
        length = None
        while True:
            line = stream.readline(65_536)
            if not line:
                return
            if not line.strip():
                if length is not None:
                    break
                continue
            name, _, value = line.partition(b":")
            digits = value.strip()
            if name.strip().lower() == b"content-length" and digits.isdigit() and len(digits) <= _MAX_LENGTH_DIGITS:
                length = int(digits)
        if length > MAX_MESSAGE_BYTES:
            logger.error("a message of %d bytes was left out", length)
            while length > 0:
                piece = stream.read(min(length, 1 << 20))
                if not piece:
                    return
                length -= len(piece)
            continue
        body = stream.read(length)
        if len(body) < length:
            return
        yield body


class Inbox:
    """Messages read and not handled yet; filled by a thread of its own, emptied by the event loop."""

    def __init__(self) -> None:
        self.waiting: deque[dict[str, Any] | Unreadable] = deque()
        self.cancelled: set[str | int] = set()
        self.stopped_work: set[str | int] = set()
        self.closed = False
        self.change_came_s = 0.0
        """When the last news of documents, files or settings arrived, on the clock of the event loop."""
        self._loop: asyncio.AbstractEventLoop | None = None
        self._wake = asyncio.Event()

    def read_from(self, bodies: Iterator[bytes]) -> None:
        """Read in a thread until the stream ends. Call from the event loop that empties the box."""
        self._loop = asyncio.get_running_loop()
        threading.Thread(target=self._read, args=(bodies,), name="reader", daemon=True).start()

    def _read(self, bodies: Iterator[bytes]) -> None:
        try:
            for body in bodies:
                self._put(parse(body))
        except Exception:
            logger.exception("reading from the client failed")
        finally:
            self.closed = True
            self._ring()

    def _put(self, message: dict[str, Any] | Unreadable) -> None:
        if isinstance(message, dict):
            if self._loop is not None and (_changes_text(message) or _changes_workspace(message)):
                self.change_came_s = self._loop.time()
            params = message.get("params")
            if isinstance(params, dict):
                if message.get("method") == "$/cancelRequest" and isinstance(params.get("id"), str | int):
                    self.cancelled.add(params["id"])
                elif message.get("method") == "window/workDoneProgress/cancel":
                    token = params.get("token")
                    if isinstance(token, str | int):
                        self.stopped_work.add(token)
        self.waiting.append(message)
        self._ring()

    def _ring(self) -> None:
        if self._loop is not None and not self._loop.is_closed():
            self._loop.call_soon_threadsafe(self._wake.set)

    async def arrival(self) -> None:
        """Wait until something has arrived or the stream has ended."""
        if not self.waiting and not self.closed:
            self._wake.clear()
            if not self.waiting and not self.closed:
                await self._wake.wait()

    def text_waits(self) -> bool:
        """Whether a change of a document has arrived and is not handled yet."""
        return any(isinstance(message, dict) and _changes_text(message) for message in tuple(self.waiting))


def _changes_text(message: dict[str, Any]) -> bool:
    method = message.get("method")
    return isinstance(method, str) and method in TEXT_CHANGES


def _changes_workspace(message: dict[str, Any]) -> bool:
    return str(message.get("method")).startswith("workspace/did")


def parse(body: bytes) -> dict[str, Any] | Unreadable:
    """One message. Never raises."""
    try:
        message = json.loads(body)
    except (ValueError, RecursionError) as error:
        return Unreadable(f"this is no JSON: {error}")
    if not isinstance(message, dict) or message.get("jsonrpc") != "2.0":
        return Unreadable("this is no JSON-RPC 2.0 message")
    return message


class WyelineProtocol(LanguageServerProtocol):
    """pygls's dispatching and sending, with plain dicts as parameters and results."""

    _server: WyelineServer

    # What pygls would do with typed objects and documents of its own is done by the server's own handlers. A name
    # without pygls's mark is not registered as one of its built-in features.
    def lsp_initialize(self, *_: Any) -> Any: ...
    def lsp_initialized(self, *_: Any) -> Any: ...
    def lsp_exit(self, *_: Any) -> Any: ...
    def lsp_shutdown(self, *_: Any) -> Any: ...
    def lsp_text_document__did_open(self, *_: Any) -> Any: ...
    def lsp_text_document__did_change(self, *_: Any) -> Any: ...
    def lsp_text_document__did_close(self, *_: Any) -> Any: ...
    def lsp_notebook_document__did_open(self, *_: Any) -> Any: ...
    def lsp_notebook_document__did_change(self, *_: Any) -> Any: ...
    def lsp_notebook_document__did_close(self, *_: Any) -> Any: ...
    def lsp_set_trace(self, *_: Any) -> Any: ...
    def lsp_workspace__did_change_workspace_folders(self, *_: Any) -> Any: ...
    def lsp_workspace__execute_command(self, *_: Any) -> Any: ...
    def lsp_work_done_progress_cancel(self, *_: Any) -> Any: ...

    def take(self, message: dict[str, Any] | Unreadable) -> None:
        """Handle one message; whatever it is, the server goes on."""
        if isinstance(message, Unreadable):
            logger.warning("unreadable message: %s", message.reason)
            self.answer_error(None, PARSE_ERROR, message.reason)
            return
        method, msg_id = message.get("method"), message.get("id")
        if method is None:
            self._take_response(message)
        elif not isinstance(method, str) or not isinstance(msg_id, str | int | None):
            self.answer_error(None, INVALID_REQUEST, "a message has a method, and a number or text as id")
        elif msg_id is None:
            self._take_notification(method, message.get("params"))
        else:
            self._take_request(msg_id, method, message.get("params"))

    def _take_request(self, msg_id: str | int, method: str, params: Any) -> None:
        refusal = self._server.refusal(method)
        if refusal is not None:
            self.answer_error(msg_id, *refusal)
        elif msg_id in self._server.inbox.cancelled:
            self._server.inbox.cancelled.discard(msg_id)
            self.answer_error(msg_id, CANCELLED, "the request was cancelled")
        elif not self._server.answers(method):
            self.answer_error(msg_id, METHOD_NOT_FOUND, f"this server does not answer {method}")
        else:
            self.handle_message(JsonRPCRequestMessage(id=msg_id, method=method, jsonrpc="2.0", params=params))

    def _take_notification(self, method: str, params: Any) -> None:
        if method == "$/cancelRequest":
            wanted = params.get("id") if isinstance(params, dict) else None
            if isinstance(wanted, str | int):
                future = self._request_futures.get(wanted)
                if future is not None:
                    future.cancel()
                self._server.inbox.cancelled.discard(wanted)
        elif self._server.refusal(method) is None and self._server.answers(method):
            self.handle_message(JsonRPCNotification(method=method, jsonrpc="2.0", params=params))
        elif not method.startswith("$/"):
            logger.info("a notification without use: %s", method)

    def _take_response(self, message: dict[str, Any]) -> None:
        msg_id = message.get("id")
        known = isinstance(msg_id, str | int)
        future: Future[Any] | None = self._request_futures.pop(msg_id, None) if known else None  # type: ignore[arg-type]
        if future is None or future.done():
            logger.info("an answer to no question: %s", msg_id)
        elif "error" in message:
            error = message["error"] if isinstance(message["error"], dict) else {}
            code = error.get("code")
            future.set_exception(RequestError(code if isinstance(code, int) else 0, str(error.get("message", ""))))
        else:
            future.set_result(message.get("result"))

    def answer_error(self, msg_id: str | int | None, code: int, text: str) -> None:
        self._send_data({"jsonrpc": "2.0", "id": msg_id, "error": {"code": code, "message": text}})

    def _send_handler_result(self, future: Any, *, msg_id: Any) -> None:
        self._request_futures.pop(msg_id, None)
        self._server.inbox.cancelled.discard(msg_id)
        if future.cancelled():
            self.answer_error(msg_id, CANCELLED, "the request was cancelled")
            return
        error = future.exception()
        if error is None:
            result = future.result()
            if isinstance(result, ReadyJson):
                self._send_ready(msg_id, result)
            else:
                self._send_data({"jsonrpc": "2.0", "id": msg_id, "result": result})
        elif isinstance(error, RequestError):
            self.answer_error(msg_id, error.code, error.message)
        else:  # handlers are guarded, so this is a fault of the wire itself
            logger.error("the answer could not be made", exc_info=error)
            self._send_data({"jsonrpc": "2.0", "id": msg_id, "result": None})

    def _send_ready(self, msg_id: Any, result: ReadyJson) -> None:
        if self.writer is None:
            return
        head, tail = f'{{"jsonrpc": "2.0", "id": {json.dumps(msg_id)}, "result": ', "}"
        if not self._include_headers:  # a message is one text there
            self.writer.write(f"{head}{result}{tail}".encode("ascii"))
            return
        size = len(head) + len(result) + len(tail)
        self.writer.write(f"Content-Length: {size}\r\n\r\n{head}".encode("ascii"))
        for portion in result.portions():
            self.writer.write(portion.encode("ascii"))
        self.writer.write(tail.encode("ascii"))

    def _check_handler_result(self, future: Any) -> None:
        if not future.cancelled() and future.exception() is not None:
            logger.error("a notification could not be handled", exc_info=future.exception())

    def notify(self, method: str, params: Any | None = None) -> None:
        """Send a notification; ``params`` is a plain dict in the protocol's shape."""
        self._send_data({"jsonrpc": "2.0", "method": method, "params": params})

    def ask(self, method: str, params: Any) -> Future[Any]:
        """Send a request to the client; the future holds its plain result, or raises RequestError."""
        from concurrent.futures import Future as MadeFuture
        from uuid import uuid4

        future: Future[Any] = MadeFuture()
        msg_id = str(uuid4())
        self._request_futures[msg_id] = future
        self._send_data({"jsonrpc": "2.0", "id": msg_id, "method": method, "params": params})
        return future
