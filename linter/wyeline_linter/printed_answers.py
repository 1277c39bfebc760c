"""What a check printed, kept: the very same check of an unchanged model is answered before anything is read or parsed.

An entry belongs to the words of the command, the folder it ran in, and how it would colour and wrap. It names Wyeline
itself, every file that the answer rests on with its digest (or that it was not there), the folder that each model's
includes may not leave, and what the folders that were named held. One difference, and the check runs as if nothing were
kept.
"""

from __future__ import annotations

import os
import sys

from wyeline_grammar.sources import SourceError, read_bytes, workspace_of, wye_files
from wyeline_linter.cache_folder import digest, folder, name_of, own_fingerprint, read_entry, write_entry

TYPE_CHECKING = False  # as in `cli`: nothing is imported that answering can do without
if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping, Sequence

_PLAIN = frozenset({"-q", "--quiet", "--statistics", "--show-allowed", "--no-baseline"})
_VALUED = frozenset({"--format", "--fail-on", "--scenario", "--colour"})
"""Options that only choose what is judged and how it is written; a check with any other is not answered from here."""


Question = tuple[str, str]
"""One check as it was asked for: the folder where its answer is kept, and the name of the entry there."""


def question_of(words: Sequence[str]) -> Question | None:
    """The question that the words of a command ask; None where its answer is not kept."""
    if words[:1] != ["check"] or not _only_reads(words[1:]):
        return None
    where = folder()
    if where is None:
        return None
    try:
        asked = (*words, os.getcwd(), str(may_colour()), str(sentence_columns()))
    except (OSError, ValueError, AttributeError):  # the folder is gone; the output is closed, or there is none
        return None
    return where, name_of(asked, ".told")


def _only_reads(words: Sequence[str]) -> bool:
    waits = False
    for word in words:
        if waits:
            waits = False
        elif word in _VALUED:
            waits = True
        elif word.startswith("-") and word not in _PLAIN and word.partition("=")[0] not in _VALUED:
            return False
    return True


class Grounds:
    """What an answer rests on, looked at before the check begins: whatever changes meanwhile makes the entry void.

    ``files``: digest by path, "" where there is none; ``models``: the folder that each root's includes may not leave;
    ``folders``: a digest of the models that lie in a folder.
    """

    def __init__(self) -> None:
        self.files: dict[str, str] = {}
        self.models: dict[str, str] = {}
        self.folders: dict[str, str] = {}
        self.firm = True
        """Whether nothing was seen in two versions."""

    def add_folder(self, path: str) -> None:
        """A folder whose models are checked."""
        held = wye_files(path)
        self.folders[path] = _digest_of_names(held)
        for each in held:
            self.add_file(each, _digest_at(each))

    def add_model(self, root: str, beside: Iterable[str]) -> None:
        """A root file; ``beside`` are names of files that count where they lie in the model's folder."""
        self.models[root] = base = workspace_of(root)
        for name in beside:
            path = os.path.join(base, name)
            self.add_file(path, _digest_at(path))

    def add_read(self, read: Mapping[str, bytes | None]) -> None:
        """Files as the check read them."""
        for path, data in read.items():
            self.add_file(path, "" if data is None else digest(data))

    def add_file(self, path: str, mark: str) -> None:
        if self.files.setdefault(path, mark) != mark:
            self.firm = False


def keep(asked: Question, grounds: Grounds, code: int, text: str, *, exact: bool) -> None:
    """Keep what a check printed and its exit code. ``exact``: it goes out in UTF-8 whatever the terminal's encoding."""
    if not grounds.firm:
        return
    fields = [own_fingerprint(), str(code), str(int(exact))]
    for table in (grounds.models, grounds.folders, grounds.files):
        fields.append(str(len(table)))
        for item in table.items():
            fields += item
    fields.append(text)  # the last one: it alone may hold a zero byte
    write_entry(*asked, "\0".join(fields).encode("utf-8", "surrogatepass"))


def answered(asked: Question) -> int | None:
    """Print the kept answer, where it still holds, and return its exit code; None where there is none."""
    body = read_entry(*asked)
    if body is None:
        return None
    try:
        rest = body.decode("utf-8", "surrogatepass")
        own, code, exact, rest = rest.split("\0", 3)
        if own != own_fingerprint():
            return None
        for now in (workspace_of, _digest_of_folder, _digest_at):
            count, rest = rest.split("\0", 1)
            *fields, rest = rest.split("\0", 2 * int(count))
            if any(now(path) != was for path, was in zip(fields[::2], fields[1::2], strict=True)):
                return None
        result = int(code)
    except (ValueError, RecursionError):
        return None
    try:
        show(rest, exact=exact == "1")
    except BrokenPipeError:  # the reader has seen enough, and the exit code is what it is
        drop_output()
    return result


def may_colour() -> bool:
    """Whether colour is wanted where nothing else is said: by a terminal that shows it to somebody who did not ask for
    none (https://no-color.org)."""
    return sys.stdout.isatty() and not os.environ.get("NO_COLOR") and os.environ.get("TERM") != "dumb"


USUAL_COLUMNS, _FEWEST_COLUMNS, _MOST_COLUMNS = 100, 80, 120


def sentence_columns() -> int:
    """The columns that sentences keep to: the terminal's, within what reads well. Where nobody looks on (a file, a log)
    they are the same on every machine."""
    if not sys.stdout.isatty():
        return USUAL_COLUMNS
    return min(max(terminal_columns(USUAL_COLUMNS), _FEWEST_COLUMNS), _MOST_COLUMNS)


def terminal_columns(otherwise: int) -> int:
    """How wide the terminal is; the library's own way to ask loads what costs a check a tenth."""
    stated = os.environ.get("COLUMNS", "")
    if stated.isdigit() and int(stated) > 0:
        return int(stated)
    try:
        return os.get_terminal_size(sys.__stdout__.fileno()).columns or otherwise  # type: ignore[union-attr]
    except (AttributeError, ValueError, OSError):
        return otherwise


def read_stdin() -> bytes:
    """What stands on standard input. Raises SourceError where it is closed."""
    if sys.stdin is None:
        raise SourceError("-", "standard input is closed")
    return sys.stdin.buffer.read()


def drop_output() -> None:
    """What is still to be written goes nowhere: the interpreter must not stumble over it at the end."""
    try:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    except (OSError, ValueError):
        return


def show(text: str, *, exact: bool) -> None:
    """Write to stdout: for programs in UTF-8 whatever the terminal's encoding, for people with what it can show."""
    buffer = getattr(sys.stdout, "buffer", None)  # a stream of texts alone has none, and no encoding to mind
    if exact and buffer is not None:
        sys.stdout.flush()
        buffer.write(text.encode(errors="replace"))
        buffer.flush()
        return
    try:
        sys.stdout.write(text)
    except UnicodeEncodeError:
        sys.stdout.write(text.encode(sys.stdout.encoding, "replace").decode(sys.stdout.encoding))
    sys.stdout.flush()


def _digest_at(path: str) -> str:
    try:
        return digest(read_bytes(path))
    except SourceError:
        return ""


def _digest_of_folder(path: str) -> str:
    return _digest_of_names(wye_files(path))


def _digest_of_names(names: Sequence[str]) -> str:
    return digest("\0".join(names).encode("utf-8", "surrogatepass"))
