#include "cli/terminal.hpp"

#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <ctime>
#include <utility>

#include "cli/files.hpp"
#include "measure/characters.hpp"

namespace stringcourse::cli {

namespace {

constexpr double kPatience = 1.0;  // seconds before the bar appears
constexpr double kBetween = 0.1;   // seconds between two drawings of it
constexpr int kCells = 20;

bool is_watched(int descriptor) {
  const char* const kind = std::getenv("TERM");
  const bool dumb = kind == nullptr || std::string_view(kind) == "dumb";
  return !dumb && ::isatty(descriptor) == 1;
}

double seconds_now() {
  timespec now = {};
  ::clock_gettime(CLOCK_MONOTONIC, &now);
  return static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) * 1e-9;
}

}  // namespace

Emphasis stdout_emphasis() {
  const char* const plain = std::getenv("NO_COLOR");
  const bool wanted = plain == nullptr || *plain == '\0';
  return wanted && is_watched(STDOUT_FILENO) ? Emphasis::Bold : Emphasis::Plain;
}

std::string heading(std::string_view text, Emphasis emphasis) {
  if (emphasis == Emphasis::Plain) return std::string(text);
  return "\033[1m" + std::string(text) + "\033[0m";
}

std::string printable(std::string_view text) { return with_unshown_spelled(text); }

std::string printable_lines(std::string_view text) {
  std::string shown;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find('\n'), text.size() - 1) + 1;
    const std::string_view line = text.substr(0, end);
    shown += line.ends_with('\n') ? printable(line.substr(0, end - 1)) + "\n" : printable(line);
    text.remove_prefix(end);
  }
  return shown;
}

ProgressBar::ProgressBar(Wish wish)
    : watched_(wish == Wish::Shown && is_watched(STDERR_FILENO)), started_(seconds_now()) {}

ProgressBar::~ProgressBar() { wipe(); }

void ProgressBar::wipe() {
  if (drawn_) say("\r\033[K");
  watched_ = drawn_ = false;
}

void ProgressBar::tell(std::string text) {
  told_ = std::move(text);
  if (!watched_) return;
  drawn_ = true;
  say("\r\033[K" + told_);
}

void ProgressBar::show(std::string_view what, double share) {
  if (!watched_) return;
  const double now = seconds_now();
  if (now - started_ < kPatience || now - last_drawn_ < kBetween) return;
  last_drawn_ = now;
  drawn_ = true;
  const int full = share < 0 ? 0 : share > 1 ? kCells : static_cast<int>(share * kCells);
  std::string line = "\r\033[K" + told_ + (told_.empty() ? "" : "; ") + std::string(what) + " [";
  line.append(static_cast<std::size_t>(full), '=').append(static_cast<std::size_t>(kCells - full), ' ').append("]");
  say(line);
}

}  // namespace stringcourse::cli
