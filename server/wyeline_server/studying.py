"""When studies run: once typing rests, in a thread, one model at a time, with progress and a way to stop them.

A study of a text that has changed since is ended and dropped. What the models of one rest find is shown together, so
that a file of several models is not shown half judged. Settings: ``studies.atRest`` and ``studies.restSeconds``.
"""

from __future__ import annotations

import asyncio
import gc
import logging
import os
import sys
import threading
from collections.abc import Callable
from typing import NamedTuple

from wyeline_grammar.sources import SourceError
from wyeline_linter.analysis import Analysis
from wyeline_linter.findings import Finding
from wyeline_linter.rules.registry import rules_for
from wyeline_linter.solved_figures import SolvedFigures, solved_figures
from wyeline_server.freed_memory import give_back
from wyeline_server.progress import Progress
from wyeline_server.server import WyelineServer
from wyeline_server.studies import SCOPE, Study

logger = logging.getLogger(__name__)

SETTINGS = {
    "studies.atRest": "Solve faults, voltage drops and load flow when typing rests, and show what they find.",
}
REST_S = 0.4
"""How long nothing is typed before studies begin, where no setting says otherwise."""
KEPT_S = 5.0
"""How long memory that studies needed stays at hand for the next one."""
SHOWN_AFTER_S = 1.0
"""A study that takes longer shows its progress."""
_SWITCH_S, _USUAL_SWITCH_S = 0.001, sys.getswitchinterval()
"""While a thread solves, the event loop need not wait longer for its turn."""
_REFRESHES = {
    "workspace/inlayHint/refresh": "workspace.inlayHint.refreshSupport",
    "workspace/codeLens/refresh": "workspace.codeLens.refreshSupport",
}


def register(server: WyelineServer) -> None:
    studying = Studying(server)
    server.on_rest(studying.look)
    server.at_end.append(studying.end)


class _EndedError(Exception):
    """The study is not wanted any more."""


class _Solved(NamedTuple):
    findings: list[Finding]
    figures: SolvedFigures


class _Run:
    """One study of one model in a thread. ``done`` is called in the event loop."""

    def __init__(self, root: str, study: Study, model: Analysis) -> None:
        self.root = root
        self.study = study
        self.edits = study.edits
        self.model = model
        self.steps = 1 + sum(len(rule.checks[SCOPE]) for rule in rules_for(SCOPE, model.model.basis))
        self.step = 0
        self.unwanted = False
        self.progress: Progress | None = None
        self.outcome: _Solved | BaseException | None = None
        self.thread: threading.Thread | None = None

    @property
    def current(self) -> bool:
        """Whether the model still is the one that is studied."""
        return self.study.edits == self.edits

    @property
    def stopped(self) -> bool:
        """Whether its user has stopped it."""
        return self.progress is not None and self.progress.stopped

    def start(self, loop: asyncio.AbstractEventLoop, step: Callable[[], None], done: Callable[[], None]) -> None:
        def tell(what: Callable[[], None]) -> None:
            try:
                loop.call_soon_threadsafe(what)
            except RuntimeError:  # the session has ended
                logger.info("a study ended after its session")

        def between() -> None:
            self.step += 1
            if self.unwanted or self.stopped:
                raise _EndedError
            if self.progress is not None:  # else nobody looks, and each call takes the interpreter to and fro
                tell(step)

        def work() -> None:
            try:
                findings = self.model.study_findings()
                between()
                self.outcome = _Solved(findings, solved_figures(self.model.view))
                self.model.view.studies.shed()
            except BaseException as error:
                self.outcome = error
            tell(done)

        self.model.between = between
        self.thread = threading.Thread(target=work, name="study", daemon=True)
        self.thread.start()


def _give_back_apart() -> None:
    """In a thread of its own: it takes milliseconds, which a keystroke need not wait for."""
    threading.Thread(target=give_back, name="memory", daemon=True).start()


class Studying:
    """The studies of a session: what is due, what runs, and what waits to be shown."""

    def __init__(self, server: WyelineServer) -> None:
        self.server = server
        self._due: dict[str, tuple[Study, int]] = {}
        """By root file, what is to be studied and how often it was edited; a model built anew has another study."""
        self._timer: asyncio.TimerHandle | None = None
        self._batch: list[str] = []
        self._run: _Run | None = None
        self._solved: list[tuple[_Run, _Solved]] = []
        self._progress_timer: asyncio.TimerHandle | None = None
        self._memory_timer: asyncio.TimerHandle | None = None
        self._count = 0

    # waiting for rest

    def look(self) -> None:
        """What has arrived is handled: where a model has changed, wait for rest anew and end what runs for nothing."""
        session = self.server.session
        if self.server.state != "ready" or not self.server.setting("studies.atRest", True):
            self._stop()
            return
        due = {
            root: (study, study.edits)
            for root in session.kept()
            if (study := session.study(root)) is not None and study.due
        }
        if self._run is not None and not self._holds(self._run):
            self._run.unwanted = True
        changed = any(self._due.get(root) != known for root, known in due.items())
        self._due = due
        if changed:
            self._wait()

    def _wait(self) -> None:
        if self._timer is not None:
            self._timer.cancel()
        rest_s = self.server.setting("studies.restSeconds", None)
        sound = isinstance(rest_s, int | float) and 0 <= rest_s <= 60
        rested_s = self.server.inbox.change_came_s + (rest_s if sound else REST_S)
        self._timer = asyncio.get_running_loop().call_at(rested_s, self._guarded, self._rested)

    def _guarded(self, work: Callable[[], None]) -> None:
        """Work that the event loop calls: a failure is told, and the session goes on."""
        try:
            work()
        except BrokenPipeError:
            logger.warning("the client has gone")
        except Exception as error:
            self.server.failed("studying", error)

    def _rested(self) -> None:
        self._timer = None
        if self.server.inbox.text_waits():
            self._wait()
        elif self._run is None:
            self._batch = self._roots_due()
            self._next()

    def _roots_due(self) -> list[str]:
        """The models to study, without those whose study waits to be shown."""
        if not self.server.setting("studies.atRest", True):
            return []
        waiting = {run.root for run, _ in self._solved if self._holds(run)}
        return [root for root in self.server.session.studies_due() if root not in waiting]

    def _holds(self, run: _Run) -> bool:
        """Whether the model still is the one that is studied, neither edited nor built anew."""
        return run.current and self.server.session.study(run.root) is run.study

    # one model after the other

    def _next(self) -> None:
        session = self.server.session
        while self._timer is None:
            self._batch = self._batch or self._roots_due()
            if not self._batch:
                break
            root = self._batch.pop(0)
            if (study := session.study(root)) is None or not study.due:
                continue
            try:
                model = session.to_solve(root)
            except SourceError as error:
                logger.info("no study: %s", error)
                self._decline(root)
            except Exception as error:
                session.release(self._decline(root) or study)
                self.server.failed("studying", error)
            else:
                # What was asked for may have built the model anew: it has another study then.
                self._start(_Run(root, session.study(root) or study, model))
                return
        self._show()

    def _decline(self, root: str) -> Study | None:
        """Let a model rest until it changes: it cannot be solved as it stands."""
        study = self.server.session.study(root)
        if study is not None:
            study.declined = True
        return study

    def _start(self, run: _Run) -> None:
        loop = asyncio.get_running_loop()
        self._keep_memory()
        self._run = run
        run.study.at_work = True
        gc.disable()  # walking all that a study makes would stall a keystroke, and next to nothing of it is a circle
        sys.setswitchinterval(_SWITCH_S)
        self._progress_timer = loop.call_later(SHOWN_AFTER_S, self._guarded, self._show_progress)
        run.start(loop, lambda: self._guarded(self._step), lambda: self._guarded(lambda: self._done(run)))

    def _done(self, run: _Run) -> None:
        self._run = None
        run.study.at_work = False
        if run.study.copy is not run.model:  # the model was let go of meanwhile
            run.model.let_go()
        sys.setswitchinterval(_USUAL_SWITCH_S)
        gc.enable()
        gc.freeze()
        if self._progress_timer is not None:
            self._progress_timer.cancel()
            self._progress_timer = None
        if run.progress is not None:
            run.study.declined |= run.current and run.stopped
            run.progress.end("stopped" if run.stopped else "done")
        outcome = run.outcome
        if self.server.state != "ready":
            return
        self._memory_timer = asyncio.get_running_loop().call_later(KEPT_S, _give_back_apart)
        if isinstance(outcome, _Solved):
            self._solved.append((run, outcome))
        elif not isinstance(outcome, _EndedError):
            self.server.session.release(run.study)
            run.study.declined |= run.current
            if outcome is not None:
                self.server.failed("studying", outcome)
        self._next()

    def _keep_memory(self) -> None:
        """A study needs it again, or the session ends and the system takes it all."""
        if self._memory_timer is not None:
            self._memory_timer.cancel()
            self._memory_timer = None

    def _show(self) -> None:
        """Show what was found, where the text is still the one that was studied."""
        session, solved = self.server.session, self._solved
        self._solved = []
        shown: set[str] = set()
        moved = False
        for run, (findings, figures) in solved:
            if not self._holds(run):
                continue
            moved |= run.study.marked or figures != run.study.figures
            run.study.found(findings, figures)
            shown.add(run.root)
            if not any(run.root in session.roots_of(path) for path in session.documents):
                session.release(run.study)
        if not shown:
            return
        self.server.diagnostics.studied(shown)
        if not self.server.inbox.text_waits():
            self.server.rest()
        for method, capability in _REFRESHES.items() if moved else ():
            if self.server.client_can(capability, False):
                self.server.protocol.ask(method, None)

    def _stop(self) -> None:
        if self._timer is not None:
            self._timer.cancel()
            self._timer = None
        self._due, self._batch = {}, []
        if self._run is not None:
            self._run.unwanted = True

    def end(self) -> None:
        """The session ends: leave no thread at work, but do not wait for long."""
        self._stop()
        self._keep_memory()
        thread = self._run.thread if self._run is not None else None
        if thread is not None:
            thread.join(2.0)

    # progress

    def _show_progress(self) -> None:
        run = self._run
        if run is None or run.unwanted or not self.server.client_can("window.workDoneProgress", False):
            return
        self._count += 1
        token = f"wyeline-study-{self._count}"
        made = self.server.protocol.ask("window/workDoneProgress/create", {"token": token})

        def answered(_: object) -> None:
            if made.exception() is None and self._run is run and not run.unwanted:
                run.progress = self.server.long_work(token, f"Solving {os.path.basename(run.root)}", run.steps)
                run.progress.begin()

        made.add_done_callback(answered)

    def _step(self) -> None:
        run = self._run
        if run is not None and run.progress is not None:
            run.progress.done = run.step
            run.progress.report("faults, drops and load flow")
