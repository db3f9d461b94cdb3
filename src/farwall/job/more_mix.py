from farwall.facts.so_far import MoreMix
def more_mix(plan, so_far):
    return None
