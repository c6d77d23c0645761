# Read by ./run, ./check and ./bench: the page's module and its files.
# Node 20 or later is wanted. A system's older one stays; a newer one is then got from the npm registry, into build/node.
node_is_new_enough() { [ "$(node -p 'process.versions.node.split(".")[0]' 2>/dev/null || echo 0)" -ge 20 ]; }

. scripts/build.sh
get_node() {
  PATH=$PWD/build/node/node_modules/.bin:$PATH
  export PATH
  node_is_new_enough && return 0
  echo "setup: Node 20 or later is wanted and not here; getting it from the npm registry into build/node" >&2
  npm install --silent --no-audit --no-fund --prefix build/node node@20 >&2 || return 1
  hash -r
  node_is_new_enough || { echo "setup: no Node 20 could be had" >&2; return 1; }
}

# The engine as build/wasm/stringcourse.wasm.
build_module() {
  local log=build/log-wasm.txt
  mkdir -p build
  echo "building the page's engine ..." >&2
  cmake --preset wasm -DLLVM_V="${LLVM_V:-22}" >"$log" 2>&1 && cmake --build --preset wasm 2>&1 | tenths "$log" && return 0
  cat "$log" >&2
  return 1
}

# The packages that the page is built and tested with, just as the lock file names them.
get_page_packages() {
  local stamp=web/node_modules/.lock-seen
  cmp -s web/package-lock.json "$stamp" 2>/dev/null && return 0
  echo "getting the page's packages ..." >&2
  (cd web && npm ci --silent --no-audit --no-fund >&2) && cp web/package-lock.json "$stamp"
}

# web/dist: what any static host can hand out.
build_page() {
  get_node && build_module && get_page_packages || return 1
  local log=build/log-page.txt
  (cd web && npm run --silent build) >"$log" 2>&1 && return 0
  cat "$log" >&2
  return 1
}
