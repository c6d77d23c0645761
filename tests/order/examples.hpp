#pragma once
// Jobs of examples/, with an order and days of their own put in.
#include <gtest/gtest.h>

#include <fstream>
#include <sstream>
#include <string>

#include "job/read.hpp"
#include "solve/solve.hpp"

namespace stringcourse::order_test {

inline constexpr const char* kExamples[] = {"kiln-house",    "clay-store",    "glaze-store", "drying-shed",
                                            "hillside-shed", "pug-mill-shop", "wash-stand"};

inline Job example_job(const std::string& name) {
  std::stringstream text;
  text << std::ifstream(std::string(STRINGCOURSE_ROOT) + "/examples/" + name + ".json").rdbuf();
  return *read_job(text.str());
}

inline Answer solved(const Job& job) {
  Wishes wishes;
  wishes.offers = false;
  return *solve(job, wishes);
}

inline const Article* article_of(const Answer& answer, const std::string& id) {
  const auto at = std::ranges::find(answer.order.articles, id, &Article::id);
  return at == answer.order.articles.end() ? nullptr : &*at;
}

}  // namespace stringcourse::order_test
