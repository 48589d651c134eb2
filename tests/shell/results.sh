# Adds up what the test projects reported. Sourced by tests/run.

# count FILE NAME: the number that the result file gives for a whole project, 0 when it has none.
count() {
  local number
  number=$(grep -o '<assembly [^>]*>' "$1" 2>/dev/null | grep -o " $2=\"[0-9]*\"" | grep -o '[0-9]*' || true)
  echo "${number:-0}"
}

# failed_tests FILE: name, message and first steps of the trace of each test that did not pass.
failed_tests() {
  [ -s "$1" ] || return 0
  awk '
    function between(text, from, to,    start, rest) {
      start = index(text, from)
      if (!start) return ""
      rest = substr(text, start + length(from))
      return substr(rest, 1, index(rest, to) - 1)
    }
    BEGIN { RS = "<test " }
    NR > 1 && /^[^>]*result="(Fail|Skip|NotRun)"/ {
      print "FAILED  " between($0, "name=\"", "\"")
      print "        " between($0, "<message>", "</message>")
      count = split(between($0, "<stack-trace>", "</stack-trace>"), steps, "\n")
      for (step = 1; step <= count && step <= 4; step++) print "     " steps[step]
    }' "$1" | sed -e 's/\\&quot;/"/g' -e 's/\\"/"/g' -e 's/&quot;/"/g' -e 's/&lt;/</g' -e 's/&gt;/>/g' -e 's/&amp;/\&/g'
}

# report_results FOLDER PROJECT...: prints failures, a table and the closing line; fails when a test did.
report_results() {
  local folder=$1 table='' passed=0 failed=0 name code time good bad why
  shift
  for name in "$@"; do
    code=255 time=0 why=''
    read -r code time <"$folder/$name.end" || true
    good=$(count "$folder/$name.xml" passed)
    bad=$(($(count "$folder/$name.xml" failed) + $(count "$folder/$name.xml" errors) + $(count "$folder/$name.xml" skipped) + $(count "$folder/$name.xml" not-run)))
    if [ "$code" -eq 124 ] || [ "$code" -eq 137 ]; then why='ran into the time limit'
    elif [ ! -s "$folder/$name.xml" ]; then why="ended without a result, exit code $code"
    elif [ $((good + bad)) -eq 0 ]; then why='has no tests'
    elif [ "$code" -ne 0 ] && [ "$bad" -eq 0 ]; then why="exit code $code though no test failed"
    fi
    [ -z "$why" ] || bad=$((bad + 1))
    if [ "$bad" -gt 0 ]; then
      printf '\n== %s%s\n' "$name" "${why:+: $why}"
      failed_tests "$folder/$name.xml"
      printf -- '-- end of TestResults/%s.log\n' "$name"
      tail -n 40 "$folder/$name.log"
    fi
    passed=$((passed + good)) failed=$((failed + bad))
    table+=$(printf '%-36s %6s s %8s %8s' "$name" "$time" "$good" "$bad")$'\n'
  done
  [ $# -gt 0 ] || { echo 'No test project was found.'; failed=1; }
  printf '\n%-36s %8s %8s %8s\n%s' project time passed failed "$table"
  printf '%d passed, %d failed\n' "$passed" "$failed"
  [ "$failed" -eq 0 ]
}
