// Stands for the headers that tests/CMakeLists.txt reads once for all tests.
