#pragma once
// Independent readers of what ink/ writes: poppler's tools, qpdf and Python's XML parser, run as programs of their own.
#include <sys/wait.h>

#include <cstdio>
#include <fstream>
#include <sstream>
#include <string>
#include <string_view>

#include "gtest/gtest.h"

namespace stringcourse::ink_test {

struct Outcome {
  int status = -1;
  std::string output;  // both streams
};

inline Outcome run(const std::string& command) {
  Outcome outcome;
  std::FILE* pipe = popen((command + " 2>&1").c_str(), "r");
  if (pipe == nullptr) return outcome;
  char piece[4096];
  std::size_t count = 0;
  while ((count = std::fread(piece, 1, sizeof piece, pipe)) > 0) outcome.output.append(piece, count);
  const int closed = pclose(pipe);
  outcome.status = WIFEXITED(closed) ? WEXITSTATUS(closed) : -1;
  return outcome;
}

inline std::string write_file(const std::string& name, std::string_view bytes) {
  const std::string path = ::testing::TempDir() + "ink_" + name;
  std::ofstream(path, std::ios::binary).write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
  return path;
}

inline std::string read_file(const std::string& path) {
  std::ostringstream bytes;
  bytes << std::ifstream(path, std::ios::binary).rdbuf();
  return bytes.str();
}

inline bool holds(std::string_view text, std::string_view part) { return text.find(part) != std::string_view::npos; }

inline int times(std::string_view text, std::string_view part) {
  int count = 0;
  for (std::size_t at = text.find(part); at != std::string_view::npos; at = text.find(part, at + part.size())) ++count;
  return count;
}

}  // namespace stringcourse::ink_test
