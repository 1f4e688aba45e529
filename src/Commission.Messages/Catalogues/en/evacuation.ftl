### Evacuation: the level, the isolated hold, what its rise may be.

# $level (quantity) - pressure at isolation
# $after (duration) - time from isolation
hold-from = From { $level } after { $after }
