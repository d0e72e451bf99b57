# How tests/all runs its steps, counts what they say, and leaves out what is as it was. To be sourced at the root.
#
# A step's command prints a line "ok: …" a check, or Rust's "test result: …", and "SKIPPED: reason; command" for what this
# machine cannot check. A step whose inputs are as at its last pass is not run: it says `unchanged`, and what it said then
# counts again, its SKIPPED lines too. Never on CI.

passed=${passed:-0} failed=${failed:-0} skipped=${skipped:-0}
target=${CARGO_TARGET_DIR:-$PWD/target}
log=$(mktemp)
trap 'rm -f "$log"' EXIT

# The part of the environment that a step may read.
SETTINGS='^(ANDROID_NDK|BOLEWALK|CARGO|JAVA|LC|MAVEN|PROPTEST|RUST|XDG)_|^(HOME|LANG|RUSTFLAGS|TZ)='

# state INPUT… -- COMMAND…: one line, another as soon as an input is. An input is a path of the repository (what lies
# there, committed or not, unless git ignores it; ":!PATH" for all but that), made:PATH for what git does not hold, or
# tool:PROGRAM. Fails for a path that leads nowhere, and says nothing where there is no git.
state() {
  git rev-parse --git-dir >/dev/null 2>&1 || return 0
  local paths=()
  {
    while [ "$1" != -- ]; do
      case $1 in
        tool:cargo) rustc -vV ;;
        tool:*) stat -L -c '%n %s %Y' "$(type -P "${1#tool:}")" ;;
        made:*) find -L "${1#made:}" -type f -print0 | sort -z | xargs -0r sha256sum ;;
        *) [ -e "${1#:!}" ] && paths+=("$1") || exit 1 ;;
      esac
      shift
    done
    printf '%s\n' "$@"
    env | grep -E "$SETTINGS" | sort
    # Of a file that is deleted and still listed, the error is part of the state.
    git ls-files -z --cached --others --exclude-standard -- "${paths[@]}" | sort -zu | xargs -0 sha256sum "${BASH_SOURCE[0]}"
    [ "${PIPESTATUS[0]}" -eq 0 ] || exit 1
  } 2>&1 | sha256sum
}

# step NAME INPUT… -- COMMAND…: one step. Without inputs it is always run.
step() {
  local name=$1 stamp=$target/steps/${1//[^[:alnum:]]/-} inputs=() now='' status=0 began=$SECONDS
  shift
  while [ "$1" != -- ]; do inputs+=("$1") && shift; done
  shift
  printf -- '--- %s\n' "$name"
  if [ ${#inputs[@]} -gt 0 ] && ! now=$(state "${inputs[@]}" -- "$@"); then
    failed=$((failed + 1))
    printf 'FAILED: %s: one of its inputs is not there: %s\n' "$name" "${inputs[*]}"
    return
  fi
  if [ -n "$now" ] && [ -z "${CI:-}" ] && [ "$now" = "$(head -n 1 "$stamp" 2>/dev/null)" ]; then
    tail -n +2 "$stamp" >"$log"
    count "$name" 0
    echo unchanged
    return
  fi
  rm -f "$stamp"
  "$@" >"$log" 2>&1 || status=$?
  if count "$name" "$status" && [ -n "$now" ]; then
    mkdir -p "${stamp%/*}"
    { echo "$now" && grep -E '^(ok: |SKIPPED: |test result:)' "$log"; } >"$stamp"
  fi
  printf '%d s\n' $((SECONDS - began))
}

# count NAME STATUS: adds up what the log says. A step that says nothing has failed.
count() {
  local ok rust bad lacking lines
  ok=$(grep -c '^ok: ' "$log")
  read -r rust bad <<<"$(awk '/^test result:/ { p += $4; f += $6 } /^FAILED/ { f++ } END { print p + 0, f + 0 }' "$log")"
  lacking=$(grep '^SKIPPED: ' "$log" | sort -u)
  lines=$(grep -c . <<<"$lacking")
  [ "$lines" -eq 0 ] || printf '%s\n' "$lacking"
  # For Rust a test that lacked its tool has passed.
  passed=$((passed + ok + (rust > lines ? rust - lines : 0))) skipped=$((skipped + lines))
  if [ "$2" -eq 0 ] && [ $((ok + rust + lines)) -gt 0 ]; then return 0; fi
  { grep -E '^(error|FAILED|test .* FAILED|---- |thread )' -A 8 "$log" || cat "$log"; } | tail -n 80
  failed=$((failed + ($2 != 0 && bad > 0 ? bad : 1)))
  printf 'FAILED: %s\n' "$1"
  return 1
}

# quietly COMMAND…: for a program that says nothing when all is well.
quietly() { "$@" && echo "ok: $1"; }

skip() {
  skipped=$((skipped + 1))
  printf 'SKIPPED: %s; %s\n' "$1" "$2"
}

# have PURPOSE PROGRAM:INSTALLED_BY…: whether all are here; one line for each that is not.
have() {
  local one purpose=$1 all=0
  shift
  for one in "$@"; do
    type -P "${one%%:*}" >/dev/null || { skip "${one%%:*} is missing for $purpose" "${one#*:}" && all=1; }
  done
  return "$all"
}

# The bindings are made once for all steps that need them. What is unchanged there, cargo knows.
bindings() {
  [ -z "${BOLEWALK_BINDINGS:-}" ] || return 0
  export BOLEWALK_BINDINGS=$target/bindings
  step 'bindings' -- quietly tests/bindings/generate "$BOLEWALK_BINDINGS"
}

finish() {
  printf '%d passed, %d failed, %d skipped\n' "$passed" "$failed" "$skipped"
  [ "$failed" -eq 0 ] && [ "$passed" -gt 0 ]
}
