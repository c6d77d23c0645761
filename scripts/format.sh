#!/usr/bin/env bash
# The form of the C++ files, as .clang-format says.
# Usage: scripts/format.sh         brings every file into it
#        scripts/format.sh check   ends with 1, and names the places, unless every file has it
set -euo pipefail
cd "$(dirname "$0")/.."
format=/usr/lib/llvm-${LLVM_V:-22}/bin/clang-format
files=()
while IFS= read -r -d '' file; do files+=("$file"); done < <(find engine cli wasm proof tests benches -name '*.[ch]pp' ! -name font_data.cpp -print0)

# each OPTION...: the files in as many parts as there are cores.
each() { printf '%s\0' "${files[@]}" | xargs -0 -n 40 -P "$(nproc)" "$format" "$@"; }

case "${1-}" in
  '') each -i ;;
  check) each --dry-run -Werror || { echo "scripts/format.sh brings them into form." >&2; exit 1; } ;;
  *) echo "usage: scripts/format.sh [check]" >&2; exit 2 ;;
esac
