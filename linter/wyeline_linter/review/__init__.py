"""Two versions of a model compared: what changed physically, what follows from it, and which edit brought it about.

``revisions`` opens folders, files and git revisions; ``documents`` keeps a version piece by piece; ``renames`` and
``physical`` say what changed; ``measures`` and ``snapshots`` what a version shows; ``consequences`` what differs, and
``causes`` why, by recomputing with edits reverted; ``sheets`` what to issue anew; ``comparison`` puts it together and
``as_text``, ``as_markdown``, ``as_html`` and ``as_json`` write it.
"""
