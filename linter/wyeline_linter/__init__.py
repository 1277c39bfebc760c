"""The judgement: model to derived figures, findings and reports."""
