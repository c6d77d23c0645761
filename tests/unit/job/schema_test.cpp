// The schema, tried with a small slow checker of its own that shares nothing with the field tables.
#include <algorithm>
#include <fstream>
#include <set>
#include <sstream>
#include <string>

#include <nlohmann/json.hpp>

#include "gtest/gtest.h"
#include "job/read.hpp"
#include "job/write.hpp"
#include "unit/job/random_job.hpp"
#include "unit/job/support.hpp"

namespace stringcourse::test {
namespace {

using Json = nlohmann::json;

/// The part of JSON Schema 2020-12 that our schema uses. An unknown keyword is a failure, so none is passed over.
class SlowChecker {
 public:
  explicit SlowChecker(Json schema) : root_(std::move(schema)) {}
  bool allows(const Json& value) const { return allows(root_, value); }

 private:
  bool allows(const Json& schema, const Json& value) const {
    return std::ranges::all_of(
        schema.items(), [&](const auto& keyword) { return holds(schema, keyword.key(), keyword.value(), value); });
  }

  bool holds(const Json& schema, const std::string& keyword, const Json& wanted, const Json& value) const {
    if (keyword == "$ref") return allows(root_.at(Json::json_pointer(wanted.get<std::string>().substr(1))), value);
    if (keyword == "type") return has_type(wanted.get<std::string>(), value);
    if (keyword == "enum") return std::ranges::find(wanted, value) != wanted.end();
    if (keyword == "minimum") return !value.is_number() || value >= wanted;
    if (keyword == "maximum") return !value.is_number() || value <= wanted;
    if (keyword == "minLength") return !value.is_string() || length_of(value) >= wanted.get<std::size_t>();
    if (keyword == "maxLength") return !value.is_string() || length_of(value) <= wanted.get<std::size_t>();
    if (keyword == "pattern") return !value.is_string() || has_no_control(wanted, value);
    if (keyword == "maxItems") return !value.is_array() || value.size() <= wanted.get<std::size_t>();
    if (keyword == "uniqueItems")
      return !value.is_array() || std::set<Json>(value.begin(), value.end()).size() == value.size();
    if (keyword == "items")
      return !value.is_array() || std::ranges::all_of(value, [&](const Json& v) { return allows(wanted, v); });
    if (keyword == "required")
      return !value.is_object() ||
             std::ranges::all_of(wanted, [&](const Json& n) { return value.contains(n.get<std::string>()); });
    if (keyword == "properties") return properties_hold(wanted, value);
    if (keyword == "additionalProperties") return !value.is_object() || no_strangers(schema.at("properties"), value);
    if (keyword == "oneOf") return std::ranges::count_if(wanted, [&](const Json& s) { return allows(s, value); }) == 1;
    if (keyword == "not") return !allows(wanted, value);
    const bool says_nothing =
        keyword == "description" || keyword == "title" || keyword == "$schema" || keyword == "$defs";
    EXPECT_TRUE(says_nothing) << "unknown keyword " << keyword;
    return says_nothing;
  }

  bool properties_hold(const Json& properties, const Json& value) const {
    return !value.is_object() || std::ranges::all_of(properties.items(), [&](const auto& property) {
      return !value.contains(property.key()) || allows(property.value(), value.at(property.key()));
    });
  }
  static bool no_strangers(const Json& properties, const Json& value) {
    return std::ranges::all_of(value.items(), [&](const auto& member) { return properties.contains(member.key()); });
  }
  static bool has_type(const std::string& type, const Json& value) {
    if (type == "object") return value.is_object();
    if (type == "array") return value.is_array();
    if (type == "string") return value.is_string();
    if (type == "boolean") return value.is_boolean();
    return type == "integer" && value.is_number_integer();
  }
  static std::size_t length_of(const Json& text) {
    return static_cast<std::size_t>(
        std::ranges::count_if(text.get<std::string>(), [](char c) { return (c & 0xC0) != 0x80; }));
  }
  /// The two patterns of the schema forbid control characters, one of them all but tab and line breaks.
  static bool has_no_control(const Json& pattern, const Json& value) {
    const bool lines = pattern.get<std::string>().find(R"(\u000b)") != std::string::npos;
    const std::string text = value.get<std::string>();
    for (std::size_t k = 0; k < text.size(); ++k) {
      const auto c = static_cast<unsigned char>(text[k]);
      if (lines && (c == '\n' || c == '\r' || c == '\t')) continue;
      const bool c1 = c == 0xC2 && static_cast<unsigned char>(text[k + 1]) < 0xA0;
      if (c < 0x20 || c == 0x7F || c1) return false;
    }
    return true;
  }
  Json root_;
};

Json schema() { return Json::parse(job_schema()); }

/// "where.field" of every field in a value, lists passed through.
void gather_fields(const Json& value, const std::string& where, std::set<std::string>& fields) {
  if (value.is_array()) {
    for (const Json& entry : value) gather_fields(entry, where, fields);
  }
  if (!value.is_object()) return;
  for (const auto& member : value.items()) {
    fields.insert(where + "." + member.key());
    gather_fields(member.value(), where + "." + member.key(), fields);
  }
}

/// The same of a schema, references followed.
void gather_properties(const Json& root, const Json& part, const std::string& where, std::set<std::string>& fields) {
  if (part.contains("$ref")) {
    const std::string reference = part.at("$ref").get<std::string>().substr(1);
    return gather_properties(root, root.at(Json::json_pointer(reference)), where, fields);
  }
  if (part.contains("items")) return gather_properties(root, part.at("items"), where, fields);
  if (!part.contains("properties")) return;
  for (const auto& property : part.at("properties").items()) {
    fields.insert(where + "." + property.key());
    gather_properties(root, property.value(), where + "." + property.key(), fields);
  }
}

TEST(Schema, ItsPropertiesAreTheFieldsThatTheWriterWrites) {
  std::set<std::string> written, described;
  const Json document = Json::parse(write_job(full_job()));
  gather_fields(document, "", written);
  Json other = document;  // the full job has courses; a height is the one field beside them
  other["heights"]["height"] = "8'";
  gather_fields(other, "", written);
  gather_properties(schema(), schema(), "", described);
  EXPECT_EQ(written, described);
  EXPECT_GT(described.size(), 90U);
}

TEST(Schema, EveryDefinitionIsReferredTo) {
  const std::string text = job_schema();
  for (const auto& definition : schema().at("$defs").items()) {
    EXPECT_NE(text.find("\"#/$defs/" + definition.key() + "\""), std::string::npos) << definition.key();
  }
}

TEST(Schema, EveryFieldHasADescription) {
  const Json root = schema();
  const auto check = [](const Json& object, const std::string& name) {
    for (const auto& property : object.at("properties").items()) {
      EXPECT_GT(property.value().at("description").get<std::string>().size(), 5U) << name << "." << property.key();
    }
  };
  check(root, "job");
  for (const auto& definition : root.at("$defs").items()) check(definition.value(), definition.key());
}

TEST(Schema, WhatTheWriterWritesIsAllowed) {
  const SlowChecker checker(schema());
  EXPECT_TRUE(checker.allows(Json::parse(write_job(full_job()))));
  for (std::uint64_t seed = 1; seed <= 300; ++seed) {
    ASSERT_TRUE(checker.allows(Json::parse(write_job(random_job(seed))))) << "seed " << seed;
  }
}

/// Every place in the document, as JSON pointers.
std::vector<Json::json_pointer> places_of(const Json& document) {
  std::vector<Json::json_pointer> places;
  const Json flat = document.flatten();
  for (const auto& leaf : flat.items()) places.emplace_back(leaf.key());
  return places;
}

/// One value or field of the document changed, sound JSON still.
Json changed(Json document, Dice& dice) {
  static const std::vector<Json> kValues = {nullptr,
                                            true,
                                            -1,
                                            0,
                                            1,
                                            200,
                                            201,
                                            1.5,
                                            "",
                                            "near",
                                            "right",
                                            "7 5/8\"",
                                            std::string(70, '1'),
                                            std::string(201, 'x'),
                                            "a\nb",
                                            "a\u0085b",
                                            "\u007F",
                                            Json::array(),
                                            Json::object(),
                                            Json::array({1, 1}),
                                            Json::array({2, 1})};
  const auto places = places_of(document);
  Json::json_pointer place = places[dice.below(places.size())];
  for (auto up = dice.below(3); up > 0 && !place.parent_pointer().empty(); --up) place = place.parent_pointer();
  const Json value = kValues[dice.below(kValues.size())];
  Json& parent = document.at(place.parent_pointer());
  if (dice.below(3) > 0 || !parent.is_object()) document.at(place) = value;
  else if (dice.heads()) parent.erase(place.back());
  else parent[dice.heads() ? "naem" : "height"] = value;
  return document;
}

TEST(Schema, WhatItForbidsTheReaderRefuses) {
  const SlowChecker checker(schema());
  int forbidden = 0, accepted = 0;
  for (std::uint64_t seed = 1; seed <= 3'000; ++seed) {
    Dice dice(seed);
    const Json document = changed(Json::parse(write_job(seed % 3 == 0 ? full_job() : random_job(seed))), dice);
    const bool allowed = checker.allows(document);
    const bool read = read_job(document.dump()).has_value();
    ASSERT_TRUE(allowed || !read) << "seed " << seed << ": read, but forbidden by the schema:\n" << document.dump(2);
    forbidden += allowed ? 0 : 1;
    accepted += read ? 1 : 0;
  }
  EXPECT_GT(forbidden, 1'000);  // both must have been met often
  EXPECT_GT(accepted, 100);
}

/// Refusals that a schema of this kind cannot know of: what a text means, and what two values say together.
bool is_beyond_a_schema(Code code) {
  return code == "not-a-length" || code == "not-a-force" || code == "out-of-range" || code == "list-order" ||
         code == "name-twice" || code == "series-uneven" || code == "cell-outside" || code == "belongs-together" ||
         code == "not-money" || code == "not-a-weight" || code == "not-hundredths" || code == "currency-mixed" ||
         code == "not-a-date" || code == "not-a-stress";
}

TEST(Schema, WhatItAllowsTheReaderRefusesOnlyForItsMeaning) {
  const SlowChecker checker(schema());
  for (std::uint64_t seed = 1; seed <= 3'000; ++seed) {
    Dice dice(seed);
    const Json document = changed(Json::parse(write_job(seed % 3 == 0 ? full_job() : random_job(seed))), dice);
    if (!checker.allows(document)) continue;
    const auto job = read_job(document.dump());
    if (job) continue;
    for (const Refusal& refusal : job.error().shown) {
      ASSERT_TRUE(is_beyond_a_schema(refusal.code))
          << "seed " << seed << " " << refusal.code.text() << " " << refusal.place;
    }
  }
}

TEST(Schema, TheFileInTheRepositoryIsTheSchemaOfThisProgram) {
  std::ifstream file(STRINGCOURSE_ROOT "/docs/schema/job.schema.json", std::ios::binary);
  ASSERT_TRUE(file.is_open());
  std::ostringstream text;
  text << file.rdbuf();
  EXPECT_EQ(text.str(), job_schema()) << "write it anew with the program's schema verb";
}

}  // namespace
}  // namespace stringcourse::test
