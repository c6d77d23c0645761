# Toolchain: clang of Debian to WebAssembly with WASI's C library and libc++ for wasm32.
list(APPEND CMAKE_MODULE_PATH ${CMAKE_CURRENT_LIST_DIR})
set(CMAKE_SYSTEM_NAME WASI)
set(CMAKE_SYSTEM_PROCESSOR wasm32)
set(LLVM_V 22 CACHE STRING "version of the compiler")
set(CMAKE_C_COMPILER clang-${LLVM_V})
set(CMAKE_CXX_COMPILER clang++-${LLVM_V})
set(CMAKE_AR llvm-ar-${LLVM_V})
set(CMAKE_RANLIB llvm-ranlib-${LLVM_V})
set(CMAKE_C_COMPILER_TARGET wasm32-wasi)
set(CMAKE_CXX_COMPILER_TARGET wasm32-wasi)
set(CMAKE_TRY_COMPILE_TARGET_TYPE STATIC_LIBRARY)
set(CMAKE_TRY_COMPILE_PLATFORM_VARIABLES LLVM_V)
# Debian's headers stand under wasm32-wasi, whose name this compiler calls old. Header-only libraries (nlohmann) come
# from the system's own folder, after everything else.
set(CMAKE_C_FLAGS_INIT "-Wno-deprecated")
set(CMAKE_CXX_FLAGS_INIT "-Wno-deprecated -idirafter /usr/include")
set(CMAKE_FIND_ROOT_PATH_MODE_PROGRAM NEVER)
set(CMAKE_FIND_ROOT_PATH_MODE_LIBRARY ONLY)
