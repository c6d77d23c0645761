#pragma once
// The kiln house of the examples, resolved and laid out: 28 x 20 ft, corners A B C D, 8 in block, #5 bars in coarse
// grout.
#include <fstream>
#include <sstream>
#include <string>

#include "bond/assemble.hpp"
#include "bond/panel_memo.hpp"
#include "job/read.hpp"
#include "walls/resolve.hpp"

namespace stringcourse::test {

struct Site {
  Job job;
  Building building;
  Layout layout;
};

inline Site site_of(const std::string& text) {
  Job job = *read_job(text);
  Building building = *resolve(job);
  bond::PanelMemo memo(400'000);
  Layout layout = bond::lay_out(building, memo);
  return {std::move(job), std::move(building), std::move(layout)};
}

inline Site kiln_house_site() {
  std::ifstream file(std::string(STRINGCOURSE_ROOT) + "/examples/kiln-house.json");
  std::stringstream text;
  text << file.rdbuf();
  return site_of(text.str());
}

}  // namespace stringcourse::test
