#pragma once
// Field table of refusals: why a job has no answer.
#include "document/shown_building.hpp"
#include "job/trouble.hpp"

namespace stringcourse::document {

template <>
struct Shown<Refusal> {
  static constexpr std::string_view name = "refusal";
  static constexpr std::string_view description = "One thing that stops the work.";
  static constexpr auto fields = std::tuple{
      shown("code", &Refusal::code),
      shown("place", &Refusal::place, kPointer),
      shown("reason", &Refusal::reason),
      shown("remedy", &Refusal::remedy),
  };
};

template <>
struct Shown<Refusals> {
  static constexpr std::string_view name = "refusals";
  static constexpr std::string_view description =
      "Why a job cannot be planned: what --json prints when the exit code is 3 and no answer exists.";
  static constexpr auto fields = std::tuple{
      shown(
          "stringcourse_refusals", [](const View&, const Refusals&) { return 1; }, "version of this document"),
      shown("refusals", &Refusals::shown),
      shown("beyond", &Refusals::beyond, "refusals not shown"),
  };
};

}  // namespace stringcourse::document
