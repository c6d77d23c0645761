// Grout of the examples: numbers are the dowels', and no false amount passes the certificate.
#include <gtest/gtest.h>

#include <fstream>
#include <functional>
#include <sstream>

#include "job/read.hpp"
#include "proof/grout.hpp"
#include "property/certify.hpp"

namespace stringcourse::property {
namespace {

constexpr const char* kExamples[] = {"kiln-house", "clay-store", "glaze-store", "drying-shed", "hillside-shed"};

Answer example(const std::string& name) {
  std::stringstream text;
  text << std::ifstream(std::string(STRINGCOURSE_ROOT) + "/examples/" + name + ".json").rdbuf();
  return *solve(*read_job(text.str()), {});
}

TEST(GroutOfExamples, EachCellIsThatOfItsDowel) {
  for (const char* name : kExamples) {
    SCOPED_TRACE(name);
    const Answer answer = example(name);
    ASSERT_FALSE(answer.tallies.grout.empty());
    std::size_t numbered = 0;
    for (const supply::GroutColumn& column : answer.tallies.grout.front().columns) {
      const PlacedBar& bar = answer.layout.bars[column.bar];
      const std::int32_t number = dowel_number(answer, bar);
      if (number == 0) continue;
      ++numbered;
      const auto dowel = std::ranges::find_if(
          answer.dowels, [&](const steel::Dowel& one) { return one.wall == bar.wall && one.number == number; });
      ASSERT_NE(dowel, answer.dowels.end());
      EXPECT_EQ(dowel->along, bar.centre);
    }
    EXPECT_EQ(numbered, answer.dowels.size());
  }
}

using Change = std::function<void(std::vector<supply::GroutPour>&)>;

std::vector<Change> changes(const std::vector<supply::GroutPour>& pours) {
  std::vector<Change> all;
  for (std::size_t p = 0; p < pours.size(); ++p) {
    all.push_back([p](auto& of) { of[p].beams.cubic_nanometres += 1; });
    all.push_back([p](auto& of) { of[p].lintels.cubic_nanometres += 1; });
    all.push_back([p](auto& of) { of[p].lift_tops.back() -= 1; });
    all.push_back([p](auto& of) { of.erase(of.begin() + static_cast<std::ptrdiff_t>(p)); });
    for (std::size_t c = 0; c < pours[p].columns.size(); ++c) {
      all.push_back([p, c](auto& of) { of[p].columns[c].volume.cubic_nanometres -= 1; });
      all.push_back([p, c](auto& of) { of[p].columns[c].last_course -= 1; });
      all.push_back([p, c](auto& of) { of[p].columns.erase(of[p].columns.begin() + static_cast<std::ptrdiff_t>(c)); });
    }
  }
  return all;
}

TEST(GroutOfExamples, EveryFalseAmountIsCaught) {
  for (const char* name : kExamples) {
    SCOPED_TRACE(name);
    const Answer answer = example(name);
    const auto& pours = answer.tallies.grout;
    const Job& job = answer.as_built ? answer.as_built->job : answer.job;
    EXPECT_EQ(proof::check_grout(job, answer.building, answer.layout, pours), proof::Violations{});
    std::size_t number = 0;
    for (const Change& change : changes(pours)) {
      auto changed = pours;
      change(changed);
      EXPECT_FALSE(proof::check_grout(job, answer.building, answer.layout, changed).empty()) << "change " << number;
      ++number;
    }
  }
}

}  // namespace
}  // namespace stringcourse::property
