#!/usr/bin/env bash
# The layers of the engine, from engine/layers.txt, and of the page, from web/layers.txt.
# Usage: scripts/layers.sh         what stands on what, the top first: each folder, and those right under it
#        scripts/layers.sh web     the same of the page
#        scripts/layers.sh check   ends with 1, and says where, unless the files include what the list says: no folder
#                                  that it does not give them, and of each that it gives at least one header
set -euo pipefail
cd "$(dirname "$0")/.."
list=engine/layers.txt

# What each folder's files include: "bond walls", a pair a line.
included() {
  grep -rE '^ *#include "[a-z_]+/' engine --include='*.hpp' --include='*.cpp' |
    sed -E 's|^engine/([a-z_]+)/[^:]*: *#include "([a-z_]+)/.*|\1 \2|' | awk '$1 != $2' | sort -u
}
listed() { awk '/^[a-z]/ { for (k = 2; k <= NF; ++k) print $1, $k }' "$list" | sort -u; }

check() {
  local wrong=0 from to
  while read -r from to; do
    echo "engine/$from includes $to/, which $list does not give it:"
    grep -rnE "^ *#include \"$to/" "engine/$from"
    wrong=1
  done < <(comm -23 <(included) <(listed))
  while read -r from to; do
    echo "$list gives $from $to/, of which no file of engine/$from includes anything."
    wrong=1
  done < <(comm -13 <(included) <(listed))
  awk '/^[a-z]/ { for (k = 2; k <= NF; ++k) if (!($k in above)) { print $1 " stands before " $k; bad = 1 } above[$1] }
       END { exit bad }' "$list" || wrong=1
  for from in engine/*/; do
    from=$(basename "$from")
    grep -qE "^$from( |\$)" "$list" || { echo "engine/$from is not in $list"; wrong=1; }
  done
  return "$wrong"
}

# A folder that stands under another one of the same line is left out of it.
picture() {
  awk '/^[a-z]/ {
         name[++n] = $1
         for (k = 2; k <= NF; ++k) { under[$1, $k]; for (j = 1; j < n; ++j) if (($k, name[j]) in under) under[$1, name[j]] }
       }
       END {
         for (i = n; i >= 1; --i) {
           line = sprintf("%-10s", name[i])
           for (j = 1; j <= n; ++j) {
             if (!((name[i], name[j]) in under)) continue
             hidden = 0
             for (k = 1; k <= n; ++k) if (((name[i], name[k]) in under) && ((name[k], name[j]) in under)) hidden = 1
             if (!hidden) line = line " " name[j]
           }
           sub(/ +$/, "", line)
           print line
         }
       }' "$list"
}

case "${1-}" in
  '') picture ;;
  web) list=web/layers.txt picture ;;
  check) check ;;
  *) echo "usage: scripts/layers.sh [web|check]" >&2; exit 2 ;;
esac
