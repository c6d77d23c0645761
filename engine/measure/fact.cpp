#include "measure/fact.hpp"

#include <utility>

namespace stringcourse {

Fact::Fact(std::string_view name, std::vector<FactValue> parts) : says(name), values(std::move(parts)) {}

FactValue::FactValue(std::string name) : text_(std::move(name)) {}
FactValue::FactValue(std::string_view name) : text_(name) {}
FactValue::FactValue(const char* name) : text_(name) {}
FactValue::FactValue(Whole whole) : kind_(Kind::Count), count_(whole.count) {}
FactValue::FactValue(Length length, LengthForm form) : kind_(Kind::Length), form_(form), length_(length) {}
FactValue::FactValue(Fact fact) : kind_(Kind::Fact), parts_(std::move(fact.values)), says_(fact.says) {}
FactValue::FactValue(Kind list, std::vector<FactValue> parts) : kind_(list), parts_(std::move(parts)) {}

FactValue FactValue::typed(std::string_view text) {
  FactValue value(text);
  value.kind_ = Kind::Typed;
  return value;
}

FactValue FactValue::apart(Length length, Length from) {
  FactValue value(length);
  value.kind_ = Kind::Apart;
  value.count_ = from.in_nanometres();
  return value;
}

Fact fact(std::string_view says, std::initializer_list<FactValue> values) { return {says, values}; }

Fact sentences(std::vector<Fact> facts) {
  std::vector<FactValue> parts;
  for (Fact& one : facts) {
    if (!one.empty()) parts.emplace_back(std::move(one));
  }
  return parts.empty() ? Fact{} : fact("sentences", {FactValue(FactValue::Kind::Sentences, std::move(parts))});
}

}  // namespace stringcourse
