# $count (count) - the problems that are not written out
more = … and { $count } more.

# $count (count) - the problems found
count = { $count ->
    [one] { $count } problem.
   *[other] { $count } problems.
}
