"""The mix: cut, batches, the gate, containers."""
