# The engine's layers: who includes whom, and what is told of it.
. "$(dirname "$0")/tools.sh"

# A small engine of its own: two rooms side by side on one floor.
small_engine() {
  rm -rf small
  mkdir -p small/scripts small/engine/floor small/engine/east small/engine/west
  cp "$repository/scripts/layers.sh" small/scripts/
  printf 'floor\neast floor\nwest floor\n' >small/engine/layers.txt
  echo '#pragma once' >small/engine/floor/board.hpp
  echo '#include "floor/board.hpp"' | tee small/engine/east/table.cpp >small/engine/west/chair.cpp
}
# checked CODE: the small engine's check ends with it.
checked() {
  local got=0
  small/scripts/layers.sh check >out 2>err || got=$?
  [ "$got" = "$1" ] || fails "ended with $got, not $1"
}

fact "every file of the engine includes what its folder may include"
"$repository/scripts/layers.sh" check >out 2>err || fails "the files and the list differ"
is_empty out

fact "HACKING.md shows the layers as they are"
"$repository/scripts/layers.sh" | sed 's/^/    /' >picture
[ "$(wc -l <picture)" = "$(ls -d "$repository"/engine/*/ | wc -l)" ] || fails "not one line for each folder"
hacking=$(cat "$repository/HACKING.md")
[[ "$hacking" == *"$(cat picture)"* ]] || fails "HACKING.md does not hold what scripts/layers.sh prints"
"$repository/scripts/layers.sh" web | sed 's/^/    /' >picture
[[ "$hacking" == *"$(cat picture)"* ]] || fails "HACKING.md does not hold what scripts/layers.sh web prints"

fact "a small engine whose files keep to the list is let pass"
small_engine
checked 0

fact "a file that includes the room next door is named"
echo '#include "west/chair.hpp"' >>small/engine/east/table.cpp
checked 1
holds out "engine/east/table.cpp:2"

fact "a listed folder of which nothing is included is named"
small_engine
: >small/engine/west/chair.cpp
checked 1
holds out "gives west floor"

fact "a folder that the list lacks is named, and one that stands before what it includes"
small_engine
mkdir small/engine/attic
checked 1
holds out "engine/attic is not in"
small_engine
printf 'east floor\nfloor\nwest floor\n' >small/engine/layers.txt
checked 1
holds out "east stands before floor"

fact "each folder is drawn with those right under it"
small_engine
printf 'floor\neast floor\nwest floor east\n' >small/engine/layers.txt
small/scripts/layers.sh >out
printf 'west       east\neast       floor\nfloor\n' >wanted
same out wanted

done_with_facts
