"""How findings leave: one file an output format. All take findings in their one order and write nothing else."""
