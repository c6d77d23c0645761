#include "wasm/request.hpp"

#include <utility>

#include "document/choices.hpp"
#include "job/read.hpp"
#include "job/words.hpp"
#include "wasm/base64.hpp"
#include "wasm/fields.hpp"

namespace stringcourse::border {
namespace {

constexpr std::int64_t kMostIndex = 1'000'000;
constexpr std::int64_t kMostBudget = 1'000'000'000;

Length length_in(Fields& fields, std::string_view name) {
  const std::int64_t longest = kLongest.in_nanometres();
  return Length::nanometres(fields.whole(name, -longest, longest));
}

std::size_t index_in(Fields& fields, std::string_view name) {
  return static_cast<std::size_t>(fields.whole(name, 0, kMostIndex));
}

Edit resize_of(Fields& fields) {
  const std::string edge = fields.text("edge", kLongestName);
  if (edge != "from" && edge != "to") fields.trouble("edge", "\"from\" or \"to\" is wanted.");
  return ResizeOpening{index_in(fields, "opening"), edge == "from" ? Jamb::From : Jamb::To, length_in(fields, "to_nm")};
}

Edit offer_of(Fields& fields) {
  const auto what = enum_from_name<OfferWhat>(fields.text("what", kLongestName));
  if (!what) fields.trouble("what", "no offer is of this kind.");
  const std::string place = fields.text("place", kLongestName);
  TakeOffer offer{what.value_or(OfferWhat::MoveOpening), place, length_in(fields, "by_nm")};
  if (fields.has("shift_nm")) offer.shift = length_in(fields, "shift_nm");
  return offer;
}

Edit edit_of(Fields& fields) {
  const std::string what = fields.text("do", kLongestName);
  if (what == "move-opening") return MoveOpening{index_in(fields, "opening"), length_in(fields, "to_nm")};
  if (what == "resize-opening") return resize_of(fields);
  if (what == "move-side") return MoveSide{index_in(fields, "side"), length_in(fields, "by_nm")};
  if (what == "accept") return offer_of(fields);
  fields.trouble("do", "there is no such edit.");
  return MoveOpening{};
}

std::vector<Edit> edits_of(Fields& request, Troubles& troubles) {
  std::vector<Edit> edits;
  for (const JsonTree::Node node : request.list("edits", kMostEdits)) {
    Fields fields(request.tree(), node, "/edits/" + number_text(edits.size()), troubles);
    edits.push_back(edit_of(fields));
    fields.finish();
  }
  return edits;
}

std::vector<std::string> drawings_of(Fields& request, Troubles& troubles) {
  std::vector<std::string> names;
  for (const JsonTree::Node node : request.list("drawings", kMostDrawings)) {
    const JsonTree& tree = request.tree();
    const bool is_name = tree.kind(node) == JsonKind::Text && tree.text(node).size() <= kLongestName;
    if (!is_name) troubles.add("/drawings/" + number_text(names.size()), "the name of a drawing is wanted.");
    names.emplace_back(is_name ? tree.text(node) : "");
  }
  return names;
}

Measures measures_of(Fields& request, Troubles& troubles) {
  Fields fields(request.tree(), request.take("begin"), "/begin", troubles);
  Measures measures;
  if (fields.has("name")) measures.name = fields.text("name", kLargestDocument);
  measures.length = fields.text("length", kLongestName);
  measures.width = fields.text("width", kLongestName);
  measures.height = fields.text("height", kLongestName);
  if (fields.has("series")) measures.series = fields.text("series", kLongestName);
  fields.finish();
  return measures;
}

laying::Trial trial_of(const Fields& course, JsonTree::Node node, Troubles& troubles) {
  Fields fields(course.tree(), node, "/course/trial", troubles);
  const laying::Trial trial{length_in(fields, "at_nm"), length_in(fields, "past_nm")};
  fields.finish();
  return trial;
}

CourseAsked course_of(Fields& request, Troubles& troubles) {
  Fields fields(request.tree(), request.take("course"), "/course", troubles);
  CourseAsked course;
  course.side = fields.text("side", kLongestName);
  course.course = static_cast<int>(fields.whole("course", 1, kMostIndex));
  if (fields.has("trial")) course.trial = trial_of(fields, fields.take("trial"), troubles);
  course.odds = fields.truth("odds");
  fields.finish();
  return course;
}

std::optional<paper::Paper> paper_of(Fields& request) {
  if (!request.has("set")) return std::nullopt;
  const std::string name = request.text("set", kLongestName);
  if (name != "letter" && name != "a4") request.trouble("set", "\"letter\" or \"a4\" is wanted.");
  return name == "letter" ? paper::Paper::Letter : paper::Paper::A4;
}

/// {"regular": base64, "bold": base64}
void read_fonts(Fields& request, Troubles& troubles, Request& into) {
  if (!request.has("fonts")) return;
  Fields fields(request.tree(), request.take("fonts"), "/fonts", troubles);
  for (const auto& [name, face] : {std::pair("regular", &into.regular), std::pair("bold", &into.bold)}) {
    auto bytes = from_base64(fields.text(name, kLargestDocument));
    if (!bytes) fields.trouble(name, "bytes as base64 are wanted.");
    else *face = *std::move(bytes);
  }
  fields.finish();
}

void read_source(Fields& fields, Troubles& troubles, Request& into) {
  if (fields.has("job") == fields.has("begin")) return troubles.add("", "one of job and begin is wanted.");
  if (fields.has("begin")) {
    into.from = measures_of(fields, troubles);
  } else {
    into.from = fields.text("job", kLargestDocument);
  }
}

}  // namespace

std::expected<Request, std::string> read_request(std::string_view text) {
  const auto tree = parse_json(text);
  if (!tree) return std::unexpected(tree.error().reason);
  Troubles troubles;
  Fields fields(*tree, 0, "", troubles);
  if (fields.whole("border", 0, kMostIndex) != kBorderVersion) fields.trouble("border", "only version 1 is spoken here.");
  Request request;
  read_source(fields, troubles, request);
  request.edits = edits_of(fields, troubles);
  if (fields.has("merge")) request.merge = fields.text("merge", kLargestDocument);
  request.drawings = drawings_of(fields, troubles);
  request.solids = fields.truth("solids");
  if (fields.has("piece")) request.piece = fields.text("piece", kLongestName);
  if (fields.has("course")) request.course = course_of(fields, troubles);
  request.set = paper_of(fields);
  read_fonts(fields, troubles, request);
  request.offers = fields.truth("offers");
  if (fields.has("budget")) request.budget = fields.whole("budget", 0, kMostBudget);
  request.moving = fields.truth("moving");
  fields.finish();
  if (!troubles.first().empty()) return std::unexpected(troubles.first());
  return request;
}

}  // namespace stringcourse::border
