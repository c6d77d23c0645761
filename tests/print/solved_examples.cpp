#include "print/solved_examples.hpp"

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <iterator>

#include "job/read.hpp"
#include "solve/printed_set.hpp"

namespace stringcourse::print_test {
namespace {

std::string contents_of(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

std::vector<Solved> solve_examples() {
  std::vector<std::filesystem::path> files;
  for (const auto& entry : std::filesystem::directory_iterator(STRINGCOURSE_ROOT "/examples")) {
    if (entry.path().extension() == ".json") files.push_back(entry.path());
  }
  std::sort(files.begin(), files.end());
  std::vector<Solved> all;
  for (const auto& file : files) all.push_back(solved_job(file.stem().string(), contents_of(file)));
  return all;
}

}  // namespace

Solved solved_job(const std::string& name, const std::string& json) {
  const auto job = read_job(json);
  if (!job) std::abort();
  auto answer = solve(*job, {});
  if (!answer) std::abort();
  const auto kept = std::make_shared<const Answer>(std::move(*answer));
  return {name, kept, *kept};
}

const std::vector<Solved>& solved_examples() {
  static const std::vector<Solved> all = solve_examples();
  return all;
}

const Solved& solved_example(const std::string& name) {
  for (const Solved& solved : solved_examples()) {
    if (solved.name == name) return solved;
  }
  std::abort();
}

void visit_groups(const std::vector<paper::Group>& groups, const std::function<void(const paper::Group&)>& take) {
  for (const paper::Group& group : groups) {
    take(group);
    visit_groups(group.groups, take);
  }
}

namespace {

bool is_board(const paper::Group& group) {
  return group.label.starts_with("Form board: ") && group.role == paper::Role::Figure;
}

}  // namespace

std::vector<paper::Sheet> bands_of(const std::vector<paper::Sheet>& sheets) {
  std::vector<paper::Sheet> bands;
  for (const paper::Sheet& sheet : sheets) {
    visit_groups(sheet.groups, [&](const paper::Group& group) {
      const bool strip = group.label.starts_with("Course ") && group.label.find(": ") != std::string::npos &&
                         !group.label.ends_with(": plan");
      // A sheet of one board has its title: the board is the inner one.
      const bool board = is_board(group) && std::ranges::none_of(group.groups, is_board);
      if (strip || board) bands.push_back({sheet.name, group.label, sheet.width, sheet.height, {group}});
    });
  }
  return bands;
}

std::vector<std::string> texts_of(const paper::Sheet& sheet) {
  std::vector<std::string> texts;
  visit_groups(sheet.groups, [&](const paper::Group& group) {
    for (const paper::Text& text : group.texts) texts.push_back(text.text);
  });
  return texts;
}

bool has_text(const paper::Sheet& sheet, const std::string& part) {
  const auto texts = texts_of(sheet);
  return std::any_of(texts.begin(), texts.end(),
                     [&](const std::string& text) { return text.find(part) != std::string::npos; });
}

}  // namespace stringcourse::print_test
