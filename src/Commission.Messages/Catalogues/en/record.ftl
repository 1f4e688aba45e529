### Words that stand all over a record.

## Verdicts

verdict-pass = pass
verdict-pass-within-uncertainty = pass within uncertainty
verdict-conditional = conditional
verdict-fail = fail
verdict-cannot-decide = cannot decide
verdict-not-evaluated = not evaluated
verdict-information = information

## Outcomes

outcome-accepted = accepted
outcome-accepted-with-conditions = accepted with conditions
outcome-not-accepted = not accepted
outcome-incomplete = incomplete
