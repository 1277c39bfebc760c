"""The command line ``wyeline``.

Exit codes: 0 nothing at or above the threshold, 1 findings, 2 usage or unreadable input, 3 a fault of Wyeline itself,
130 interrupted.
"""

from __future__ import annotations

import errno
import os
import sys

from wyeline_linter.commands import COMMANDS

TYPE_CHECKING = False  # `typing` alone would cost `--version` a third
if TYPE_CHECKING:
    import argparse
    from collections.abc import Callable, Iterable, Sequence
    from typing import NoReturn

EXIT_OK, EXIT_FINDINGS, EXIT_USAGE, EXIT_FAULT, EXIT_INTERRUPTED = 0, 1, 2, 3, 130
_MODULES = {"format": "format_files"}


def _parser(chosen: str, *, alone: bool) -> tuple[argparse.ArgumentParser, argparse.ArgumentParser]:
    """The parser with the arguments of the chosen command, and that command's own; ``alone``: without the other
    commands' names. No option may be shortened: a `--fi` that means `--fix` would write files."""
    import argparse  # not before it is needed: `--version` and a check that is answered from what was kept do without

    from wyeline_linter.printed_answers import terminal_columns

    class Parser(argparse.ArgumentParser):
        def error(self, message: str) -> NoReturn:
            print(f"{self.prog}: {message}; see `{self.prog} --help`", file=sys.stderr)
            raise SystemExit(EXIT_USAGE)

    def helped(prog: str) -> argparse.HelpFormatter:
        return argparse.HelpFormatter(prog, width=terminal_columns(80) - 2)

    parser = own = Parser(
        prog="wyeline",
        allow_abbrev=False,
        formatter_class=helped,
        description="Power distribution as plain text: derived voltages, reasons why a connection cannot be made, and "
        "the smallest change that makes it. A design aid: local codes and a licensed engineer decide.",
    )
    parser.add_argument("--version", action="store_true", help="print the version and leave")
    commands = parser.add_subparsers(dest="command", metavar="COMMAND", prog="wyeline")
    for name, text in COMMANDS.items():
        if alone and name != chosen:
            continue
        described = text[0].upper() + text[1:] + "."
        sub = commands.add_parser(name, help=text, description=described, formatter_class=helped, allow_abbrev=False)
        if name == chosen:
            own = sub
            _module(name).add_arguments(sub)
    return parser, own


def _parsed(words: list[str], chosen: str) -> argparse.Namespace:
    """The words of a command line. Raises SystemExit where they ask for help, or are wrong: then that is told."""
    if chosen and chosen not in COMMANDS and words[0] == chosen:
        hint = _nearest(chosen, COMMANDS) or f"; there are {', '.join(COMMANDS)}"
        print(f"wyeline: there is no command `{chosen}`{hint}", file=sys.stderr)
        raise SystemExit(EXIT_USAGE)
    parser, own = _parser(chosen, alone=chosen in COMMANDS and words[0] == chosen)
    parsed, unknown = parser.parse_known_args(words)
    if unknown:
        own.error(_not_understood(unknown, [name for action in own._actions for name in action.option_strings]))
    return parsed


def _not_understood(words: Sequence[str], options: Sequence[str]) -> str:
    option = next((word.partition("=")[0] for word in words if word.startswith("-")), None)
    if option is None:
        return f"`{words[0]}` is one word too many"
    if option in options:
        return f"`{option}` stands behind the command"
    return f"there is no option `{option}`{_nearest(option, options)}"


def _nearest(word: str, names: Iterable[str]) -> str:
    from wyeline_linter.near_names import near

    found = near(word, names)
    return f"; the nearest: {', '.join(found)}" if found else ""


def _module(name: str):  # type: ignore[no-untyped-def]  # a module of the package ``commands``
    import importlib

    return importlib.import_module(f"wyeline_linter.commands.{_MODULES.get(name, name)}")


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command; returns the exit code. Never lets a traceback reach the user."""
    words = list(sys.argv[1:] if arguments is None else arguments)
    if arguments is None:
        # Our matrices are small: threads for large ones would cost a small check a tenth, and help none.
        os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
        _take_streams()
    try:
        code = _guarded(lambda: _main(words, own_process=arguments is None)) or EXIT_OK
    except KeyboardInterrupt:
        print("wyeline: interrupted; nothing was changed half-way", file=sys.stderr)
        return EXIT_INTERRUPTED
    if arguments is None and words[:1] == ["check"]:
        _leave(code)
    return code


def _take_streams() -> None:
    """Streams that take whatever is written: where one is closed it goes nowhere, and a letter that a terminal or pipe
    has no sign for gets another sign."""
    if sys.stdout is None:
        sys.stdout = open(os.devnull, "w")  # noqa: SIM115
    if sys.stderr is None:
        sys.stderr = open(os.devnull, "w")  # noqa: SIM115
    if hasattr(sys.stdout, "reconfigure"):
        sys.stdout.reconfigure(errors="replace")


def _leave(code: int) -> None:
    """End the process with all that it said written: taking a large model apart costs a sixth of checking it."""
    try:
        sys.stdout.flush()
        sys.stderr.flush()
    except (OSError, ValueError):
        return  # the usual way out says what there is to say
    os._exit(code)


def _main(words: list[str], *, own_process: bool) -> int:
    if words == ["--version"]:
        return _version()
    question = None
    if words[:1] == ["check"]:
        from wyeline_linter.printed_answers import answered, question_of

        question = question_of(words)
        if question is not None:
            code = answered(question)
            if code is not None:
                return code
    chosen = next((w for w in words if not w.startswith("-")), None)
    try:
        parsed = _parsed(words, chosen or "")
        if parsed.version:
            return _version()
        if parsed.command is None:
            _parser("", alone=False)[0].print_help()
            return EXIT_USAGE
    except SystemExit as stop:
        return EXIT_OK if stop.code in (0, None) else EXIT_USAGE
    parsed.question, parsed.own_process = question, own_process
    return int(_module(parsed.command).run(parsed))


def _version() -> int:
    from wyeline_grammar import __version__

    print(f"wyeline {__version__}")
    return EXIT_OK


def _guarded(work: Callable[[], int | None]) -> int | None:
    """What the work returns, or the exit code for what it raised, told in a line."""
    from wyeline_linter.printed_answers import drop_output

    try:
        code = work()
        sys.stdout.flush()
        return code
    except Exception as fault:
        if _reader_gone(fault):  # `| head`: no fault, and nothing more to say
            drop_output()
            return EXIT_OK
        from wyeline_grammar.sources import SourceError

        if isinstance(fault, SourceError):
            print(f"wyeline: {fault}", file=sys.stderr)
            return EXIT_USAGE
        outside = _outside_trouble(fault)
        if outside is not None:
            drop_output()
            print(f"wyeline: {outside}", file=sys.stderr)
            return EXIT_USAGE
        if os.environ.get("WYELINE_DEBUG"):
            raise
        where = _where(fault)
        print(
            f"wyeline: a fault of Wyeline itself: {type(fault).__name__}: {fault} ({where})\n"
            "Please report this line with the model, or set WYELINE_DEBUG=1 to see the whole trace.",
            file=sys.stderr,
        )
        return EXIT_FAULT


def _reader_gone(fault: Exception) -> bool:
    """Whether the output went into a pipe that nobody reads any more. Windows calls such a pipe invalid."""
    if isinstance(fault, BrokenPipeError):
        return True
    named = isinstance(fault, OSError) and (fault.errno, fault.filename)
    return sys.platform == "win32" and named == (errno.EINVAL, None)


def _outside_trouble(fault: Exception) -> str | None:
    """What the system refused, where that and no slip of ours is the reason."""
    if not isinstance(fault, OSError):
        return None
    try:
        os.getcwd()
    except OSError:
        return "the working folder is gone"
    full = (errno.ENOSPC, errno.EFBIG, errno.EIO, getattr(errno, "EDQUOT", errno.ENOSPC))
    if fault.errno in full and fault.filename is None:
        return f"the output could not be written ({fault.strerror})"
    return None


def _where(fault: BaseException) -> str:
    trace = fault.__traceback__
    while trace is not None and trace.tb_next is not None:
        trace = trace.tb_next
    if trace is None:
        return "unknown place"
    return f"{os.path.basename(trace.tb_frame.f_code.co_filename)}:{trace.tb_lineno}"


if __name__ == "__main__":
    sys.exit(main())
