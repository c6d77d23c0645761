// The border built natively, for comparison with the WebAssembly module.
//   border_twin requests COUNT   prints that many requests, one a line: random jobs of seeds 1, 2, ...
//   border_twin seconds          reads requests, one a line, answers them all and prints how long that took
//   border_twin answers          reads requests, one a line; writes each reply block behind its length (u32,
//   little-endian)
#include <chrono>
#include <cstdlib>
#include <iostream>
#include <string>
#include <string_view>
#include <vector>

#include "document/json_out.hpp"
#include "job/write.hpp"
#include "property/random_jobs.hpp"
#include "wasm/border.hpp"

namespace {

using namespace stringcourse;

// Every second one as in a drag, without a search; the others with a small one. Every 25th with its printed set.
std::string request_of(std::uint64_t seed) {
  std::string text;
  JsonOut out([&](std::string_view bytes) {
    text += bytes;
    return true;
  });
  out.object([&] {
    out.field("border", 1);
    out.field("job", write_job(property::random_job(seed)));
    out.field("budget", seed % 2 == 0 ? std::int64_t{0} : std::int64_t{2'000});
    out.list("drawings", [&] {
      out.text("plan-course-1");
      out.text("elevation-1");
    });
    out.field("solids", seed % 10 == 0);
    if (seed % 25 == 0) out.field("set", seed % 50 == 0 ? "a4" : "letter");
  });
  return out.finish() ? text : std::string();
}

void write_block(const std::string& block) {
  const auto size = static_cast<std::uint32_t>(block.size());
  for (int byte = 0; byte < 4; ++byte) std::cout.put(static_cast<char>(size >> (8 * byte)));
  std::cout.write(block.data(), static_cast<std::streamsize>(block.size()));
}

}  // namespace

int main(int count, char** words) {
  const std::string_view verb = count > 1 ? words[1] : "";
  if (verb == "requests" && count == 3) {
    const std::uint64_t last = std::strtoull(words[2], nullptr, 10);
    for (std::uint64_t seed = 1; seed <= last; ++seed) std::cout << request_of(seed) << '\n';
    return 0;
  }
  border::Border border;
  if (verb == "seconds") {
    std::vector<std::string> lines;
    for (std::string line; std::getline(std::cin, line);) lines.push_back(line);
    std::size_t bytes = 0;
    const auto start = std::chrono::steady_clock::now();
    for (const std::string& line : lines) bytes += border.answer(line).size();
    const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - start;
    std::cout << taken.count() << '\n';
    return bytes > 0 ? 0 : 1;
  }
  if (verb != "answers") return 2;
  for (std::string line; std::getline(std::cin, line);) write_block(border.answer(line));
  return 0;
}
