"""One-line diagrams: sketch -> levels -> order -> places -> picture -> sheets of SVG. Knows shapes, no electricity."""
