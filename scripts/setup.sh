#!/usr/bin/env bash
# Gets what is missing to build (core), to build the page (page) or to test both (test).
# Usage: scripts/setup.sh [core] [page] [test]
# Silent, and no package manager is called, when everything is there. LLVM_V chooses the compiler's version (22).
set -euo pipefail
V=${LLVM_V:-22}
llvm=/usr/lib/llvm-$V

# package  what shows that it is there: a program, or a file (a pattern may match more than one)
core="
clang-$V                $llvm/bin/clang++
lld-$V                  $llvm/bin/ld.lld
llvm-$V                 $llvm/bin/llvm-ar
libclang-rt-$V-dev      $llvm/lib/clang/*/lib/linux/libclang_rt.asan-*.a
libc++-$V-dev           $llvm/lib/libc++.a
libc++abi-$V-dev        $llvm/lib/libc++abi.a
ninja-build             ninja
cmake                   cmake
ccache                  ccache
googletest              /usr/src/googletest/googletest/src/gtest-all.cc
nlohmann-json3-dev      /usr/include/nlohmann/json.hpp
"
page="
libclang-rt-$V-dev-wasm32  $llvm/lib/clang/*/lib/wasi/libclang_rt.builtins-wasm32.a
libc++-$V-dev-wasm32    $llvm/lib/wasm32-wasi/libc++.a
libc++abi-$V-dev-wasm32 $llvm/lib/wasm32-wasi/libc++abi.a
wasi-libc               /usr/lib/wasm32-wasi/libc.a
binaryen                wasm-opt
nodejs                  node
npm                     npm
"
tests="
clang-format-$V         $llvm/bin/clang-format
chromium                chromium
python3                 /usr/bin/python3
python3-jsonschema      /usr/lib/python3/dist-packages/jsonschema
poppler-utils           pdfinfo
qpdf                    qpdf
coinor-libcbc-dev       /usr/include/coin/Cbc_C_Interface.h
libglpk-dev             /usr/include/glpk.h
"

is_there() {
  case $1 in
    /*) compgen -G "$1" >/dev/null ;;
    *) command -v "$1" >/dev/null 2>&1 ;;
  esac
}

list_missing() {
  while read -r package sign; do
    [ -z "$package" ] || is_there "$sign" || printf '%s\n' "$package"
  done
}

as_root() {
  if [ "$(id -u)" = 0 ]; then "$@"; else sudo "$@"; fi
}

install() {
  echo "setup: getting $*" >&2
  as_root apt-get -qq update </dev/null >/dev/null
  as_root env DEBIAN_FRONTEND=noninteractive apt-get -qq install -y --no-install-recommends "$@" </dev/null >/dev/null
}

wanted=$core
for set in "$@"; do
  case $set in
    core) ;;
    page) wanted=$wanted$page ;;
    test) wanted=$wanted$tests ;;
    *) echo "setup: no set '$set': core, page or test" >&2; exit 2 ;;
  esac
done

missing=$(list_missing <<<"$wanted")
[ -n "$missing" ] || exit 0
if ! command -v apt-get >/dev/null 2>&1; then
  echo "setup: this is no Debian system, so please install by hand (Debian names):" >&2
  sed 's/^/  /' <<<"$missing" >&2
  exit 1
fi
# shellcheck disable=SC2086  # one package a word
install $missing
missing=$(list_missing <<<"$wanted")
[ -z "$missing" ] || { echo "setup: still missing after installing:" >&2; sed 's/^/  /' <<<"$missing" >&2; exit 1; }
