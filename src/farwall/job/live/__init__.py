"""The live day: what to do now, from the plan and the story. Pure."""
