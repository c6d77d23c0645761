# Read by ./run, ./check and ./bench: build TARGET... configures the preset `release` and builds the targets (none: all).
# A build that goes well says nothing; one that does not shows all it said.
compiler_choice() {
  local version=${LLVM_V:-22}
  [ "$version" = 22 ] || printf '%s\n' "-DCMAKE_C_COMPILER=clang-$version" "-DCMAKE_CXX_COMPILER=clang++-$version"
}

build() {
  mkdir -p build
  local log=build/log.txt
  echo "building (the first time takes a few minutes) ..." >&2
  # shellcheck disable=SC2046  # one option a word
  if cmake --preset release $(compiler_choice) >"$log" 2>&1 && cmake --build --preset release ${1:+--target "$@"} >>"$log" 2>&1; then
    return 0
  fi
  cat "$log" >&2
  return 1
}
