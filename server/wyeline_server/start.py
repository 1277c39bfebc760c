"""``wyeline-server``: start the language server over stdio, TCP or a WebSocket."""

from __future__ import annotations

import argparse
import contextlib
import gc
import importlib
import logging
import os
import sys
import threading
from collections.abc import Iterator
from typing import Any, BinaryIO

from wyeline_grammar import __version__

LOOPBACK = "127.0.0.1"


def main(argv: list[str] | None = None) -> int:
    """Serve one client; returns the exit code (0 after a proper shutdown)."""
    arguments = _arguments(argv)
    # The matrices are small, and each thread for large ones would hold memory of its own.
    os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
    logging.basicConfig(
        stream=sys.stderr,
        level=arguments.log_level.upper(),
        format="%(asctime)s %(levelname)s %(name)s: %(message)s",
    )
    if not arguments.verbose_protocol:
        logging.getLogger("pygls").setLevel(logging.WARNING)
    if arguments.tcp is not None:
        return _serve_tcp(arguments.tcp)
    if arguments.ws is not None:
        return _serve_ws(arguments.ws)
    return _serve_stdio()


def _arguments(argv: list[str] | None) -> argparse.Namespace:
    parser = argparse.ArgumentParser(
        prog="wyeline-server",
        description="The Wyeline language server. Without options it speaks over stdin and stdout.",
    )
    ways = parser.add_mutually_exclusive_group()
    ways.add_argument("--stdio", action="store_true", help="speak over stdin and stdout (the default)")
    ways.add_argument("--tcp", type=_port, metavar="PORT", help=f"wait for one client on {LOOPBACK}:PORT (0: any free)")
    ways.add_argument("--ws", type=_port, metavar="PORT", help="as --tcp, over a WebSocket (needs `websockets`)")
    parser.add_argument(
        "--log-level",
        default=os.environ.get("WYELINE_LOG", "warning").lower(),
        choices=("debug", "info", "warning", "error"),
        help="what goes to stderr (default: warning, or the variable WYELINE_LOG)",
    )
    parser.add_argument("--verbose-protocol", action="store_true", help="with --log-level: every message, too")
    parser.add_argument("--version", action="version", version=f"wyeline-server {__version__}")
    parser.add_argument("--clientProcessId", type=int, help=argparse.SUPPRESS)  # some clients pass it to every server
    return parser.parse_args(argv)


def _port(text: str) -> int:
    port = int(text)
    if not 0 <= port <= 65535:
        raise argparse.ArgumentTypeError("a port is a number from 0 to 65535")
    return port


def _serve_stdio() -> int:
    # A reader of our own: the thread that waits in it at the end must not hold the interpreter's own stdin.
    stdin, stdout = open(sys.stdin.fileno(), "rb", closefd=False), sys.stdout.buffer  # noqa: SIM115
    sys.stdout = sys.stderr  # stdout is the protocol: a stray print must not reach it
    return serve(stdin, stdout)


def serve(stdin: BinaryIO, stdout: BinaryIO) -> int:
    """Serve one client over two streams."""
    from wyeline_server.server import WyelineServer

    server = WyelineServer(__version__)
    gc.freeze()  # what is loaded stays: the collector need not look at it again
    return server.serve(stdin, stdout)


def _serve_tcp(port: int) -> int:
    import socket

    with socket.create_server((LOOPBACK, port)) as listener:
        print(f"listening on {LOOPBACK}:{listener.getsockname()[1]}", file=sys.stderr, flush=True)
        connection, _ = listener.accept()
    with connection, connection.makefile("rb") as reading, connection.makefile("wb") as writing:
        try:
            return serve(reading, writing)
        finally:
            with contextlib.suppress(OSError):
                connection.shutdown(socket.SHUT_RDWR)  # wakes the thread that still waits for more


def _serve_ws(port: int) -> int:
    try:
        closed = importlib.import_module("websockets.exceptions").ConnectionClosed
        listen = importlib.import_module("websockets.sync.server").serve
    except ImportError:
        print("wyeline-server: --ws needs a package: pip install websockets", file=sys.stderr)
        return 2
    import asyncio

    from wyeline_server.protocol import MAX_MESSAGE_BYTES
    from wyeline_server.server import WyelineServer

    codes: list[int] = []
    served = threading.Event()

    def bodies(connection: Any) -> Iterator[bytes]:
        try:
            for message in connection:
                yield message.encode() if isinstance(message, str) else message
        except closed:
            return

    class Writer:
        def __init__(self, connection: Any) -> None:
            self.connection = connection

        def write(self, data: bytes) -> None:
            try:
                self.connection.send(data.decode())
            except closed:
                raise BrokenPipeError from None

        def close(self) -> None:
            self.connection.close()

    def converse(connection: Any) -> None:
        language_server = WyelineServer(__version__)
        language_server.protocol.set_writer(Writer(connection), include_headers=False)
        try:
            codes.append(asyncio.run(language_server.run(bodies(connection))))
        finally:
            served.set()

    # A browser names the page that connects as the origin: no page may talk to a server on the loopback address.
    with listen(converse, LOOPBACK, port, origins=[None], max_size=MAX_MESSAGE_BYTES) as listener:
        print(f"listening on {LOOPBACK}:{listener.socket.getsockname()[1]}", file=sys.stderr, flush=True)
        accepting = threading.Thread(target=listener.serve_forever, name="listener", daemon=True)
        accepting.start()
        served.wait()  # the listener waits for its conversations: none of them could end it
    return codes[0] if codes else 1


if __name__ == "__main__":
    sys.exit(main())
