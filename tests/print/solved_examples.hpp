#pragma once
// The example jobs, solved once for all tests of this program.
#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "sheet/sheets.hpp"
#include "solve/solve.hpp"

namespace stringcourse::print_test {

struct Solved {
  std::string name;  // "kiln-house"
  std::shared_ptr<const Answer> kept;
  const Answer& answer;

  /// With all that is printed on request.
  [[nodiscard]] std::vector<paper::Sheet> sheets(paper::Paper paper) const {
    return sheet::make_sheets(answer, paper, words::english(), {.templates = true, .standards = true});
  }
};

/// The strips and form boards of a set, each as a sheet of its own under its own title: "Course 1: side AB".
[[nodiscard]] std::vector<paper::Sheet> bands_of(const std::vector<paper::Sheet>& sheets);

/// All jobs of examples/, in the order of their names.
[[nodiscard]] const std::vector<Solved>& solved_examples();
/// The one of that name; the program ends if there is none.
[[nodiscard]] const Solved& solved_example(const std::string& name);
[[nodiscard]] Solved solved_job(const std::string& name, const std::string& json);

/// Every group of a sheet, outermost first.
void visit_groups(const std::vector<paper::Group>& groups, const std::function<void(const paper::Group&)>& take);
[[nodiscard]] std::vector<std::string> texts_of(const paper::Sheet& sheet);
[[nodiscard]] bool has_text(const paper::Sheet& sheet, const std::string& part);

}  // namespace stringcourse::print_test
