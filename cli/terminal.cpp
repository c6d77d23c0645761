#include "cli/terminal.hpp"

#include <unistd.h>

#include <cstdlib>
#include <ctime>

#include "cli/files.hpp"
#include "job/words.hpp"

namespace stringcourse::cli {

namespace {

constexpr double kPatience = 1.0;   // seconds before the bar appears
constexpr double kBetween = 0.1;    // seconds between two drawings of it
constexpr int kCells = 30;

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

// U+061C, U+200E..200F, U+202A..202E, U+2066..2069: characters that turn the direction of writing.
bool turns_direction(std::string_view character) {
  if (character.size() == 2) return character == "\u061C";
  if (character.size() != 3 || character[0] != '\xE2') return false;
  return (character >= "\u200E" && character <= "\u200F") || (character >= "\u202A" && character <= "\u202E") ||
         (character >= "\u2066" && character <= "\u2069");
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

std::string printable(std::string_view text) {
  std::string shown;
  for (std::size_t at = 0; at < text.size();) {
    const std::string_view character = character_at(text, at);
    const bool hidden = is_control_character(text, at) || turns_direction(character);
    shown += hidden ? "?" : character;
    at += character.empty() ? 1 : character.size();
  }
  return shown;
}

ProgressBar::ProgressBar(Wish wish) : watched_(wish == Wish::Shown && is_watched(STDERR_FILENO)), started_(seconds_now()) {}

ProgressBar::~ProgressBar() { wipe(); }

void ProgressBar::wipe() {
  if (drawn_) say("\r\033[K");
  watched_ = drawn_ = false;
}

void ProgressBar::show(std::string_view what, double share) {
  if (!watched_) return;
  const double now = seconds_now();
  if (now - started_ < kPatience || now - last_drawn_ < kBetween) return;
  last_drawn_ = now;
  drawn_ = true;
  const int full = share < 0 ? 0 : share > 1 ? kCells : static_cast<int>(share * kCells);
  std::string line = "\r\033[K" + std::string(what) + " [";
  line.append(static_cast<std::size_t>(full), '=').append(static_cast<std::size_t>(kCells - full), ' ').append("]");
  say(line);
}

}  // namespace stringcourse::cli
