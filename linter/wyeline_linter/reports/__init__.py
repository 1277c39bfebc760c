"""What the drafter hands over: one-line diagram, schedules, tables and working sheets."""
