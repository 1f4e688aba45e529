### Words that stand all over a record.

## Verdicts

verdict-pass = pass
verdict-conditional-pass = conditional pass
verdict-conditional-fail = conditional fail
verdict-fail = fail
verdict-not-evaluated = not evaluated
verdict-information = information

## Outcomes

outcome-accepted = accepted
outcome-accepted-with-conditions = accepted with conditions
outcome-not-accepted = not accepted
outcome-incomplete = incomplete
