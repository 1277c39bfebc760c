"""The one model that a command prints figures of, in the switch state that is asked for."""

from __future__ import annotations

from wyeline_grammar.sources import Files, SourceError, workspace_of
from wyeline_linter.analysis import Analysis
from wyeline_linter.commands.roots import one_root
from wyeline_linter.configuration import load_for
from wyeline_linter.network import NoSuchStateError
from wyeline_linter.outputs.text import shown_path


def analysis_of(path: str, scenario: str | None) -> Analysis:
    """A model by its root file or folder. ``scenario`` is one that the model states, or a state found in it.

    Raises SourceError for what cannot be read, several models, or a state that is not there; ConfigurationError.
    """
    files = Files()
    root = one_root(path, files)
    try:
        return Analysis(root, files, workspace_of(root), scenario, load_for(root)).trusted()
    except NoSuchStateError:
        from wyeline_linter.studies.states import state_names

        view = Analysis(root, files, workspace_of(root), None, load_for(root)).view
        stated = [s.name.text for _, s in view.model.scenarios if s.name is not None]
        names = ", ".join(f"`{name}`" for name in (*stated, *state_names(view)))
        there = f"; there are {names}" if names else "; it states none, and everything in it has one way to be fed"
        text = f"this model has no scenario `{scenario}` and no such switch state{there}"
        raise SourceError(shown_path(root), text) from None
