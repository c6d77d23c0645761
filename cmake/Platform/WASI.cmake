# CMake 3.25 knows no such system: static libraries only, no shared ones.
set_property(GLOBAL PROPERTY TARGET_SUPPORTS_SHARED_LIBS FALSE)
set(WASI 1)
set(CMAKE_EXECUTABLE_SUFFIX .wasm)
