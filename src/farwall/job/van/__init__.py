"""The van put to a job: a sound sprayer and a spare, what is there and what to buy. Pure."""
