"""What of the Language Server Protocol this server does not answer, and why. A test holds the list complete."""

from __future__ import annotations

UNSUPPORTED: dict[str, str] = {
    "textDocument/prepareTypeHierarchy": "types are one level deep in practice; the feeding tree is the call hierarchy",
    "textDocument/documentColor": "no colours are written in a model",
    "textDocument/colorPresentation": "no colours are written in a model",
    "textDocument/linkedEditingRange": "no text is written in pairs; rename changes every place of a name",
    "textDocument/moniker": "models of different folders share no names",
    "textDocument/inlineValue": "there is no debugger",
    "textDocument/inlineCompletion": "completion offers only what is known to fit",
    "textDocument/rangesFormatting": "several ranges at once are formatted one by one",
    "textDocument/willSave": "nothing is to be done before saving",
    "textDocument/willSaveWaitUntil": "format on save is the client's setting",
    "notebookDocument/didOpen": "models are plain files",
    "workspace/willCreateFiles": "a new file is in no model until one includes it",
    "workspace/willRenameFiles": "includes are not rewritten when a file is renamed; a finding names what is missing",
    "workspace/willDeleteFiles": "an include of a deleted file is a finding",
    "workspace/didCreateFiles": "file watching tells of files",
    "workspace/didRenameFiles": "file watching tells of files",
    "workspace/didDeleteFiles": "file watching tells of files",
    "workspace/textDocumentContent": "no content is made up by the server",
    "workspaceSymbol/resolve": "symbols are sent whole",
    "codeAction/resolve": "actions carry their edits",
    "codeLens/resolve": "lenses are sent whole",
    "documentLink/resolve": "links are sent whole",
    "inlayHint/resolve": "hints are sent whole",
}
"""Method -> why it is not there, in one sentence."""
