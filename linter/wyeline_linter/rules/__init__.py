"""The rules, a file a group. ``registry`` finds them; nothing lists them by hand."""
