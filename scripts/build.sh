# Read by ./run, ./check and ./bench: build TARGET... configures the preset `release` and builds the targets (none: all).
# A build that goes well tells how far it is, and nothing else; one that does not shows all it said.
compiler_choice() {
  local version=${LLVM_V:-22}
  [ "$version" = 22 ] || printf '%s\n' "-DCMAKE_C_COMPILER=clang-$version" "-DCMAKE_CXX_COMPILER=clang++-$version"
}

# Ninja's lines go to the log; a line for each tenth of them goes to whoever waits.
tenths() {
  awk -v log_file="$1" '{ print >> log_file }
    match($0, /^\[[0-9]+\/[0-9]+\]/) {
      split(substr($0, 2, RLENGTH - 2), step, "/")
      tenth = int(10 * step[1] / step[2])
      if (tenth > told && step[2] >= 20) { told = tenth; print "building: " step[1] " of " step[2] > "/dev/stderr" }
    }'
}

build() {
  mkdir -p build
  local log=build/log.txt
  echo "building (the first time takes a few minutes) ..." >&2
  # shellcheck disable=SC2046  # one option a word
  if cmake --preset release $(compiler_choice) >"$log" 2>&1 &&
    cmake --build --preset release ${1:+--target "$@"} 2>&1 | tenths "$log"; then
    return 0
  fi
  cat "$log" >&2
  return 1
}
