// Documents that are no job.
#include "code_rows.hpp"
#include "edits/begun.hpp"
#include "job/read.hpp"
#include "unit/job/support.hpp"

namespace stringcourse::tests {
namespace {

/// The small document with `to` in the place of `from`.
Told with(std::string_view from, std::string_view to) {
  return told_of_text(test::replaced(test::kSmallJob, from, to));
}

Told with_own_series(std::string_view half, std::string_view more) {
  return with("\"us-8\"", "\"us-8\", \"own_series\": [{\"id\": \"mine\", \"full\": \"15 5/8\\\"\", \"half\": \"" +
                              std::string(half) +
                              "\", \"thickness\": \"7 5/8\\\"\", \"height\": \"7 5/8\\\"\", \"joint\": \"3/8\\\"\"" +
                              std::string(more) + "}]");
}

Told with_order(std::string_view order) {
  return with("\"heights\"", "\"order\": {" + std::string(order) + "}, \"heights\"");
}

Told begun(const Measures& measures) {
  const auto job = begun_job(measures);
  return job ? Told() : told_of(job.error());
}

constexpr std::string_view kTwoDoors =
    R"(}}, {"name": "D1", "on": "AB", "place": {"from": "A", "at": "20'"}, "masonry": {"width": "1'", "height": "1'"}}])";

}  // namespace

std::vector<CodeRow> document_rows() {
  return {
      {"not-utf-8", "/", [] { return told_of_text("{\"name\": \"\xff\"}"); }},
      {"not-json", "/", [] { return told_of_text("{"); }},
      {"too-deep", "/", [] { return told_of_text(std::string(33, '[') + std::string(33, ']')); }},
      {"too-large", "/", [] { return told_of_text(std::string(kLargestDocument + 1, ' ')); }},
      {"newer-version", "/stringcourse", [] { return with("\"stringcourse\": 1", "\"stringcourse\": 2"); }},
      {"unknown-field", "/colour", [] { return with("\"heights\"", "\"colour\": 0, \"heights\""); }},
      {"duplicate-field", "/name", [] { return with("\"tape\"", "\"name\": \"Shed\", \"tape\""); }},
      {"missing-field", "/units/series", [] { return with("\"series\": \"us-8\"", ""); }},
      {"wrong-type", "/outline/sides/0/length", [] { return with("\"28'-0\\\"\"", "28"); }},
      {"not-a-length", "/openings/0/place/at", [] { return with("4'-0\\\"", "four feet"); }},
      {"not-a-force", "/setting_out/line_pull",
       [] { return with("\"heights\"", "\"setting_out\": {\"line_pull\": \"hard\"}, \"heights\""); }},
      {"not-a-stress", "/steel/lap/masonry",
       [] {
         return with("\"heights\"", "\"steel\": {\"lap\": {\"rule\": \"ibc\", \"masonry\": \"strong\"}}, \"heights\"");
       }},
      {"unknown-name", "/tape", [] { return with("\"inches\"", "\"rods\""); }},
      {"out-of-range", "/heights/courses", [] { return with("12}", "201}"); }},
      {"too-long", "/name", [] { return with("Shed", std::string(201, 'x')); }},
      {"empty-text", "/outline/sides/0/to", [] { return with("\"B\"", "\"\""); }},
      {"control-character", "/name", [] { return with("Shed", "Sh\\u0007ed"); }},
      {"too-many", "/steel/bond_beams",
       [] {
         std::string courses = "1";
         for (int k = 0; k < 10'000; ++k) courses += ", 1";
         return with("\"heights\"", "\"steel\": {\"bond_beams\": [" + courses + "]}, \"heights\"");
       }},
      {"list-order", "/steel/pour_tops",
       [] { return with("\"heights\"", "\"steel\": {\"pour_tops\": [12, 6]}, \"heights\""); }},
      {"choose-one", "/heights", [] { return with("\"courses\": 12", ""); }},
      {"name-twice", "/openings/1/name", [] { return with("}}]", kTwoDoors); }},
      {"series-uneven", "/units/own_series/0/half", [] { return with_own_series("7 3/4\\\"", ""); }},
      {"cell-outside", "/units/own_series/0/full_cells/0",
       [] { return with_own_series("7 5/8\\\"", R"(, "full_cells": [{"from": "1\"", "to": "16\""}])"); }},
      {"belongs-together", "/laid/0/units/row",
       [] { return with("\"heights\"", "\"laid\": [{\"id\": \"1\", \"units\": {\"together\": 10}}], \"heights\""); }},
      {"not-money", "/order/delivery", [] { return with_order(R"("currency": "USD", "delivery": "12,50")"); }},
      {"not-a-weight", "/order/truck", [] { return with_order(R"("truck": "four tons")"); }},
      {"not-hundredths", "/order/tax", [] { return with_order(R"("currency": "USD", "tax": "a tenth")"); }},
      {"currency-mixed", "/order/prices/0/price",
       [] { return with_order(R"("currency": "USD", "prices": [{"article": "sand", "price": "2.45 EUR"}])"); }},
      {"not-a-date", "/days/start",
       [] { return with("\"heights\"", "\"days\": {\"start\": \"2026-02-30\"}, \"heights\""); }},
      {"unit-unsaid", "/begin/length", [] { return begun({"shed", "24", "16'", "8'"}); }},
  };
}

}  // namespace stringcourse::tests
