"""The preview serves this machine's browser alone, follows the files, and tells what is selected."""

from __future__ import annotations

import http.client
import threading
import time
from collections.abc import Iterator
from pathlib import Path

import pytest
from report_models import nasty_model

from wyeline_grammar.sources import SourceError
from wyeline_linter.reports.live_model import LiveModel
from wyeline_linter.reports.preview import MOST_LISTENERS, Preview


class Served:
    def __init__(self, preview: Preview, selected: list[str]) -> None:
        self.preview, self.selected = preview, selected

    def ask(self, path: str, method: str = "GET", body: str | None = None, **headers: str) -> http.client.HTTPResponse:
        connection = http.client.HTTPConnection("127.0.0.1", self.preview.port, timeout=60)
        sent = {"Host": f"127.0.0.1:{self.preview.port}"} | {k.replace("_", "-"): v for k, v in headers.items()}
        connection.request(method, path, body, sent)
        return connection.getresponse()

    def own(self, rest: str = "") -> str:
        return f"/{self.preview.token}/{rest}"


@pytest.fixture
def served() -> Iterator[Served]:
    selected: list[str] = []
    preview = Preview(lambda: "<p>page</p>", lambda: "<p>edition</p>", selected.append)
    preview.start()
    yield Served(preview, selected)
    preview.close()


def test_the_address_that_was_handed_out_works(served: Served) -> None:
    answer = served.ask(served.own())
    assert (answer.status, answer.read()) == (200, b"<p>page</p>")
    assert answer.getheader("Cache-Control") == "no-store"
    assert answer.getheader("Referrer-Policy") == "no-referrer"
    assert served.ask(served.own("edition")).read() == b"<p>edition</p>"
    assert served.preview.address.startswith("http://127.0.0.1:")


def test_every_other_way_in_is_refused(served: Served) -> None:
    port = served.preview.port
    assert served.ask("/").status == 403
    assert served.ask("/wrong/").status == 403
    said = served.ask(served.own(), Host="editor.example").read().decode()
    assert f"127.0.0.1:{port}" in said and "forward that port" in said and served.preview.token not in said
    assert served.ask(served.own("../etc")).status == 404
    for host in ("attacker.example", f"attacker.example:{port}", "127.0.0.1", f"[::1]:{port}", ""):
        assert served.ask(served.own(), Host=host).status == 403, host
    for origin in ("http://attacker.example", "null", f"https://127.0.0.1:{port}", f"http://127.0.0.1:{port + 1}"):
        assert served.ask(served.own(), Origin=origin).status == 403, origin
    assert served.ask(served.own(), Origin=f"http://127.0.0.1:{port}").status == 200


def test_a_selection_is_told_from_the_page_alone(served: Served) -> None:
    own = f"http://127.0.0.1:{served.preview.port}"
    assert served.ask(served.own("select"), "POST", "pumps.wye:8").status == 404
    assert served.ask(served.own("select"), "POST", "pumps.wye:8", Origin="http://attacker.example").status == 403
    assert served.ask(served.own("select"), "POST", "x" * 5000, Origin=own).status == 413
    assert served.selected == []
    assert served.ask(served.own("select"), "POST", "pumps.wye:8\x1b[2J\n", Origin=own).status == 200
    assert served.selected == ["pumps.wye:8[2J"]


def test_open_pages_hear_of_changes_and_nothing_is_left_at_the_end(served: Served) -> None:
    before = threading.active_count()
    events = served.ask(served.own("events"))
    assert events.readline().startswith(b":")
    events.readline()
    served.preview.changed()
    assert events.readline() == b"event: edition\n"
    kept_open = served.ask(served.own())
    assert kept_open.read() and threading.active_count() > before
    served.preview.close()
    end = time.monotonic() + 60
    while threading.active_count() >= before and time.monotonic() < end:
        time.sleep(0.02)
    assert threading.active_count() < before, [t.name for t in threading.enumerate()]
    with pytest.raises(OSError):
        served.ask(served.own())


def test_listeners_are_limited_and_leave(served: Served) -> None:
    many = [served.preview.listen() for _ in range(MOST_LISTENERS)]
    assert served.preview.listen() is None
    assert many[0] is not None
    served.preview.leave(many[0])
    assert served.preview.listen() is not None


def test_a_page_that_cannot_be_made_is_said_and_the_server_stays(served: Served) -> None:
    def broken() -> str:
        raise OSError("gone")

    served.preview.page = broken
    assert served.ask(served.own()).status == 503
    assert served.ask(served.own("edition")).status == 200


def test_a_saved_file_gives_a_new_edition_and_a_lost_one_a_reason(tmp_path: Path) -> None:
    root = nasty_model(tmp_path)
    model = LiveModel(str(root))
    assert "LP-1" in model.edition() and not model.look()
    root.write_text(root.read_text("utf-8").replace("LP-1", "LP-77"), "utf-8")
    assert model.look() and not model.look()
    assert "LP-77" in model.edition()
    root.rename(tmp_path / "away")
    assert model.look()
    with pytest.raises(SourceError, match="no such file"):
        model.edition()
    assert "LP-77" in model.page(), "a page that is loaded again shows what there was"
    (tmp_path / "away").rename(root)
    assert model.look() and "LP-77" in model.edition()


def test_texts_of_an_editor_stand_in_the_place_of_files_and_new_includes_are_watched(tmp_path: Path) -> None:
    root = nasty_model(tmp_path)
    disk = root.read_text("utf-8")
    model = LiveModel(str(root), texts={str(root): disk})
    assert "LP-1" in model.edition()
    assert not model.look({str(root): disk, str(tmp_path / "another.wye"): "panel P9\n"}), "not of this model"
    typed = {str(root): disk.replace("wye 1\n", 'wye 1\ninclude "annex.wye"\n', 1)}
    assert model.look(typed)
    model.edition()
    assert not model.look(typed)
    annex = tmp_path / "annex.wye"
    annex.write_text("panel ANNEX-7 480Y/277  bus 125 A\n", "utf-8")
    assert model.look(typed), "what an include named and nobody found has come"
    assert "ANNEX-7" in model.edition()
    assert model.look({**typed, str(annex): "panel ANNEX-8 480Y/277  bus 125 A\n"})
    assert "ANNEX-8" in model.edition()
    assert root.read_text("utf-8") == disk


def test_another_switch_state_is_shown_and_one_that_is_not_there_is_said(tmp_path: Path) -> None:
    root = nasty_model(tmp_path)
    root.write_text(root.read_text("utf-8") + 'scenario "Night"\n  open MSB -> LP-1\n', "utf-8")
    model = LiveModel(str(root))
    assert 'data-scenario="normal"' in model.edition()
    assert model.show("Night") and not model.show("Night")
    assert 'data-scenario="Night"' in model.edition()
    model.show("Noon")
    with pytest.raises(SourceError, match="no scenario `Noon`"):
        model.edition()
