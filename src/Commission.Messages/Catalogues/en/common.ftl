### Sentences that findings of every phase share.

# $why (message) - why it could not be judged, without a full stop
not-evaluated = Not evaluated: { $why }.
